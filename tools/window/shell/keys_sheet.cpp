#include "window/shell/keys_sheet.hpp"

#include "window/run/phrases.hpp"
#include "window/widgets/panel.hpp"
#include "window/widgets/toggle.hpp"
#include "window/widgets/words.hpp"

#include <algorithm>
#include <array>

namespace flapdoor::window {

namespace {

using text::say;
using text::to_say;

constexpr std::array<KeyLine, 5> keys_everywhere{{
    {to_say("Tab, Shift + Tab"), to_say("walk through all controls; Enter or Space presses")},
    {to_say("Ctrl + L"), to_say("English, Spanish")},
    {to_say("Ctrl + P"), to_say("large type for a projector, and back")},
    {to_say("Ctrl + plus, minus"), to_say("text larger, smaller")},
    {to_say("?"), to_say("this page")},
}};

}

void draw_keys(Ui& ui, std::span<const KeyLine> keys)
{
    const Theme& t = ui.theme();
    float left = 0.0F;
    for (const auto& [key, what] : keys) left = std::max(left, ui.canvas().measure(say(key), TextStyle::strong).x);
    left = std::min(left + ui.px(16.0F), ui.width_left() * 0.5F);
    for (const auto& [key, what] : keys) {
        Canvas canvas = ui.canvas();
        const float width = ui.width_left() - left;
        const float height = std::max(canvas.measure_wrapped(left - ui.px(10.0F), say(key), TextStyle::strong).y,
                                      canvas.measure_wrapped(width, say(what), TextStyle::body).y);
        const Box box = ui.place({ui.width_left(), height});
        canvas.text_wrapped(box.low, left - ui.px(10.0F), say(key), TextStyle::strong, t.accent);
        canvas.text_wrapped({box.low.x + left, box.low.y}, width, say(what), TextStyle::body, t.ink);
    }
}

bool keys_sheet(Ui& ui, std::span<const KeyLine> keys, Settings& settings)
{
    return dialog(ui, "help-sheet", say("Keys"), {620.0F, 640.0F}, [&] {
        draw_keys(ui, keys);
        draw_keys(ui, keys_everywhere);
        rule(ui);
        toggle(ui, "help/still", say("Little motion"), settings.keeps_still);
        bool is_projected = settings.is_projected;
        if (toggle(ui, "help/projected", say("Large type for a projector"), is_projected)) project(ui, settings, is_projected);
        rule(ui);
        aside(ui, say("Flapdoor trains people. Nothing in it is a clearance, a certification or legal advice."));
        aside(ui, say(model_caution));
    });
}

}
