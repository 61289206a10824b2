#include "debrief/fault_harm.hpp"

#include "core/insist.hpp"
#include "debrief/harm.hpp"

#include <algorithm>
#include <cmath>
#include <optional>

namespace flapdoor::debrief {

namespace {

/// The largest value in the columns of a kind; zero where the run has none.
double largest(const Study& study, const StudyRow& row, Measured what)
{
    double most = 0.0;
    for (std::size_t c = 0; c < study.basis.columns.size(); ++c)
        if (study.basis.columns[c].what == what) most = std::max(most, row.values[c].value_or(0.0));
    return most;
}

Figures figures_of(const Study& study, const StudyRow& row)
{
    Figures figures;
    figures.outside.lead = {std::llround(largest(study, row, Measured::outside) * 1e6)};
    figures.floor = micrograms_per_square_foot(largest(study, row, Measured::work_floor));
    figures.sill = micrograms_per_square_foot(largest(study, row, Measured::sill));
    return figures;
}

const StudyRow* find_row(const Study& study, std::uint64_t seed, std::size_t plan)
{
    const auto found = std::lower_bound(study.rows.begin(), study.rows.end(), std::pair(seed, plan), [](const StudyRow& row, const auto& key) { return std::pair(row.seed, row.plan) < key; });
    return found != study.rows.end() && found->seed == seed && found->plan == plan ? &*found : nullptr;
}

std::optional<FaultHarm> harm_between(const Study& study, std::size_t plan, std::size_t repaired)
{
    WhatIf pairs;
    FaultHarm harm;
    harm.faults = study.basis.plans[repaired].faults;
    harm.rule = study.basis.plans[repaired].title;
    const auto passed = [&](const StudyRow& row) { return largest(study, row, Measured::is_verified) > 0.0 ? 1U : 0U; };
    for (const StudyRow& without : study.rows) {
        if (without.plan != repaired) continue;
        const StudyRow* with = find_row(study, without.seed, plan);
        if (with == nullptr) continue;
        pairs.paired_before.push_back(figures_of(study, *with));
        pairs.paired_after.push_back(figures_of(study, without));
        harm.passed_with += passed(*with);
        harm.passed_without += passed(without);
    }
    harm.pairs = pairs.paired_before.size();
    if (harm.pairs == 0) return std::nullopt;
    harm.harmful = harmful_runs(pairs);
    harm.outside = harm_band(pairs, Compared::outside).value();
    harm.floor = harm_band(pairs, Compared::floor).value();
    harm.sill = harm_band(pairs, Compared::sill).value();
    return harm;
}

}

std::vector<FaultHarm> fault_harms(const Study& study, std::size_t plan)
{
    insist(plan < study.basis.plans.size() && !study.basis.plans[plan].is_repaired(), "a study was asked about the plan whose faults are told");
    std::vector<FaultHarm> harms;
    for (std::size_t repaired = 0; repaired < study.basis.plans.size(); ++repaired)
        if (study.basis.plans[repaired].repaired_from == study.basis.plans[plan].name)
            if (auto harm = harm_between(study, plan, repaired)) harms.push_back(std::move(*harm));
    std::stable_sort(harms.begin(), harms.end(), [](const FaultHarm& a, const FaultHarm& b) {
        return a.harmful * b.pairs != b.harmful * a.pairs ? a.harmful * b.pairs > b.harmful * a.pairs : a.outside.median > b.outside.median;
    });
    return harms;
}

}
