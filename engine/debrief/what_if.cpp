#include "debrief/what_if.hpp"

#include "core/insist.hpp"
#include "debrief/fault_line.hpp"
#include "debrief/repair/mistake.hpp"
#include "debrief/repair/repair.hpp"
#include "debrief/worklist.hpp"
#include "rules/marking_sheet.hpp"

#include <algorithm>
#include <map>
#include <set>
#include <utility>

namespace flapdoor::debrief {

namespace {

using Kind = WhatIf::Kind;

/// The runs that all what-ifs of one seed grow from.
struct Ground {
    drill::Trunk plan;
    std::optional<drill::Trunk> reference;

    const drill::Trunk& of(Kind kind) const { return kind == Kind::put_in ? *reference : plan; }
};

drill::RunOptions options_for(std::uint64_t seed, double detail)
{
    drill::RunOptions options;
    options.seed = seed;
    options.detail = detail;
    options.hashes_every_card = false;
    return options;
}

bool includes(const std::vector<PlanEdit>& all, const std::vector<PlanEdit>& some)
{
    return std::all_of(some.begin(), some.end(), [&](const PlanEdit& edit) { return std::find(all.begin(), all.end(), edit) != all.end(); });
}

/// Faults with one repair are one group; one whose repair is part of another's belongs to that.
void add_group(std::vector<WhatIf>& groups, const std::string& rule, std::vector<PlanEdit> edits)
{
    for (WhatIf& group : groups) {
        if (!includes(group.edits, edits) && !includes(edits, group.edits)) continue;
        group.rules.push_back(rule);
        if (edits.size() > group.edits.size()) group.edits = std::move(edits);
        return;
    }
    WhatIf group;
    group.rules = {rule};
    group.edits = std::move(edits);
    groups.push_back(std::move(group));
}

/// Why a card cannot be carried out before another one of the trunk. Things that could be brought along are taken as brought.
std::optional<text::Sentence> why_not(const drill::Trunk& trunk, int at, const job::Card& card)
{
    const site::Site& site = trunk.before.at(static_cast<std::size_t>(at));
    if (!drill::why_not(site, card)) return std::nullopt;
    site::Site stocked = site;
    for (const job::Supply& supply : site.scenario.supplies) stocked.staged.push_back(supply.id);
    return drill::why_not(stocked, card);
}

/// What can be done about each broken rule, in the order of the sheet.
void find_repairs(WhatIfs& found, const Inputs& inputs, const Ground& ground)
{
    const job::RunLog& log = ground.plan.run.site.log;
    std::optional<Pattern> pattern;
    if (ground.reference) pattern.emplace(Pattern{ground.reference->run.plan, ground.reference->run.site.log});
    const RepairShop shop{inputs.scenario, inputs.plan, log, pattern, [&](int at, const job::Card& card) { return why_not(ground.plan, at, card); }};
    const std::vector<rules::Verdict> verdicts = rules::evaluate(inputs.book, inputs.scenario, log);
    for (const FaultLine& fault : fault_lines(rules::marking_sheet(inputs.book, verdicts, log))) {
        const auto verdict = std::find_if(verdicts.begin(), verdicts.end(), [&](const rules::Verdict& v) { return v.rule == fault.rule.rule; });
        insist(verdict != verdicts.end(), "a fault is a verdict of its book");
        if (verdict->ruling != rules::Ruling::broken) continue;     // a consequence goes with its root
        const rules::Rule& rule = inputs.book.rules.at(static_cast<std::size_t>(verdict - verdicts.begin()));
        Repair repair = repair_of(shop, rule, *verdict);
        if (repair.edits.empty()) found.none.push_back({verdict->rule, std::move(repair.no_way)});
        else add_group(found.list, verdict->rule, std::move(repair.edits));
    }
}

void add_all_together(WhatIfs& found)
{
    WhatIf all;
    all.kind = Kind::all_repaired;
    for (const WhatIf& group : found.list) {
        all.rules.insert(all.rules.end(), group.rules.begin(), group.rules.end());
        for (const PlanEdit& edit : group.edits)
            if (std::find(all.edits.begin(), all.edits.end(), edit) == all.edits.end()) all.edits.push_back(edit);
    }
    if (found.list.size() > 1) found.list.push_back(std::move(all));
}

void add_reverse(WhatIfs& found, const job::WorkPlan& reference, const job::WorkPlan& plan)
{
    const std::vector<WhatIf> repaired = found.list;
    for (const WhatIf& group : repaired) {
        if (group.kind != Kind::repaired) continue;
        WhatIf reverse;
        reverse.kind = Kind::put_in;
        reverse.rules = group.rules;
        reverse.edits = mistake_in(reference, plan, group.edits);
        if (!reverse.edits.empty()) found.list.push_back(std::move(reverse));
    }
}

/// Cards that are refused in one run and were not in another.
std::vector<std::string> newly_refused(const drill::Run& run, const drill::Run& before)
{
    std::set<std::string> known;
    const auto name = [](const job::LogEntry& entry) { return entry.step + " " + entry.label; };
    for (const job::LogEntry& entry : before.site.log.entries)
        if (entry.outcome == job::Outcome::refused) known.insert(name(entry));
    std::vector<std::string> refused;
    for (const job::LogEntry& entry : run.site.log.entries)
        if (entry.outcome == job::Outcome::refused && known.insert(name(entry)).second) refused.push_back(card_name(run.plan, entry.card) + ": " + entry.reason.said());
    return refused;
}

/// Carries one out at full detail and sees what came of it.
void carry_out(WhatIf& what_if, const Inputs& inputs, const drill::Trunk& trunk)
{
    drill::RunOptions options;
    options.hashes_every_card = false;
    const drill::Run run = drill::branch(trunk, edited(trunk.run.plan, what_if.edits), options);
    what_if.before = figures_of(outcome(trunk.run));
    what_if.after = figures_of(outcome(run));
    what_if.end_hash = run.hashes.empty() ? 0 : run.hashes.back().hash;
    what_if.parcel_steps = run.site.parcel_steps - trunk.before.at(drill::shared_cards(trunk.run.plan, run.plan)).parcel_steps;
    what_if.refused = newly_refused(run, trunk.run);
    for (const PlanEdit& edit : what_if.edits) what_if.told.push_back(told(edit, trunk.run.plan));
    const std::vector<rules::Verdict> verdicts = rules::evaluate(inputs.book, inputs.scenario, run.site.log);
    for (const rules::Verdict& verdict : verdicts) {
        if (std::find(what_if.rules.begin(), what_if.rules.end(), verdict.rule) == what_if.rules.end()) continue;
        if (verdict.ruling == rules::Ruling::broken || verdict.ruling == rules::Ruling::consequence) what_if.still_broken.push_back(verdict.rule);
    }
    what_if.is_mended = what_if.still_broken.empty() == (what_if.kind != Kind::put_in);
}

/// What the trainee did is told with its band; what the mistake would do in the reference plan by one run.
bool has_pairs(const WhatIf& what_if) { return what_if.kind != Kind::put_in; }

Ground grown(const Inputs& inputs, const job::WorkPlan* reference, std::uint64_t seed, double detail, unsigned threads, bool traces = false)
{
    drill::RunOptions options = options_for(seed, detail);
    options.traces_sources = traces;
    Ground ground;
    work_off(reference != nullptr ? 2 : 1, threads, [&](std::size_t which) {
        if (which == 0) ground.plan = drill::grow(inputs.scenario, inputs.plan, options);
        else ground.reference = drill::grow(inputs.scenario, *reference, options);
    });
    return ground;
}

/// One light run of every repair with one seed.
void carry_out_light(std::vector<WhatIf>& list, std::size_t place, const drill::Trunk& trunk)
{
    const Figures plan = figures_of(outcome(trunk.run));
    drill::RunOptions options;
    options.hashes_every_card = false;
    for (WhatIf& what_if : list) {
        if (!has_pairs(what_if)) continue;
        what_if.paired_before[place] = plan;
        what_if.paired_after[place] = figures_of(outcome(drill::branch(trunk, edited(trunk.run.plan, what_if.edits), options)));
    }
}

/// The bands of every card and way out. A run in which a card let nothing out that way counts with nothing.
std::vector<SourceBand> bands_of_sources(const std::vector<std::vector<WayOfSource>>& runs)
{
    std::map<std::pair<int, dust::Pathway>, std::vector<double>> shares;
    for (const std::vector<WayOfSource>& run : runs)
        for (const WayOfSource& way : run) shares[{way.source, way.pathway}].push_back(way.share);
    std::vector<SourceBand> bands;
    for (auto& [key, list] : shares) {
        list.resize(runs.size(), 0.0);
        bands.push_back({key.first, key.second, band_of(list)});
    }
    std::stable_sort(bands.begin(), bands.end(), [](const SourceBand& a, const SourceBand& b) { return a.share.median > b.share.median; });
    return bands;
}

}

Figures figures_of(const Outcome& outcome)
{
    Figures figures{outcome.outside, outcome.floor, outcome.sill, outcome.hall_floor, {}, outcome.took};
    for (const BreathedLine& line : outcome.breathed) figures.breathed = std::max(figures.breathed, line.lead);
    return figures;
}

const WhatIf* WhatIfs::find(WhatIf::Kind kind, const std::string& rule) const
{
    const auto found = std::find_if(list.begin(), list.end(), [&](const WhatIf& what_if) {
        return what_if.kind == kind && std::find(what_if.rules.begin(), what_if.rules.end(), rule) != what_if.rules.end();
    });
    return found == list.end() ? nullptr : &*found;
}

WhatIfs what_ifs(const Inputs& inputs, const job::WorkPlan* reference, std::uint64_t seed, const WhatIfOrder& order)
{
    const Ground ground = grown(inputs, reference, seed, 1.0, order.threads);
    WhatIfs found;
    found.base = figures_of(outcome(ground.plan.run));
    found.base_parcel_steps = ground.plan.run.site.parcel_steps;
    if (ground.reference) found.reference = figures_of(outcome(ground.reference->run));
    find_repairs(found, inputs, ground);
    add_all_together(found);
    if (reference != nullptr && order.tries_reverse) add_reverse(found, *reference, inputs.plan);

    if (found.list.size() > order.most) found.list.resize(order.most);

    found.seeds = found.list.empty() ? std::vector<std::uint64_t>{} : order.seeds;
    for (WhatIf& what_if : found.list) {
        if (!has_pairs(what_if)) continue;
        what_if.paired_before.resize(found.seeds.size());
        what_if.paired_after.resize(found.seeds.size());
    }
    std::vector<std::vector<WayOfSource>> ways(found.seeds.size());
    // The run itself first, then seed by seed; each thread writes into places of its own.
    const std::size_t whole = found.list.size();
    std::vector<char> is_done(whole + found.seeds.size(), 0);
    Progress progress(order.progress, is_done.size());
    work_off(is_done.size(), order.threads, [&](std::size_t next) {
        if (order.should_stop && order.should_stop()) return;
        if (next < whole) carry_out(found.list[next], inputs, ground.of(found.list[next].kind));
        else {
            const Ground light = grown(inputs, nullptr, found.seeds[next - whole], order.light_detail, 1, true);
            ways[next - whole] = ways_of_sources(trace_of(light.plan.run.site));
            carry_out_light(found.list, next - whole, light.plan);
        }
        is_done[next] = 1;
        progress.step();
    });
    // Stopped before the end: what was not carried out is left out.
    std::vector<WhatIf> done;
    for (std::size_t i = 0; i < whole; ++i)
        if (is_done[i] != 0) done.push_back(std::move(found.list[i]));
    found.list = std::move(done);
    for (std::size_t place = found.seeds.size(); place-- > 0;) {
        if (is_done[whole + place] != 0) continue;
        const auto drop = [&](auto& row) { row.erase(row.begin() + static_cast<std::ptrdiff_t>(place)); };
        drop(found.seeds);
        drop(ways);
        for (WhatIf& what_if : found.list) {
            if (!has_pairs(what_if)) continue;
            drop(what_if.paired_before);
            drop(what_if.paired_after);
        }
    }
    if (!ways.empty()) found.source_shares = bands_of_sources(ways);
    for (const WhatIf& what_if : found.list) found.parcel_steps += what_if.parcel_steps;
    return found;
}

}
