#include "window/run/header.hpp"

#include "window/run/phrases.hpp"
#include "window/shell/masthead.hpp"

namespace flapdoor::window {

using text::say;
using text::say_with;

RunTitle title_of(const debrief::Inputs& inputs, std::uint64_t seed, std::optional<bool> is_passed)
{
    return {inputs.scenario.title, inputs.plan.title, inputs.book.title, seed, is_passed};
}

bool header(Ui& ui, const Box& box, const RunTitle& title, Settings& settings)
{
    Masthead head{std::string(say(title.drill))};
    const std::string plan(say(title.plan));
    const std::string book(say(title.book));
    head.lines = {say_with("Plan: {}  \xC2\xB7  seed {}  \xC2\xB7  book: {}", plan, title.seed, book),
                  say_with("{}  \xC2\xB7  seed {}  \xC2\xB7  {}", plan, title.seed, book), say_with("{}  \xC2\xB7  seed {}", plan, title.seed), plan};
    head.mark = !title.is_passed ? say("being worked out") : *title.is_passed ? say("passed as practice") : say("not passed");
    head.standing = !title.is_passed ? Standing::plain : *title.is_passed ? Standing::good : Standing::critical;
    head.caution = say(model_caution);
    head.has_way_back = title.has_way_back;
    head.back_hint = say("Back (Esc)");
    return masthead(ui, box, head, settings);
}

}
