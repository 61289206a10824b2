#include "window/run/help.hpp"

#include "window/run/phrases.hpp"
#include "window/widgets/panel.hpp"
#include "window/widgets/toggle.hpp"
#include "window/widgets/words.hpp"

#include "debrief/wording.hpp"
#include "text/language.hpp"

#include <fmt/format.h>

#include <array>
#include <utility>

namespace flapdoor::window {

namespace {

constexpr std::array<std::pair<std::string_view, std::string_view>, 14> keys{{
    {text::to_say("Space"), text::to_say("play, pause")},
    {"\xE2\x86\x90  \xE2\x86\x92", text::to_say("half a minute back, forward; with Shift five minutes")},
    {text::to_say("Page Up, Page Down"), text::to_say("card before, next card")},
    {text::to_say("F, Shift + F"), text::to_say("next fault, fault before")},
    {text::to_say("Home, End"), text::to_say("start, end of the run")},
    {"S", text::to_say("next speed")},
    {"1, 2, 3", text::to_say("what is there, what you could see, in the air")},
    {"+, -", text::to_say("closer, further away")},
    {"0", text::to_say("fit the work area, then the whole plan")},
    {"T", text::to_say("next sheet: steps, faults, marks, dust")},
    {"M", text::to_say("little motion: no dots, nobody glides")},
    {text::to_say("Tab, Shift + Tab"), text::to_say("walk through all controls; Enter or Space presses")},
    {"?", text::to_say("this page")},
    {text::to_say("Esc, Q"), text::to_say("close")},
}};

void draw_keys(Ui& ui)
{
    const Theme& t = ui.theme();
    float left = 0.0F;
    for (const auto& [key, what] : keys) left = std::max(left, ui.canvas().measure(text::say(key), TextStyle::strong).x);
    left = std::min(left + ui.px(16.0F), ui.width_left() * 0.5F);
    for (const auto& [english_key, english] : keys) {
        const std::string_view key = text::say(english_key), what = text::say(english);
        Canvas canvas = ui.canvas();
        const float width = ui.width_left() - left;
        const float height = std::max(canvas.measure_wrapped(left - ui.px(10.0F), key, TextStyle::strong).y,
                                      canvas.measure_wrapped(width, what, TextStyle::body).y);
        const Box box = ui.place({ui.width_left(), height});
        canvas.text_wrapped(box.low, left - ui.px(10.0F), key, TextStyle::strong, t.accent);
        canvas.text_wrapped({box.low.x + left, box.low.y}, width, what, TextStyle::body, t.ink);
    }
}

}

bool help(Ui& ui, const RunTitle& title, ScreenState& state)
{
    return dialog(ui, "help-sheet", text::say("Keys"), {620.0F, 720.0F}, [&] {
        draw_keys(ui);
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
