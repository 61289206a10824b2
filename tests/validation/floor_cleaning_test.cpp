#include "air_sampler.hpp"
#include "stage.hpp"
#include "study.hpp"

using namespace flapdoor;
using namespace flapdoor::validation;

namespace {

constexpr dust::Lognormal house_dust{{50e-6}, 2.5};   // judgment: floors hold mostly what falls

std::string vacuum(const std::string& machine, double minutes)
{
    return "do = \"vacuum-surfaces\", target = \"floor\", vacuum = \"" + machine + "\", minutes-per-square-meter = " + std::to_string(minutes);
}
const std::string mop = "do = \"mop-floor\", mop = \"mop-two-bucket\"";

Rooms with_floor(const std::string& floor)
{
    Rooms rooms;
    rooms.floor = floor;
    return rooms;
}

/// Share of the lead that went from the middle of a floor, where the published test strips lay.
double removed_from_middle(Stage& stage, const std::vector<std::string>& cards)
{
    const std::vector<std::size_t> middle = stage.floor_patches(false);
    const double before = stage.floor_lead(middle);
    for (const std::string& card : cards) stage.play(card);
    return 1.0 - stage.floor_lead(middle) / before;
}

Stage dusty(const std::string& floor, std::uint64_t seed)
{
    Stage stage(with_floor(floor), seed);
    stage.strew(room, 1.0_gpm2, 0.01, house_dust);
    return stage;
}

}

TEST_CASE("V-06 three steps of cleaning take nearly all off a smooth floor, with either vacuum")
{
    Study study("V-06", "Yiin et al. 2004, Environ Res 96:156, abstract (read): 40 homes after renovation, vacuum, wet wash, vacuum");
    study.carry_out([&](std::uint64_t seed) {
        const auto left = [&](const std::string& machine) {
            Stage stage = dusty("smooth", seed);
            const double before = stage.floor_lead();
            stage.play(vacuum(machine, 2.5)).play(mop).play(vacuum(machine, 2.5));
            return stage.floor_lead() / before;
        };
        const double hepa = left("hepa-vacuum");
        const double household = left("shop-vacuum");
        study.note("HEPA vacuum: removed, %", 100.0 * (1.0 - hepa));
        study.note("ordinary vacuum: removed, %", 100.0 * (1.0 - household));
        study.note("left by HEPA over left by ordinary", hepa / household);
    });
    study.expect("HEPA vacuum: removed, %", 90, 100, "above 95 % where the floor was above the limits");
    study.expect("ordinary vacuum: removed, %", 90, 100, "above 95 % where the floor was above the limits");
    study.expect("left by HEPA over left by ordinary", 0.5, 2.0, "no significant difference");
}

TEST_CASE("V-08 each kind of floor gives up what was measured")
{
    Study study("V-08", "Ewers et al. 1994, AIHAJ 55:650, abstract (read): HEPA vacuuming, min/m2");
    study.carry_out([&](std::uint64_t seed) {
        Stage wood = dusty("wood", seed);
        study.note("bare wood, 5 min/m2, %", 100.0 * removed_from_middle(wood, {vacuum("hepa-vacuum", 5)}));
        Stage briefly = dusty("linoleum", seed);
        const double in_2 = removed_from_middle(briefly, {vacuum("hepa-vacuum", 2)});
        Stage linoleum = dusty("linoleum", seed);
        const double in_5 = removed_from_middle(linoleum, {vacuum("hepa-vacuum", 5)});
        Stage washed = dusty("linoleum", seed);
        study.note("linoleum, 5 min/m2, %", 100.0 * in_5);
        study.note("linoleum, from 2 to 5 min/m2, points", 100.0 * (in_5 - in_2));
        study.note("linoleum, wet wash after that, points", 100.0 * (removed_from_middle(washed, {vacuum("hepa-vacuum", 5), mop}) - in_5));
        const auto carpet = [&](double minutes, bool has_beater) {
            Stage stage = dusty("carpet", seed);
            return 100.0 * removed_from_middle(stage, {"do = \"vacuum-carpet\", vacuum = \"hepa-vacuum\", minutes-per-square-meter = " + std::to_string(minutes)
                                                       + ", has-beater-bar = " + (has_beater ? "true" : "false")});
        };
        study.note("freshly soiled carpet, beater bar, 6 min/m2, %", carpet(6, true));
        study.note("freshly soiled carpet, plain nozzle, 6 min/m2, %", carpet(6, false));
        study.note("freshly soiled carpet, plain nozzle, 2 min/m2, %", carpet(2, false));
    });
    study.expect("bare wood, 5 min/m2, %", 95, 100, "over 95 % of the total dust");
    study.expect("linoleum, 5 min/m2, %", 75, 85, "more than 75 %");
    study.expect("linoleum, from 2 to 5 min/m2, points", 0, 8, "little after the first two minutes");
    study.expect("linoleum, wet wash after that, points", 10, 30, "about 20 % in a final wet wash");
    study.expect("freshly soiled carpet, beater bar, 6 min/m2, %", 70, 100, "more than 70 % needs 6 min/m2 with the two better machines");
    study.expect("freshly soiled carpet, plain nozzle, 6 min/m2, %", 40, 75, "a third machine removed significantly less");
    study.expect("freshly soiled carpet, plain nozzle, 2 min/m2, %", 0, 70, "less than 70 %");
}

