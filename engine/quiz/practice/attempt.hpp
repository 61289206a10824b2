#pragma once

#include "core/fields.hpp"
#include "quiz/practice/day.hpp"
#include "quiz/topic.hpp"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace flapdoor::quiz {

/// One question answered in practice.
struct Attempt {
    Day day;
    Topic topic = Topic::other;
    std::string item;               ///< "bank/question"
    std::uint64_t seed = 0;         ///< of its figures and its shuffling
    bool is_right = false;
    bool is_critical = false;       ///< the answer broke a critical rule
    double guess = 0.25;            ///< how likely somebody who knows nothing is right

    static void fields(auto& self, auto&& visit)
    {
        visit("day", self.day, required, About{"when it was answered"});
        visit("topic", self.topic, required, About{"what the question is about"});
        visit("item", self.item, required, About{"bank and question"});
        visit("seed", self.seed, About{"of its figures and its shuffling"});
        visit("right", self.is_right, required, About{"all of it"});
        visit("critical", self.is_critical, About{"the answer broke a critical rule"});
        visit("guess", self.guess, Range{0.0, 0.5}, About{"how likely somebody who knows nothing is right"});
    }
    friend bool operator==(const Attempt&, const Attempt&) = default;
};

/// What one person practises, and all that has been answered. Everything else follows from it.
struct Practice {
    static constexpr int format_version = 1;

    int format = format_version;
    Day begun;
    std::optional<Day> field_day;       ///< the day to be ready for
    int each = 3;                       ///< questions of a topic in a session
    bool is_refreshed = false;          ///< due again 30, 90 and 180 days after the field day
    std::vector<Attempt> attempts;      ///< in the order in which they were made

    static void fields(auto& self, auto&& visit)
    {
        visit("format", self.format, required, Range{1, format_version});
        visit("begun", self.begun, required, About{"first day of practice"});
        visit("field-day", self.field_day, About{"the day to be ready for"});
        visit("each", self.each, Range{1, 20}, About{"questions of a topic in a session"});
        visit("refresh", self.is_refreshed, About{"due again 30, 90 and 180 days after the field day"});
        visit("attempt", self.attempts, About{"what was answered, in order"});
    }
    friend bool operator==(const Practice&, const Practice&) = default;
};

}
