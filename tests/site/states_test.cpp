#include "trial.hpp"

#include "text/field_types.hpp"

#include <array>

namespace flapdoor::site {

namespace {

/// A card, and what then holds or no longer holds, as job/run_log.hpp names it.
struct StateRow {
    std::string after;
    std::string card;
    std::string state, object;
    bool holds = true;
};

}

TEST_CASE("the site begins in the states in which the scenario finds it")
{
    const Trial trial;
    CHECK(trial.holds("certified-on-site"));
    CHECK(trial.holds("hvac-running"));
    CHECK_FALSE(trial.holds("window-closed", "window-1"));
    CHECK(trial.holds("window-closed", "window-2"));
    CHECK_FALSE(trial.holds("door-closed", "door"));
    CHECK_FALSE(trial.holds("register-closed", "return"));
    CHECK_FALSE(trial.holds("paint-disturbed"));
    CHECK_FALSE(trial.holds("passed"));
}

TEST_CASE("cards begin and end the states that judging looks at")
{
    const std::array rows{
        StateRow{"", R"(do = "post-signs", at = "door")", "signs-up", "door", true},
        StateRow{"signs", R"(do = "take-down-signs", at = "door", by = ["rosa"])", "signs-up", "door", false},
        StateRow{"", R"(do = "switch-hvac-off")", "hvac-running", "", false},
        StateRow{"hvac-off", R"(do = "switch-hvac-on")", "hvac-running", "", true},
        StateRow{"", R"(do = "close-window", opening = "window-1")", "window-closed", "window-1", true},
        StateRow{"", R"(do = "open-window", opening = "window-2")", "window-closed", "window-2", false},
        StateRow{"", R"(do = "close-register", opening = "supply")", "register-closed", "supply", true},
        StateRow{"", R"(do = "cover-register", opening = "supply", sheeting = "poly")", "register-covered", "supply", true},
        StateRow{"", R"(do = "cover-register", opening = "supply", sheeting = "poly", is-taped = false)", "register-covered", "supply", false},
        StateRow{"", R"(do = "cover-register", opening = "supply", sheeting = "drop-cloth")", "register-covered", "supply", false},
        StateRow{"cover-supply", R"(do = "take-down-covers")", "register-covered", "supply", false},
        StateRow{"", R"(do = "close-door", opening = "closet-door")", "door-closed", "closet-door", true},
        StateRow{"close-closet", R"(do = "cover-door", opening = "closet-door", sheeting = "poly")", "door-covered", "closet-door", true},
        StateRow{"close-closet", R"(do = "cover-door", opening = "closet-door", sheeting = "poly", is-taped = false)", "door-covered", "closet-door", false},
        StateRow{"close-closet cover-closet", R"(do = "take-down-covers")", "door-covered", "closet-door", false},
        StateRow{"", R"(do = "hang-flap", opening = "door", sheeting = "poly")", "flap-hung", "door", true},
        StateRow{"flap", R"(do = "take-down-flap", opening = "door")", "flap-hung", "door", false},
        StateRow{"", R"(do = "lay-tack-pad", opening = "door", pad = "tack-pad")", "tack-pad-down", "", true},
        StateRow{"", R"(do = "lay-tack-pad", opening = "door", pad = "doormat")", "tack-pad-down", "", false},
        StateRow{"", R"(do = "move-out", object = "dresser")", "objects-safe", "dresser", true},
        StateRow{"", R"(do = "cover-object", object = "radiator", sheeting = "poly")", "objects-safe", "radiator", true},
        StateRow{"", R"(do = "cover-object", object = "radiator", sheeting = "poly", is-sealed = false)", "objects-safe", "radiator", false},
        StateRow{"", R"(do = "cover-object", object = "radiator", sheeting = "drop-cloth")", "objects-safe", "radiator", false},
        StateRow{"", R"(do = "lay-floor-sheet", sheeting = "poly")", "floor-covered", "", true},
        StateRow{"", R"(do = "lay-floor-sheet", sheeting = "poly", is-taped = false)", "floor-covered", "", false},
        StateRow{"", R"(do = "lay-floor-sheet", sheeting = "drop-cloth")", "floor-covered", "", false},
        StateRow{"sheet", R"(do = "fold-sheeting")", "floor-covered", "", false},
        StateRow{"chips", R"(do = "close-bag", bag = "bag-1")", "waste-contained", "bag-1", true},
        StateRow{"chips", R"(do = "close-bag", bag = "bag-1", closure = "tape")", "waste-contained", "bag-1", true},
        StateRow{"chips", R"(do = "close-bag", bag = "bag-1", closure = "knot")", "waste-contained", "bag-1", false},
        StateRow{"", R"(do = "disturb-paint", component = "casing-1", technique = "drill", time = "1 min", share = 0.01)", "paint-disturbed", "", true},
        StateRow{"", R"(do = "inspect", by = ["rosa"])", "inspection-passed", "", true},
        StateRow{"", R"(do = "inspect", by = ["lee"])", "inspection-passed", "", false},
        StateRow{"inspect", R"(do = "wipe-sill", sill = "sill-2", cloth = "wipes", by = ["rosa"])", "verified", "sill-2", true},
        StateRow{"inspect", R"(do = "wipe-sill", sill = "sill-2", cloth = "wipes", by = ["lee"])", "verified", "sill-2", false},
        StateRow{"inspect sill-1 sill-2", R"(do = "wipe-floor", cloth = "wipes", by = ["rosa"])", "passed", "", true},
        StateRow{"inspect sill-1", R"(do = "wipe-floor", cloth = "wipes", by = ["rosa"])", "passed", "", false},
        StateRow{"", R"(do = "admit-occupants")", "occupants-in", "", true},
    };
    for (const StateRow& row : rows) {
        INFO("after " << row.after << "; card: " << row.card << "; state: " << row.state);
        Trial trial;
        trial.after(row.after);
        trial.then(row.card);
        CHECK(trial.holds(row.state, row.object) == row.holds);
    }
}

TEST_CASE("a wrapped bundle is contained waste")
{
    Trial trial;
    trial.first_dust().then(R"(do = "wrap-debris", component = "casing-1", sheeting = "poly", bag = "bundle")");
    CHECK(trial.holds("waste-contained", "bundle"));
}

TEST_CASE("the containment is whole only while every part of it stands")
{
    const std::string parts = "window close-return cover-return close-supply cover-supply close-closet cover-closet sheet flap";
    Trial trial;
    trial.after(parts);
    REQUIRE(trial.holds("containment-whole"));
    CHECK(trial.play(R"(do = "check-containment", by = ["rosa"])").measure("containment-whole") == 1.0);
    CHECK(trial.site.is_checked);

    for (const char* breach : {R"(do = "open-window", opening = "window-2")", R"(do = "take-down-flap", opening = "door")", R"(do = "take-down-covers")", R"(do = "fold-sheeting")"}) {
        INFO(breach);
        Trial broken;
        broken.after(parts).then(breach);
        CHECK_FALSE(broken.holds("containment-whole"));
        CHECK(broken.play(R"(do = "check-containment", by = ["rosa"])").measure("containment-whole") == 0.0);
    }
    for (const char* missing : {"window", "close-return", "cover-return", "cover-supply", "cover-closet", "sheet", "flap"}) {
        INFO("without " << missing);
        std::string rest = " " + parts + " ";
        rest = job::with(rest, " " + std::string(missing) + " ", " ");
        Trial incomplete;
        incomplete.after(rest);
        CHECK_FALSE(incomplete.holds("containment-whole"));
    }
    for (const std::string loose : {"cover-return", "cover-supply", "cover-closet"}) {
        INFO("untaped: " << loose);
        const bool is_door = loose == "cover-closet";
        Trial untaped;
        untaped.after("window close-return close-supply close-closet sheet flap");
        for (const std::string cover : {"cover-return", "cover-supply", "cover-closet"})
            if (cover != loose) untaped.after(cover);
        const std::string opening = is_door ? "closet-door" : loose.substr(6);
        untaped.then("do = \"cover-" + std::string(is_door ? "door" : "register") + "\", opening = \"" + opening + "\", sheeting = \"poly\", is-taped = false");
        CHECK_FALSE(untaped.holds("containment-whole"));
        untaped.then("do = \"repair-containment\", opening = \"" + opening + "\"");
        CHECK(untaped.holds("containment-whole"));
    }
}

TEST_CASE("a loose cover is put right by repairing it")
{
    Trial trial;
    trial.then(R"(do = "cover-register", opening = "return", sheeting = "poly", is-taped = false)");
    REQUIRE_FALSE(trial.holds("register-covered", "return"));
    trial.then(R"(do = "repair-containment", opening = "return")");
    CHECK(trial.holds("register-covered", "return"));
    trial.then(R"(do = "hang-flap", opening = "door", sheeting = "poly", is-taped = false)");
    REQUIRE_FALSE(trial.site.openings[2].flap->is_taped);
    trial.then(R"(do = "repair-containment", opening = "door")");
    CHECK(trial.site.openings[2].flap->is_taped);
}

TEST_CASE("work makes the room dirty again: what was verified no longer is")
{
    Trial trial;
    trial.after("inspect sill-1 sill-2 floor");
    REQUIRE(trial.holds("passed"));
    trial.first_dust();
    CHECK_FALSE(trial.holds("passed"));
    CHECK_FALSE(trial.holds("inspection-passed"));
    CHECK_FALSE(trial.holds("verified", "sill-1"));
    CHECK(trial.site.verification.items.empty());
}

TEST_CASE("gear, training and staging are noted on people and the site")
{
    Trial trial;
    const Worker& lee = worker(trial.site, {"lee"});
    CHECK_FALSE(lee.is_trained);
    CHECK(worker(trial.site, {"rosa"}).is_trained);
    trial.then(R"(do = "train-worker", worker = "lee", by = ["rosa"])");
    CHECK(lee.is_trained);
    trial.then(R"(do = "put-on-gear", shoe-covers = false)");
    CHECK((lee.has_respirator && lee.has_coverall && lee.has_gloves && !lee.has_covers));
    trial.then(R"(do = "take-off-gear")");
    CHECK_FALSE((lee.has_respirator || lee.has_coverall || lee.has_gloves || lee.has_covers));
    trial.then(R"(do = "stage-tools", supplies = ["poly", "tape", "poly"])");
    CHECK(trial.site.staged.size() == 2);
    trial.then(R"(do = "fetch-item", item = "broom", opening = "door")");
    CHECK(trial.site.staged.back() == job::SupplyId{"broom"});
    CHECK(lee.is_inside);
}

TEST_CASE("whoever was outside comes in to begin the work")
{
    Trial trial;
    trial.after("leave-break");
    REQUIRE_FALSE(worker(trial.site, {"lee"}).is_inside);
    trial.first_dust();
    CHECK(worker(trial.site, {"lee"}).is_inside);
    CHECK(worker(trial.site, {"lee"}).zone == trial.site.work_room);
    CHECK_FALSE(worker(trial.site, {"rosa"}).is_inside);
}

TEST_CASE("a covered object is carried out with its cover")
{
    Trial trial;
    trial.then(R"(do = "cover-object", object = "dresser", sheeting = "poly")").first_dust();
    const std::size_t cover = surface_named(trial.site, "cover of Dresser");
    strew(trial.site, cover, 0, dust::SizeClass::um_20, 1.0_g);
    const Amount before = trial.site.ledger.on(dust::Side::outside);
    trial.then(R"(do = "move-out", object = "dresser")");
    CHECK_FALSE(trial.site.surfaces[cover].is_there);
    const plan::Point where{7.0_ft, 12.0_ft};
    CHECK(trial.site.room().top[trial.site.room().raster.cell_at(where)].surface == surface_named(trial.site, "Back bedroom, floor"));
    CHECK((trial.site.ledger.on(dust::Side::outside) - before).dust >= picograms(0.99_g));   // dust and all
    CHECK_FALSE(trial.site.room().is_blocked[trial.site.room().raster.cell_at(where)]);
}

TEST_CASE("things of other rooms can be covered, and folding the sheeting leaves them alone")
{
    const std::string bench = R"(
[[object]]
id = "bench"
title = "Bench"
zone = "hall"
west = "12 ft"
south = "12 ft"
width = "1 ft 6 in"
depth = "3 ft"
height = "1 ft 6 in"
)";
    Trial trial{job::shipped_scenario(bench)};
    trial.after("hvac-off").then(R"(do = "cover-object", object = "bench", sheeting = "poly")").after("sheet");
    trial.then(R"(do = "disturb-paint", component = "casing-1", technique = "hand-scrape", is-misted = false, time = "5 min")");
    trial.then(R"(do = "wait", time = "30 min")").then(R"(do = "fold-sheeting")");
    const Surface& cover = trial.site.surfaces[surface_named(trial.site, "cover of Bench")];
    CHECK(cover.is_there);
    CHECK(trial.site.ledger.account(cover.account).side == dust::Side::outside);
    CHECK(total(cover).dust > Picograms{});     // dust of the hall fell on it
}

