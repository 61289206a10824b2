// The strip below the plan: one wall of the work room as one sees it from inside, the section, the flap door.
#include "look.hpp"
#include "played_run.hpp"
#include "played_shell.hpp"
#include "speaking.hpp"

#include "window/run/dust_pictures.hpp"
#include "window/run/hung_flap.hpp"
#include "window/run/wall_elevation.hpp"

#include <catch2/catch.hpp>

#include <set>

using namespace flapdoor;
using namespace flapdoor::window;

namespace {

double feet(double meters) { return meters / (1.0_ft).si; }

std::vector<std::string> ids(const std::vector<ElevationThing>& things)
{
    std::vector<std::string> names;
    for (const ElevationThing& thing : things) names.push_back(thing.id);
    return names;
}

const Strip all_strips[] = {Strip::section, Strip::north, Strip::east, Strip::south, Strip::west, Strip::flap};

/// Somewhere in the run a flap door hangs.
Time with_flap(const Story& story)
{
    for (const drill::Frame& frame : story.film.frames)
        if (hung_flap(story, frame.at)) return frame.at;
    return story.end;
}

std::size_t differing_in(const Picture& a, const Picture& b, const Box& box)
{
    std::size_t count = 0;
    for (int y = static_cast<int>(box.low.y); y < static_cast<int>(box.high.y); ++y)
        for (int x = static_cast<int>(box.low.x); x < static_cast<int>(box.high.x); ++x) count += a.at(x, y) == b.at(x, y) ? 0 : 1;
    return count;
}

}

TEST_CASE("a wall's openings stand where one sees them from inside")
{
    const job::Scenario bedroom = inputs_of_the_house("good.toml").scenario; // 10 ft by 13 ft
    const auto at = [&](job::WallSide side) { return openings_in(room_wall(bedroom, side), bedroom); };
    // Facing west the south end lies to the left, facing east the north end, facing south the east end.
    const auto west = at(job::WallSide::west);
    REQUIRE(ids(west) == std::vector<std::string>{"window-1", "supply", "window-2"});
    CHECK(feet(west[0].box.low.x) == Approx(2.0));
    CHECK(feet(west[0].box.high.x) == Approx(5.0));
    CHECK(feet(west[0].box.low.y) == Approx(2.5));
    CHECK(feet(west[0].box.high.y) == Approx(7.0));
    const auto east = at(job::WallSide::east);
    REQUIRE(ids(east) == std::vector<std::string>{"door"});
    CHECK(feet(east[0].box.low.x) == Approx(13.0 - 9.5 - 8.0 / 3.0));
    const auto south = at(job::WallSide::south);
    REQUIRE(ids(south) == std::vector<std::string>{"closet-door"});
    CHECK(feet(south[0].box.low.x) == Approx(10.0 - 6.75 - 2.5));
    const auto north = at(job::WallSide::north);
    REQUIRE(ids(north) == std::vector<std::string>{"return"});
    CHECK(feet(north[0].box.low.x) == Approx(2.0));
}

TEST_CASE("a door that belongs to the room behind shows in the wall it leads through")
{
    job::Scenario bedroom = inputs_of_the_house("good.toml").scenario;
    for (job::Opening& opening : bedroom.openings)
        if (opening.id.name == "door") opening.zone = {"hall"}, opening.leads_to = {"bedroom"}, opening.wall = job::WallSide::west;
    CHECK(ids(openings_in(room_wall(bedroom, job::WallSide::east), bedroom)) == std::vector<std::string>{"door"});
    CHECK(openings_in(room_wall(bedroom, job::WallSide::west), bedroom).size() == 3);
}

