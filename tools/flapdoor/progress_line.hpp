#pragma once

#include <chrono>
#include <cstddef>
#include <string>
#include <string_view>

namespace flapdoor::command {

/// How far a study is and how long it still takes, on stderr: one line that is written over on a terminal, a line now and
/// then elsewhere. Nothing for work of less than a second.
class ProgressLine {
public:
    /// @param what  a sentence with blanks for the runs done, all runs and the time left
    explicit ProgressLine(std::string_view what) : what_(what) {}

    void show(std::size_t done, std::size_t todo);

    /// Clears the line of a terminal.
    void end();

private:
    std::string what_;
    std::chrono::steady_clock::time_point begun_ = std::chrono::steady_clock::now(), shown_ = begun_;
    bool has_shown_ = false;
};

/// Threads that work when nobody asks for a number: as many as the machine has, at most 16.
unsigned usual_threads();

}
