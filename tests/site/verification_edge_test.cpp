#include "trial.hpp"

#include "site/checking.hpp"

#include <algorithm>

// The cloth check of 40 CFR 745.85(b)(1)(ii) where the ordinary path does not lead: an extra wet cloth while an item waits,
// two items waiting, a missing card, the renovator off the site, work in between.
namespace flapdoor::site {

namespace {

const std::string rosa = ", by = [\"rosa\"]";
const std::string re_clean = R"(do = "re-clean", vacuum = "hepa-vacuum", cloth = "wipes")";
const std::string dry_wipe = R"(do = "dry-wipe", cloth = "dry-cloths")" + rosa;

std::string wipe_sill(int n) { return "do = \"wipe-sill\", sill = \"sill-" + std::to_string(n) + "\", cloth = \"wipes\"" + rosa; }
std::string wipe_floor(int section) { return "do = \"wipe-floor\", section = " + std::to_string(section) + ", cloth = \"wipes\"" + rosa; }
std::string wait(const std::string& time) { return "do = \"wait\", time = \"" + time + "\""; }

Item& item(Trial& trial, const std::string& name)
{
    for (Item& i : trial.site.verification.items)
        if (i.name == name) return i;
    FAIL("no item " << name);
    return trial.site.verification.items.front();
}

void soil(Trial& trial, const std::string& name)
{
    const Item& dirty = item(trial, name);
    strew(trial.site, dirty.surface, dirty.patches.front(), dust::SizeClass::um_20, 0.02_g);
}

/// Wiped dark, cleaned again and wiped dark once more.
void fail_twice(Trial& trial, const std::string& name, const std::string& wipe)
{
    soil(trial, name);
    REQUIRE(trial.play(wipe).measure("result", name) == 1.0);
    trial.then(re_clean + rosa);
    soil(trial, name);
    REQUIRE(trial.play(wipe).measure("result", name) == 1.0);
    REQUIRE(item(trial, name).state == ItemState::waiting);
}

}

TEST_CASE("T11: a wet cloth on what waits changes nothing but that the surface is wet again", "[verification]")
{
    Trial trial;
    trial.after("inspect");
    fail_twice(trial, "sill-1", wipe_sill(1));
    const Time second_fail = item(trial, "sill-1").second_fail;
    trial.then(wait("50 min"));
    const int cloths = trial.site.verification.wet_cloths;
    const Played extra = trial.play(wipe_sill(1));
    CHECK(extra.outcome == "done");
    CHECK(std::none_of(extra.measured.begin(), extra.measured.end(), [](const job::Measure& m) { return m.name == "result"; }));
    CHECK(item(trial, "sill-1").state == ItemState::waiting);
    CHECK(item(trial, "sill-1").second_fail == second_fail);
    CHECK(trial.site.verification.wet_cloths == cloths + 1);
    trial.then(wait("10 min"));     // the hour is over; the sill was wiped 10 minutes ago and takes 25 to dry
    const Played early = trial.play(dry_wipe);
    CHECK(early.measure("waited", "sill-1") >= (1.0_h).si);
    CHECK(early.measure("is-dry", "sill-1") == 0.0);
    CHECK(item(trial, "sill-1").state == ItemState::waiting);
    trial.then(wait("20 min")).then(dry_wipe);
    CHECK(item(trial, "sill-1").state == ItemState::passed);
}

TEST_CASE("a card that wipes whatever is due leaves alone what waits", "[verification]")
{
    Trial trial;
    trial.after("inspect");
    fail_twice(trial, "floor 1", wipe_floor(1));
    const Time wet_until = item(trial, "floor 1").wet_until;
    trial.then(R"(do = "wipe-floor", cloth = "wipes")" + rosa);
    CHECK(item(trial, "floor 1").wet_until == wet_until);
}

TEST_CASE("two items that wait have a clock each", "[verification]")
{
    Trial trial;
    trial.after("inspect");
    fail_twice(trial, "sill-1", wipe_sill(1));
    trial.then(wait("30 min"));
    fail_twice(trial, "sill-2", wipe_sill(2));
    trial.then(wait("35 min"));
    const Played first = trial.play(dry_wipe);
    CHECK(first.measure("result", "sill-1") == 0.0);
    CHECK(first.measure("result", "sill-2") == 2.0);
    CHECK(item(trial, "sill-1").state == ItemState::passed);
    CHECK(item(trial, "sill-2").state == ItemState::waiting);
    trial.then(wait("30 min")).then(dry_wipe);
    CHECK(item(trial, "sill-2").state == ItemState::passed);
}

TEST_CASE("what passed stays passed while another section is cleaned again", "[verification]")
{
    Trial trial;
    trial.after("inspect").then(wipe_floor(1));
    REQUIRE(item(trial, "floor 1").state == ItemState::passed);
    soil(trial, "floor 2");
    trial.then(wipe_floor(2)).then(re_clean + rosa);
    CHECK(item(trial, "floor 1").state == ItemState::passed);
    CHECK(item(trial, "floor 2").state == ItemState::second_wipe_due);
    CHECK(trial.holds("verified", "floor 1"));
}

TEST_CASE("without a card there is nothing to compare a cloth with", "[verification]")
{
    job::Scenario bare = job::shipped_scenario();
    std::erase_if(bare.supplies, [](const job::Supply& supply) { return supply.kind == job::SupplyKindOf::card; });
    Trial trial{bare};
    trial.then(R"(do = "inspect", by = ["rosa"])");
    for (const std::string& wipe : {wipe_sill(1), wipe_floor(1)}) CHECK(trial.play(wipe).outcome == "refused: there is no card to compare the cloth with");
    CHECK(trial.site.verification.wet_cloths == 0);
}

TEST_CASE("the renovator who is called away verifies nothing until he is back", "[verification]")
{
    Trial trial;
    trial.after("inspect").then(R"(do = "leave-site", by = ["rosa"])");
    CHECK_FALSE(trial.holds("certified-on-site"));
    CHECK(trial.holds("certified-reachable"));
    CHECK(trial.play(wipe_sill(1)).outcome == "refused: Rosa, certified renovator is off the site");
    CHECK(trial.play(R"(do = "return-to-site", by = ["lee"])").outcome == "refused: Lee, worker is on the site already");
    trial.then(R"(do = "return-to-site", by = ["rosa"])");
    CHECK(trial.holds("certified-on-site"));
    CHECK(trial.play(wipe_sill(1)).measure("result", "sill-1") == 0.0);

    Trial silent;
    silent.then(R"(do = "leave-site", is-reachable = false, by = ["rosa"])");
    CHECK_FALSE(silent.holds("certified-reachable"));
}

TEST_CASE("only sills of the work area are on the list, also where a new window was set", "[verification]")
{
    job::Scenario scenario = job::shipped_scenario();
    job::Opening far = *find_by_id(scenario.openings, job::OpeningId{"window-1"});
    far.id = {"far-window"};
    far.title = "Window of the house";
    far.zone = {"house"};
    far.from = 5.0_ft;
    scenario.openings.push_back(far);
    scenario.sills.push_back({{"far-sill"}, "Sill of the house", {"far-window"}});
    Trial trial{scenario};
    trial.then(R"(do = "inspect", by = ["rosa"])");
    const auto is_listed = [&](const std::string& name) {
        return std::any_of(trial.site.verification.items.begin(), trial.site.verification.items.end(), [&](const Item& i) { return i.name == name; });
    };
    CHECK(is_listed("sill-1"));
    CHECK(is_listed("sill-2"));
    CHECK_FALSE(is_listed("far-sill"));
}

TEST_CASE("a night changes nothing; work on paint begins the check anew", "[verification]")
{
    Trial trial;
    trial.after("inspect").then(wipe_sill(1));
    REQUIRE(item(trial, "sill-1").state == ItemState::passed);
    trial.then(wait("14 h"));
    CHECK(item(trial, "sill-1").state == ItemState::passed);
    CHECK(trial.holds("inspection-passed"));
    trial.first_dust();
    CHECK_FALSE(trial.holds("inspection-passed"));
    CHECK_FALSE(trial.holds("verified", "sill-1"));
    CHECK(trial.site.verification.items.empty());
}

TEST_CASE("painting a prepared surface makes no dust and opens nothing again", "[verification]")
{
    Trial trial;
    trial.after("inspect").then(wipe_sill(1)).then(R"(do = "repaint", component = "casing-1")");
    CHECK(item(trial, "sill-1").state == ItemState::passed);
}

TEST_CASE("what is measured is what lies there: reach at the work, the margin that was cleaned, debris beyond", "[verification]")
{
    Trial trial;
    trial.then(R"(do = "lay-floor-sheet", sheeting = "poly", reach = "6 ft")");
    const Played near = trial.play(R"(do = "disturb-paint", component = "casing-1", technique = "hand-scrape", time = "1 min", share = 0.3)");
    CHECK(near.measure("reach", "casing-1") >= (6.0_ft).si);
    CHECK(near.measure("debris-beyond", "casing-1") == 0.0);

    Trial bare;
    const Played none = bare.play(R"(do = "disturb-paint", component = "casing-1", technique = "hand-scrape", time = "1 min", share = 0.3)");
    CHECK(none.measure("reach", "casing-1") < 0.3);
    CHECK(none.measure("debris-beyond", "casing-1") == 1.0);

    for (const auto& [reach, least, most] : {std::tuple{"2 ft", 2.0_ft, 2.6_ft}, std::tuple{"1 ft", 1.0_ft, 1.6_ft}}) {
        Trial strip;
        const double margin = strip.play(std::string("do = \"clean-beyond\", vacuum = \"hepa-vacuum\", mop = \"two-buckets\", reach = \"") + reach + "\"").measure("cleaned-margin");
        CHECK(margin >= least.si);
        CHECK(margin < most.si);
    }

    Trial backing;
    const std::string mop = R"(do = "mop-floor", mop = "two-buckets", path = )";
    CHECK(backing.play(R"(do = "vacuum-surfaces", target = "floor", vacuum = "hepa-vacuum")").measure("stepped-on-cleaned", "lee") == 0.0);
    CHECK(backing.play(mop + "\"toward-door\"").measure("stepped-on-cleaned", "lee") == 0.0);
    const Played forth = backing.play(mop + "\"from-door\"");
    CHECK(std::any_of(forth.measured.begin(), forth.measured.end(), [](const job::Measure& m) { return m.name == "stepped-on-cleaned" && m.value > 0.0; }));
}

TEST_CASE("tape from the roll counts for a flap that was hung without", "[verification]")
{
    Trial trial;
    trial.then(R"(do = "hang-flap", opening = "door", sheeting = "poly", is-taped = false)");
    CHECK_FALSE(trial.holds("flap-taped", "door"));
    trial.then(R"(do = "tape-seam", opening = "door", tape = "masking-tape")");
    CHECK_FALSE(trial.holds("flap-taped", "door"));
    trial.then(R"(do = "tape-seam", opening = "door", tape = "tape")");
    CHECK(trial.holds("flap-taped", "door"));
    trial.then(R"(do = "take-down-flap", opening = "door")");
    CHECK_FALSE(trial.holds("flap-taped", "door"));
}

}
