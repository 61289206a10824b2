#pragma once

#include "quiz/practice/attempt.hpp"
#include "quiz/practice/boxes.hpp"
#include "quiz/practice/mastery.hpp"
#include "text/table.hpp"

#include <cstddef>
#include <span>
#include <string>
#include <vector>

namespace flapdoor::quiz {

/// What to do and how far things are, told to the person who practises.

/// How far somebody is in a topic, and when it comes again.
struct TopicOutlook {
    Box box;
    Mastery mastery;

    Topic topic() const { return box.topic; }
    /// Asked, and fewer of the latest answers right than `goal` asks.
    bool is_weak() const { return mastery.of > 0 && mastery.right < goal * mastery.of; }
};

/// All topics, what needs practice most first: weak ones, the smallest share right first; then by the day on which they are due,
/// those behind a critical rule first.
std::vector<TopicOutlook> outlooks(const Practice& practice, std::span<const Topic> topics, Day today);

/// "today", "tomorrow", "in 3 days (2026-12-02)", "ready" when it need not come again before the field day.
std::string due_words(const Practice& practice, const Box& box, Day today);

/// "3 of 5 (23 to 88 %)", "-" when nothing was asked.
std::string right_words(const Mastery& mastery);

/// "today", "tomorrow", "in 3 days (2026-12-02)".
std::string day_words(Day day, Day today);

/// How long to the field day, what today's session asks, and when to come again; a sentence each.
std::vector<std::string> plan_lines(const Practice& practice, std::span<const Topic> topics, Day today);

/// Topic, standing, right of the latest answers with the interval, when it is due.
text::TextTable standing_table(const Practice& practice, std::span<const Topic> topics, Day today);

/// What the words of the table mean, and that none of them is a certificate.
std::vector<std::string> standing_legend();

/// All of it. @param width  terminal columns, at least 60; insists
std::string practice_sheet(const Practice& practice, std::span<const Topic> topics, Day today, std::size_t width = 80);

}
