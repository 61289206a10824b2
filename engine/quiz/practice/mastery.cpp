#include "quiz/practice/mastery.hpp"

#include "core/insist.hpp"
#include "quiz/statistics/beta.hpp"
#include "text/language.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <iterator>

namespace flapdoor::quiz {

namespace {

struct Look {
    int answers, misses;    ///< so many answers, at most so many of them wrong
};
constexpr std::array looks{Look{19, 0}, Look{28, 1}, Look{36, 2}};

/// Whether the last series that came to an end was passed.
bool is_passed(const std::vector<Attempt>& answers)
{
    bool passed = false;
    int of = 0, misses = 0;
    const auto end_series = [&](bool as) {
        passed = as;
        of = misses = 0;
    };
    for (const Attempt& answer : answers) {
        of += 1;
        misses += answer.is_right ? 0 : 1;
        const bool is_enough = std::any_of(looks.begin(), looks.end(), [&](const Look& look) { return of == look.answers && misses <= look.misses; });
        if (is_enough) end_series(true);
        else if (misses > looks.back().misses) end_series(false);
    }
    return passed;
}

bool is_free_of_critical(const std::vector<Attempt>& attempts, Topic topic)
{
    int looked_at = 0;
    for (auto it = attempts.rbegin(); it != attempts.rend() && looked_at < 10; ++it) {
        if (it->topic != topic) continue;
        if (it->is_critical) return false;
        looked_at += 1;
    }
    return true;
}

}

std::string_view word_of_standing(Standing standing)
{
    constexpr std::array words{text::to_say("not yet practised"), text::to_say("practised"), text::to_say("on track"), text::to_say("mastered")};
    return words[static_cast<std::size_t>(standing)];
}

Interval wilson(int k, int n, double z)
{
    insist(n > 0 && k >= 0 && k <= n, "k of n");
    const double share = static_cast<double>(k) / n, square = z * z;
    const double middle = share + square / (2.0 * n), half = z * std::sqrt(share * (1.0 - share) / n + square / (4.0 * n * n)), whole = 1.0 + square / n;
    return {std::max(0.0, (middle - half) / whole), std::min(1.0, (middle + half) / whole)};
}

std::vector<Attempt> counted(const std::vector<Attempt>& attempts, Topic topic)
{
    std::vector<Attempt> kept;
    const Attempt* before = nullptr;
    for (auto it = attempts.begin(); it != attempts.end(); ++it) {
        if (it->topic != topic) continue;
        const bool is_repeat = std::any_of(attempts.begin(), it, [&](const Attempt& other) { return other.day == it->day && other.item == it->item && other.seed == it->seed; });
        const bool follows_miss = before != nullptr && before->day == it->day && !before->is_right;
        if (!is_repeat && !follows_miss) kept.push_back(*it);
        before = &*it;
    }
    return kept;
}

Mastery mastery_of(const std::vector<Attempt>& attempts, Topic topic)
{
    const std::vector<Attempt> answers = counted(attempts, topic);
    Mastery it;
    if (answers.empty()) return it;
    it.of = std::min(static_cast<int>(answers.size()), latest);
    it.right = static_cast<int>(std::count_if(std::prev(answers.end(), it.of), answers.end(), [](const Attempt& answer) { return answer.is_right; }));
    it.interval = wilson(it.right, it.of);
    it.above_goal = 1.0 - beta_cdf(it.right + 1.0, it.of - it.right + 1.0, goal);
    if (is_passed(answers) && is_free_of_critical(attempts, topic)) it.standing = Standing::mastered;
    else it.standing = it.above_goal >= 0.80 ? Standing::on_track : Standing::practised;
    return it;
}

}
