#include "drill/run.hpp"

#include "job/card_key.hpp"
#include "site/effects.hpp"
#include "site/hands.hpp"
#include "text/writing.hpp"

#include <utility>

namespace flapdoor::drill {

namespace {

std::vector<job::Parameter> parameters(const job::Step& step)
{
    std::vector<job::Parameter> with;
    std::visit([&](const auto& s) {
        for (text::ShownField& field : text::describe_fields(s)) with.push_back({std::move(field.key), std::move(field.value)});
    }, step);
    return with;
}

}

std::optional<text::Sentence> why_not(const site::Site& site, const job::Card& card)
{
    if (card.by.empty()) return text::to_say("nobody is named to do it");
    if (!std::holds_alternative<job::ReturnToSite>(card.step))
        if (site::Refusal absent = site::must_be_on_site(site, card.by)) return absent;
    return std::visit([&](const auto& step) { return site::why_not(site, step, card.by); }, card.step);
}

site::Site begin(const job::Scenario& scenario, const RunOptions& options)
{
    site::Site site = site::build(scenario, options.seed, options.uncertain.value_or(dust::draw_parameters(options.seed)));
    site.detail = options.detail;
    site.flaps = options.flaps;
    site.threads = options.threads;
    site.watcher = options.watcher;
    if (options.traces_sources) site.ledger.trace();
    return site;
}

namespace {

/// Carries one card out, or logs why it cannot be, and audits the books.
void do_card(site::Site& site, const job::Card& card, int index)
{
    job::LogEntry entry;
    entry.card = index;
    entry.step = std::visit([](const auto& step) { return std::string(step.name); }, card.step);
    entry.label = card.label;
    entry.by = card.by;
    entry.with = parameters(card.step);
    entry.start = site.now;
    site.measured.clear();
    site.ledger.begin_step(static_cast<int>(site.log.entries.size()));
    site.luck.begin_card(job::card_key(card));
    if (auto refusal = why_not(site, card)) {
        entry.outcome = job::Outcome::refused;
        entry.reason = std::move(*refusal);
    }
    else {
        const site::Done done = std::visit([&](const auto& step) { return site::carry_out(site, step, card.by); }, card.step);
        entry.outcome = done.was_needed ? job::Outcome::done : job::Outcome::not_needed;
        entry.reason = done.why;
    }
    entry.end = site.now;
    entry.measured = site.measured;
    site.log.entries.push_back(std::move(entry));
    site::audit(site);
}

}

StepHash carry_out_card(site::Site& site, const job::Card& card, int index)
{
    do_card(site, card, index);
    return {index, site::fingerprint(site)};
}

void carry_on(Run& run, std::size_t first, const RunOptions& options)
{
    const std::vector<job::Card>& cards = run.plan.cards;
    for (std::size_t i = first; i < cards.size(); ++i) {
        const auto index = static_cast<int>(i);
        do_card(run.site, cards[i], index);
        if (options.hashes_every_card || i + 1 == cards.size()) run.hashes.push_back({index, site::fingerprint(run.site)});
        if (options.after_card) options.after_card(run.site);
    }
}

Run carry_out(const job::Scenario& scenario, const job::WorkPlan& plan, const RunOptions& options)
{
    Run run{plan, begin(scenario, options), {}};
    carry_on(run, 0, options);
    return run;
}

}
