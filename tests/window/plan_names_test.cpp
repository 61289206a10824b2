// Names of people, things and rooms on the plan never lie on each other.
#include "played_run.hpp"
#include "played_shell.hpp"
#include "speaking.hpp"

#include "window/drawing/name_places.hpp"

#include <catch2/catch.hpp>
#include <rapidcheck.h>

#include <algorithm>

using namespace flapdoor;
using namespace flapdoor::window;

namespace {

std::vector<Spot> names_on(const Ui& ui)
{
    std::vector<Spot> names;
    for (const Spot& spot : ui.spots())
        if (spot.name.rfind("name/", 0) == 0) names.push_back(spot);
    return names;
}

bool has(const std::vector<Spot>& names, const std::string& name)
{
    return std::any_of(names.begin(), names.end(), [&](const Spot& spot) { return spot.name == name; });
}

/// How many pairs lie on each other.
int pairs_on_each_other(const std::vector<Spot>& names)
{
    int count = 0;
    for (std::size_t i = 0; i < names.size(); ++i)
        for (std::size_t k = i + 1; k < names.size(); ++k)
            if (names[i].box.overlaps(names[k].box)) {
                UNSCOPED_INFO(names[i].name << " on " << names[k].name);
                ++count;
            }
    return count;
}

std::shared_ptr<const Story> story_of(const std::string& drill)
{
    if (drill == "back-bedroom") return careless_story();
    const std::string folder = FLAPDOOR_SOURCE_DIR "/scenarios/" + drill + "/";
    const debrief::Inputs inputs = debrief::read_inputs(folder + "scenario.toml", folder + "careless.toml", {FLAPDOOR_SOURCE_DIR "/scenarios/rules/federal.toml"}).value();
    return std::make_shared<const Story>(tell(inputs, debrief::carry_through(inputs, 1, true)));
}

}

TEST_CASE("a name takes the first free place and leaves none of it to the next", "[property]")
{
    rc::check([] {
        const auto number = [](int most) { return static_cast<float>(*rc::gen::inRange(0, most)); };
        const Box window{{0.0F, 0.0F}, {400.0F, 300.0F}};
        NamePlaces places(window);
        places.take(box_at({number(300), number(200)}, {60.0F, 40.0F}));
        for (int i = 0; i < 12; ++i) {
            const std::vector<Box> around = places_around({number(400), number(300)}, {20.0F + number(60), 16.0F}, 8.0F, 12.0F, 5);
            places.place("n" + std::to_string(i), "n", around);
        }
        const auto& placed = places.placed();
        for (std::size_t i = 0; i < placed.size(); ++i) {
            RC_ASSERT(window.contains(placed[i].box));
            for (std::size_t k = i + 1; k < placed.size(); ++k) RC_ASSERT(!placed[i].box.overlaps(placed[k].box));
        }
    });
}

TEST_CASE("over a whole run of every shipped drill no name lies on another, and nobody and no work room goes without one")
{
    const std::string drill = GENERATE("back-bedroom", "daycare-classroom", "kitchen-soffit");
    const auto story = story_of(drill);
    for (const text::Language language : {text::Language::english, text::Language::spanish}) {
        const Speaking speaking(language);
        for (const float scale : {1.0F, 1.5F, 2.0F}) {
            RunScreen screen(story);
            Rehearsal stage([&](Ui& ui) { screen.play(ui); }, scale);
            stage.input.size = {1280.0F, 800.0F};
            screen.state().page = scale > 1.2F ? Page::plan : Page::steps;
            for (int i = 0; i < 60; ++i) {
                screen.playback().go_to(story->start + story->length() * (static_cast<double>(i) / 59.0));
                screen.state().view = i % 2 == 0 ? ViewKind::there : ViewKind::airborne;
                for (int k = 0; k < 2; ++k) stage.frame();
                const std::vector<Spot> names = names_on(*stage.ui);
                INFO(drill << " at " << scale << ", picture " << i << ", " << text::code_of(language));
                CHECK(pairs_on_each_other(names) == 0);
                CHECK(has(names, "name/room/" + story->film.zones[story->film.work_room].id.name));
                const Box plan = stage.ui->find("plan-drawing")->box;
                const auto& people = story->film.at(screen.playback().now()).people;
                for (std::size_t p = 0; p < people.size(); ++p)
                    if (plan.inset(30.0F).contains(screen.state().plan_view->at(paper(people[p].at)))) CHECK(has(names, "name/person/" + story->inputs.scenario.crew[p].id.name));
            }
        }
    }
}

TEST_CASE("in the drill room no name lies under what is set on the plan")
{
    const TestPlaces folder("names-in-room");
    const auto drill = read_drills(folder.places.scenarios, folder.places.book).find("one-window");
    PlayedShell played(folder.places);
    played.go_to(room_screen(played.shell, {drill, Mode::step_by_step, 1, {}}, drill->careful.scenario));
    REQUIRE(played.wait_for_room());
    for (const StepKind& kind : step_kinds()) {
        played.room()->take_up(proposed(played.room()->attempt().site(), kind, {job::PersonId{"ana"}}));
        played.settle();
        const std::vector<Spot> names = names_on(*played.stage.ui);
        INFO(kind.name);
        CHECK(pairs_on_each_other(names) == 0);
        for (const Spot& tool : played.stage.ui->spots()) {
            const bool lies_on_top = tool.name.rfind("plan/", 0) == 0 && tool.role != Role::drawing && tool.role != Role::panel && tool.name.rfind("plan/wall/", 0) != 0;
            for (const Spot& name : names)
                if (lies_on_top && tool.box.overlaps(name.box)) FAIL_CHECK(tool.name << " on " << name.name);
        }
    }
}
