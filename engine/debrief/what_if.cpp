#include "debrief/what_if.hpp"

#include "core/insist.hpp"
#include "debrief/fault_line.hpp"
#include "debrief/repair/lack.hpp"
#include "debrief/repair/mistake.hpp"
#include "debrief/repair/repair.hpp"
#include "debrief/worklist.hpp"
#include "rules/marking_sheet.hpp"
#include "rules/vocabulary.hpp"
#include "text/language.hpp"

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
        if (reverse.edits.empty()) found.not_put_in.push_back({group.rules.front(), std::string(text::say("the careful plan has no such card"))});
        else found.list.push_back(std::move(reverse));
    }
}

std::string name_of(const job::LogEntry& entry) { return entry.step + " " + entry.label; }

std::set<std::string> refused_in(const job::RunLog& log)
{
    std::set<std::string> names;
    for (const job::LogEntry& entry : log.entries)
        if (entry.outcome == job::Outcome::refused) names.insert(name_of(entry));
    return names;
}

/// A changed plan carried out, and what its cards lacked that could be carried out before.
struct Branch {
    EditedPlan changed;
    drill::Run run;
    std::vector<Lack> lacks;
};

Branch branch(const drill::Trunk& trunk, const std::vector<PlanEdit>& edits, const std::set<std::string>& known)
{
    Branch branch{edited_plan(trunk.run.plan, edits), {}, {}};
    drill::RunOptions options;
    options.hashes_every_card = false;
    options.after_card = [&](const site::Site& site) {
        const job::LogEntry& entry = site.log.entries.back();
        if (entry.outcome == job::Outcome::refused && !known.contains(name_of(entry))) branch.lacks.push_back(lack_of(site, branch.changed.plan.cards.at(static_cast<std::size_t>(entry.card)), entry.card));
    };
    branch.run = drill::branch(trunk, branch.changed.plan, options);
    return branch;
}

/// What cards lack that can then not be carried out is brought along or entered for, as whoever makes the change would. A few rounds: a card
/// that was out of reach behind another one shows only when that one is carried out.
Branch branch_made_up(WhatIf& what_if, const drill::Trunk& trunk)
{
    constexpr int most_rounds = 4;
    const std::set<std::string> known = refused_in(trunk.run.site.log);
    const std::uint64_t shared_steps = [&] { return trunk.before.at(drill::shared_cards(trunk.run.plan, edited(trunk.run.plan, what_if.edits))).parcel_steps; }();
    Branch done = branch(trunk, what_if.edits, known);
    what_if.parcel_steps += done.run.site.parcel_steps - shared_steps;
    for (int round = 1; round < most_rounds && !done.lacks.empty(); ++round) {
        std::vector<PlanEdit> more, behind;     // behind what was put in at the same place, for a card that stands where it stood
        std::set<job::PersonId> let_in;     // who enters before one card is inside for the next
        for (Lack lack : done.lacks) {
            std::erase_if(lack.not_inside, [&](const job::PersonId& id) { return let_in.contains(id); });
            let_in.insert(lack.not_inside.begin(), lack.not_inside.end());
            for (PlanEdit& edit : made_up(lack, trunk.run.plan, done.changed))
                if (!includes(what_if.edits, {edit}) && !includes(more, {edit}) && !includes(behind, {edit}))
                    (done.changed.is_touched.at(static_cast<std::size_t>(lack.card)) ? more : behind).push_back(std::move(edit));
        }
        if (more.empty() && behind.empty()) break;
        more.insert(more.end(), what_if.edits.begin(), what_if.edits.end());
        more.insert(more.end(), behind.begin(), behind.end());
        Branch next = branch(trunk, more, known);
        what_if.parcel_steps += next.run.site.parcel_steps - trunk.before.at(drill::shared_cards(trunk.run.plan, next.run.plan)).parcel_steps;
        if (next.lacks.size() > done.lacks.size()) break;   // made worse
        what_if.edits = std::move(more);
        done = std::move(next);
    }
    return done;
}

bool is_cleaning(std::string_view step)
{
    const rules::StepWords* words = rules::find_step(step);
    return words != nullptr && words->phase == job::Phase::cleaning;
}

Time cleaning_again(const job::RunLog& log)
{
    Time sum{};
    for (const job::LogEntry& entry : log.entries)
        if (entry.outcome == job::Outcome::done && entry.step == job::ReClean::name) sum += entry.end - entry.start;
    return sum;
}

