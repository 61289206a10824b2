#pragma once

#include <tl/expected.hpp>

#include <compare>
#include <string>
#include <vector>

namespace flapdoor::inline core {

/// Where something stands in a user's file. Line and column count from 1; 0 means the file as a whole.
struct Place {
    std::string file;
    int line = 0;
    int column = 0;

    friend auto operator<=>(const Place&, const Place&) = default;
};

/// One thing wrong with what came from outside.
struct Problem {
    Place where;
    std::string expected;   ///< what would have been right, e.g. `a length such as "0.5 in"`
    std::string found;      ///< what stood there instead

    friend bool operator==(const Problem&, const Problem&) = default;
};

using Problems = std::vector<Problem>;

/// The value, or every problem found.
template <class T>
using Result = tl::expected<T, Problems>;

inline auto failed(Problems problems) { return tl::unexpected<Problems>(std::move(problems)); }
inline auto failed(Problem problem) { return failed(Problems{std::move(problem)}); }

/// `file:line:column: expected ..., found ...`, one line without its end.
std::string describe(const Problem& problem);

}
