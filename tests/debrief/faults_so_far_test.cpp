#include "debrief/faults_so_far.hpp"

#include "debrief/main_job.hpp"

#include <catch2/catch.hpp>

#include <algorithm>
#include <set>

using namespace flapdoor;

namespace {

const std::string scenarios = FLAPDOOR_SOURCE_DIR "/scenarios/";

debrief::Inputs inputs(const std::string& drill, const std::string& plan)
{
    return debrief::read_inputs(scenarios + drill + "/scenario.toml", scenarios + drill + "/" + plan + ".toml", {scenarios + "rules/federal.toml"}).value();
}

/// The log as it stood after some cards.
job::RunLog first_cards(const job::RunLog& log, std::size_t count)
{
    job::RunLog part;
    part.entries.assign(log.entries.begin(), log.entries.begin() + static_cast<std::ptrdiff_t>(count));
    if (count == 0) return part;
    const Time end = part.entries.back().end;
    for (const job::StateChange& change : log.states)
        if (change.at <= end) part.states.push_back(change);
    return part;
}

std::set<std::string> rules_of(const std::vector<debrief::FaultLine>& faults)
{
    std::set<std::string> rules;
    for (const debrief::FaultLine& fault : faults) rules.insert(fault.rule.rule);
    return rules;
}

}

TEST_CASE("what is told while a run goes on is never taken back, and the careful crew is told nothing")
{
    for (const char* drill : {"back-bedroom", "kitchen-soffit"}) {
        for (const char* plan : {"careless", "good"}) {
            INFO(drill << ' ' << plan);
            const debrief::Inputs in = inputs(drill, plan);
            drill::RunOptions options;
            options.detail = 0.1;
            const job::RunLog log = drill::carry_out(in.scenario, in.plan, options).site.log;
            const std::set<std::string> at_the_end = rules_of(debrief::fault_lines(rules::marking_sheet(in.book, in.scenario, log)));
            std::size_t told = 0;
            std::set<std::string> before;
            for (std::size_t cards = 0; cards <= log.entries.size(); ++cards) {
                const std::set<std::string> now = rules_of(debrief::faults_so_far(in.book, in.scenario, first_cards(log, cards)));
                for (const std::string& rule : now) {
                    INFO("after " << cards << " cards: " << rule);
                    CHECK(at_the_end.count(rule) == 1);
                }
                for (const std::string& rule : before) {
                    INFO("taken back after " << cards << " cards: " << rule);
                    CHECK(now.count(rule) == 1);
                }
                told = std::max(told, now.size());
                before = now;
            }
            if (std::string(plan) == "good") CHECK(told == 0);
            else CHECK(told >= at_the_end.size() / 2);
        }
    }
}
