#include "drill/trunk.hpp"

#include "core/insist.hpp"
#include "text/fingerprint_fields.hpp"

#include <algorithm>

namespace flapdoor::drill {

namespace {

std::uint64_t hash_of(const job::Card& card)
{
    Fingerprint print;
    text::fingerprint_fields(print, card);
    return print.value();
}

}

Trunk grow(const job::Scenario& scenario, const job::WorkPlan& plan, const RunOptions& options)
{
    Trunk trunk{{plan, begin(scenario, options), {}}, {}, {}};
    trunk.before.reserve(plan.cards.size() + 1);
    const auto keep = [&](const site::Site& site) {
        trunk.before.push_back(site);
        trunk.before.back().watcher = {};   // it is the caller's, who may be gone
        trunk.before.back().notes = nullptr;
    };
    trunk.run.site.notes = &trunk.flights;
    keep(trunk.run.site);
    RunOptions keeping = options;
    keeping.after_card = [&](const site::Site& site) {
        keep(site);
        if (options.after_card) options.after_card(site);
    };
    carry_on(trunk.run, 0, keeping);
    trunk.run.site.notes = nullptr;
    return trunk;
}

std::size_t shared_cards(const job::WorkPlan& a, const job::WorkPlan& b)
{
    const std::size_t most = std::min(a.cards.size(), b.cards.size());
    std::size_t shared = 0;
    while (shared < most && hash_of(a.cards[shared]) == hash_of(b.cards[shared])) ++shared;
    return shared;
}

Run branch(const Trunk& trunk, const job::WorkPlan& changed, const RunOptions& options)
{
    insist(changed.scenario == trunk.run.plan.scenario, "a branch is a plan for the trunk's scenario");
    const std::size_t shared = shared_cards(trunk.run.plan, changed);
    Run run{changed, trunk.before.at(shared), {}};
    run.site.threads = options.threads;
    run.site.watcher = options.watcher;
    run.site.known = &trunk.flights;
    run.site.flaps = trunk.run.site.flaps;      // what is known of flap doors changes no result
    if (!options.traces_sources) run.site.ledger.stop_tracing();
    for (const StepHash& hash : trunk.run.hashes)
        if (options.hashes_every_card ? hash.card < static_cast<int>(shared) : hash.card + 1 == static_cast<int>(changed.cards.size()) && shared == changed.cards.size())
            run.hashes.push_back(hash);
    carry_on(run, shared, options);
    run.site.known = nullptr;   // it may outlive the trunk
    return run;
}

}
