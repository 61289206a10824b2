// Before and after under a divider, a run beside the careful one, and "show me" at a fault.
#include "look.hpp"
#include "played_run.hpp"

#include "window/run/fault_place.hpp"
#include "window/run/plan_part.hpp"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace flapdoor;
using namespace flapdoor::window;

namespace {

PlayedRun& beside_the_careful_run(PlayedRun& run)
{
    run.screen.offer_reference(inputs_of_the_house("good.toml"));
    run.screen.reference()->wait();
    run.settle();
    return run;
}

}

TEST_CASE("B lays two moments of the floor under a divider, which mouse and arrows move")
{
    PlayedRun run;
    run.stage.press(Key::b);
    run.settle();
    REQUIRE(run.screen.state().mode == PlanMode::swipe);
    REQUIRE(run.find("swipe/divider") != nullptr);
    const Box grip = run.find("swipe/divider")->box;
    run.stage.point_at(grip.center());
    run.stage.hold();
    run.stage.point_at(grip.center() + Point{150.0F, 0.0F});
    run.stage.let_go();
    run.settle();
    CHECK(run.find("swipe/divider")->box.center().x == Approx(grip.center().x + 150.0F).margin(2.0));
    run.stage.ui->focus_on("swipe/divider");
    run.settle();
    run.stage.press(Key::left);
    run.settle();
    CHECK(run.find("swipe/divider")->box.center().x < grip.center().x + 149.0F);
    run.stage.press(Key::b);
    CHECK(run.screen.state().mode == PlanMode::plan);
}

TEST_CASE("the floor's moments are as found, before the cleaning and at the end; each side shows the chosen one")
{
    const auto moments = floor_moments(*careless_story());
    REQUIRE(moments.size() == 3);
    CHECK(moments.front().at == careless_story()->start);
    CHECK(moments.back().at == careless_story()->end);
    CHECK(moments[1].at == debrief::start_of_cleaning(careless_story()->log).value());
    PlayedRun run;
    run.stage.press(Key::b);
    run.settle();
    const Picture both = run.stage.ui->picture_of_frame();
    run.stage.click("swipe/right/as-found");
    run.settle();
    CHECK(differing(both, run.stage.ui->picture_of_frame()) > most_differing);
}

TEST_CASE("C lays the run beside the careful one at the same time of day")
{
    PlayedRun run;
    run.stage.press(Key::c);
    CHECK(run.screen.state().mode == PlanMode::plan); // nothing is offered
    beside_the_careful_run(run);
    run.stage.press(Key::c);
    run.settle();
    REQUIRE(run.screen.state().mode == PlanMode::compare);
    CHECK(run.find("compare") != nullptr);
    CHECK(run.find("compare-sheet") != nullptr);
    run.go_to(12.0);
    CHECK(run.stage.ui->cut_words() == std::vector<std::string>{});
    run.go_to(20.0); // later than either ends
    CHECK(run.stage.ui->cut_words() == std::vector<std::string>{});
}

TEST_CASE("the careful run has the seed of the run it is laid beside")
{
    PlayedRun run;
    beside_the_careful_run(run);
    CHECK(run.screen.reference()->story()->report.seed == run.screen.story().report.seed);
    CHECK(run.screen.reference()->story()->report.sheet.is_passed);
}

