#pragma once

#include "quiz/practice/attempt.hpp"

#include <optional>
#include <span>
#include <vector>

namespace flapdoor::quiz {

/// Days until a topic is due again, by the box it is in: a right answer when due moves it one box on, a wrong one back to the
/// first, where it comes again in the same session. Spaced as single gaps of 20 to 40 % of a week's delay serve best (Cepeda et
/// al. 2008, Psychological Science 19, 1095-1102).
inline constexpr int gaps[] = {0, 1, 2, 4};
inline constexpr int last_box = 3;

/// Other questions between a wrong answer and the next of its topic.
inline constexpr int others_between = 3;

/// Where a topic stands.
struct Box {
    Topic topic = Topic::other;
    int box = 0;
    Day due;                        ///< never after the day before the field day, while that lies ahead
    int asked = 0;                  ///< questions of it, ever
    std::optional<Day> last;        ///< when it was asked last
};

/// Whether what can go wrong here fails a run (critical rules of the shipped book): such topics come first.
bool is_behind_critical_rule(Topic topic);

/// When a topic that is in that box on that day is due, the field day in view.
Day due_after(const Practice& practice, Day day, int box);

/// The boxes of these topics after all attempts. After the field day nothing is due, but for refreshers where they are wanted.
/// @param today  decides only whether the field day is over
std::vector<Box> boxes_of(const Practice& practice, std::span<const Topic> topics, Day today);

}
