#pragma once

#include "quiz/practice/attempt.hpp"
#include "quiz/statistics/paper_statistics.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace flapdoor::quiz {

/// How far somebody is in a topic. Practice with a program certifies nobody, whatever it says here.
enum class Standing { not_yet, practised, on_track, mastered };

/// In English; a catalog holds it.
std::string_view word_of_standing(Standing standing);

struct Mastery {
    Standing standing = Standing::not_yet;
    int right = 0, of = 0;          ///< of the latest answers that count, at most `latest`
    Interval interval;              ///< 95 % (Wilson) of the share right
    double above_goal = 0.0;        ///< how likely the true share lies above `goal`, before the answers all shares alike
};

inline constexpr double goal = 0.80;
inline constexpr int latest = 20;

/// Answers that tell what somebody knows by themselves: not the same question again on that day, and not the one that comes
/// again because its topic was missed just before on that day.
std::vector<Attempt> counted(const std::vector<Attempt>& attempts, Topic topic);

/// Mastered: 19 of 19 counted answers right, or 27 of 28, or 34 of 36, looked at only there, so that who is right four times
/// in five passes 3 times in 100; a third miss begins a new series, and a later series that fails takes it back; and none of
/// the last ten answers broke a critical rule. On track: the true share lies above 80 % with 80 % certainty.
Mastery mastery_of(const std::vector<Attempt>& attempts, Topic topic);

/// Wilson's interval for k of n. @param z  1.96 for 95 %. Insists on 0 <= k <= n, n > 0
Interval wilson(int k, int n, double z = 1.959963984540054);

}
