#include "rules/lint.hpp"

#include "rules/contradictions.hpp"
#include "rules/value_match.hpp"
#include "rules/vocabulary.hpp"
#include "text/nearest.hpp"
#include "text/quote.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <set>

namespace flapdoor::rules {
namespace {

using text::quoted;

template <class List>
std::vector<std::string_view> names_of(const List& list)
{
    std::vector<std::string_view> names;
    for (const auto& words : list) names.push_back(words.name);
    return names;
}

/// Looks at one rule at a time; what rules say together is in contradictions.cpp.
class RuleLint {
public:
    RuleLint(const RuleBook& book, Problems& problems) : book_(book), problems_(problems) {}

    void check(const Rule& rule)
    {
        rule_ = &rule;
        check_standing();
        check_roots();
        for_each_spot(rule.when, [&](const Spot& spot) { check_spot(spot); });
        check_applies(rule.applies);
        std::visit([&](const auto& kind) { check_kind(kind); }, rule.when.kind);
    }

    /// A case that puts the book out of force speaks of the run as a whole, as a rule without `each` does.
    void check(const Outside& outside)
    {
        Rule as_rule;
        as_rule.id.text = outside.why;
        rule_ = &as_rule;
        kind_ = "case outside the book";
        check_applies(outside.applies);
        kind_ = "rule";
        rule_ = nullptr;
    }

private:
    void complain(const Place& where, std::string expected, std::string found)
    {
        problems_.push_back({where, std::move(expected), fmt::format("{} in {} {}", found, kind_, quoted(rule_->id.text))});
    }

    void refuse_unknown(const Place& where, std::string_view what, const std::string& word, const std::vector<std::string_view>& known)
    {
        const auto near = text::nearest(word, known);
        complain(where, near ? fmt::format("a known {}, the nearest is \"{}\"", what, *near) : fmt::format("a known {}: {}", what, text::one_of(known)), quoted(word));
    }

    void check_standing()
    {
        const Place& where = rule_->id.where;
        if (rule_->weight_class == RuleClass::must && rule_->cite.empty()) complain(where, "a `cite` for a must-rule", "none");
        const bool is_habit = rule_->order == OrderStrength::listed || rule_->order == OrderStrength::practice;
        if (rule_->is_critical && (is_habit || rule_->weight_class == RuleClass::practice))
            complain(where, "no `critical` on a listed or practice order", "a critical rule");
        if (rule_->order == OrderStrength::listed && rule_->weight_class == RuleClass::must) complain(where, "class \"should\" for a listed order", "\"must\"");
        if (rule_->order == OrderStrength::practice && rule_->weight_class != RuleClass::practice)
            complain(where, "class \"practice\" for a practice order", quoted(word_of(rule_->weight_class)));
        if (rule_->weight == 0 && rule_->is_critical) complain(where, "a weight above 0 for a critical rule", "0");
    }

    void check_roots()
    {
        for (const Marked& root : rule_->follows_from) {
            const Rule* found = book_.find(root.text);
            if (root.text == rule_->id.text) complain(root.where, "another rule", "the rule itself");
            // A critical rule fails the run as a consequence too, so nothing lighter than the regulation may bring it about.
            else if (found && rule_->is_critical && found->weight_class != RuleClass::must)
                complain(root.where, "a must-rule as the root of a critical one", fmt::format("{}, a {}-rule,", quoted(root.text), word_of(found->weight_class)));
            else if (!found && !book_.is_layer()) {
                std::vector<std::string_view> ids;
                for (const Rule& rule : book_.rules) ids.push_back(rule.id.text);
                refuse_unknown(root.where, "rule", root.text, ids);
            }
        }
    }

