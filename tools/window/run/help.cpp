#include "window/run/help.hpp"

#include "window/run/phrases.hpp"
#include "window/shell/keys_sheet.hpp"
#include "window/widgets/panel.hpp"
#include "window/widgets/toggle.hpp"
#include "window/widgets/words.hpp"

#include "debrief/wording.hpp"
#include "text/language.hpp"

#include <fmt/format.h>

#include <array>

namespace flapdoor::window {

namespace {

constexpr std::array<KeyLine, 19> keys{{
    {text::to_say("Space"), text::to_say("play, pause")},
    {"\xE2\x86\x90  \xE2\x86\x92", text::to_say("half a minute back, forward; with Shift five minutes")},
    {text::to_say("Page Up, Page Down"), text::to_say("card before, next card")},
    {text::to_say("F, Shift + F"), text::to_say("next fault, fault before")},
    {text::to_say("Home, End"), text::to_say("start, end of the run")},
    {"S", text::to_say("next speed")},
    {"1, 2, 3", text::to_say("what is there, what you could see, in the air")},
    {"L", text::to_say("the flashlight on or off; arrow keys move it while it has the focus")},
    {text::to_say("W, Shift + W"), text::to_say("below the plan: section, the four walls, the flap door")},
    {"+, -", text::to_say("closer, further away")},
    {"0", text::to_say("fit the work area, then the whole plan")},
    {"T", text::to_say("next sheet: steps, faults, marks, dust, what if")},
    {"B", text::to_say("the floor before and after, a divider between")},
    {"D", text::to_say("the flap door while somebody walks through")},
    {"C", text::to_say("beside the careful run on the same seed")},
    {"M", text::to_say("little motion: no dots, nobody glides")},
    {text::to_say("Tab, Shift + Tab"), text::to_say("walk through all controls; Enter or Space presses")},
    {"?", text::to_say("this page")},
    {text::to_say("Esc, Q"), text::to_say("close")},
}};

}

bool help(Ui& ui, const RunTitle& title, ScreenState& state)
{
    return dialog(ui, "help-sheet", text::say("Keys"), {620.0F, 720.0F}, [&] {
        draw_keys(ui, keys);
        rule(ui);
        toggle(ui, "help/still", text::say("Little motion"), state.keeps_still);
        rule(ui);
        strong(ui, text::say("This run"));
        words(ui, text::say_with("{}; plan \"{}\", seed {}, book \"{}\".", text::say(title.drill), text::say(title.plan), title.seed, text::say(title.book)));
        aside(ui, fmt::format("{}.", text::say(model_caution)));
        aside(ui, text::say(debrief::score_note));
    });
}

}
