#pragma once

#include "quiz/practice/attempt.hpp"

#include <string>
#include <vector>

namespace flapdoor::quiz {

inline constexpr Day first_day{20786};     // 2026-11-29

inline Practice toward(int days)
{
    Practice practice;
    practice.begun = first_day;
    practice.field_day = first_day + days;
    practice.each = 1;
    return practice;
}

inline Attempt answer(Topic topic, int day, bool is_right, std::uint64_t seed)
{
    Attempt attempt;
    attempt.day = first_day + day;
    attempt.topic = topic;
    attempt.item = "bank/question";
    attempt.seed = seed;
    attempt.is_right = is_right;
    return attempt;
}

/// Adds an answer with a fresh seed.
inline void add(Practice& practice, Topic topic, int day, bool is_right) { practice.attempts.push_back(answer(topic, day, is_right, practice.attempts.size())); }

}
