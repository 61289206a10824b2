#include "window/widgets/slider.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace flapdoor::window {

namespace {

double snapped(double value, const SliderLook& look)
{
    const double stepped = look.step > 0.0 ? look.least + std::round((value - look.least) / look.step) * look.step : value;
    return std::clamp(stepped, look.least, look.most);
}

}

double moved_by_keys(Ui& ui, double value, double least, double most, double step)
{
    double at = value;
    while (ui.take_key(Key::right) || ui.take_key(Key::up)) at += step;
    while (ui.take_key(Key::left) || ui.take_key(Key::down)) at -= step;
    while (ui.take_key(Key::page_up)) at += 10.0 * step;
    while (ui.take_key(Key::page_down)) at -= 10.0 * step;
    if (ui.take_key(Key::home)) at = least;
    if (ui.take_key(Key::end)) at = most;
    return std::clamp(at, least, most);
}

bool slider(Ui& ui, std::string_view name, std::string_view label, double& value, const SliderLook& look)
{
    Canvas canvas = ui.canvas();
    const Theme& t = ui.theme();
    const double before = value;
    const std::string shown_before = look.show ? look.show(value) : fmt::format("{:g}", value);
    const Touch touch = ui.touch({.name = name,
                                  .role = Role::slider,
                                  .label = label,
                                  .value = shown_before,
                                  .size = {look.width > 0.0F ? ui.px(look.width) : ui.width_left(), ui.px(48.0F)},
                                  .is_enabled = look.is_enabled,
                                  .is_pressed_by_keys = false});
    const float knob = ui.px(9.0F);
    const float y = touch.box.high.y - ui.px(13.0F);
    const float from = touch.box.low.x + knob;
    const float length = std::max(touch.box.width() - 2.0F * knob, 1.0F);
    const double span = look.most - look.least;
    if (touch.is_held) value = snapped(look.least + span * static_cast<double>((ui.input().mouse.x - from) / length), look);
    if (touch.has_focus) value = snapped(moved_by_keys(ui, value, look.least, look.most, look.step > 0.0 ? look.step : span / 20.0), look);

    const double strength = look.is_enabled ? 1.0 : 0.5;
    const float at = from + length * static_cast<float>(span > 0.0 ? std::clamp((value - look.least) / span, 0.0, 1.0) : 0.0);
    const Box head{touch.box.low, {touch.box.high.x, touch.box.low.y + ui.px(24.0F)}};
    const std::string shown = look.show ? look.show(value) : fmt::format("{:g}", value);
    const float value_width = canvas.measure(shown, TextStyle::strong).x;
    canvas.text_in({head.low, {head.high.x - value_width - ui.px(8.0F), head.high.y}}, label, TextStyle::body, faded(t.ink, strength));
    canvas.text_in(head, shown, TextStyle::strong, faded(t.ink, strength), Align::right);
    const Box rail{{touch.box.low.x, y - ui.px(3.0F)}, {touch.box.high.x, y + ui.px(3.0F)}};
    canvas.fill_box(rail, t.field, ui.px(3.0F));
    canvas.frame_box(rail, faded(t.line, strength), 1.0F, ui.px(3.0F));
    canvas.fill_box({rail.low, {at, rail.high.y}}, faded(t.accent, strength), ui.px(3.0F));
    canvas.fill_circle({at, y}, knob, look.is_enabled ? (touch.is_hovered || touch.is_held ? t.accent_deep : t.accent) : t.line);
    canvas.fill_circle({at, y}, knob - ui.px(3.0F), t.field);
    ui.hint(look.hint);
    return value != before;
}

}
