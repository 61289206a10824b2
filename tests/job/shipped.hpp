#pragma once

#include "job/files.hpp"
#include "text/input_file.hpp"

#include <catch2/catch.hpp>

#include <string>
#include <string_view>
#include <utility>

/// The shipped job as tests read it, and small helpers for texts of files.
namespace flapdoor::job {

/// All problems, one line each.
inline std::string told(const Problems& problems)
{
    std::string lines;
    for (const Problem& problem : problems) lines += describe(problem) + "\n";
    return lines;
}

/// The value; the test fails with the problems when there are any.
template <class T>
T sound(Result<T> result)
{
    INFO((result ? std::string() : told(result.error())));
    REQUIRE(result.has_value());
    return std::move(*result);
}

/// The problems; the test fails when there are none.
template <class T>
Problems wrong(const Result<T>& result)
{
    REQUIRE_FALSE(result.has_value());
    REQUIRE_FALSE(result.error().empty());
    return result.error();
}

/// Text of `scenarios/back-bedroom/<name>.toml`.
inline std::string shipped_text(const std::string& name)
{
    return sound(text::read_file(std::string(FLAPDOOR_SOURCE_DIR) + "/scenarios/back-bedroom/" + name + ".toml"));
}

/// The shipped scenario, with more tables written behind it.
inline Scenario shipped_scenario(const std::string& more = {}) { return sound(read_scenario(shipped_text("scenario") + more, "scenario.toml")); }

inline WorkPlan shipped_plan(const std::string& name, const Scenario& scenario) { return sound(read_plan(shipped_text(name), name + ".toml", scenario)); }

/// The text with one piece of it, which must be there, replaced.
inline std::string with(std::string text, std::string_view piece, std::string_view instead)
{
    const std::size_t at = text.find(piece);
    INFO("looking for: " << piece);
    REQUIRE(at != std::string::npos);
    return text.replace(at, piece.size(), instead);
}

/// Line and column, from 1, of the `^` in a marked piece of the text: `zone = ^"rom"` points at the quote mark.
inline Place place_in(std::string_view text, std::string piece, const std::string& file)
{
    const std::size_t mark = piece.find('^');
    REQUIRE(mark != std::string::npos);
    piece.erase(mark, 1);
    const std::size_t found = text.find(piece);
    INFO("looking for: " << piece);
    REQUIRE(found != std::string_view::npos);
    const std::string_view before = text.substr(0, found + mark);
    Place place{file, 1, 1};
    for (const char c : before) {
        ++place.column;
        if (c == '\n') ++place.line, place.column = 1;
    }
    return place;
}

}
