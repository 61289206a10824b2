#pragma once

#include "debrief/band.hpp"
#include "debrief/study.hpp"

#include <string>
#include <vector>

namespace flapdoor::debrief {

/// What a fault of a plan did, over the runs of a study that were made both with it and, with the same luck, with it repaired.
struct FaultHarm {
    std::vector<int> faults;            ///< as numbered on the plan's marking sheet: those that one repair mends
    std::string rule;                   ///< that the first of them broke, in English
    std::size_t pairs = 0;
    std::size_t harmful = 0;            ///< pairs in which it did harm, as `harmful_runs` counts it
    Band outside, floor, sill;          ///< what it added, SI; lead out in pg, loadings of the worst floor and sill
    std::size_t passed_with = 0;        ///< runs with the fault whose cloth check passed
    std::size_t passed_without = 0;     ///< of those with it repaired

    /// Pairs in which it happened to do none, of a fault that does harm at times.
    std::size_t harmless_by_luck() const { return harmful > 0 ? pairs - harmful : 0; }
};

/// What the faults of a plan did, the most often harmful first; without those of which there is no pair of runs yet.
/// @param plan  in the study's basis, one that was asked about; insists
std::vector<FaultHarm> fault_harms(const Study& study, std::size_t plan);

}
