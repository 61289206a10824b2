// "What you could see" by the light of the room, and by a flashlight held low over the floor.
#include "look.hpp"
#include "played_run.hpp"

#include "window/run/dust_pictures.hpp"
#include "window/run/plan_part.hpp"
#include "window/run/reading.hpp"

#include "dust/visibility.hpp"
#include "site/place.hpp"

#include <catch2/catch.hpp>

#include <cmath>

using namespace flapdoor;
using namespace flapdoor::window;

namespace {

/// Pixels of dust, not of light, in the part of the work room's picture about a place.
long grains_near(const Picture& picture, const plan::Raster& raster, PaperPoint at, int fineness)
{
    const std::size_t cell = raster.cell_at({Length{at.x}, Length{at.y}});
    const int left = static_cast<int>(raster.column(cell)) * fineness;
    const int top = picture.height - (static_cast<int>(raster.row(cell)) + 1) * fineness;
    long count = 0;
    for (int row = top; row < top + fineness; ++row)
        for (int column = left; column < left + fineness; ++column) {
            const Color c = picture.at(column, row);
            count += c.r == 1 && c.g == 2 && c.b == 3 && c.a > 0 ? 1 : 0;
        }
    return count;
}

constexpr Color test_grain{1, 2, 3, 255};

}

TEST_CASE("a flashlight held low shows a quarter of the dust that the room's light needs, and no less on carpet")
{
    Story story = *careless_story();
    const drill::Frame& frame = story.film.frames.front();
    const std::size_t room = story.film.work_room;
    // The engine's own factor (dust::light_factor), which an inspection by flashlight uses as well.
    CHECK(least_seen(story, frame, room, 0, dust::Light::raking) == Approx(0.25 * least_seen(story, frame, room, 0)));
    CHECK(dust::seen_probability(least_seen(story, frame, room, 0, dust::Light::raking), dust::Background::dark_floor, dust::Light::raking) == Approx(0.5));
    story.film.zones[room].floor = job::FloorKind::carpet;
    CHECK(least_seen(story, frame, room, 0, dust::Light::raking) == least_seen(story, frame, room, 0));
}

TEST_CASE("in dim light it takes more dust to be seen")
{
    Story story = *careless_story();
    const drill::Frame& frame = story.film.frames.front();
    const double ordinary = least_seen(story, frame, 0, 0);
    story.inputs.scenario.light = 0.5;
    CHECK(least_seen(story, frame, 0, 0) == Approx(2.0 * ordinary));
}

TEST_CASE("debris too fine for the room's light shows in the beam and nowhere else")
{
    const auto story = careless_story();
    const std::size_t room = story->film.work_room;
    drill::Frame frame = story->film.frames.front();
    std::fill(frame.is_sheeted.begin(), frame.is_sheeted.end(), std::uint8_t{0});
    const plan::Raster& raster = story->film.rasters[room];
    const PaperPoint spot = paper(raster.rect()).center();
    const Beam beam = beam_on(spot);
    const PaperPoint beside = spot + PaperPoint{0.9, 0.0};
    REQUIRE(beam.lights(spot));
    REQUIRE_FALSE(beam.lights(beside));
    const auto with = [&](double share_of_least, const std::optional<Beam>& by) {
        std::fill(frame.seen[room].begin(), frame.seen[room].end(), static_cast<float>(share_of_least * dust::just_seen));
        return grain_picture(*story, frame, room, test_grain, 6, by);
    };
    CHECK(grains_near(with(0.5, std::nullopt), raster, spot, 6) == 0);
    CHECK(grains_near(with(0.5, beam), raster, spot, 6) > 0);
    CHECK(grains_near(with(0.5, beam), raster, beside, 6) == 0);
    CHECK(grains_near(with(0.2, beam), raster, spot, 6) == 0); // finer still: not even then
    CHECK(grains_near(with(2.0, beam), raster, beside, 6) > 0);  // what the room's light shows stays
}

TEST_CASE("the light falls the way one looks, and ends")
{
    Beam beam = beam_on({2.0, 2.0});
    CHECK(beam.hand.y < 2.0);
    for (int i = 1; i <= 40; ++i) beam.look_at({2.0 + 0.05 * i, 2.0}); // the spot goes east
    CHECK(beam.hand.x == Approx(beam.spot.x - 0.6).margin(0.02));
    CHECK(beam.hand.y == Approx(2.0).margin(0.05));
    CHECK(beam.lights(beam.spot));
    CHECK(beam.lights(beam.spot + PaperPoint{0.4, 0.0}));
    CHECK_FALSE(beam.lights(beam.spot + PaperPoint{1.0, 0.0}));
    CHECK_FALSE(beam.lights(beam.hand - PaperPoint{0.2, 0.0}));
}

