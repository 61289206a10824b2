#include "verbs.hpp"

#include "places.hpp"

#include "debrief/main_job.hpp"
#include "text/units.hpp"
#include "window/show_run.hpp"

namespace flapdoor::command {

int window(const WindowChoice& choice)
{
    const std::string scenario = scenario_path(choice.scenario);
    const Result<debrief::Inputs> inputs = debrief::read_inputs(scenario, plan_path(choice.plan, scenario), book_paths(choice.books));
    if (!inputs) {
        tell(inputs.error());
        return bad_file;
    }
    if (choice.picture.empty()) return window::show_run(*inputs, choice.seed);
    Time at{1e9};   // later than any run: its end
    if (!choice.at.empty()) {
        const Result<Time> asked = text::parse_quantity<Time>(choice.at, {"--at"});
        if (!asked) {
            tell(asked.error());
            return bad_use;
        }
        at = *asked;
    }
    return window::picture_run(*inputs, choice.seed, at, choice.picture, choice.width, choice.height);
}

}
