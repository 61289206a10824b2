#include "window/widgets/handle.hpp"

#include "window/widgets/words.hpp"

namespace flapdoor::window {

namespace {

void draw_arrow(Canvas& canvas, Point tip, Point way, float size, Color color)
{
    const Point side{-way.y, way.x};
    const Point corners[3] = {tip, tip - way * size + side * (size * 0.8F), tip - way * size - side * (size * 0.8F)};
    canvas.fill_convex(corners, color);
}

}

HandleMove handle(Ui& ui, std::string_view name, Point at, const HandleLook& look)
{
    const Theme& t = ui.theme();
    const float side = ui.px(30.0F);
    const Point before = ui.cursor();
    ui.go_to(at - Point{side * 0.5F, side * 0.5F});
    HandleMove move;
    move.touch = ui.touch({.name = name,
                           .role = Role::slider,
                           .label = look.label,
                           .value = look.value,
                           .size = {side, side},
                           .is_pressed_by_keys = false,
                           .ring_rounding = 15.0F});
    const bool is_live = move.touch.is_held || move.touch.is_hovered || move.touch.has_focus;
    if (move.touch.is_held) move.drag = ui.drag();
    if (move.touch.has_focus) {
        const bool goes_up = look.way != HandleWay::sideways;
        const bool goes_right = look.way != HandleWay::upright;
        while (goes_right && ui.take_key(Key::right)) ++move.right;
        while (goes_right && ui.take_key(Key::left)) --move.right;
        while (goes_up && ui.take_key(Key::up)) ++move.up;
        while (goes_up && ui.take_key(Key::down)) --move.up;
        while (goes_up && ui.take_key(Key::page_up)) move.up += 4;
        while (goes_up && ui.take_key(Key::page_down)) move.up -= 4;
    }
    Canvas canvas = ui.canvas();
    canvas.fill_circle(at, ui.px(11.0F), t.sheet);
    canvas.fill_circle(at, ui.px(9.0F), is_live ? t.accent_deep : t.accent);
    canvas.ring(at, ui.px(11.0F), t.ink, ui.px(1.4F));
    const float size = ui.px(4.0F);
    const float reach = ui.px(6.5F);
    if (look.way != HandleWay::upright) {
        draw_arrow(canvas, at + Point{reach, 0.0F}, {1.0F, 0.0F}, size, t.on_accent);
        draw_arrow(canvas, at - Point{reach, 0.0F}, {-1.0F, 0.0F}, size, t.on_accent);
    }
    if (look.way != HandleWay::sideways) {
        draw_arrow(canvas, at + Point{0.0F, reach}, {0.0F, 1.0F}, size, t.on_accent);
        draw_arrow(canvas, at - Point{0.0F, reach}, {0.0F, -1.0F}, size, t.on_accent);
    }
    if (!look.value.empty()) {
        Canvas over = is_live ? ui.overlay() : ui.canvas();
        const float width = over.measure(look.value, TextStyle::small).x;
        draw_label(over, ui, at + Point{width * 0.5F + ui.px(26.0F), 0.0F}, look.value);
    }
    ui.hint(look.hint);
    ui.go_to(before);
    return move;
}

}
