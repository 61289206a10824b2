#include "debrief/fault_harm.hpp"

#include "debrief/fault_line.hpp"
#include "debrief/repaired_plans.hpp"
#include "debrief/study_file.hpp"
#include "debrief/study_picture.hpp"
#include "debrief/study_sheet.hpp"
#include "small_study.hpp"

#include <algorithm>

using namespace flapdoor;
using namespace flapdoor::debrief;
using small_job::count;

namespace {

RepairedPlans small_repairs()
{
    const auto plans = small_study::both();
    return repaired_plans(plans, &plans.front(), 1, 1);
}

/// The small plans and those with a fault repaired, carried out with some seeds.
Study study_with_faults(const std::vector<std::uint64_t>& seeds)
{
    const auto plans = small_study::both();
    const std::vector<RepairedPlan> repaired = small_repairs().plans;
    return carry_on(all_inputs(plans, repaired), begin_study(plans, "1.2.3", light_detail, repaired), {seeds, 2});
}

const Study& twelve_runs()
{
    static const Study study = study_with_faults(small_study::seeds(12));
    return study;
}

/// A study typed by hand: one plan, the same with fault 3 repaired; lead out in ug, and whether the cloth check passed.
struct Typed {
    double out_with, out_without;
    bool passed_with, passed_without;
};

Study typed(const std::vector<Typed>& pairs)
{
    Study study;
    study.basis.plans = {{{"quick", 1, "Quick crew"}, {}, {}}, {{"quick-without-3", 2, "the air handling is off"}, "quick", {3}}};
    study.basis.columns = {{Measured::work_floor, 0, "Floor", "ug/ft2"}, {Measured::outside, 0, {}, "ug"}, {Measured::is_verified, 0, {}, {}}};
    std::uint64_t seed = 1;
    for (const Typed& pair : pairs) {
        study.rows.push_back({seed, 0, 1, {5.0, pair.out_with, pair.passed_with ? 1.0 : 0.0}});
        study.rows.push_back({seed, 1, 1, {5.0, pair.out_without, pair.passed_without ? 1.0 : 0.0}});
        ++seed;
    }
    return study;
}

bool is_broken(const Inputs& inputs, const std::string& rule)
{
    const Job job = carry_through(inputs, 1, false);
    for (const FaultLine& fault : fault_lines(job.sheet))
        if (fault.rule.says == rule) return true;
    return false;
}

}

TEST_CASE("each fault of a plan is repaired alone, or told with the reason why not")
{
    const auto plans = small_study::both();
    const RepairedPlans found = small_repairs();
    REQUIRE(found.plans.size() >= 2);
    for (const RepairedPlan& plan : found.plans) {
        INFO(plan.rule);
        CHECK(plan.from == 1);
        CHECK(is_broken(plans[1], plan.rule));
        CHECK_FALSE(is_broken(plan.inputs, plan.rule));
        const auto read = job::read_plan(plan.inputs.plan_text.text, "repaired.toml", plan.inputs.scenario);
        REQUIRE(read);
        CHECK(drill::carry_out(plan.inputs.scenario, *read, {}).hashes.back().hash == drill::carry_out(plan.inputs.scenario, plan.inputs.plan, {}).hashes.back().hash);
    }
    // Whatever is a fault is repaired or said to be left out, once.
    std::vector<int> faults;
    for (const RepairedPlan& plan : found.plans) faults.insert(faults.end(), plan.faults.begin(), plan.faults.end());
    for (const auto& left_out : found.left_out) {
        CHECK_FALSE(left_out.why.empty());
        if (left_out.from == 1) faults.push_back(left_out.fault);
    }
    std::sort(faults.begin(), faults.end());
    CHECK(std::adjacent_find(faults.begin(), faults.end()) == faults.end());
    std::size_t roots = 0;
    for (const FaultLine& fault : fault_lines(carry_through(plans[1], 1, false).sheet)) roots += fault.kind == FaultKind::consequence ? 0 : 1;
    CHECK(faults.size() == roots);
}

