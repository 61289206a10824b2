#include "quiz/practice/boxes.hpp"

#include <algorithm>
#include <array>
#include <limits>

namespace flapdoor::quiz {

namespace {

constexpr Day never{std::numeric_limits<int>::max()};

void take(const Practice& practice, const Attempt& attempt, Box& box)
{
    const bool was_due = box.due <= attempt.day;
    box.asked += 1;
    box.last = attempt.day;
    if (!attempt.is_right) box.box = 0;
    else if (was_due) box.box = std::min(box.box + 1, last_box);
    else return;    // asked early and right: nothing is proved about remembering
    box.due = due_after(practice, attempt.day, box.box);
}

/// The first refresher that the topic has not had.
Day refresher(const Practice& practice, const Box& box)
{
    if (!practice.is_refreshed || !practice.field_day) return never;
    for (const int days : {30, 90, 180}) {
        const Day due = *practice.field_day + days;
        if (!box.last || *box.last < due) return due;
    }
    return never;
}

}

bool is_behind_critical_rule(Topic topic)
{
    constexpr std::array critical{Topic::people, Topic::containment, Topic::openings, Topic::flap_door, Topic::prohibited, Topic::bagging, Topic::verification};
    return std::find(critical.begin(), critical.end(), topic) != critical.end();
}

Day due_after(const Practice& practice, Day day, int box)
{
    const Day due = day + gaps[box];
    if (!practice.field_day) return due;
    const Day eve = *practice.field_day + -1;
    return day < eve ? std::min(due, eve) : due;
}

std::vector<Box> boxes_of(const Practice& practice, std::span<const Topic> topics, Day today)
{
    std::vector<Box> boxes;
    for (const Topic topic : topics) {
        Box box{topic, 0, practice.begun, 0, std::nullopt};
        for (const Attempt& attempt : practice.attempts)
            if (attempt.topic == topic) take(practice, attempt, box);
        const bool is_missed_today = box.last == today && box.box == 0;
        if (practice.field_day && *practice.field_day < today && !is_missed_today) box.due = refresher(practice, box);
        boxes.push_back(box);
    }
    return boxes;
}

}