/// What else came of the mistake, for whoever wonders about its figures.
void look_aside(WhatIf& what_if, const drill::Trunk& trunk, const drill::Run& run)
{
    const bool is_put_in = what_if.kind == Kind::put_in;
    const drill::Run& with = is_put_in ? run : trunk.run;
    const drill::Run& without = is_put_in ? trunk.run : run;
    for (const PlanEdit& edit : what_if.edits) {
        if (edit.kind != (is_put_in ? PlanEdit::Kind::put_in : PlanEdit::Kind::leave_out)) continue;
        const job::Card& card = is_put_in ? edit.put : trunk.run.plan.cards.at(static_cast<std::size_t>(edit.card));
        if (std::visit([](const auto& step) { return is_cleaning(step.name); }, card.step)) what_if.cleans_itself = true;
    }
    what_if.cleaned_again = std::max(Time{}, cleaning_again(with.site.log) - cleaning_again(without.site.log));
    const Outcome more = outcome(with), less = outcome(without);
    Picograms most{};
    for (const PathwayLine& line : less.pathways) {
        const Picograms added = line.amount.lead - line_of(more, line.pathway).amount.lead;
        if (added <= most) continue;
        most = added;
        what_if.other_way = line.pathway;
    }
}

/// Marks the changed run: does it keep the rules, or break them where the mistake was put in?
void mark(WhatIf& what_if, const Inputs& inputs, const job::RunLog& log)
{
    what_if.still_broken.clear();
    for (const rules::Verdict& verdict : rules::evaluate(inputs.book, inputs.scenario, log)) {
        if (std::find(what_if.rules.begin(), what_if.rules.end(), verdict.rule) == what_if.rules.end()) continue;
        if (verdict.ruling == rules::Ruling::broken || verdict.ruling == rules::Ruling::consequence) what_if.still_broken.push_back(verdict.rule);
    }
    what_if.is_mended = what_if.still_broken.empty() == (what_if.kind != Kind::put_in);
}

/// Carries one out at full detail and sees what came of it.
/// @param whole  other edits, taken when the first ones do not do it; empty: there are none
void carry_out(WhatIf& what_if, const std::vector<PlanEdit>& whole, const Inputs& inputs, const drill::Trunk& trunk)
{
    Branch done = branch_made_up(what_if, trunk);
    mark(what_if, inputs, done.run.site.log);
    if (!what_if.is_mended && !whole.empty()) {
        what_if.edits = whole;
        done = branch_made_up(what_if, trunk);
        mark(what_if, inputs, done.run.site.log);
    }
    what_if.before = figures_of(outcome(trunk.run));
    what_if.after = figures_of(outcome(done.run));
    what_if.end_hash = done.run.hashes.empty() ? 0 : done.run.hashes.back().hash;
    std::set<std::string> known = refused_in(trunk.run.site.log);
    for (const job::LogEntry& entry : done.run.site.log.entries) {
        if (entry.outcome != job::Outcome::refused || !known.insert(name_of(entry)).second) continue;
        what_if.refused.push_back(card_name(done.run.plan, entry.card) + ": " + entry.reason.said());
        if (done.changed.is_touched.at(static_cast<std::size_t>(entry.card))) what_if.is_done = false;
    }
    for (const PlanEdit& edit : what_if.edits) {
        what_if.told.push_back(told(edit, trunk.run.plan, inputs.scenario));
        const job::Step& step = edit.kind == PlanEdit::Kind::put_in ? edit.put.step : trunk.run.plan.cards.at(static_cast<std::size_t>(edit.card)).step;
        if (what_if.edits.size() == 1 || !std::holds_alternative<job::StageTools>(step)) what_if.cards.push_back(std::visit([](const auto& s) { return std::string(s.title); }, step));
    }
    look_aside(what_if, trunk, done.run);
}

/// What flap doors do is worked out once for all.
Ground grown(const Inputs& inputs, const job::WorkPlan* reference, drill::RunOptions options, unsigned threads)
{
    Ground ground;
    work_off(reference != nullptr ? 2 : 1, threads, [&](std::size_t which) {
        if (which == 0) ground.plan = drill::grow(inputs.scenario, inputs.plan, options);
        else ground.reference = drill::grow(inputs.scenario, *reference, options);
    });
    return ground;
}

