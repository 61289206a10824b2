#include "rules/contradictions.hpp"

#include "rules/precedence.hpp"
#include "rules/vocabulary.hpp"
#include "text/quote.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <set>

namespace flapdoor::rules {
namespace {

/// "Whatever is `later` needs an earlier `earlier`."
struct Need {
    const Rule* rule;
    Spot earlier;
    Spot later;
};

/// Moments in terms of the cards and states behind them.
Spot plain(const Spot& spot)
{
    Spot same = spot;
    if (spot.moment == Moment::first_dust || spot.moment == Moment::last_dust) {
        same.moment.reset();
        same.step.words = {"disturb-paint"};
    }
    if (spot.moment == Moment::passed) {
        same.moment.reset();
        same.state = "passed";
    }
    return same;
}

std::vector<Need> needs(const RuleBook& book)
{
    std::vector<Need> all;
    const auto add = [&](const Rule& rule, const Spot& earlier, const Spot& later) {
        // What must come before the last of several may well follow the first.
        const bool is_last_only = later.which == Which::last || later.moment == Moment::last_dust || later.moment == Moment::end;
        if (!is_last_only && earlier.moment != Moment::start) all.push_back({&rule, plain(earlier), plain(later)});
    };
    for (const Rule& rule : book.rules) {
        if (const auto* before = std::get_if<Before>(&rule.when.kind)) add(rule, before->first, before->then);
        if (const auto* not_before = std::get_if<NotBefore>(&rule.when.kind)) add(rule, not_before->until, not_before->what);
    }
    return all;
}

bool contains_all(const std::vector<std::string>& all, const std::vector<std::string>& some)
{
    return std::all_of(some.begin(), some.end(), [&](const std::string& word) { return std::find(all.begin(), all.end(), word) != all.end(); });
}

bool is_false(const AnyOf& is) { return !is.words.empty() && is.words.front() == "false"; }

/// Is every occurrence of the one spot also one of the other? Errs towards no.
bool is_within(const Spot& narrow, const Spot& wide, bool is_same_this)
{
    if (narrow.moment || wide.moment) return narrow.moment && narrow.moment == wide.moment;
    const bool is_same_object = wide.of.empty() || (wide.of == narrow.of && is_same_this);
    if (!narrow.state.empty() || !wide.state.empty()) return narrow.state == wide.state && is_false(narrow.is) == is_false(wide.is) && is_same_object;
    if (narrow.step.words.empty()) return false;
    if (!wide.step.words.empty() && !contains_all(wide.step.words, narrow.step.words)) return false;
    for (const std::string& name : narrow.step.words) {
        const StepWords* step = find_step(name);
        if (!step || (wide.phase && *wide.phase != step->phase) || (wide.hands && *wide.hands != step->hands)) return false;
    }
    if (!wide.by.words.empty() && (wide.by.words != narrow.by.words || !is_same_this)) return false;
    if (!wide.measured.empty() && (wide.measured != narrow.measured || !is_same_object || !contains_all(wide.is.words, narrow.is.words))) return false;
    return std::all_of(wide.with.all.begin(), wide.with.all.end(), [&](const Match& asked) {
        return std::any_of(narrow.with.all.begin(), narrow.with.all.end(), [&](const Match& given) {
            const bool says_this = contains_all(given.any_of.words, {"this"});
            return given.parameter == asked.parameter && contains_all(asked.any_of.words, given.any_of.words) && (is_same_this || !says_this);
        });
    });
}

bool has_fact(const std::vector<Marked>& facts, const std::string& name)
{
    return std::any_of(facts.begin(), facts.end(), [&](const Marked& fact) { return fact.text == name; });
}

bool are_ever_together(const Rule& a, const Rule& b)
{
    const auto is_ruled_out = [](const Rule& by, const Rule& other) {
        return std::any_of(other.applies.facts.begin(), other.applies.facts.end(), [&](const Marked& fact) { return has_fact(by.applies.unless, fact.text); });
    };
    return !is_ruled_out(a, b) && !is_ruled_out(b, a);
}

/// Facts on which rules part ways: one is in force with it, another without.
std::vector<std::string> contested_facts(const std::vector<Need>& all)
{
    std::set<std::string> contested;
    for (const Need& need : all)
        for (const Marked& fact : need.rule->applies.facts)
            for (const Need& other : all)
                if (has_fact(other.rule->applies.unless, fact.text)) contested.insert(fact.text);
    return {contested.begin(), contested.end()};
}

bool is_in_force(const Need& need, const std::vector<std::string>& contested, unsigned holding)
{
    for (std::size_t i = 0; i < contested.size(); ++i) {
        const bool holds = (holding >> i & 1U) != 0;
        if (!holds && has_fact(need.rule->applies.facts, contested[i])) return false;
        if (holds && has_fact(need.rule->applies.unless, contested[i])) return false;
    }
    return true;
}

std::string name_cycle(const std::vector<Need>& all, const std::vector<int>& cycle)
{
    std::string way;
    for (auto at = cycle.rbegin(); at != cycle.rend(); ++at) {
        const Need& need = all[static_cast<std::size_t>(*at)];
        way += fmt::format("{}{} before {} ({})", way.empty() ? "" : ", ", spot_text(need.earlier), spot_text(need.later), need.rule->id.text);
    }
    return way;
}

/// Follows each need to the needs of what it needs; a circle can be kept by no order. One at a time: each circle found is
/// broken at its last rule in the file, so that the next one shows.
void find_cycles(const std::vector<Need>& all, std::set<std::string>& told, Problems& problems, const std::vector<bool>& in_force)
{
    const auto is_same_this = [](const Rule& a, const Rule& b) { return a.each == b.each; };
    std::vector<bool> left = in_force;
    for (;;) {
        BitMatrix leads_to(static_cast<int>(all.size()));
        for (std::size_t a = 0; a < all.size(); ++a)
            for (std::size_t b = 0; b < all.size(); ++b)
                if (left[a] && left[b] && is_within(all[a].earlier, all[b].later, is_same_this(*all[a].rule, *all[b].rule)))
                    leads_to.set(static_cast<int>(a), static_cast<int>(b));
        const std::vector<int> cycle = find_cycle(leads_to);
        if (cycle.empty()) return;
        const int last = *std::max_element(cycle.begin(), cycle.end());
        left[static_cast<std::size_t>(last)] = false;
        const std::string way = name_cycle(all, cycle);
        if (told.insert(way).second)
            problems.push_back({all[static_cast<std::size_t>(last)].rule->when.where, "rules that some order can keep", "a cycle: " + way});
    }
}

void find_forbidden_needs(const RuleBook& book, const std::vector<Need>& all, Problems& problems)
{
    for (const Rule& rule : book.rules) {
        const auto* never = std::get_if<Never>(&rule.when.kind);
        if (!never) continue;
        for (const Spot& spot : never->any_of)
            for (const Need& need : all)
                if (are_ever_together(rule, *need.rule) && is_within(need.earlier, spot, rule.each == need.rule->each))
                    problems.push_back({rule.when.where, "a rule that another one does not contradict",
                                        fmt::format("{} forbids \"{}\", which {} asks for", text::quoted(rule.id.text), spot_text(need.earlier), text::quoted(need.rule->id.text))});
    }
}

}

void find_contradictions(const RuleBook& book, Problems& problems)
{
    const std::vector<Need> all = needs(book);
    const std::vector<std::string> contested = contested_facts(all);
    std::set<std::string> told;
    // Every combination of contested facts; books have a handful. Beyond that the facts are left out of account.
    constexpr std::size_t most_contested = 8;
    const unsigned combinations = contested.size() <= most_contested ? 1U << contested.size() : 1U;
    for (unsigned holding = 0; holding < combinations; ++holding) {
        std::vector<bool> in_force(all.size(), true);
        if (contested.size() <= most_contested)
            for (std::size_t i = 0; i < all.size(); ++i) in_force[i] = is_in_force(all[i], contested, holding);
        find_cycles(all, told, problems, in_force);
    }
    find_forbidden_needs(book, all, problems);
}

}
