#include "window/widgets/toggle.hpp"

#include "window/stage/icon.hpp"

namespace flapdoor::window {

bool toggle(Ui& ui, std::string_view name, std::string_view label, bool& is_on, const ToggleLook& look)
{
    Canvas canvas = ui.canvas();
    const Theme& t = ui.theme();
    const float track = ui.px(40.0F);
    const Point words = canvas.measure(label, TextStyle::body);
    const Touch touch = ui.touch({.name = name,
                                  .role = Role::toggle,
                                  .label = label,
                                  .size = {std::min(track + ui.px(10.0F) + words.x, ui.width_left()), ui.px(32.0F)},
                                  .is_enabled = look.is_enabled,
                                  .is_on = is_on});
    if (touch.is_clicked) is_on = !is_on;

    const float strength = look.is_enabled ? 1.0F : 0.5F;
    const Box rail = box_at({touch.box.low.x, touch.box.center().y - ui.px(11.0F)}, {track, ui.px(22.0F)});
    const float round = rail.height() * 0.5F;
    const Point knob{is_on ? rail.high.x - round : rail.low.x + round, rail.center().y};
    canvas.fill_box(rail, faded(is_on ? t.accent : t.field, strength), round);
    canvas.frame_box(rail, faded(is_on ? t.accent : touch.is_hovered ? t.muted : t.line, strength), ui.px(1.5F), round);
    canvas.fill_circle(knob, round - ui.px(4.0F), faded(is_on ? t.on_accent : t.line, strength));
    if (is_on) draw_icon(canvas, Icon::check, {rail.low.x + round, rail.center().y}, ui.px(11.0F), faded(t.on_accent, strength), t.accent);
    canvas.text_in({{rail.high.x + ui.px(10.0F), touch.box.low.y}, {touch.box.high.x + 1.0F, touch.box.high.y}}, label, TextStyle::body,
                   faded(t.ink, look.is_enabled ? 1.0 : 0.6));
    ui.hint(look.hint);
    return touch.is_clicked;
}

}
