#include "quiz/practice/session.hpp"

#include "core/insist.hpp"
#include "quiz/practice/knowledge.hpp"

#include <algorithm>
#include <tuple>

namespace flapdoor::quiz {

namespace {

/// A topic as today's session sees it.
struct Turn {
    Box box;
    bool was_due = false;       ///< when the day began
    int asked_today = 0;
    std::optional<int> others_since_miss;   ///< when its last answer today was wrong
    double knowledge = 0.0;

    bool is_waiting() const { return others_since_miss && *others_since_miss < others_between; }

    bool is_open(const Practice& practice, Day today) const { return box.due <= today || (was_due && asked_today < practice.each); }

    auto rank() const { return std::tuple(asked_today, !is_behind_critical_rule(box.topic), box.due, knowledge, box.topic); }
};

/// As it was when the day began.
Practice before(Practice practice, Day today)
{
    std::erase_if(practice.attempts, [&](const Attempt& attempt) { return attempt.day >= today; });
    return practice;
}

std::vector<Turn> turns_of(const Practice& practice, std::span<const Topic> topics, Day today)
{
    std::vector<Turn> turns;
    const std::vector<Box> at_dawn = boxes_of(before(practice, today), topics, today);
    for (const Box& box : boxes_of(practice, topics, today)) {
        Turn turn;
        turn.box = box;
        turn.was_due = at_dawn[turns.size()].due <= today;
        turn.knowledge = knowledge_of(practice.attempts, box.topic);
        for (const Attempt& attempt : practice.attempts) {
            insist(attempt.day <= today, "nothing was answered after today");
            if (attempt.day != today) continue;
            if (attempt.topic == box.topic) {
                turn.asked_today += 1;
                turn.others_since_miss = attempt.is_right ? std::nullopt : std::optional(0);
            }
            else if (turn.others_since_miss) *turn.others_since_miss += 1;
        }
        turns.push_back(turn);
    }
    return turns;
}

/// The best-ranked of those that `may` take the turn, the topic just asked only where there is no other.
template <class May>
const Turn* best(const std::vector<Turn>& turns, std::optional<Topic> just_asked, const May& may)
{
    const Turn* chosen = nullptr;
    const auto rank = [&](const Turn& turn) { return std::tuple_cat(std::tuple(turn.box.topic == just_asked), turn.rank()); };
    for (const Turn& turn : turns)
        if (may(turn) && (chosen == nullptr || rank(turn) < rank(*chosen))) chosen = &turn;
    return chosen;
}

Attempt right_answer(const Practice& practice, Topic topic, Day today)
{
    Attempt attempt;
    attempt.day = today;
    attempt.topic = topic;
    attempt.seed = practice.attempts.size();
    attempt.is_right = true;
    return attempt;
}

}

std::optional<Topic> next_topic(const Practice& practice, std::span<const Topic> topics, Day today)
{
    const std::vector<Turn> turns = turns_of(practice, topics, today);
    std::optional<Topic> just_asked;
    if (!practice.attempts.empty() && practice.attempts.back().day == today) just_asked = practice.attempts.back().topic;
    const auto is_open = [&](const Turn& turn) { return turn.is_open(practice, today); };
    if (std::none_of(turns.begin(), turns.end(), is_open)) return std::nullopt;
    if (const Turn* open = best(turns, just_asked, [&](const Turn& turn) { return is_open(turn) && !turn.is_waiting(); })) return open->box.topic;
    // Only topics that were just missed are left: others come between.
    if (const Turn* filler = best(turns, just_asked, [](const Turn& turn) { return !turn.is_waiting(); })) return filler->box.topic;
    return best(turns, just_asked, is_open)->box.topic;
}

std::size_t questions_left(Practice practice, std::span<const Topic> topics, Day today)
{
    std::size_t questions = 0;
    while (const auto topic = next_topic(practice, topics, today)) {
        practice.attempts.push_back(right_answer(practice, *topic, today));
        questions += 1;
    }
    return questions;
}

std::vector<SessionDay> sessions_ahead(Practice practice, std::span<const Topic> topics, Day today)
{
    constexpr int without_field_day = 14;
    const Day end = practice.field_day ? *practice.field_day : today + without_field_day;
    std::vector<SessionDay> days;
    for (Day day = today; day < end; day = day + 1) {
        SessionDay session{day, {}, 0};
        while (const auto topic = next_topic(practice, topics, day)) {
            practice.attempts.push_back(right_answer(practice, *topic, day));
            session.questions += 1;
            if (std::find(session.topics.begin(), session.topics.end(), *topic) == session.topics.end()) session.topics.push_back(*topic);
        }
        if (session.questions > 0) days.push_back(std::move(session));
    }
    return days;
}

}
