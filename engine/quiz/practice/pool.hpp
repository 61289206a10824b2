#pragma once

#include "core/result.hpp"
#include "quiz/bank.hpp"
#include "quiz/making/workshop.hpp"
#include "quiz/paper.hpp"
#include "quiz/practice/choosing.hpp"

#include <optional>
#include <vector>

namespace flapdoor::quiz {

/// All questions that practice may ask, with the banks that they stand in. Moved, never copied: the items point into the banks.
struct PracticePool {
    std::vector<Bank> banks;
    std::vector<PoolItem> items;
    std::vector<Topic> topics;      ///< of the items, each once, in their own order

    explicit PracticePool(std::vector<Bank> from);
    PracticePool(PracticePool&&) = default;
    PracticePool& operator=(PracticePool&&) = default;
};

/// The banks in the folder `banks` of the drills, in the order of their names; every problem of all of them.
Result<PracticePool> load_pool(const FindScenario& find);

/// A question as practice asks it.
struct PracticeQuestion {
    PoolItem from;
    PaperItem item;
};

/// The best question of a topic to ask next that can be posed, with a seed of its own: fresh figures and a fresh order. Nothing when
/// none can. Questions about runs carry them out, which takes seconds.
std::optional<PracticeQuestion> question_of(const Practice& practice, std::span<const PoolItem> pool, Topic topic, Workshop& workshop);

}
