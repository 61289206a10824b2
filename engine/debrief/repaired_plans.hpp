#pragma once

#include "debrief/study.hpp"

#include <cstdint>
#include <string>
#include <vector>

namespace flapdoor::debrief {

/// Plans of which a study tells which fault does harm.
struct RepairedPlans {
    struct LeftOut {
        std::size_t from = 0;       ///< the plan
        int fault = 0;              ///< on its marking sheet
        std::string why;            ///< without its full stop, in the language spoken
    };

    std::vector<RepairedPlan> plans;
    std::vector<LeftOut> left_out;  ///< that no known change of the plan mends
};

/// Each plan with each group of its faults repaired alone, as `what_ifs` repairs them. What is a fault and what repairs it is taken from
/// one light run of the plan with `seed`.
/// @param reference  a plan of the same scenario that keeps the rules; null: nothing can be taken from it
RepairedPlans repaired_plans(const std::vector<Inputs>& plans, const Inputs* reference, std::uint64_t seed, unsigned threads);

}
