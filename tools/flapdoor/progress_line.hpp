#pragma once

#include <chrono>
#include <cstddef>
#include <string>

namespace flapdoor::command {

/// How far a study is and how long it still takes, on stderr: one line that is written over on a terminal, a line now and
/// then elsewhere. Nothing for work of less than a second.
class ProgressLine {
public:
    explicit ProgressLine(std::string what) : what_(std::move(what)) {}

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
