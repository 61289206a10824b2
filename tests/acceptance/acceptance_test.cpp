#include "plan_edit.hpp"

#include "debrief/outcome.hpp"
#include "drill/run.hpp"
#include "job/files.hpp"
#include "rules/marking_sheet.hpp"
#include "text/input_file.hpp"
#include "text/reading.hpp"

#include <catch2/catch.hpp>

#include <algorithm>
#include <filesystem>
#include <map>
#include <optional>

// Most behavior is tested here without C++: each file of cases/ is a plan, the shipped one with a few edits, and what the
// marks and the dust must then be.
namespace flapdoor::acceptance {

namespace {

/// What a figure of the run must be, as a multiple of the same figure of the unchanged plan.
struct Demand {
    std::string figure;
    double at_least = 0.0;
    double at_most = 1e300;

    static void fields(auto& self, auto&& visit)
    {
        visit("figure", self.figure, required);
        visit("at-least", self.at_least);
        visit("at-most", self.at_most);
    }
};

struct Case {
    int format = 1;
    std::string name;
    std::string scenario;
    std::string plan;
    std::string why;                    ///< the reasoning, for people
    std::vector<Edit> edits;
    std::vector<std::string> faults;    ///< ids of the rules that lose points, in any order
    bool is_passed = true;
    std::optional<double> lost;         ///< points; left out: not looked at
    std::optional<int> moves;           ///< fewest cards to move, put in or take out
    std::vector<Demand> demands;

    static void fields(auto& self, auto&& visit)
    {
        visit("format", self.format, required, Range{1, 1});
        visit("name", self.name, required);
        visit("scenario", self.scenario, required);
        visit("plan", self.plan, required);
        visit("why", self.why, required);
        visit("edit", self.edits);
        visit("faults", self.faults);
        visit("passed", self.is_passed);
        visit("lost", self.lost, Range{0.0, 1000.0});
        visit("moves", self.moves, Range{0, 1000});
        visit("demand", self.demands);
    }
};

const std::filesystem::path source = FLAPDOOR_SOURCE_DIR;

template <class T>
T sound(Result<T> result)
{
    std::string problems;
    if (!result)
        for (const Problem& p : result.error()) problems += describe(p) + "\n";
    INFO(problems);
    REQUIRE(result.has_value());
    return std::move(*result);
}

struct Carried {
    debrief::Outcome outcome;
    rules::MarkingSheet sheet;
    Picograms new_on_floor;     ///< lead that this job left on the work room's floor, beside what lay there before
};

Carried carry(const Case& what, const std::vector<Edit>& edits)
{
    const std::string folder = (source / "scenarios" / what.scenario).string() + "/";
    const job::Scenario scenario = sound(job::read_scenario(sound(text::read_file(folder + "scenario.toml")), "scenario.toml"));
    const std::string plan_text = sound(edited(sound(text::read_file(folder + what.plan + ".toml")), edits));
    const job::WorkPlan plan = sound(job::read_plan(plan_text, what.plan + ".toml", scenario));
    const rules::RuleBook book = sound(rules::load_rule_book((source / "scenarios/rules/federal.toml").string()));
    const drill::Run run = drill::carry_out(scenario, plan, {});
    const dust::PerClass<Amount> floor = run.site.ledger.account(run.site.surfaces[site::floor_of(run.site, run.site.work_room)].account).from_work();
    return {debrief::outcome(run), rules::marking_sheet(book, scenario, run.site.log), dust::total(floor).lead};
}

std::map<std::string, double> figures(const Carried& carried)
{
    const debrief::Outcome& outcome = carried.outcome;
    std::map<std::string, double> found;
    for (const debrief::PathwayLine& line : outcome.pathways) found[std::string(word_of(line.pathway))] = static_cast<double>(line.amount.lead.count);
    found["outside"] = static_cast<double>(outcome.outside.lead.count);
    found["floor"] = outcome.floor.si;
    found["new on the floor"] = static_cast<double>(carried.new_on_floor.count);
    found["sill"] = outcome.sill.si;
    found["hall floor"] = outcome.hall_floor.si;
    found["inside"] = static_cast<double>(outcome.inside.lead.count);
    return found;
}

void check(const Case& what, const Carried& carried)
{
    std::vector<std::string> broken;
    for (const auto* list : {&carried.sheet.broken, &carried.sheet.lines})
        for (const rules::SheetRule& rule : *list) broken.push_back(rule.rule);
    std::vector<std::string> wanted = what.faults;
    std::sort(broken.begin(), broken.end());
    std::sort(wanted.begin(), wanted.end());
    CHECK(broken == wanted);
    CHECK(carried.sheet.is_passed == what.is_passed);
    CHECK((carried.sheet.lost == rules::Quarters{}) == what.faults.empty());
    if (what.lost) CHECK(0.25 * static_cast<double>(carried.sheet.lost.count) == *what.lost);
    if (what.moves) CHECK(carried.sheet.fewest_moves == *what.moves);
}

}

TEST_CASE("every acceptance case gets the marks and moves the dust as its file says", "[acceptance]")
{
    std::vector<std::filesystem::path> files;
    for (const auto& entry : std::filesystem::directory_iterator(source / "tests/acceptance/cases")) files.push_back(entry.path());
    std::sort(files.begin(), files.end());
    REQUIRE(files.size() >= 14);
    std::map<std::string, std::map<std::string, double>> unchanged;   // figures of the plans the cases start from
    for (const auto& file : files) {
        const Case what = sound(text::load<Case>(file.string()));
        INFO(file.filename().string() + ": " + what.name);
        const Carried carried = carry(what, what.edits);
        check(what, carried);
        if (what.demands.empty()) continue;
        auto& base = unchanged[what.scenario + "/" + what.plan];
        if (base.empty()) base = figures(carry(what, {}));
        const auto now = figures(carried);
        for (const Demand& demand : what.demands) {
            REQUIRE(now.count(demand.figure) == 1);
            INFO(demand.figure << ": " << now.at(demand.figure) << " against " << base.at(demand.figure));
            CHECK(now.at(demand.figure) >= demand.at_least * base.at(demand.figure));
            CHECK(now.at(demand.figure) <= demand.at_most * base.at(demand.figure));
        }
    }
}

}
