#pragma once

#include "debrief/band.hpp"
#include "debrief/main_job.hpp"
#include "debrief/repair/plan_edit.hpp"
#include "drill/trunk.hpp"

#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace flapdoor::debrief {

/// What of a run is compared with another.
struct Figures {
    Amount outside;             ///< of what the job made, out of the work area
    Loading floor{}, sill{}, hall_floor{};  ///< lead, the worst one of each
    dust::Concentration breathed{};         ///< inhalable lead, eight hours, the one of the crew who breathed most
    Time took{};

    friend bool operator==(const Figures&, const Figures&) = default;
};

Figures figures_of(const Outcome& outcome);

/// One way in which a plan might have been another, and what would have come of it with the same luck.
struct WhatIf {
    enum class Kind {
        repaired,       ///< the faults of one group repaired, all else as it was
        all_repaired,   ///< all that can be repaired
        put_in          ///< the same mistake in the reference plan
    };

    Kind kind = Kind::repaired;
    std::vector<std::string> rules;         ///< ids of the rules that its edits are for
    std::vector<PlanEdit> edits;            ///< of the trainee's plan, or of the reference plan
    std::vector<std::string> told;          ///< the edits in words, in the language spoken
    std::vector<std::string> cards;         ///< titles of the cards that they are about, what is only brought along left out
    bool is_mended = true;                  ///< these rules hold now; when put in: they are broken now
    std::vector<std::string> still_broken;  ///< the rules that do not hold
    std::vector<std::string> refused;       ///< cards that could not be carried out and could before, with the reason
    bool is_done = true;                    ///< no card that the edits set, move or put in is among them
    Time cleaned_again{};                   ///< spent on cleaning again what failed a check, more with the mistake than without; not below zero
    bool cleans_itself = false;             ///< the mistake is a card of cleaning too many
    std::optional<dust::Pathway> other_way; ///< by which most more got out without the mistake
    Figures before, after;                  ///< without and with the edits, in the order's detail
    std::uint64_t end_hash = 0;             ///< of the run with the edits
    std::uint64_t parcel_steps = 0;         ///< really made for it
    std::vector<Figures> paired_before, paired_after;   ///< [seed] light runs
};

/// A fault for which no mechanical repair is known, or which no edit puts into the reference plan.
struct NoRepair {
    std::string rule;           ///< of several that go together the first
    std::string why;            ///< a sentence without its full stop, in the language spoken
};

/// How much is asked.
struct WhatIfOrder {
    unsigned threads = 1;                   ///< changes no result
    std::vector<std::uint64_t> seeds;       ///< of the light paired runs behind the bands; none: no bands
    double detail = 1.0;                    ///< of the run itself and of what is compared with it, as a share of the usual number of parcels
    double light_detail = 0.125;            ///< of the pairs
    std::size_t most = 1000;                ///< of the list, the first so many
    bool tries_reverse = true;              ///< each mistake put into the reference plan, when there is one
    std::function<void(std::size_t done, std::size_t of)> progress = {};    ///< one call at a time, from any thread
    std::function<bool()> should_stop = {};                                 ///< asked before each run; true leaves the rest out
};

/// The share of one card and way out in what got out, over light runs of the plan.
struct SourceBand {
    int source = 0;             ///< entry of the log: the same card in every run
    dust::Pathway pathway = dust::Pathway::none;
    Band share;
};

/// Everything about what a plan's faults did.
struct WhatIfs {
    Figures base;                           ///< the plan as it was
    std::optional<Figures> reference;       ///< the reference plan with the same luck
    std::vector<std::uint64_t> seeds;
    std::vector<SourceBand> source_shares;  ///< over the light runs, largest median first; empty without them
    std::vector<WhatIf> list;               ///< in the order of the sheet: repaired ones, all together, then those put in
    std::vector<NoRepair> none;             ///< that could not be repaired
    std::vector<NoRepair> not_put_in;       ///< repaired, but not to be put into the reference plan
    std::uint64_t parcel_steps = 0;         ///< really made for the what-ifs at full detail, the first run left out
    std::uint64_t base_parcel_steps = 0;

    const WhatIf* find(WhatIf::Kind kind, const std::string& rule) const;   ///< null when there is none
};

/// Works out what every fault did: each group of faults repaired alone, all together, and each put into the reference plan. All
/// with the luck of `seed`; the same bits as carrying the changed plans out from the start.
/// @param reference  a plan of the same scenario that keeps the rules; without one nothing can be taken from it
WhatIfs what_ifs(const Inputs& inputs, const job::WorkPlan* reference, std::uint64_t seed, const WhatIfOrder& order);

}