TEST_CASE("harm of a fault is counted over pairs of runs with one luck")
{
    // More than a tenth and more than 10 ug; the same; a trifle; less; a tenth exactly.
    const Study study = typed({{100.0, 50.0, false, true}, {100.0, 100.0, true, true}, {5.0, 0.0, true, true}, {100.0, 120.0, false, false}, {1000.0, 900.0, false, true}});
    const std::vector<FaultHarm> harms = fault_harms(study, 0);
    REQUIRE(harms.size() == 1);
    CHECK(harms[0].faults == std::vector<int>{3});
    CHECK(harms[0].rule == "the air handling is off");
    CHECK(harms[0].pairs == 5);
    CHECK(harms[0].harmful == 2);
    CHECK(harms[0].harmless_by_luck() == 3);
    CHECK(harms[0].passed_with == 2);
    CHECK(harms[0].passed_without == 4);
    CHECK(harms[0].outside.median == Approx(5e6));      // of -20, 0, 5, 50, 100 ug
    CHECK(fault_harms(typed({{5.0, 0.0, true, true}}), 0)[0].harmless_by_luck() == 0);     // no harm ever: no luck in it
    CHECK_THROWS_AS(fault_harms(study, 1), BrokenPromise);
    CHECK_THROWS_AS(fault_harms(study, 2), BrokenPromise);

    const std::string sheet = study_sheet(study, 200);
    CHECK(sheet.find("Fault 3") != std::string::npos);
    CHECK(sheet.find("2 of 5") != std::string::npos);
    CHECK(sheet.find("3 of 5") != std::string::npos);
    CHECK(sheet.find("2 with it, 4 without") != std::string::npos);
    const std::string always = study_sheet(typed({{100.0, 50.0, false, true}}), 200), never = study_sheet(typed({{5.0, 0.0, true, true}}), 200);
    CHECK(always.find("never") != std::string::npos);
    CHECK(never.find("no harm seen") != std::string::npos);
}

TEST_CASE("a pair that is not complete yet does not count")
{
    Study study = typed({{100.0, 50.0, false, true}, {100.0, 50.0, false, true}});
    study.rows.pop_back();
    CHECK(fault_harms(study, 0)[0].pairs == 1);
    study.rows.erase(study.rows.begin() + 1);
    CHECK(fault_harms(study, 0).empty());
    CHECK(study_sheet(study, 200).find("Harmless") == std::string::npos);
}

TEST_CASE("a study of faults in parts is that made in one go, as a file too")
{
    const Study& whole = twelve_runs();
    CHECK(whole.rows.size() == 12 * whole.basis.plans.size());
    Study pooled = study_with_faults(part_of(small_study::seeds(12), 2, 2));
    CHECK_FALSE(pool(pooled, study_with_faults(part_of(small_study::seeds(12), 1, 2))));
    CHECK(pooled == whole);
    const auto read = parse_study(study_text(whole), "s.csv");
    REQUIRE(read);
    CHECK(*read == whole);
    CHECK(plans_asked_about(*read) == std::vector<std::size_t>{0, 1});
    // A study without them does not fit.
    Study plain = small_study::made(small_study::both(), 1);
    CHECK(pool(plain, whole)->find("another number of plans") == 0);
}

TEST_CASE("what is wrong with a repaired plan in a study file is told where it stands")
{
    const std::string text = study_text(twelve_runs());
    const std::size_t at = text.find("# repaired plan");
    REQUIRE(at != std::string::npos);
    const std::string line = text.substr(at, text.find('\n', at) - at);
    const auto problem = [&](const std::string& what, const std::string& instead) {
        std::string changed = line;
        const std::size_t place = changed.rfind(what);
        REQUIRE(place != std::string::npos);
        changed.replace(place, what.size(), instead);
        const auto read = parse_study(std::string(text).replace(at, line.size(), changed), "s.csv");
        return read ? std::string("none") : describe(read.error().front());
    };
    const std::string faults = line.substr(line.rfind(',') + 1, line.size() - line.rfind(',') - 2);
    CHECK(problem("," + faults, ",none").find("s.csv:8:") == 0);
    CHECK(problem("," + faults, ",none").find("numbers of faults, such as `3 7`") != std::string::npos);
    CHECK(problem("," + faults, ",0").find("numbers of faults") != std::string::npos);
    CHECK(problem("," + faults, ",1 ").find("numbers of faults") != std::string::npos);
    CHECK(problem(",careless," + faults, ",stranger," + faults).find("a plan named above") != std::string::npos);
    CHECK(problem(",careless," + faults, "").find("6 cells") != std::string::npos);
}

TEST_CASE("sheet and picture of a study tell which fault does harm, with plans asked about alone beside each other")
{
    const Study& study = twelve_runs();
    const std::vector<FaultHarm> harms = fault_harms(study, 1);
    REQUIRE(harms.size() + 2 == study.basis.plans.size());
    for (std::size_t i = 1; i < harms.size(); ++i) CHECK(harms[i - 1].harmful >= harms[i].harmful);
    const std::string sheet = study_sheet(study, 160), picture = study_picture(study);
    CHECK(count(sheet, "which fault does harm") == 1);      // the careful plan has none
    CHECK(count(sheet, "-without-") == 0);
    CHECK(count(picture, "How often each fault did harm") == 2);    // drawn and described
    for (const FaultHarm& harm : harms) {
        CHECK(harm.pairs == 12);
        if (harm.harmful > 0) CHECK(picture.find("harm in " + std::to_string(harm.harmful) + " of 12") != std::string::npos);
        else CHECK(picture.find("No harm seen in any run") != std::string::npos);
    }
    const std::string plain = study_picture(small_study::made(small_study::both(), 2));
    CHECK(count(plain, "How often each fault") == 0);
}