TEST_CASE("a stretch of wall that is worked on is as tall as its area asks for, about the height of the work")
{
    const std::string drill = FLAPDOOR_SOURCE_DIR "/scenarios/daycare-classroom/";
    const job::Scenario room = debrief::read_inputs(drill + "scenario.toml", drill + "good.toml", {FLAPDOOR_SOURCE_DIR "/scenarios/rules/federal.toml"}).value().scenario;
    const auto parts = parts_of(room_wall(room, job::WallSide::east), room);
    REQUIRE(ids(parts) == std::vector<std::string>{"door-wall"}); // 18 ft2 over 6.5 ft, at 4 ft
    CHECK(feet(parts[0].box.width()) == Approx(6.5));
    CHECK(feet(parts[0].box.height()) == Approx(18.0 / 6.5));
    CHECK(feet(parts[0].box.center().y) == Approx(4.0));
    CHECK(parts_of(room_wall(room, job::WallSide::north), room).empty());
}

TEST_CASE("lead on a wall is read where it lies, from the left as one looks at it")
{
    const auto story = careless_story();
    drill::Frame frame = story->film.frames.front();
    frame.walls = {{job::WallSide::south, 2, {1.0F, 2.0F, 3.0F, 4.0F, 5.0F, 6.0F}}, {job::WallSide::north, 2, {1.0F, 2.0F, 3.0F, 4.0F, 5.0F, 6.0F}}};
    const job::Scenario& bedroom = story->inputs.scenario;
    const RoomWall south = room_wall(bedroom, job::WallSide::south);
    const RoomWall north = room_wall(bedroom, job::WallSide::north);
    CHECK(lead_on_wall(frame, north, {0.01, 0.1}) == 1.0);
    CHECK(lead_on_wall(frame, north, {north.width() - 0.01, north.ceiling - 0.1}) == 6.0);
    CHECK(lead_on_wall(frame, south, {0.01, 0.1}) == 3.0); // the film counts from the west, which lies to the right now
    CHECK(lead_on_wall(frame, south, {south.width() - 0.01, south.ceiling - 0.1}) == 4.0);
    CHECK_FALSE(lead_on_wall(frame, south, {-0.1, 0.1}));
    CHECK_FALSE(lead_on_wall(frame, room_wall(bedroom, job::WallSide::west), {1.0, 1.0}));
}

TEST_CASE("after the sanding every wall carries lead, most of it the one that is sanded")
{
    const auto story = careless_story();
    const drill::Frame& frame = story->film.at(Time{10.5 * 3600.0});
    double on_west = 0.0, on_north = 0.0;
    for (double y = 0.1; y < 2.5; y += 0.2)
        for (double share = 0.05; share < 1.0; share += 0.1) {
            const RoomWall west = room_wall(story->inputs.scenario, job::WallSide::west), north = room_wall(story->inputs.scenario, job::WallSide::north);
            on_west += lead_on_wall(frame, west, {west.width() * share, y}).value();
            on_north += lead_on_wall(frame, north, {north.width() * share, y}).value();
        }
    CHECK(on_north > 0.0);
    CHECK(on_west > on_north);
}

