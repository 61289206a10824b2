#pragma once

#include "quiz/practice/attempt.hpp"
#include "quiz/question.hpp"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace flapdoor::quiz {

/// A question that practice may ask.
struct PoolItem {
    std::string item;               ///< "bank/question"
    const Question* question = nullptr;
};

/// Topics of a pool, each once, in their own order.
std::vector<Topic> topics_of(std::span<const PoolItem> pool);

/// Questions of a topic, the best to ask first: asked least, then asked longest ago, then as they stand.
std::vector<PoolItem> by_turn(const Practice& practice, std::span<const PoolItem> pool, Topic topic);

/// How likely somebody who knows nothing answers it right: by the number of answers; 0.05 where they are not offered.
double guess_of(const Question& question);

/// Whether an order breaks a rule that leaves no points.
bool breaks_critical(const Question& question, const Response& response);

/// An answer as practice keeps it. @param question  as it was asked
Attempt attempt_of(const PoolItem& asked, const Question& question, std::uint64_t seed, const Response& response, Day today);

}
