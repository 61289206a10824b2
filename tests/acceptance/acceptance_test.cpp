#include "plan_edit.hpp"

#include "debrief/outcome.hpp"
#include "drill/run.hpp"
#include "job/files.hpp"
#include "rules/marking_sheet.hpp"
#include "text/input_file.hpp"
#include "text/reading.hpp"

#include <catch2/catch.hpp>
#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <filesystem>
#include <map>
#include <optional>

// Most behavior is tested here without C++: each file of cases/ is a plan, the shipped one with a few edits, and what the
// marks and the dust must then be.
namespace flapdoor::acceptance {

namespace {

/// Light runs do for marks and for figures.
constexpr double detail = 0.125;

/// What a figure must be, as a multiple of the same figure of the unchanged plan: in the median of a few light pairs of runs, so that
/// a bag that happens to burst decides nothing.
struct Demand {
    std::string figure;
    double at_least = 0.0;
    std::optional<double> at_most;

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
    Picograms new_when_checked; ///< the same just before somebody first looks whether it is clean; what is found then is cleaned again
};

Picograms new_on_floor(const site::Site& site)
{
    return dust::total(site.ledger.account(site.surfaces[site::floor_of(site, site.work_room)].account).from_work()).lead;
}

bool is_check(std::string_view step) { return step == job::Inspect::name || step == job::WipeSill::name || step == job::WipeFloor::name || step == job::WipeCounter::name; }

Carried carry(const Case& what, const std::vector<Edit>& edits, std::uint64_t seed = 1)
{
    const std::string folder = (source / "scenarios" / what.scenario).string() + "/";
    const job::Scenario scenario = sound(job::read_scenario(sound(text::read_file(folder + "scenario.toml")), "scenario.toml"));
    const std::string plan_text = sound(edited(sound(text::read_file(folder + what.plan + ".toml")), edits));
    const job::WorkPlan plan = sound(job::read_plan(plan_text, what.plan + ".toml", scenario));
    const rules::RuleBook book = sound(rules::load_rule_book((source / "scenarios/rules/federal.toml").string()));
    drill::RunOptions options;
    options.seed = seed;
    options.detail = detail;
    options.hashes_every_card = false;
    Picograms when_checked;
    bool is_checked = false;
    options.after_card = [&](const site::Site& site) {
        is_checked = is_checked || is_check(site.log.entries.back().step);
        if (!is_checked) when_checked = new_on_floor(site);
    };
    const drill::Run run = drill::carry_out(scenario, plan, options);
    return {debrief::outcome(run), rules::marking_sheet(book, scenario, run.site.log), new_on_floor(run.site), when_checked};
}

std::map<std::string, double> figures(const Carried& carried)
{
    const debrief::Outcome& outcome = carried.outcome;
    std::map<std::string, double> found;
    for (const debrief::PathwayLine& line : outcome.pathways) found[std::string(word_of(line.pathway))] = static_cast<double>(line.amount.lead.count);
    found["outside"] = static_cast<double>(outcome.outside.lead.count);
    found["floor"] = outcome.floor.si;
    found["new on the floor"] = static_cast<double>(carried.new_on_floor.count);
    found["new on the floor when first checked"] = static_cast<double>(carried.new_when_checked.count);
    found["sill"] = outcome.sill.si;
    found["hall floor"] = outcome.hall_floor.si;
    found["inside"] = static_cast<double>(outcome.inside.lead.count);
    for (const debrief::BreathedLine& line : outcome.breathed) found["breathed"] += line.lead.si;
    return found;
}

using Figures = std::map<std::string, double>;
constexpr std::size_t pairs = 5;

/// The figures of light runs with the seeds from 1 on.
std::vector<Figures> light_runs(const Case& what, const std::vector<Edit>& edits)
{
    std::vector<Figures> runs;
    for (std::size_t i = 0; i < pairs; ++i) runs.push_back(figures(carry(what, edits, i + 1)));
    return runs;
}

/// The middle one of what the pairs have beyond so many times the figure of the unchanged plan.
double beyond(const std::vector<Figures>& now, const std::vector<Figures>& base, const std::string& figure, double times)
{
    std::array<double, pairs> differences{};
    for (std::size_t i = 0; i < pairs; ++i) differences[i] = now[i].at(figure) - times * base[i].at(figure);
    std::sort(differences.begin(), differences.end());
    return differences[pairs / 2];
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
    std::map<std::string, std::vector<Figures>> unchanged;   // of the plans the cases start from
    for (const auto& file : files) {
        const Case what = sound(text::load<Case>(file.string()));
        INFO(file.filename().string() + ": " + what.name);
        const Carried carried = carry(what, what.edits);
        check(what, carried);
        if (what.demands.empty()) continue;
        auto& base = unchanged[what.scenario + "/" + what.plan];
        if (base.empty()) base = light_runs(what, {});
        const std::vector<Figures> now = light_runs(what, what.edits);
        for (const Demand& demand : what.demands) {
            REQUIRE(now.front().count(demand.figure) == 1);
            std::string pairs_of_it = demand.figure + ":";
            for (std::size_t i = 0; i < pairs; ++i) pairs_of_it += fmt::format(" {:.4g} against {:.4g};", now[i].at(demand.figure), base[i].at(demand.figure));
            INFO(pairs_of_it);
            CHECK(beyond(now, base, demand.figure, demand.at_least) >= 0.0);
            if (demand.at_most) CHECK(beyond(now, base, demand.figure, *demand.at_most) <= 0.0);
        }
    }
}

}