    void check_applies(const Applies& applies)
    {
        for (const Spot& spot : applies.done) check_spot(spot);
        for (const Spot& spot : applies.not_done) check_spot(spot);
        for (const auto* list : {&applies.facts, &applies.unless})
            for (const Marked& fact : *list)
                if (!find_fact(fact.text)) refuse_unknown(fact.where, "fact", fact.text, names_of(facts()));
        for (const Marked& fact : applies.facts)
            for (const Marked& not_fact : applies.unless)
                if (fact.text == not_fact.text) complain(not_fact.where, "a rule that some scenario can trigger", fmt::format("{} both asked and ruled out", quoted(fact.text)));
    }

    void check_this(const std::string& word, const Place& where, ThingKind wanted)
    {
        if (word != "this") return;
        if (!rule_->each) return complain(where, "`each` beside a condition that says \"this\"", "none");
        const ThingKind thing = thing_kind(*rule_->each);
        if (wanted != ThingKind::none && thing != ThingKind::none && wanted != thing)
            complain(where, "\"this\" of the kind that is meant here", fmt::format("\"this\" is each {}", word_of(*rule_->each)));
    }

    void check_spot(const Spot& spot)
    {
        for (const std::string& step : spot.step.words)
            if (!find_step(step)) refuse_unknown(spot.step.where, "step or moment", step, step_names_and_moments());
        check_values({"by", spot.by, spot.by.where}, {"by", ParameterType::id, {}, {}, ThingKind::person});
        for (const Match& match : spot.with.all) check_match(spot, match);
        if (!spot.measured.empty()) check_measure(spot.measured, spot.of, spot.is, spot.where);
        if (!spot.state.empty()) check_state(spot.state, spot.of, spot.is, spot.where);
    }

    std::vector<std::string_view> step_names_and_moments() const
    {
        std::vector<std::string_view> names = names_of(step_words());
        names.insert(names.end(), Words<Moment>::words.begin(), Words<Moment>::words.end());
        return names;
    }

    void check_match(const Spot& spot, const Match& match)
    {
        bool is_known = false;
        for (const StepWords& step : step_words()) {
            const bool is_named = std::find(spot.step.words.begin(), spot.step.words.end(), step.name) != spot.step.words.end();
            if (!is_named && !spot.step.words.empty()) continue;
            const ParameterWords* words = step.parameter(match.parameter);
            is_known = is_known || words;
            if (is_named && !words) {
                refuse_unknown(match.where, fmt::format("parameter of {}", step.name), match.parameter, names_of(step.parameters));
                is_known = true;
            }
            if (words) check_values(match, *words);
            if (words && is_named && spot.step.words.size() == 1) return;
        }
        if (!is_known && all_known(spot)) complain(match.where, "a parameter that some step has", quoted(match.parameter));
    }

    static bool all_known(const Spot& spot)
    {
        return std::all_of(spot.step.words.begin(), spot.step.words.end(), [](const std::string& step) { return find_step(step) != nullptr; });
    }

    void check_values(const Match& match, const ParameterWords& words)
    {
        for (const std::string& wanted : match.any_of.words) {
            if (const auto why = why_unfit(wanted, words)) complain(match.any_of.where, fmt::format("`{}` to be {}", match.parameter, *why), quoted(wanted));
            else if (words.type == ParameterType::id || words.type == ParameterType::id_list) check_this(wanted, match.any_of.where, words.thing);
        }
    }

    void check_of(const std::string& of, const Place& where, ThingKind thing)
    {
        if (of.empty()) return;
        if (of != "this") return complain(where, "`of` to be \"this\": a book knows no ids", quoted(of));
        check_this(of, where, thing);
    }

    void check_measure(const std::string& measured, const std::string& of, const AnyOf& is, const Place& where)
    {
        const MeasureWords* words = find_measure_words(measured);
        if (!words) return refuse_unknown(where, "measure", measured, names_of(measure_words()));
        check_of(of, where, words->thing);
        for (const std::string& value : is.words) check_limit(comparison(value).value, *words, is.where);
    }

    void check_limit(const std::string& limit, const MeasureWords& words, const Place& where)
    {
        if (!limit.empty() && !measure_number(limit, words.kind)) complain(where, fmt::format("a value that `{}` can have", words.name), quoted(limit));
    }