TEST_CASE("V-08 old carpet stays as dirty on top as it was")
{
    Study study("V-08", "Ewers et al. 1994, abstract (read): old household carpets");
    study.carry_out([&](std::uint64_t seed) {
        Rooms rooms = with_floor("carpet");
        rooms.old_dust = 10.0;
        rooms.old_lead = 2000.0;
        Stage stage(rooms, seed);
        const auto within_reach = [&] {
            double lead = 0.0;
            for (const std::size_t p : stage.floor_patches(false))
                for (const dust::SizeClass k : dust::all_classes()) lead += milligrams(stage.floor().patches[p].free[k].lead);
            return lead;
        };
        const double before = within_reach();
        const double removed = removed_from_middle(stage, {"do = \"vacuum-carpet\", vacuum = \"hepa-vacuum\", minutes-per-square-meter = 10.0"});
        study.note("within reach of a wipe after 10 min/m2, over before", within_reach() / before);
        study.note("removed in 10 min/m2, %", 100.0 * removed);
    });
    study.expect("within reach of a wipe after 10 min/m2, over before", 0.5, 2.0, "lead on the surface often increased");
    study.expect("removed in 10 min/m2, %", 0, 60, "could not be cleaned effectively");
}

TEST_CASE("V-05 an old cracked floor keeps half its lead, whatever the method, and a fan does not spare the worker")
{
    Study study("V-05", "Sussell et al. 1999, Appl Occup Environ Hyg 14:177, abstract (read): 18 rooms, loose paint taken off, one wet mop at the end");
    Rooms rooms = with_floor("cracked");
    rooms.is_door_open = true;
    rooms.has_registers = true;
    rooms.return_flow = 40.0 * rooms.width * rooms.depth * rooms.ceiling;   // 40 filtered air changes an hour, when it runs
    rooms.old_lead = 2600.0;
    rooms.old_dust = 3.0;
    struct Outcome {
        double left, breathed;
    };
    const auto clean_up = [&](std::uint64_t seed, bool is_wet, bool has_fan) {
        Rooms these = rooms;
        these.is_air_handling_on = has_fan;
        Stage stage(these, seed);
        const double before = stage.floor_lead();
        const std::string scrape = "do = \"disturb-paint\", component = \"paint\", technique = \"hand-scrape\", time = \"30 min\", share = 0.5, is-misted = ";
        const double breathed = breathed_lead(stage, scrape + (is_wet ? "true" : "false"));
        if (is_wet) stage.play(vacuum("hepa-vacuum", 1.0));
        else stage.play("do = \"sweep-floor\", broom = \"broom\"");
        stage.play(mop);
        return Outcome{stage.floor_lead() / before, breathed};
    };
    study.carry_out([&](std::uint64_t seed) {
        const Outcome dry = clean_up(seed, false, false);
        const Outcome wet = clean_up(seed, true, false);
        const Outcome vented = clean_up(seed, true, true);
        study.note("dry scraping, sweeping, one mop: less lead, %", 100.0 * (1.0 - dry.left));
        study.note("wet scraping, HEPA vacuum, one mop: less lead, %", 100.0 * (1.0 - wet.left));
        study.note("the same with 40 air changes an hour: less lead, %", 100.0 * (1.0 - vented.left));
        study.note("left by the dry method over left by the wet one", dry.left / wet.left);
        study.note("breathed with the wet method, ug/m3", wet.breathed);
        study.note("breathed with the fan over without", vented.breathed / wet.breathed);
    });
    for (const std::string method : {"dry scraping, sweeping, one mop", "wet scraping, HEPA vacuum, one mop", "the same with 40 air changes an hour"})
        study.expect(method + ": less lead, %", 30, 75, "2600 to 1300 ug/ft2, 50 %");
    study.expect("left by the dry method over left by the wet one", 0.5, 2.0, "methods did not differ significantly");
    study.tell("breathed with the wet method, ug/m3", "mean 24");
    study.expect("breathed with the fan over without", 0.5, 5.0, "73/24: the fan did not reduce exposures");
}

namespace {

/// Wipes of a foot square on a grid over the work room's floor, ug/ft2.
struct Wipes {
    std::vector<double> perimeter, interior;   ///< those that touch a wall, and the others

    explicit Wipes(Stage& stage)
    {
        const plan::Raster& raster = stage.site.room().raster;
        const plan::Rect& floor = raster.rect();
        constexpr Length foot = 1.0_ft;
        for (int i = 0; foot * (i + 1.0) <= floor.width; ++i)
            for (int j = 0; foot * (j + 1.0) <= floor.depth; ++j) {
                const bool is_outer = i == 0 || j == 0 || foot * (i + 2.0) > floor.width || foot * (j + 2.0) > floor.depth;
                const double found = stage.floor_lead(raster.cells_in({floor.west + foot * i, floor.south + foot * j, foot, foot}));
                (is_outer ? perimeter : interior).push_back(found);
            }
    }

