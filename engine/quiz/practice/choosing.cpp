#include "quiz/practice/choosing.hpp"

#include <algorithm>
#include <tuple>

namespace flapdoor::quiz {

std::vector<Topic> topics_of(std::span<const PoolItem> pool)
{
    std::vector<Topic> topics;
    for (const PoolItem& one : pool) topics.push_back(one.question->topic);
    std::sort(topics.begin(), topics.end());
    topics.erase(std::unique(topics.begin(), topics.end()), topics.end());
    return topics;
}

std::vector<PoolItem> by_turn(const Practice& practice, std::span<const PoolItem> pool, Topic topic)
{
    struct Ranked {
        std::size_t asked = 0, last = 0;
        PoolItem item;
    };
    std::vector<Ranked> ranked;
    for (const PoolItem& one : pool) {
        if (one.question->topic != topic) continue;
        Ranked rank;
        rank.item = one;
        for (std::size_t i = 0; i < practice.attempts.size(); ++i) {
            if (practice.attempts[i].item != one.item) continue;
            rank.asked += 1;
            rank.last = i + 1;
        }
        ranked.push_back(std::move(rank));
    }
    std::stable_sort(ranked.begin(), ranked.end(), [](const Ranked& a, const Ranked& b) { return std::tie(a.asked, a.last) < std::tie(b.asked, b.last); });
    std::vector<PoolItem> items;
    for (Ranked& rank : ranked) items.push_back(std::move(rank.item));
    return items;
}

double guess_of(const Question& question)
{
    constexpr double hardly = 0.05, most = 0.5;
    const auto one_of = [&](std::size_t answers) { return answers < 2 ? most : 1.0 / static_cast<double>(answers); };
    if (const auto* one = std::get_if<ChooseOne>(&question.kind)) return one_of(one->options.size());
    if (const auto* spot = std::get_if<SpotFault>(&question.kind)) return one_of(spot->moments.size());
    if (const auto* predict = std::get_if<Predict>(&question.kind)) return one_of(predict->options.size());
    if (const auto* point = std::get_if<PointAtPlan>(&question.kind)) return one_of(point->regions.size());
    return hardly;
}

bool breaks_critical(const Question& question, const Response& response)
{
    const auto* asked = std::get_if<PutInOrder>(&question.kind);
    const auto* laid = std::get_if<Laid>(&response);
    if (asked == nullptr || laid == nullptr) return false;
    const auto place = [&](const rules::Marked& card) { return std::find(laid->cards.begin(), laid->cards.end(), card.text); };
    return std::any_of(asked->rules.begin(), asked->rules.end(), [&](const LayRule& rule) {
        return rule.is_critical && !std::is_sorted(rule.order.begin(), rule.order.end(), [&](const auto& a, const auto& b) { return place(a) < place(b); });
    });
}

Attempt attempt_of(const PoolItem& asked, const Question& question, std::uint64_t seed, const Response& response, Day today)
{
    Attempt attempt;
    attempt.day = today;
    attempt.topic = asked.question->topic;
    attempt.item = asked.item;
    attempt.seed = seed;
    attempt.is_right = mark(question, response).is_right;
    attempt.is_critical = breaks_critical(question, response);
    attempt.guess = guess_of(question);
    return attempt;
}

}