    void check_state(const std::string& state, const std::string& of, const AnyOf& is, const Place& where)
    {
        const StateWords* words = find_state(state);
        if (!words) return refuse_unknown(where, "state", state, names_of(state_words()));
        check_of(of, where, words->thing);
        for (const std::string& value : is.words)
            if (value != "true" && value != "false") complain(is.where, "`is` of a state to be true or false", quoted(value));
    }

    void ask_cards(const Spot& spot)
    {
        if (!spot.is_cards()) complain(spot.where, "cards, not a state or a moment", quoted(spot_text(spot)));
    }

    void check_kind(const Before& before)
    {
        if (before.then.moment == Moment::start) complain(before.then.where, "something that other cards can come before", "the start");
        if (before.first.moment == Moment::end) complain(before.first.where, "something that other cards can come after", "the end");
    }

    void check_kind(const NotBefore& not_before)
    {
        if (not_before.until.moment == Moment::end) complain(not_before.until.where, "something that other cards can come after", "the end");
    }

    void check_kind(const While& condition)
    {
        check_state(condition.state, condition.of, {}, rule_->when.where);
        if (condition.during.has_value() == condition.from.has_value()) complain(rule_->when.where, "either `during` or `from`", condition.during ? "both" : "neither");
        if (condition.to && !condition.from) complain(rule_->when.where, "`from` beside `to`", "`to` alone");
    }

    void check_kind(const AfterEach&) {}

    void check_kind(const Within& condition)
    {
        ask_cards(condition.what);
        const bool has_clock = condition.after && condition.time;
        const bool has_count = !condition.counted.empty() && condition.most;
        if (has_clock == has_count || (condition.after && !has_clock) || (!condition.counted.empty() && !has_count))
            complain(rule_->when.where, "either `after` and `time`, or `counted` and `most`", "something else");
        for (const std::string& step : condition.what.step.words) {
            const StepWords* words = find_step(step);
            if (!words || condition.counted.empty()) continue;
            const ParameterWords* parameter = words->parameter(condition.counted);
            if (!parameter || (parameter->type != ParameterType::whole && parameter->type != ParameterType::number))
                complain(rule_->when.where, fmt::format("`counted` to be a number that {} has", step), quoted(condition.counted));
        }
    }

    void check_kind(const OnlyBy& condition) { ask_cards(condition.cards); }

    void check_kind(const AtLeast& condition)
    {
        const Place& where = rule_->when.where;
        if (condition.measured.empty() == !condition.done.has_value()) return complain(where, "either `measured` or `done`", condition.done ? "both" : "neither");
        if (condition.done) {
            ask_cards(*condition.done);
            return;
        }
        const MeasureWords* words = find_measure_words(condition.measured);
        check_measure(condition.measured, condition.of, {}, where);
        if (condition.at) ask_cards(*condition.at);
        if (condition.least.empty() && condition.most.empty() && condition.below.empty()) complain(where, "`least`, `most` or `below`", "none of them");
        if (!words) return;
        for (const std::string& limit : {condition.least, condition.most, condition.below})
            if (limit != "sections-due" || condition.measured != "sections") check_limit(limit, *words, where);
    }

    void check_kind(const RepeatUntil& condition)
    {
        ask_cards(condition.check);
        check_measure(condition.measured, condition.of, {{condition.good}, rule_->when.where}, rule_->when.where);
    }

    void check_kind(const Never& never)
    {
        for (const Spot& spot : never.any_of)
            if (spot.moment) complain(spot.where, "cards or a state", "a moment");
    }

    void check_kind(const ExactlyOneOf& condition)
    {
        std::set<std::string> seen;
        for (const Spot& spot : condition.spots) {
            if (spot.moment) complain(spot.where, "cards or a state", "a moment");
            if (!seen.insert(spot_text(spot)).second) complain(spot.where, "each of them once", fmt::format("{} twice", quoted(spot_text(spot))));
        }
    }

