#include "debrief/plan_bands.hpp"

#include "core/insist.hpp"
#include "debrief/influence.hpp"
#include "debrief/uncertainty.hpp"
#include "debrief/wording.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace flapdoor::debrief {

namespace {

/// The runs of one plan, as columns.
class PlanRuns {
public:
    PlanRuns(const Study& study, std::size_t plan) : columns_(study.basis.columns)
    {
        for (const StudyRow& row : study.rows)
            if (row.plan == plan) rows_.push_back(&row);
    }

    std::size_t size() const { return rows_.size(); }
    const StudyRow& row(std::size_t run) const { return *rows_[run]; }

    /// The values of a column in the runs that have one.
    std::vector<double> values(std::size_t column) const
    {
        std::vector<double> out;
        for (const StudyRow* row : rows_)
            if (row->values[column]) out.push_back(*row->values[column]);
        return out;
    }

    /// The largest of all columns of a kind, run by run; empty when a run has none.
    std::vector<double> largest(Measured what) const
    {
        std::vector<double> out;
        for (const StudyRow* row : rows_) {
            std::optional<double> most;
            for (std::size_t c = 0; c < columns_.size(); ++c)
                if (columns_[c].what == what && row->values[c]) most = std::max(most.value_or(*row->values[c]), *row->values[c]);
            if (!most) return {};
            out.push_back(*most);
        }
        return out;
    }

    std::size_t count(Measured what) const
    {
        std::size_t held = 0;
        for (std::size_t c = 0; c < columns_.size(); ++c)
            if (columns_[c].what == what)
                for (const double value : values(c)) held += value > 0.0 ? 1 : 0;
        return held;
    }

private:
    const std::vector<StudyColumn>& columns_;
    std::vector<const StudyRow*> rows_;
};

using Pathways = std::array<std::vector<double>, dust::pathway_count>;

/// Lead by pathway, run by run, as the ledger has it; what was taken back is no way out.
Pathways lead_by_pathway(const std::vector<StudyColumn>& columns, const PlanRuns& runs)
{
    Pathways lead;
    for (std::size_t c = 0; c < columns.size(); ++c)
        if (columns[c].what == Measured::way_out && columns[c].which != static_cast<std::size_t>(dust::Pathway::recovered)) lead[columns[c].which] = runs.values(c);
    return lead;
}

std::vector<PathwayBand> pathway_bands(const std::vector<StudyColumn>& columns, const PlanRuns& runs)
{
    const Pathways lead = lead_by_pathway(columns, runs);
    std::vector<double> all(runs.size(), 0.0);
    for (const std::vector<double>& pathway : lead)
        for (std::size_t run = 0; run < pathway.size(); ++run) all[run] += std::max(0.0, pathway[run]);
    std::vector<PathwayBand> bands;
    for (std::size_t p = 1; p < lead.size(); ++p) {
        if (lead[p].empty()) continue;
        std::vector<double> shares;
        for (std::size_t run = 0; run < lead[p].size(); ++run) shares.push_back(all[run] > 0.0 ? std::max(0.0, lead[p][run]) / all[run] : 0.0);
        bands.push_back({static_cast<dust::Pathway>(p), band_of(shares), band_of(lead[p]), 0});
    }
    const auto group = [](const PathwayBand& band) { return !(band.share.high > 0.0) ? 2 : is_barely_known(band.pathway) ? 1 : 0; };
    std::stable_sort(bands.begin(), bands.end(), [&](const PathwayBand& a, const PathwayBand& b) {
        return group(a) != group(b) ? group(a) < group(b) : a.share.median > b.share.median;
    });
    int rank = 0;
    for (PathwayBand& band : bands)
        if (group(band) == 0) band.rank = ++rank;
    return bands;
}

std::vector<Influence> influences(const std::vector<StudyColumn>& columns, const PlanRuns& runs, const std::vector<double>& result)
{
    std::vector<Influence> all;
    if (result.size() != runs.size()) return all;
    for (std::size_t c = 0; c < columns.size(); ++c) {
        if (columns[c].what != Measured::parameter) continue;
        const std::vector<double> drawn = runs.values(c);
        if (drawn.size() != result.size()) continue;
        if (const auto correlation = rank_correlation(drawn, result)) all.push_back({columns[c].which, *correlation});
    }
    std::stable_sort(all.begin(), all.end(), [](const Influence& a, const Influence& b) { return std::abs(a.correlation) > std::abs(b.correlation); });
    return all;
}

}

const Band* PlanBands::find(Measured what, std::size_t which) const
{
    for (const auto& [column, band] : columns)
        if (column.what == what && column.which == which) return &band;
    return nullptr;
}

const Band* PlanBands::of_surface(std::size_t surface) const
{
    for (const auto& [column, band] : columns)
        if (column.what < Measured::left_sheeting && column.which == surface) return &band;
    return nullptr;
}

PlanBands bands_of(const Study& study, std::size_t plan)
{
    insist(plan < study.basis.plans.size(), "a study has the plan that is asked for");
    const std::vector<StudyColumn>& columns = study.basis.columns;
    const PlanRuns runs(study, plan);
    PlanBands bands;
    bands.name = study.basis.plans[plan].name;
    bands.title = study.basis.plans[plan].title;
    bands.runs = runs.size();
    bands.detail = study.basis.detail;
    for (std::size_t c = 0; c < columns.size(); ++c) {
        const std::vector<double> values = runs.values(c);
        if (!values.empty()) bands.columns.emplace_back(columns[c], band_of(values));
    }
    bands.pathways = pathway_bands(columns, runs);
    if (const std::vector<double> sills = runs.largest(Measured::sill); !sills.empty()) bands.worst_sill = band_of(sills);
    bands.passed = runs.count(Measured::is_passed);
    bands.verified = runs.count(Measured::is_verified);
    bands.on_floor = influences(columns, runs, runs.largest(Measured::work_floor));
    bands.on_outside = influences(columns, runs, runs.largest(Measured::outside));
    return bands;
}

std::vector<Influence> beyond_chance(const std::vector<Influence>& all, std::size_t runs, std::size_t most)
{
    std::vector<Influence> strong;
    for (const Influence& influence : all)
        if (strong.size() < most && std::abs(influence.correlation) > beyond_chance(runs)) strong.push_back(influence);
    return strong;
}

}