TEST_CASE("the pointer moves the flashlight over the plan, and what it shows is told")
{
    PlayedRun run;
    run.go_to(13.0);
    CHECK(run.find("flashlight") == nullptr); // it belongs to what one could see
    run.stage.press(Key::digit_2);
    run.settle();
    REQUIRE(run.find("flashlight") != nullptr);
    CHECK(run.find("plan/beam") == nullptr);
    run.stage.click("flashlight");
    run.settle();
    REQUIRE(run.find("plan/beam") != nullptr);
    const Picture before = run.stage.ui->picture_of_frame();
    const Box plan = run.find("plan-drawing")->box;
    const PaperView& view = *run.screen.state().plan_view;
    const Point room = view.at(paper(site::footprint(run.screen.story().film.zones[run.screen.story().film.work_room])).center());
    REQUIRE(plan.contains(room));
    run.stage.point_at(room + Point{20.0F, 10.0F});
    run.stage.point_at(room + Point{40.0F, 10.0F});
    run.settle();
    const PaperPoint spot = view.paper(room + Point{40.0F, 10.0F});
    CHECK(distance(run.screen.state().beam->spot, spot) < 0.02);
    const Picture after = run.stage.ui->picture_of_frame();
    CHECK(differing(before, after) > 0.002);
    // Dragging still pans.
    const Point was = view.at(PaperPoint{0.0, 0.0});
    run.stage.hold();
    run.stage.point_at(room + Point{70.0F, 10.0F});
    run.stage.let_go();
    run.settle();
    CHECK(run.screen.state().plan_view->at(PaperPoint{0.0, 0.0}).x == Approx(was.x + 30.0F).margin(1.0));
}

TEST_CASE("by keyboard alone the flashlight is switched on and moved, and says what it finds")
{
    PlayedRun run;
    run.go_to(13.0);
    run.stage.press(Key::l);
    run.settle();
    CHECK(run.screen.state().view == ViewKind::seen);
    REQUIRE(run.find("plan/beam") != nullptr);
    for (int i = 0; i < 200 && run.stage.ui->focused() != "plan/beam"; ++i) run.stage.press(Key::tab);
    REQUIRE(run.stage.ui->focused() == "plan/beam");
    const PaperPoint before = run.screen.state().beam->spot;
    for (int i = 0; i < 4; ++i) run.stage.press(Key::right);
    run.stage.press(Key::up);
    CHECK(run.screen.state().beam->spot.x == Approx(before.x + 4.0 * (0.5_ft).si));
    CHECK(run.screen.state().beam->spot.y == Approx(before.y + (0.5_ft).si));
    // Wherever it is held, it says what half of all lookers would.
    const Story& story = run.screen.story();
    bool has_found = false;
    for (int i = 0; i < 30; ++i) {
        run.stage.press(i % 10 < 5 ? Key::left : Key::down);
        run.settle();
        const auto moment = moment_of(story, run.screen.playback().now(), true);
        const auto reading = reading_at(story, moment, run.screen.state().beam->spot, run.screen.state().beam);
        if (!reading) continue;
        CHECK(reading->is_lit);
        const bool is_seen = reading->coverage >= reading->threshold;
        has_found = has_found || is_seen;
        CHECK(run.find("plan/beam")->value == (is_seen ? "You would see this" : "Looks clean"));
    }
    CHECK(has_found);
    run.stage.press(Key::l);
    run.settle();
    CHECK(run.find("plan/beam") == nullptr);
}

TEST_CASE("what one could see by flashlight looks as it did")
{
    PlayedRun run;
    run.go_to(14.6);
    run.stage.press(Key::l);
    run.settle();
    for (int i = 0; i < 200 && run.stage.ui->focused() != "plan/beam"; ++i) run.stage.press(Key::tab);
    for (int i = 0; i < 3; ++i) run.stage.press(Key::left);
    run.settle();
    compare(run.stage.ui->picture_of_frame(), "flashlight");
}