    const RuleBook& book_;
    Problems& problems_;
    const Rule* rule_ = nullptr;
    std::string_view kind_ = "rule";
};

void check_ids(const RuleBook& book, Problems& problems)
{
    std::map<std::string, const Rule*> seen;
    for (const Rule& rule : book.rules) {
        const auto [known, is_new] = seen.emplace(rule.id.text, &rule);
        if (!is_new)
            problems.push_back({rule.id.where, "each rule once", fmt::format("{} again, first in line {}", quoted(rule.id.text), known->second->id.where.line)});
    }
}

void check_layer(const RuleBook& book, Problems& problems)
{
    std::map<std::string, const Change*> seen;
    for (const Change& change : book.changes) {
        if (!book.is_layer()) problems.push_back({change.rule.where, "`over` in a book that changes rules of another one", "none"});
        if (!change.weight && !change.weight_class && !change.is_critical) problems.push_back({change.rule.where, "`weight`, `class` or `critical` in a change", "none of them"});
        const auto [known, is_new] = seen.emplace(change.rule.text, &change);
        if (!is_new) problems.push_back({change.rule.where, "each rule changed once", fmt::format("{} again, first in line {}", quoted(change.rule.text), known->second->rule.where.line)});
        if (const Rule* own = book.find(change.rule.text))
            problems.push_back({change.rule.where, "a rule that is either changed or replaced", fmt::format("{}, which line {} replaces", quoted(change.rule.text), own->id.where.line)});
    }
    if (book.rules.empty() && book.changes.empty()) problems.push_back({book.over ? book.over->where : Place{}, "at least one rule", "none"});
}

/// A rule that is its own consequence, by however many steps.
void check_root_cycles(const RuleBook& book, Problems& problems)
{
    for (const Rule& rule : book.rules) {
        std::set<std::string> seen;
        std::vector<std::string> waiting;
        for (const Marked& root : rule.follows_from)
            if (root.text != rule.id.text) waiting.push_back(root.text);
        while (!waiting.empty()) {
            const std::string next = waiting.back();
            waiting.pop_back();
            if (!seen.insert(next).second) continue;
            if (const Rule* found = book.find(next))
                for (const Marked& root : found->follows_from) waiting.push_back(root.text);
        }
        if (seen.contains(rule.id.text)) problems.push_back({rule.id.where, "a rule that does not follow from itself", quoted(rule.id.text)});
    }
}

}

Problems lint(const RuleBook& book)
{
    Problems problems;
    check_ids(book, problems);
    check_layer(book, problems);
    RuleLint one(book, problems);
    for (const Outside& outside : book.outside) one.check(outside);
    for (const Rule& rule : book.rules) one.check(rule);
    check_root_cycles(book, problems);
    if (problems.empty()) find_contradictions(book, problems);
    return problems;
}

std::vector<Idle> idle_rules(const RuleBook& book, const job::Scenario& scenario)
{
    std::vector<Idle> idle;
    for (const Rule& rule : book.rules) {
        std::string why;
        for (const Marked& fact : rule.applies.facts)
            if (const Fact* known = find_fact(fact.text); known && !known->holds(scenario)) why = fmt::format("{} does not hold", fact.text);
        for (const Marked& fact : rule.applies.unless)
            if (const Fact* known = find_fact(fact.text); known && known->holds(scenario)) why = fmt::format("{} holds", fact.text);
        const bool is_known_beforehand = rule.each && *rule.each != Each::bag && *rule.each != Each::item && *rule.each != Each::unused_door;
        if (why.empty() && is_known_beforehand && things(*rule.each, scenario, {}).empty()) why = fmt::format("there is no {}", word_of(*rule.each));
        if (!why.empty()) idle.push_back({rule.id.text, std::move(why), rule.id.where});
    }
    return idle;
}

}
