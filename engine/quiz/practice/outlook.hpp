#pragma once

#include "quiz/practice/attempt.hpp"
#include "text/table.hpp"

#include <cstddef>
#include <span>
#include <string>
#include <vector>

namespace flapdoor::quiz {

/// What to do and how far things are, told to the person who practises.

/// How long to the field day, what today's session asks, and when to come again; a sentence each.
std::vector<std::string> plan_lines(const Practice& practice, std::span<const Topic> topics, Day today);

/// Topic, standing, right of the latest answers with the interval, when it is due.
text::TextTable standing_table(const Practice& practice, std::span<const Topic> topics, Day today);

/// What the words of the table mean, and that none of them is a certificate.
std::vector<std::string> standing_legend();

/// All of it. @param width  terminal columns, at least 60; insists
std::string practice_sheet(const Practice& practice, std::span<const Topic> topics, Day today, std::size_t width = 80);

}
