#include "window/hands_on/close_up.hpp"

#include "window/widgets/button.hpp"
#include "window/widgets/card.hpp"
#include "window/widgets/words.hpp"

#include "text/language.hpp"

#include <algorithm>
#include <numeric>

namespace flapdoor::window {

using text::say;

namespace {

/// Order in which open moves are listed.
std::vector<std::size_t> by_title(std::span<const MoveFace> faces)
{
    std::vector<std::size_t> order(faces.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return faces[a].title < faces[b].title; });
    return order;
}

}

std::optional<std::size_t> move_list(Ui& ui, std::span<const MoveFace> done, std::span<const MoveFace> open)
{
    std::optional<std::size_t> pressed;
    strong(ui, say("Done so far"));
    if (done.empty()) aside(ui, say("Nothing yet. Choose the first move below."));
    for (std::size_t i = 0; i < done.size(); ++i) {
        Canvas canvas = ui.canvas();
        const Theme& t = ui.theme();
        const float left = ui.px(34.0F);
        const float height = canvas.measure_wrapped(ui.width_left() - left, done[i].title, TextStyle::body).y + ui.px(6.0F);
        const Box box = ui.place({ui.width_left(), height});
        const Point center{box.low.x + ui.px(13.0F), box.low.y + ui.px(13.0F)};
        canvas.fill_circle(center, ui.px(11.0F), t.accent);
        canvas.text_in(box_around(center, {ui.px(22.0F), ui.px(22.0F)}), std::to_string(i + 1), TextStyle::small, t.on_accent, Align::center);
        canvas.text_wrapped({box.low.x + left, box.low.y + ui.px(3.0F)}, box.width() - left, done[i].title, TextStyle::body, t.ink);
        ui.note({"done/" + done[i].name, Role::text, done[i].title, {}, box});
    }
    if (!open.empty()) strong(ui, say("What next?"));
    for (const std::size_t i : by_title(open)) {
        const bool is_open = open[i].refusal.empty();
        const CardFace face{.name = "move/" + open[i].name, .title = open[i].title, .note = is_open ? open[i].how : open[i].refusal,
                            .state = CardState::waiting};
        if (card(ui, face).is_clicked && is_open) pressed = i;
    }
    return pressed;
}

void fault_notes(Ui& ui, std::span<const site::MoveFault> faults)
{
    const Theme& t = ui.theme();
    for (const site::MoveFault& fault : faults) {
        Canvas canvas = ui.canvas();
        const std::string_view what = say(fault.what);
        const std::string_view why = say(fault.why);
        const float left = ui.px(34.0F);
        const float width = ui.width_left() - left - ui.px(10.0F);
        const float head = canvas.measure_wrapped(width, what, TextStyle::strong).y;
        const float body = canvas.measure_wrapped(width, why, TextStyle::small).y;
        const Box box = ui.place({ui.width_left(), head + body + ui.px(18.0F)});
        canvas.fill_box(box, t.caution_tint, ui.px(4.0F));
        canvas.frame_box(box, t.caution, ui.px(1.2F), ui.px(4.0F));
        draw_icon(canvas, Icon::caution, {box.low.x + ui.px(18.0F), box.low.y + ui.px(20.0F)}, ui.px(18.0F), t.caution, t.caution_tint);
        canvas.text_wrapped({box.low.x + left, box.low.y + ui.px(8.0F)}, width, what, TextStyle::strong, t.ink);
        canvas.text_wrapped({box.low.x + left, box.low.y + ui.px(9.0F) + head}, width, why, TextStyle::small, t.ink);
        ui.note({"fault/" + fault.what, Role::text, std::string(what), std::string(why), box});
    }
}

CloseUpPress close_up_buttons(Ui& ui, const CloseUpButtons& look)
{
    CloseUpPress press = CloseUpPress::none;
    if (!look.is_looked_over) {
        if (button(ui, "close-up/look-over", say("I am done"), {.emphasis = Emphasis::primary, .icon = Icon::eye, .width = -1.0F, .hint = say("Look it over: what was left out shows now")}))
            press = CloseUpPress::look_over;
    }
    else if (button(ui, "close-up/use", look.use_label, {.emphasis = Emphasis::primary, .icon = Icon::check, .width = -1.0F}))
        press = CloseUpPress::use;
    if (button(ui, "close-up/take-back", say("Take the last move back"), {.icon = Icon::back, .width = -1.0F, .is_enabled = look.can_take_back}))
        press = CloseUpPress::take_back;
    if (button(ui, "close-up/again", say("Begin again"), {.icon = Icon::to_start, .width = -1.0F, .is_enabled = look.can_take_back})) press = CloseUpPress::begin_again;
    if (button(ui, "close-up/leave", say("Leave it as it was"), {.emphasis = Emphasis::quiet, .width = -1.0F})) press = CloseUpPress::leave;
    if (ui.shortcut(Key::backspace) && look.can_take_back) press = CloseUpPress::take_back;
    return press;
}

}
