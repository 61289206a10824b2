#include "window/widgets/chips.hpp"

#include "core/insist.hpp"

#include <functional>

namespace flapdoor::window {

namespace {

constexpr float height = 36.0F; // at 100 %
constexpr float pad = 12.0F;
constexpr float sign_room = 22.0F;

void draw_chip(Ui& ui, const Touch& touch, const Option& option, bool is_on, bool is_round)
{
    const Theme& t = ui.theme();
    Canvas canvas = ui.canvas();
    const Box& box = touch.box;
    const float rounding = ui.px(5.0F);
    const Color ground = is_on ? t.accent_tint : !option.is_enabled ? mixed(t.sheet, t.hairline, 0.4) : touch.is_hovered ? t.field : t.sheet;
    const Color ink = !option.is_enabled ? t.muted : is_on ? t.accent : t.ink;
    canvas.fill_box(box, ground, rounding);
    canvas.frame_box(box, is_on ? t.accent : t.line, is_on ? ui.px(1.8F) : 1.0F, rounding);
    const Point sign{box.low.x + ui.px(pad + 5.0F), box.center().y};
    if (is_round) {
        canvas.ring(sign, ui.px(5.5F), is_on ? t.accent : t.line, ui.px(1.4F));
        if (is_on) canvas.fill_circle(sign, ui.px(3.0F), t.accent);
    }
    else {
        const Box square = box_around(sign, {ui.px(12.0F), ui.px(12.0F)});
        canvas.frame_box(square, is_on ? t.accent : t.line, ui.px(1.4F), ui.px(2.0F));
        if (is_on) draw_icon(canvas, Icon::check, sign, ui.px(11.0F), t.accent, ground);
    }
    const float text_height = canvas.measure_wrapped(box.width() - ui.px(2.0F * pad + sign_room), option.label, TextStyle::body).y;
    canvas.text_wrapped({box.low.x + ui.px(pad + sign_room), box.center().y - text_height * 0.5F}, box.width() - ui.px(2.0F * pad + sign_room) + 1.0F,
                        option.label, TextStyle::body, ink);
}

bool flow(Ui& ui, std::string_view name, std::span<const Option> options, bool is_round, const std::function<bool(std::size_t)>& is_on,
          const std::function<void(std::size_t)>& press)
{
    const float left = ui.cursor().x;
    const float right = left + ui.width_left();
    const float gap = ui.px(6.0F);
    Point at = ui.cursor();
    float row = ui.px(height);
    bool has_changed = false;
    for (std::size_t i = 0; i < options.size(); ++i) {
        const Option& option = options[i];
        const Canvas canvas = ui.canvas();
        const float words = canvas.measure(option.label, TextStyle::body).x;
        const float width = std::min(words + ui.px(2.0F * pad + sign_room) + 1.0F, right - left);
        const float tall = std::max(ui.px(height), canvas.measure_wrapped(width - ui.px(2.0F * pad + sign_room), option.label, TextStyle::body).y + ui.px(12.0F));
        if (at.x > left && at.x + width > right) {
            at = {left, at.y + row + gap};
            row = ui.px(height);
        }
        row = std::max(row, tall);
        ui.go_to(at);
        const Touch touch = ui.touch({.name = std::string(name) + "/" + option.name,
                                      .role = Role::choice,
                                      .label = option.label,
                                      .size = {width, tall},
                                      .is_enabled = option.is_enabled,
                                      .is_on = is_on(i),
                                      .ring_rounding = 5.0F});
        if (ui.is_in_view(touch.box)) draw_chip(ui, touch, option, is_on(i), is_round);
        ui.hint(option.hint);
        if (touch.is_clicked) press(i), has_changed = true;
        const auto step = [&](std::size_t to) { ui.focus_on(std::string(name) + "/" + options[to].name); };
        if (touch.has_focus && i + 1 < options.size() && ui.take_key(Key::right)) step(i + 1);
        if (touch.has_focus && i > 0 && ui.take_key(Key::left)) step(i - 1);
        at.x += width + gap;
    }
    ui.go_to({left, at.y + row + ui.px(2.0F)});
    ui.place({1.0F, 1.0F});
    return has_changed;
}

}

bool choose_chip(Ui& ui, std::string_view name, std::span<const Option> options, std::optional<std::size_t>& chosen)
{
    const auto before = chosen;
    flow(ui, name, options, true, [&](std::size_t i) { return chosen == i; }, [&](std::size_t i) { chosen = i; });
    return chosen != before;
}

bool choose_chips(Ui& ui, std::string_view name, std::span<const Option> options, std::vector<bool>& chosen)
{
    insist(chosen.size() == options.size(), "one tick an option");
    return flow(ui, name, options, false, [&](std::size_t i) { return chosen[i]; }, [&](std::size_t i) { chosen[i] = !chosen[i]; });
}

}