TEST_CASE("a wall is chosen on the plan, on the key plan, and by key; the title says which")
{
    PlayedRun run;
    run.go_to(9.9);
    REQUIRE(run.find("strip-title") != nullptr);
    const std::string section = run.find("strip-title")->label;
    CHECK(section.find("Section") == 0);
    // On the plan, by mouse.
    const std::pair<const char*, const char*> walls[] = {{"north", "North wall"}, {"west", "West wall"}, {"south", "South wall"}, {"east", "East wall"}};
    for (const auto& [name, title] : walls) {
        const Spot* wall = run.find(std::string("plan/wall/") + name);
        REQUIRE(wall != nullptr);
        run.stage.click(wall->box.low + Point{10.0F, 10.0F});
        run.settle();
        CHECK(run.find("strip-title")->label.find(title) == 0);
        CHECK(run.find(std::string("strip/") + name)->is_on);
        CHECK(run.find(std::string("plan/wall/") + name)->is_on);
    }
    // A drag from a wall pans the plan and chooses nothing.
    const Box before = run.find("plan/wall/north")->box;
    run.stage.point_at(before.low + Point{12.0F, 12.0F});
    run.stage.hold();
    for (int i = 1; i <= 8; ++i) run.stage.point_at(before.low + Point{12.0F + 5.0F * static_cast<float>(i), 12.0F});
    run.stage.let_go();
    run.settle();
    CHECK(run.find("strip-title")->label.find("East wall") == 0);
    CHECK(run.find("plan/wall/north")->box.low.x == Approx(before.low.x + 40.0F).margin(7.0)); // the first pixels may be a slip
    // On the key plan.
    run.stage.click("strip/south");
    run.settle();
    CHECK(run.find("strip-title")->label.find("South wall") == 0);
    // By key alone: W goes round, Shift + W comes back.
    run.stage.press(Key::w);
    run.settle();
    CHECK(run.find("strip-title")->label.find("West wall") == 0);
    run.stage.press(Key::w, {.shift = true});
    run.settle();
    CHECK(run.find("strip-title")->label.find("South wall") == 0);
    std::set<std::string> titles;
    for (int i = 0; i < 6; ++i) {
        titles.insert(run.find("strip-title")->label);
        run.stage.press(Key::w);
        run.settle();
    }
    CHECK(titles.count(section) == 1);
    CHECK(titles.size() == (hung_flap(run.screen.story(), run.screen.playback().now()) ? 6U : 5U));
}

TEST_CASE("the walls are stops of the Tab key, and Enter chooses one")
{
    PlayedRun run;
    for (int i = 0; i < 200 && run.stage.ui->focused() != "strip/east"; ++i) run.stage.press(Key::tab);
    REQUIRE(run.stage.ui->focused() == "strip/east");
    run.stage.press(Key::enter);
    run.settle();
    CHECK(run.find("strip-title")->label.find("East wall") == 0);
}

TEST_CASE("the flap door is on the strip while one hangs, and its sheets move while somebody walks")
{
    PlayedRun run;
    run.screen.playback().go_to(run.screen.story().start);
    run.settle();
    REQUIRE(run.find("strip/flap") != nullptr);
    CHECK_FALSE(run.find("strip/flap")->is_enabled);
    run.screen.playback().go_to(with_flap(run.screen.story()));
    run.settle();
    REQUIRE(run.find("strip/flap")->is_enabled);
    run.stage.click("strip/flap");
    run.settle();
    CHECK(run.find("strip-title")->label.find("Flap door") == 0);
    run.screen.state().strip_flap.films().wait();
    run.settle();
    REQUIRE(run.find("strip-flap/walk") != nullptr);
    const Picture hanging = run.stage.ui->picture_of_frame();
    const Box strip = run.find("section")->box;
    run.stage.click("strip-flap/walk");
    CHECK(run.screen.is_moving());
    run.stage.input.seconds = 0.25F;
    for (int i = 0; i < 6; ++i) run.stage.frame();
    CHECK(run.screen.state().strip_flap.now().si == Approx(1.5).margin(0.3));
    CHECK(differing_in(hanging, run.stage.ui->picture_of_frame(), {strip.low, {strip.low.x + 170.0F, strip.high.y}}) > 400);
    // Gone when it is taken down again.
    run.screen.playback().go_to(run.screen.story().start);
    run.settle();
    CHECK(run.find("strip-title")->label.find("Section") == 0);
}

TEST_CASE("what hangs, what is worked on and what flies changes the wall's picture")
{
    PlayedRun run;
    run.screen.state().strip = Strip::west;
    const auto strip_at = [&](double hour) {
        run.go_to(hour);
        return run.stage.ui->picture_of_frame();
    };
    const Picture found = strip_at(8.01);
    const Picture sanding = strip_at(9.95);
    const Box strip = run.find("elevation")->box;
    CHECK(differing_in(found, sanding, strip) > 1000);
    run.screen.state().view = ViewKind::airborne;
    run.settle();
    CHECK(differing_in(sanding, run.stage.ui->picture_of_frame(), strip) > 1000);
    // The loading of a panel is told at the pointer, in the view of what lies there.
    run.screen.state().view = ViewKind::there;
    run.settle();
    const Picture bare = run.stage.ui->picture_of_frame();
    run.stage.point_at(strip.center());
    run.settle();
    CHECK(differing_in(bare, run.stage.ui->picture_of_frame(), run.stage.ui->screen()) > 1500);
}

