#pragma once

#include "core/result.hpp"
#include "text/document.hpp"

#include <compare>
#include <optional>
#include <string>
#include <string_view>

namespace flapdoor::quiz {

/// A date, counted in days since 1970-01-01. Which day it is today, the caller says: no clock here.
struct Day {
    int number = 0;

    static void from_node(const text::Node& node, Day& into, Problems& problems);
    static text::Node to_node(const Day& day);

    friend auto operator<=>(const Day&, const Day&) = default;
    friend Day operator+(Day day, int days) { return {day.number + days}; }
    friend int operator-(Day later, Day earlier) { return later.number - earlier.number; }
};

/// `2026-12-06`; nothing for anything else, and for days that no calendar has. Years 1970 to 2199.
std::optional<Day> parse_day(std::string_view text);

/// `2026-12-06`.
std::string text_of(Day day);

}
