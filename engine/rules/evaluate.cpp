#include "rules/evaluate.hpp"

#include "core/insist.hpp"
#include "rules/evidence.hpp"

#include <algorithm>
#include <map>

namespace flapdoor::rules {
namespace {

bool is_in_force(const Applies& applies, const Evidence& evidence, const std::string& self)
{
    const auto holds = [&](const Marked& fact) {
        const Fact* known = find_fact(fact.text);
        insist(known != nullptr, "a checked book names known facts");
        return known->holds(evidence.scenario());
    };
    const auto occurs = [&](const Spot& spot) { return !evidence.find(spot, self).empty(); };
    return std::all_of(applies.facts.begin(), applies.facts.end(), holds) && std::none_of(applies.unless.begin(), applies.unless.end(), holds) &&
           std::all_of(applies.done.begin(), applies.done.end(), occurs) && std::none_of(applies.not_done.begin(), applies.not_done.end(), occurs);
}

Judgement judge_all(const Rule& rule, const Evidence& evidence)
{
    Judgement all;
    const std::vector<std::string> selves = rule.each ? things(*rule.each, evidence.scenario(), evidence.log()) : std::vector<std::string>{""};
    for (const std::string& self : selves)
        if (is_in_force(rule.applies, evidence, self)) all.join(judge(rule.when, evidence, self));
    return all;
}

/// A broken rule whose root is broken too becomes a consequence, through any number of steps.
void find_consequences(const RuleBook& book, std::vector<Verdict>& verdicts)
{
    std::map<std::string, const Verdict*> by_id;
    for (const Verdict& verdict : verdicts) by_id[verdict.rule] = &verdict;
    std::vector<std::vector<std::string>> roots(verdicts.size());
    for (std::size_t i = 0; i < verdicts.size(); ++i) {
        if (verdicts[i].ruling != Ruling::broken) continue;
        for (const Marked& root : book.rules[i].follows_from)
            if (const auto found = by_id.find(root.text); found != by_id.end() && found->second->ruling == Ruling::broken) roots[i].push_back(root.text);
    }
    for (std::size_t i = 0; i < verdicts.size(); ++i) {
        if (roots[i].empty()) continue;
        verdicts[i].ruling = Ruling::consequence;
        verdicts[i].roots = std::move(roots[i]);
    }
}

const Outside* find_outside(const RuleBook& book, const Evidence& evidence)
{
    const auto found = std::find_if(book.outside.begin(), book.outside.end(), [&](const Outside& outside) { return is_in_force(outside.applies, evidence, {}); });
    return found == book.outside.end() ? nullptr : &*found;
}

}

const Outside* outside_of(const RuleBook& book, const job::Scenario& scenario, const job::RunLog& log) { return find_outside(book, Evidence(scenario, log)); }

std::vector<Verdict> evaluate(const RuleBook& book, const job::Scenario& scenario, const job::RunLog& log)
{
    const Evidence evidence(scenario, log);
    std::vector<Verdict> verdicts;
    const bool is_in_force = find_outside(book, evidence) == nullptr;
    for (const Rule& rule : book.rules) {
        Judgement judgement = is_in_force ? judge_all(rule, evidence) : Judgement{};
        const Ruling ruling = judgement.finding == Finding::broken ? Ruling::broken : judgement.finding == Finding::kept ? Ruling::kept : Ruling::not_applicable;
        verdicts.push_back({rule.id.text, ruling, std::move(judgement.faults), std::move(judgement.pairs), {}});
    }
    find_consequences(book, verdicts);
    return verdicts;
}

}