    double highest() const { return std::max(*std::max_element(perimeter.begin(), perimeter.end()), *std::max_element(interior.begin(), interior.end())); }

    /// Chance that one wipe anywhere finds more than a limit.
    double found_by_one(double limit) const
    {
        const auto above = [&](double found) { return found > limit; };
        return static_cast<double>(std::count_if(perimeter.begin(), perimeter.end(), above) + std::count_if(interior.begin(), interior.end(), above))
               / static_cast<double>(perimeter.size() + interior.size());
    }

    /// Chance that two at the walls and two in the middle, analyzed together, come out above a limit.
    double found_by_four(double limit, std::uint64_t seed) const
    {
        constexpr std::uint64_t tries = 2000;
        const Luck luck{seed, Stream::inspection};
        int found = 0;
        for (std::uint64_t t = 0; t < tries; ++t) {
            double sum = 0.0;
            for (std::uint32_t n = 0; n < 4; ++n) {
                const std::vector<double>& from = n < 2 ? perimeter : interior;
                sum += from[static_cast<std::size_t>(luck.uniform(t, n) * static_cast<double>(from.size()))];
            }
            if (sum / 4.0 > limit) ++found;
        }
        return static_cast<double>(found) / static_cast<double>(tries);
    }
};

constexpr auto clearance_study = "Improving the Confidence Level in Lead Clearance, J ASTM Int 8(8), abstract (read): vacuum, mop, vacuum in four-room containments";

/// A room after sanding, cleaned by three steps.
Stage cleaned_room(std::uint64_t seed, double painted, bool does_edges, double& harder_at_the_walls)
{
    Rooms rooms;
    rooms.painted = painted;
    Stage stage(rooms, seed);
    stage.play("do = \"disturb-paint\", component = \"paint\", technique = \"machine-sand\", is-misted = false, time = \"20 min\"").wait(60);
    const std::vector<std::size_t> edge = stage.floor_patches(true);
    const std::vector<std::size_t> middle = stage.floor_patches(false);
    const double before = stage.floor_lead(edge) / stage.floor_lead(middle);
    const std::string card = vacuum("hepa-vacuum", 2.5) + ", does-edges = " + (does_edges ? "true" : "false");
    stage.play(card).play(mop).play(card);
    harder_at_the_walls = stage.floor_lead(edge) / stage.floor_lead(middle) / before;
    stage.wait(60);
    return stage;
}

}

TEST_CASE("V-10 the strip along the walls stays dirtier than the middle")
{
    Study study("V-10", clearance_study);
    study.carry_out([&](std::uint64_t seed) {
        double harder = 0.0;
        cleaned_room(seed, 0.5, true, harder);
        study.note("left along the walls over left in the middle", harder);
        cleaned_room(seed, 0.5, false, harder);
        study.note("the same when nobody goes along the walls once more", harder);
    });
    study.expect("left along the walls over left in the middle", 2.0, 5.0, "three times more difficult to clean");
    study.tell("the same when nobody goes along the walls once more", "not told apart");
}

TEST_CASE("V-10 one random wipe misses rooms that four together find")
{
    // The abstract says how many wipes, not how a failing room or a composite is judged: a room fails here when a wipe anywhere
    // would be above the limit, and a composite by the federal rule. So the share that four find is printed, not gated; that
    // they find more than one does is.
    Study study("V-10", clearance_study);
    constexpr double limit = 40.0;                     // ug/ft2, the limit on floors at the time
    constexpr double composite_limit = limit / 2.0;    // of four: the limit over half their number, 40 CFR 745.227(e)(8) (memory)
    double failing = 0.0;
    study.carry_out([&](std::uint64_t seed) {
        double harder = 0.0;
        Stage stage = cleaned_room(seed, 0.01, true, harder);   // little enough paint that cleaned rooms lie around the limit
        const Wipes wipes(stage);
        study.note("highest wipe, ug/ft2", wipes.highest());
        if (wipes.highest() <= limit) return;
        failing += 1.0;
        study.note("failing rooms: share found by one", wipes.found_by_one(limit));
        study.note("failing rooms: share found by four together", wipes.found_by_four(composite_limit, seed));
    }, 3 * draws);
    study.tell("highest wipe, ug/ft2", "a room fails when it is above 40");
    REQUIRE(failing >= 5.0);
    study.tell("failing rooms: share found by one", "see the mean");
    study.tell("failing rooms: share found by four together", "see the mean");
    const double by_one = study.mean("failing rooms: share found by one");
    const double by_four = study.mean("failing rooms: share found by four together");
    std::cout << "  " << failing << " of " << 3 * draws << " rooms fail; found on average by one wipe " << by_one << " [band 0 to 0.6; 50 % or less], by four together " << by_four
              << " [no band; 99 % or more]\n";
    CHECK(by_one <= 0.60);
    CHECK(by_four > by_one);
}
