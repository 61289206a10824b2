#include "window/widgets/button.hpp"

namespace flapdoor::window {

namespace {

struct Paint {
    Color ground, edge, text;
};

Paint paint_of(const Theme& t, const ButtonLook& look, const Touch& touch)
{
    if (!look.is_enabled)
        return {look.emphasis == Emphasis::quiet ? faded(t.sheet, 0.0) : mixed(t.sheet, t.hairline, 0.5), look.emphasis == Emphasis::quiet ? faded(t.hairline, 0.0) : t.hairline, faded(t.muted, 0.8)};
    if (look.emphasis == Emphasis::primary) {
        const Color ground = touch.is_held || touch.is_hovered ? t.accent_deep : t.accent;
        return {ground, ground, t.on_accent};
    }
    if (look.is_on) return {t.accent_tint, t.accent, t.accent};
    const Color at_rest = look.emphasis == Emphasis::quiet ? faded(t.sheet, 0.0) : t.sheet;
    const Color ground = touch.is_held ? t.accent_tint : touch.is_hovered ? mixed(t.sheet, t.accent_tint, 0.6) : at_rest;
    return {ground, look.emphasis == Emphasis::quiet && !touch.is_hovered ? faded(t.line, 0.0) : t.line, t.ink};
}

float natural_width(const Ui& ui, const Canvas& canvas, std::string_view label, const ButtonLook& look)
{
    const float words = label.empty() ? 0.0F : canvas.measure(label, TextStyle::body).x;
    if (label.empty()) return ui.px(40.0F);
    return words + ui.px(32.0F) + (look.icon != Icon::none ? ui.px(24.0F) : 0.0F);
}

}

bool button(Ui& ui, std::string_view name, std::string_view label, const ButtonLook& look)
{
    Canvas canvas = ui.canvas();
    const float width = look.width > 0.0F   ? ui.px(look.width)
                        : look.width < 0.0F ? ui.width_left()
                                            : natural_width(ui, canvas, label, look);
    const Touch touch = ui.touch({.name = name,
                                  .role = Role::button,
                                  .label = label.empty() ? look.hint : label,
                                  .size = {width, ui.px(40.0F)},
                                  .is_enabled = look.is_enabled,
                                  .is_on = look.is_on});
    const Paint paint = paint_of(ui.theme(), look, touch);
    const float rounding = ui.px(6.0F);
    canvas.fill_box(touch.box, paint.ground, rounding);
    canvas.frame_box(touch.box, paint.edge, look.is_on ? ui.px(1.6F) : ui.px(1.0F), rounding);

    const float icon = look.icon != Icon::none ? ui.px(16.0F) : 0.0F;
    const float gap = icon > 0.0F && !label.empty() ? ui.px(8.0F) : 0.0F;
    const float text =
        std::min(label.empty() ? 0.0F : canvas.measure(label, TextStyle::body).x, touch.box.width() - icon - gap - ui.px(12.0F));
    const float start = touch.box.center().x - (icon + gap + text) * 0.5F;
    if (icon > 0.0F) draw_icon(canvas, look.icon, {start + icon * 0.5F, touch.box.center().y}, icon, paint.text, paint.ground);
    if (!label.empty())
        canvas.text_in({{start + icon + gap, touch.box.low.y}, {start + icon + gap + text + 1.0F, touch.box.high.y}}, label,
                       TextStyle::body, paint.text);
    ui.hint(look.hint);
    return touch.is_clicked;
}

}
