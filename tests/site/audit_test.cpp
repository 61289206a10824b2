#include "trial.hpp"

#include "core/insist.hpp"

#include <functional>

namespace flapdoor::site {

namespace {

/// A site in the middle of its work: parcels in the air, dust everywhere, a bag, people inside and out.
Trial in_the_middle()
{
    Trial trial;
    trial.after("signs sheet stage flap tack-pad gear chips");
    trial.then(R"(do = "disturb-paint", component = "casing-1", technique = "hand-sand", is-misted = false, time = "2 min", share = 0.2)");
    trial.then(R"(do = "leave-work-area", opening = "door", by = ["rosa"])");
    REQUIRE(trial.site.cloud.count() > 0);
    return trial;
}

struct Change {
    const char* what;
    std::function<void(Site&)> make;
};

}

TEST_CASE("the audit finds a single picogram that no book knows of", "[audit]")
{
    const auto tamper = [](const std::function<void(Site&)>& change) {
        Trial trial = in_the_middle();
        REQUIRE_NOTHROW(audit(trial.site));
        change(trial.site);
        CHECK_THROWS_AS(audit(trial.site), BrokenPromise);
    };
    const auto k = dust::SizeClass::um_20;
    tamper([&](Site& s) { s.surfaces[0].patches[7].free[k].dust.count += 1; });
    tamper([&](Site& s) { s.surfaces[0].patches[7].bound[k].lead.count += 1; });
    tamper([&](Site& s) { s.zones[1].air[k].dust.count += 1; });
    tamper([&](Site& s) { s.zones[0].falling[k].dust.count += 1; });
    tamper([&](Site& s) { s.zones[0].reaching_walls[k].dust.count += 1; });
    tamper([&](Site& s) { s.crew[0].shoes[1].sole.load.free[k].dust.count += 1; });
    tamper([&](Site& s) { s.crew[1].clothes.load.free[k].lead.count += 1; });
    tamper([&](Site& s) { s.bags.front().content.load.free[k].dust.count += 1; });
    tamper([&](Site& s) { s.bags.front().skin.load.free[k].dust.count += 1; });
    tamper([&](Site& s) { s.store.load.free[k].dust.count += 1; });
    tamper([&](Site& s) { s.filter.load.free[k].dust.count += 1; });
    tamper([&](Site& s) { s.cloud.amount.back().dust.count += 1; });
}

TEST_CASE("the audit finds what holds less than nothing, though the sum is right", "[audit]")
{
    Trial trial;
    const auto k = dust::SizeClass::um_20;
    trial.site.surfaces[0].patches[0].free[k].dust.count -= 5;
    trial.site.surfaces[0].patches[1].free[k].dust.count += 5;
    CHECK_THROWS_AS(audit(trial.site), BrokenPromise);
}

TEST_CASE("dust cannot cross the containment without a pathway", "[audit]")
{
    Trial trial;
    const auto k = dust::SizeClass::um_20;
    const std::size_t floor = surface_named(trial.site, "Back bedroom, floor");
    const std::size_t hall = surface_named(trial.site, "Hall, floor");
    strew(trial.site, floor, 0, k, 0.001_g);
    CHECK_THROWS_AS(trial.site.ledger.move(trial.site.surfaces[floor].free(0, k), trial.site.surfaces[hall].free(0, k), k, {{1}, {}}), BrokenPromise);
    CHECK_NOTHROW(trial.site.ledger.move(trial.site.surfaces[floor].free(0, k), trial.site.surfaces[hall].free(0, k), k, {{1}, {}}, dust::Pathway::shoes));
    audit(trial.site);
}

TEST_CASE("every state that a later card can depend on is in the site's fingerprint", "[audit]")
{
    const auto k = dust::SizeClass::um_20;
    const Change changes[] = {
        {"the clock", [](Site& s) { s.now += 1.0_s; }},
        {"a parcel's place", [](Site& s) { s.cloud.x.front() += 0.001F; }},
        {"dust on another patch of the same floor", [&](Site& s) { std::swap(s.surfaces[0].patches[700].free[k], s.surfaces[0].patches[701].free[k]); }},
        {"free or bound", [&](Site& s) { std::swap(s.surfaces[0].patches[700].free[k], s.surfaces[0].patches[700].bound[k]); }},
        {"an account's side", [](Site& s) { s.ledger.move_account(s.tools.account, dust::Side::outside, dust::Pathway::tools); }},
        {"a door", [](Site& s) { s.openings[4].is_open = !s.openings[4].is_open; }},
        {"a cover's tape", [](Site& s) { s.openings[5].is_cover_taped = true; }},
        {"a sign", [](Site& s) { s.openings[4].has_sign = true; }},
        {"a flap's dowel", [](Site& s) { s.openings[2].flap->has_dowel = false; }},
        {"a flap's gap", [](Site& s) { s.openings[2].flap->gap = 1.0_ft; }},
        {"a sheet taken away", [](Site& s) { s.surfaces[s.sheeting.front()].is_there = false; }},
        {"a wet floor", [](Site& s) { s.surfaces[0].wet_until = s.now; }},
        {"a cleaned cell", [](Site& s) { s.surfaces[0].is_cleaned[3] ^= 1U; }},
        {"the blower", [](Site& s) { s.is_hvac_running = !s.is_hvac_running; }},
        {"the tack pad", [](Site& s) { s.has_tack_pad = !s.has_tack_pad; }},
        {"taped sheeting", [](Site& s) { s.is_sheet_taped = !s.is_sheet_taped; }},
        {"the sheeting's life", [](Site& s) { s.sheet = SheetState::folded; }},
        {"a staged tool", [](Site& s) { s.staged.push_back({"broom"}); }},
        {"where somebody is", [](Site& s) { s.crew[0].at.x += 1.0_ft; }},
        {"inside or out", [](Site& s) { s.crew[0].is_inside = !s.crew[0].is_inside; }},
        {"a respirator", [](Site& s) { s.crew[1].has_respirator = !s.crew[1].has_respirator; }},
        {"shoe covers", [](Site& s) { s.crew[1].has_covers = !s.crew[1].has_covers; }},
        {"training", [](Site& s) { s.crew[1].is_trained = !s.crew[1].is_trained; }},
        {"a bag's fill", [](Site& s) { s.bags.front().fill = 0.9; }},
        {"a bag closed", [](Site& s) { s.bags.front().is_closed = !s.bags.front().is_closed; }},
        {"an inspection", [](Site& s) { s.verification.is_inspected = !s.verification.is_inspected; }},
        {"dry cloths", [](Site& s) { ++s.verification.dry_cloths; }},
        {"a thing to wipe", [](Site& s) { s.verification.items.emplace_back(); }},
        {"a card that has begun", [](Site& s) { s.luck.begin_card(7); }},
        {"a component worked on", [](Site& s) { s.disturbed.push_back("sash-2"); }},
    };
    Trial before = in_the_middle();
    strew(before.site, 0, 700, k, 0.001_g);
    const std::uint64_t print = fingerprint(before.site);
    for (const Change& change : changes) {
        INFO(change.what);
        Trial after = before;
        REQUIRE(fingerprint(after.site) == print);
        change.make(after.site);
        CHECK(fingerprint(after.site) != print);
    }
}

TEST_CASE("the watcher sees every tick and the books closed at each", "[audit]")
{
    Trial trial;
    int ticks = 0;
    Time last = trial.site.now;
    trial.site.watcher = [&](const Site& site) {
        ++ticks;
        CHECK(site.now - last <= 10.0_s);
        CHECK(site.now > last);
        last = site.now;
        audit(site);
    };
    trial.then(R"(do = "disturb-paint", component = "sash-1", technique = "remove-window", time = "95 s")");
    CHECK(ticks == 10);
}

}
