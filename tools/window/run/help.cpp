#include "window/run/help.hpp"

#include "window/run/phrases.hpp"
#include "window/widgets/panel.hpp"
#include "window/widgets/toggle.hpp"
#include "window/widgets/words.hpp"

#include "debrief/wording.hpp"

#include <fmt/format.h>

#include <array>
#include <utility>

namespace flapdoor::window {

namespace {

constexpr std::array<std::pair<std::string_view, std::string_view>, 14> keys{{
    {"Space", "play, pause"},
    {"\xE2\x86\x90  \xE2\x86\x92", "half a minute back, forward; with Shift five minutes"},
    {"Page Up, Page Down", "card before, next card"},
    {"F, Shift + F", "next fault, fault before"},
    {"Home, End", "start, end of the run"},
    {"S", "next speed"},
    {"1, 2, 3", "what is there, what you could see, in the air"},
    {"+, -", "closer, further away"},
    {"0", "fit the work area, then the whole plan"},
    {"T", "next sheet: steps, faults, marks, dust"},
    {"M", "little motion: no dots, nobody glides"},
    {"Tab, Shift + Tab", "walk through all controls; Enter or Space presses"},
    {"?", "this page"},
    {"Esc, Q", "close"},
}};

void draw_keys(Ui& ui)
{
    const Theme& t = ui.theme();
    float left = 0.0F;
    for (const auto& [key, what] : keys) left = std::max(left, ui.canvas().measure(key, TextStyle::strong).x);
    left = std::min(left + ui.px(16.0F), ui.width_left() * 0.5F);
    for (const auto& [key, what] : keys) {
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
    return dialog(ui, "help-sheet", "Keys", {620.0F, 720.0F}, [&] {
        draw_keys(ui);
        rule(ui);
        toggle(ui, "help/still", "Little motion", state.keeps_still);
        rule(ui);
        strong(ui, "This run");
        words(ui, fmt::format("{}; plan \"{}\", seed {}, book \"{}\".", title.drill, title.plan, title.seed, title.book));
        aside(ui, fmt::format("{}.", model_caution));
        aside(ui, debrief::score_note);
    });
}

}