TEST_CASE("show me goes to the moment of a fault, rings its place on the plan, and the next time on the next press")
{
    PlayedRun run;
    run.show(Page::faults);
    run.screen.playback().go_to(run.screen.story().end);
    run.settle();
    const Story& story = run.screen.story();
    // A fault that happened more than once and has a place.
    std::vector<int> times(story.report.faults.size(), 0);
    std::size_t often = story.report.faults.size();
    for (const Happening& h : story.happenings)
        if (++times[h.fault] == 2 && often == story.report.faults.size() && place_of(story, h)) often = h.fault;
    REQUIRE(often < story.report.faults.size());
    std::vector<Time> at;
    for (const Happening& h : story.happenings)
        if (h.fault == often) at.push_back(h.at);
    at.erase(std::unique(at.begin(), at.end()), at.end());
    const std::string row = "fault-" + std::to_string(story.report.faults[often].number);
    run.stage.ui->focus_on(row);
    run.settle();
    run.stage.press(Key::enter);
    run.settle();
    CHECK(run.screen.playback().now() == at.front());
    REQUIRE(run.screen.state().shown_place);
    CHECK(run.screen.state().shown_place->fault == often);
    const Box window = run.screen.state().plan_window;
    CHECK(window.contains(run.screen.state().plan_view->at(run.screen.state().shown_place->at)));
    run.screen.playback().step_by(1.0_min); // the ring belongs to the moment
    run.settle();
    CHECK_FALSE(run.screen.state().shown_place);
}

TEST_CASE("a fault's place is where its card is carried out")
{
    const Story& story = *careless_story();
    const PaperBox whole = grown(whole_plan(story.inputs.scenario), 0.5);
    int placed = 0;
    for (const Happening& happening : story.happenings)
        if (const auto place = place_of(story, happening)) {
            CHECK(whole.contains(*place));
            ++placed;
        }
    CHECK(placed * 2 > static_cast<int>(story.happenings.size()));
}

TEST_CASE("D shows the flap door that hangs, with the sheets where the section says, and the door with one thing left out")
{
    PlayedRun run;
    run.stage.press(Key::d);
    CHECK(run.screen.state().mode == PlanMode::plan); // none hangs in the morning
    const Story& story = run.screen.story();
    const auto hang = std::find_if(story.log.entries.begin(), story.log.entries.end(), [](const job::LogEntry& e) { return e.step == "hang-flap"; });
    REQUIRE(hang != story.log.entries.end());
    run.screen.playback().go_to(hang->end + 1.0_min);
    run.stage.press(Key::d);
    REQUIRE(run.screen.state().mode == PlanMode::flap);
    for (int i = 0; i < 3; ++i) run.screen.flap().films().wait(), run.settle();
    run.stage.ui->focus_on("flap/time");
    run.settle();
    for (int i = 0; i < 20; ++i) run.stage.press(Key::right);
    CHECK(run.screen.flap().now().si == Approx(1.0));
    run.stage.click("flap/variant/no-dowel");
    for (int i = 0; i < 3; ++i) run.screen.flap().films().wait(), run.settle();
    CHECK(run.find("flap/variant/no-dowel")->is_on);
    CHECK(run.screen.flap().now() == Time{}); // another door begins anew
    CHECK(run.stage.ui->cut_words() == std::vector<std::string>{});
    run.stage.click("flap/walk");
    run.stage.input.seconds = 0.1F;
    run.settle();
    CHECK(run.screen.flap().now() > 0.2_s);
}

TEST_CASE("the views of the debrief cut no words at 100, 150 and 200 %")
{
    for (const float scale : {1.0F, 1.5F, 2.0F}) {
        INFO("scale " << scale);
        PlayedRun run(scale);
        beside_the_careful_run(run);
        for (const Key key : {Key::b, Key::c}) {
            run.show(Page::plan);
            run.stage.press(key);
            run.go_to(11.0);
            CHECK(run.stage.ui->cut_words() == std::vector<std::string>{});
            run.stage.press(key);
        }
    }
}

TEST_CASE("the views of the debrief look as they did")
{
    PlayedRun run;
    beside_the_careful_run(run);
    run.go_to(11.0);
    run.stage.press(Key::b);
    run.settle();
    compare(run.stage.ui->picture_of_frame(), "before-after");
    run.stage.press(Key::c);
    run.go_to(11.0);
    compare(run.stage.ui->picture_of_frame(), "beside-careful");
    run.go_to(14.0);
    run.stage.press(Key::d);
    for (int i = 0; i < 3; ++i) run.screen.flap().films().wait(), run.settle();
    run.screen.flap().go_to(1.4_s);
    run.settle();
    compare(run.stage.ui->picture_of_frame(), "flap-door");
}
