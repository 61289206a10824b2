#include "progress_line.hpp"

#include "text/language.hpp"
#include "text/show.hpp"

#include <fmt/format.h>
#include <unistd.h>

#include <algorithm>
#include <cstdio>
#include <thread>

namespace flapdoor::command {

void ProgressLine::show(std::size_t done, std::size_t todo)
{
    const auto now = std::chrono::steady_clock::now();
    const bool is_terminal = isatty(STDERR_FILENO) != 0;
    const auto pause = is_terminal ? std::chrono::milliseconds(500) : std::chrono::milliseconds(10'000);
    if (now - shown_ < pause || done == 0) return;
    shown_ = now;
    has_shown_ = true;
    const double left = std::chrono::duration<double>(now - begun_).count() / static_cast<double>(done) * static_cast<double>(todo);
    const std::string line = text::say_with(what_, done, done + todo, text::show(Time{std::max(1.0, left)}));
    std::fprintf(stderr, is_terminal ? "\r\x1b[K%s" : "%s\n", line.c_str());
    std::fflush(stderr);
}

void ProgressLine::end()
{
    if (has_shown_ && isatty(STDERR_FILENO) != 0) std::fprintf(stderr, "\r\x1b[K");
    has_shown_ = false;
}

unsigned usual_threads() { return std::clamp(std::thread::hardware_concurrency(), 1U, 16U); }

}
