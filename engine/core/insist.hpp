#pragma once

#include <stdexcept>

namespace flapdoor::inline core {

/// A promise of our own that did not hold: a bug, never bad input.
struct BrokenPromise : std::logic_error {
    using std::logic_error::logic_error;
};

[[noreturn]] void report_broken_promise(const char* why, const char* file, int line);

/// Stops the run when a promise of our own does not hold. Alive in every build; never used to check input.
inline void insist(bool holds, const char* why, const char* file = __builtin_FILE(), int line = __builtin_LINE())
{
    if (!holds) [[unlikely]] report_broken_promise(why, file, line);
}

}
