#pragma once

#include "job/work_plan.hpp"
#include "site/site.hpp"

#include <cstdint>
#include <functional>
#include <optional>
#include <vector>

namespace flapdoor::drill {

struct RunOptions {
    std::uint64_t seed = 1;
    std::optional<dust::RunParameters> uncertain = {};      ///< instead of the draw that belongs to the seed
    double detail = 1.0;                                    ///< share of the usual number of parcels, above 0 to 1
    unsigned threads = 1;
    bool traces_sources = false;                            ///< keeps track of which card let loose what; costs time, changes no result
    bool hashes_every_card = true;                          ///< otherwise only after the last: a study needs no more
    mechanics::FlapBook flaps = {};                         ///< what other runs have worked out of flap doors; changes no result
    std::function<void(const site::Site&)> watcher = {};    ///< after every tick
    std::function<void(const site::Site&)> after_card = {}; ///< after every card, with its log entry written
};

/// State of the site after one card, as a fingerprint: where two runs part, these differ first.
struct StepHash {
    int card = 0;
    std::uint64_t hash = 0;
    friend bool operator==(const StepHash&, const StepHash&) = default;
};

/// A plan carried out: the site as it was left, with its log, and a hash after every card.
struct Run {
    job::WorkPlan plan;
    site::Site site;
    std::vector<StepHash> hashes;   ///< after every card, or after the last one
};

/// Carries a plan out on its scenario, card by card. A card that cannot be carried out is logged with the reason and
/// left out. After each card the ledger is audited; a run that does not close stops here by `insist`.
Run carry_out(const job::Scenario& scenario, const job::WorkPlan& plan, const RunOptions& options = {});

/// Carries out the cards of a run's plan from number `first` on, on a site that has the earlier ones behind it.
void carry_on(Run& run, std::size_t first, const RunOptions& options);

/// The same card by card, for whoever decides while it runs.
site::Site begin(const job::Scenario& scenario, const RunOptions& options);
StepHash carry_out_card(site::Site& site, const job::Card& card, int index);

/// Why the card cannot be carried out on the site as it is; nothing when it can.
std::optional<text::Sentence> why_not(const site::Site& site, const job::Card& card);

}