TEST_CASE("tools that were taken away come back with the crew for more work")
{
    Trial trial;
    trial.after("signs").first_dust();
    REQUIRE(trial.site.tools.load.free[dust::SizeClass::um_80].dust > Picograms{});
    trial.then(R"(do = "take-down-signs", at = "door", by = ["rosa"])");
    CHECK(trial.site.ledger.account(trial.site.tools.account).side == dust::Side::outside);
    const Amount by_tools = dust::total(trial.site.ledger.crossed(dust::Pathway::tools));
    CHECK(by_tools.dust > Picograms{});
    trial.first_dust();
    CHECK(trial.site.ledger.account(trial.site.tools.account).side == dust::Side::inside);
    CHECK(dust::total(trial.site.ledger.crossed(dust::Pathway::tools)).dust < by_tools.dust);
}

TEST_CASE("every kind of step can be carried out on the shipped job")
{
    std::string carpet = job::shipped_text("scenario");
    carpet = job::with(carpet, "ceiling = \"8 ft 6 in\"\nfloor = \"wood\"", "ceiling = \"8 ft 6 in\"\nfloor = \"carpet\"");
    const std::string counter = "\n[[counter]]\nid = \"shelf\"\ntitle = \"Shelf\"\nzone = \"bedroom\"\nwest = \"9 ft\"\nsouth = \"2 ft\"\nwidth = \"1 ft\"\ndepth = \"3 ft\"\n";
    Trial::kinds_done().clear();
    Trial bare{job::shipped_scenario(counter)};
    bare.after("pamphlet paint train signs dresser radiator hvac-off window close-return cover-return close-closet cover-closet sheet stage flap tape-flap runner tack-pad gear check");
    bare.then(R"(do = "stage-tools", supplies = ["broom", "two-buckets"])").first_dust();
    bare.after("leave-break enter-break").then(R"(do = "wrap-debris", component = "casing-1", sheeting = "poly", bag = "bundle")");
    bare.then(R"(do = "fetch-item", item = "rags", opening = "door")").then(R"(do = "cover-register", opening = "supply", sheeting = "poly", is-taped = false)");
    bare.then(R"(do = "repair-containment", opening = "supply")").after("fit-1 off-break chips close-bag-1 vac-bag-1 out-1 store in-1 tools walls vac-sheet");
    bare.then(R"(do = "wipe-walls", cloth = "wipes")").after("mist fold bag-sheet vacuum wipe mop").then(R"(do = "sweep-floor", broom = "broom")");
    bare.then(R"(do = "clean-beyond", reach = "2 ft", vacuum = "hepa-vacuum", mop = "two-buckets")").then(R"(do = "open-window", opening = "window-2")");
    bare.then(R"(do = "take-off-gear")");

    Trial clean{job::shipped_scenario(counter)};
    clean.after("flap inspect flap-down sill-1").then(R"(do = "wipe-counter", counter = "shelf", cloth = "wipes", by = ["rosa"])").after("sill-2 floor");
    clean.after("cover-return covers-down signs signs-down hvac-off hvac-on record report back-in").then(R"(do = "wait", time = "1 min")");

    Trial dirty;
    dirty.after("inspect");
    for (int wipe = 0; wipe < 2; ++wipe) {
        strew_all(dirty.site, surface_named(dirty.site, "South sill"), {0}, 0.5_g);
        dirty.then(R"(do = "wipe-sill", sill = "sill-1", cloth = "wipes", by = ["rosa"])");
        if (wipe == 0) dirty.then(R"(do = "re-clean", vacuum = "hepa-vacuum", cloth = "wipes", by = ["rosa"])");
    }
    dirty.then(R"(do = "repaint", component = "casing-1")").then(R"(do = "leave-site", by = ["lee"])").then(R"(do = "return-to-site", by = ["lee"])");
    dirty.then(R"(do = "wait", time = "65 min")").then(R"(do = "dry-wipe", cloth = "dry-cloths", by = ["rosa"])");

    Trial soft{job::sound(job::read_scenario(carpet, "carpet.toml"))};
    soft.then(R"(do = "vacuum-carpet", vacuum = "hepa-vacuum")");

    for (const std::string_view name : text::NamesOf<job::Step>::names) {
        INFO(name);
        CHECK(Trial::kinds_done().count(name) == 1);
    }
}

}
