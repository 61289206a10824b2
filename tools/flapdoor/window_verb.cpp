#include "verbs.hpp"

#include "places.hpp"

#include "debrief/main_job.hpp"
#include "text/units.hpp"
#include "window/show.hpp"

#include <cstdio>

namespace flapdoor::command {

namespace {

window::Places places() { return {scenario_folder(), own_folder(), "federal"}; }

/// A screen of a drill, before anybody has pressed anything.
int picture_screen(const WindowChoice& choice, const window::PictureLook& look)
{
    const window::DrillShelf shelf = window::read_drills(scenario_folder(), "federal");
    const auto drill = choice.scenario.empty() && !shelf.drills.empty() ? shelf.drills.front() : shelf.find(choice.scenario);
    if (!drill) {
        std::fprintf(stderr, "flapdoor: expected the name of a shipped drill, found `%s`\n", choice.scenario.c_str());
        return bad_use;
    }
    return window::picture_screen(places(), choice.screen, {drill, window::Mode::step_by_step, choice.seed, {}}, look);
}

}

std::vector<std::string> screen_names() { return window::screen_names(); }

int window(const WindowChoice& choice)
{
    const window::PictureLook look{choice.picture, choice.width, choice.height, static_cast<float>(choice.text_scale)};
    if (!choice.screen.empty() && !choice.picture.empty()) return picture_screen(choice, look);
    if (choice.measures_frames) return window::show_frames(places());
    if (choice.scenario.empty()) return window::show(places());
    const std::string scenario = scenario_path(choice.scenario);
    const Result<debrief::Inputs> inputs = debrief::read_inputs(scenario, plan_path(choice.plan.empty() ? "good" : choice.plan, scenario), book_paths(choice.books));
    if (!inputs) {
        tell(inputs.error());
        return bad_file;
    }
    if (choice.picture.empty()) {
        Result<debrief::Inputs> careful = debrief::read_inputs(scenario, plan_path("good", scenario), book_paths(choice.books));
        return window::show_run(places(), *inputs, choice.seed, careful ? std::optional(std::move(*careful)) : std::nullopt); // not every drill has one
    }
    Time at{1e9};   // later than any run: its end
    if (!choice.at.empty()) {
        const Result<Time> asked = text::parse_quantity<Time>(choice.at, {"--at"});
        if (!asked) {
            tell(asked.error());
            return bad_use;
        }
        at = *asked;
    }
    return window::picture_run(*inputs, choice.seed, at, look);
}

}