TEST_CASE("every wall shows its words whole and lays no names on each other, at every text size in both languages")
{
    for (const text::Language language : {text::Language::english, text::Language::spanish}) {
        const Speaking speaking(language);
        for (const float scale : {1.0F, 1.5F, 2.0F})
            for (const Point size : {Point{1440.0F, 900.0F}, Point{1024.0F, 700.0F}}) {
                PlayedRun run(scale, size);
                run.screen.playback().go_to(with_flap(run.screen.story()));
                for (const Strip strip : all_strips)
                    for (const Page page : {Page::steps, Page::section}) {
                        run.screen.state().strip = strip;
                        run.show(page);
                        INFO(static_cast<int>(strip) << " at " << scale << ", " << size.x << " x " << size.y << ", " << text::code_of(language));
                        for (const std::string& words : run.stage.ui->cut_words()) UNSCOPED_INFO(words);
                        CHECK(run.stage.ui->cut_words().empty());
                        std::vector<Box> names;
                        for (const Spot& spot : run.stage.ui->spots())
                            if (spot.name.rfind("elevation/", 0) == 0) names.push_back(spot.box);
                        for (std::size_t i = 0; i < names.size(); ++i)
                            for (std::size_t k = i + 1; k < names.size(); ++k) CHECK_FALSE(names[i].overlaps(names[k]));
                    }
            }
    }
}

TEST_CASE("in the drill room the walls are chosen too, and a flap door that was hung comes on the strip")
{
    const TestPlaces folder("strip-in-room");
    const auto drill = read_drills(folder.places.scenarios, folder.places.book).find("one-window");
    PlayedShell played(folder.places);
    played.go_to(room_screen(played.shell, {drill, Mode::step_by_step, 1, {}}, drill->careful.scenario));
    REQUIRE(played.wait_for_room());
    played.stage.press(Key::w);
    played.settle();
    CHECK(played.find("strip-title")->label.find("North wall") == 0);
    const Spot* wall = played.find("plan/wall/east");
    REQUIRE(wall != nullptr);
    played.stage.click(wall->box.low + Point{10.0F, 10.0F});
    played.settle();
    CHECK(played.find("strip-title")->label.find("East wall") == 0);
    CHECK_FALSE(played.find("strip/flap")->is_enabled);
    for (const job::Card& card : drill->careful.plan.cards) {
        played.room()->take_up(card);
        REQUIRE_FALSE(played.room()->draft()->why_not.has_value());
        played.room()->do_it();
        REQUIRE(played.wait_for_room());
        if (std::holds_alternative<job::HangFlap>(card.step)) break;
    }
    played.stage.press(Key::end);
    REQUIRE(played.wait_until([&] { return played.find("strip/flap")->is_enabled; }));
    REQUIRE(played.press_on("strip/flap", Key::space));
    CHECK(played.find("strip-title")->label.find("Flap door") == 0);
}

TEST_CASE("walls of the bedroom look as they did")
{
    PlayedRun run;
    run.screen.state().strip = Strip::west;
    run.go_to(9.9);
    compare(run.stage.ui->picture_of_frame(), "wall-west");
    run.screen.state().strip = Strip::east;
    run.go_to(9.9);
    run.screen.state().view = ViewKind::airborne;
    run.settle();
    compare(run.stage.ui->picture_of_frame(), "wall-east");
    PlayedRun large(1.5F);
    large.screen.state().strip = Strip::west;
    large.screen.state().page = Page::section;
    large.go_to(10.4);
    compare(large.stage.ui->picture_of_frame(), "wall-large");
}