/// Mistakes whose own cards cannot be carried out in the reference plan are told as such: their figures are of something else.
void set_aside_what_cannot_be(WhatIfs& found)
{
    std::vector<WhatIf> kept;
    for (WhatIf& what_if : found.list) {
        if (what_if.kind == Kind::put_in && !what_if.is_done) found.not_put_in.push_back({what_if.rules.front(), what_if.refused.front()});
        else kept.push_back(std::move(what_if));
    }
    found.list = std::move(kept);
}

/// One light run of every change with one seed.
void carry_out_light(std::vector<WhatIf>& list, std::size_t place, const Ground& ground)
{
    for (WhatIf& what_if : list) {
        const drill::Trunk& trunk = ground.of(what_if.kind);
        drill::RunOptions options;
        options.hashes_every_card = false;
        what_if.paired_before[place] = figures_of(outcome(trunk.run));
        what_if.paired_after[place] = figures_of(outcome(drill::branch(trunk, edited(trunk.run.plan, what_if.edits), options)));
    }
}

/// Stopped before the end: what was not carried out is left out.
template <class T>
void keep_done(std::vector<T>& list, const std::vector<char>& is_done)
{
    std::vector<T> done;
    for (std::size_t i = 0; i < list.size(); ++i)
        if (is_done[i] != 0) done.push_back(std::move(list[i]));
    list = std::move(done);
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
    const Ground ground = grown(inputs, reference, options_for(seed, order.detail), order.threads);
    WhatIfs found;
    found.base = figures_of(outcome(ground.plan.run));
    found.base_parcel_steps = ground.plan.run.site.parcel_steps;
    if (ground.reference) found.reference = figures_of(outcome(ground.reference->run));
    find_repairs(found, inputs, ground);
    add_all_together(found);
    std::vector<std::vector<PlanEdit>> whole(found.list.size());
    if (reference != nullptr && order.tries_reverse) {
        add_reverse(found, *reference, inputs.plan);
        whole.resize(found.list.size());
        for (std::size_t i = 0; i < whole.size(); ++i)
            if (found.list[i].kind == Kind::put_in) whole[i] = mistake_in(*reference, inputs.plan, found.find(Kind::repaired, found.list[i].rules.front())->edits, true);
    }
    if (found.list.size() > order.most) found.list.resize(order.most);

    std::vector<std::uint64_t> seeds = found.list.empty() ? std::vector<std::uint64_t>{} : order.seeds;
    Progress progress(order.progress, found.list.size() + seeds.size());
    const auto work = [&](std::size_t count, std::vector<char>& is_done, const auto& one) {
        is_done.assign(count, 0);
        work_off(count, order.threads, [&](std::size_t next) {
            if (order.should_stop && order.should_stop()) return;
            one(next);
            is_done[next] = 1;
            progress.step();
        });
    };
    // The run itself first: what it finds lacking is then there in the light runs too. Each thread writes into places of its own.
    std::vector<char> is_done;
    work(found.list.size(), is_done, [&](std::size_t next) { carry_out(found.list[next], whole[next], inputs, ground.of(found.list[next].kind)); });
    keep_done(found.list, is_done);
    set_aside_what_cannot_be(found);
    for (const WhatIf& what_if : found.list) found.parcel_steps += what_if.parcel_steps;

    for (WhatIf& what_if : found.list) {
        what_if.paired_before.resize(seeds.size());
        what_if.paired_after.resize(seeds.size());
    }
    const bool has_reverse = std::any_of(found.list.begin(), found.list.end(), [](const WhatIf& what_if) { return what_if.kind == Kind::put_in; });
    std::vector<std::vector<WayOfSource>> ways(seeds.size());
    work(seeds.size(), is_done, [&](std::size_t next) {
        drill::RunOptions options = options_for(seeds[next], order.light_detail);
        options.traces_sources = true;
        options.flaps = ground.plan.run.site.flaps;
        const Ground light = grown(inputs, has_reverse ? reference : nullptr, options, 1);
        ways[next] = ways_of_sources(trace_of(light.plan.run.site));
        carry_out_light(found.list, next, light);
    });
    for (WhatIf& what_if : found.list) {
        keep_done(what_if.paired_before, is_done);
        keep_done(what_if.paired_after, is_done);
    }
    keep_done(seeds, is_done);
    keep_done(ways, is_done);
    found.seeds = std::move(seeds);
    if (!ways.empty()) found.source_shares = bands_of_sources(ways);
    return found;
}

}
