#include "window/widgets/choice.hpp"

#include "core/insist.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace flapdoor::window {

namespace {

std::string joined(std::string_view name, const Option& option) { return fmt::format("{}/{}", name, option.name); }

/// A round or square answer with its words. @return its touch
Touch answer(Ui& ui, std::string_view name, const Option& option, bool is_on, bool is_round, Verdict verdict)
{
    Canvas canvas = ui.canvas();
    const Theme& t = ui.theme();
    const float sign = ui.px(22.0F);
    const float left = ui.px(12.0F) + sign + ui.px(12.0F);
    const float width = ui.width_left();
    const float text_width = width - left - ui.px(40.0F);
    const float height = std::max(canvas.measure_wrapped(text_width, option.label, TextStyle::body).y + ui.px(22.0F), ui.px(44.0F));
    const Touch touch = ui.touch({.name = name,
                                  .role = Role::choice,
                                  .label = option.label,
                                  .size = {width, height},
                                  .is_enabled = option.is_enabled,
                                  .is_on = is_on,
                                  .ring_rounding = 5.0F});

    const bool needs_care = verdict == Verdict::wrong || verdict == Verdict::missed;
    const Color ground = needs_care                           ? t.caution_tint
                         : is_on || verdict == Verdict::right ? t.accent_tint
                         : touch.is_hovered                   ? t.field
                                                              : t.sheet;
    const Color edge = needs_care ? t.caution : is_on ? t.accent : t.line;
    canvas.fill_box(touch.box, ground, ui.px(5.0F));
    canvas.frame_box(touch.box, edge, is_on || needs_care ? ui.px(1.6F) : 1.0F, ui.px(5.0F));
    const Point center{touch.box.low.x + ui.px(12.0F) + sign * 0.5F, touch.box.center().y};
    const Box square = box_around(center, {sign, sign});
    const float rounding = is_round ? sign * 0.5F : ui.px(4.0F);
    canvas.fill_box(square, is_on ? t.accent : t.field, rounding);
    canvas.frame_box(square, is_on ? t.accent : t.line, ui.px(1.5F), rounding);
    if (is_on && is_round) canvas.fill_circle(center, sign * 0.2F, t.on_accent);
    if (is_on && !is_round) draw_icon(canvas, Icon::check, center, sign * 0.65F, t.on_accent, t.accent);
    const float text_height = canvas.measure_wrapped(text_width, option.label, TextStyle::body).y;
    canvas.text_wrapped({touch.box.low.x + left, touch.box.center().y - text_height * 0.5F}, text_width, option.label, TextStyle::body,
                        t.ink);
    const Point at{touch.box.high.x - ui.px(22.0F), touch.box.center().y};
    if (verdict == Verdict::right) draw_icon(canvas, Icon::check, at, ui.px(18.0F), t.accent, ground);
    if (verdict == Verdict::wrong) draw_icon(canvas, Icon::cross, at, ui.px(18.0F), t.caution, ground);
    if (verdict == Verdict::missed) draw_icon(canvas, Icon::caution, at, ui.px(18.0F), t.caution, ground);
    ui.hint(option.hint);
    return touch;
}

/// What stands left and right of each label of a row: less where long words would run out of the width left.
float margin_of_a_row(Ui& ui, std::span<const Option> options)
{
    float labels = 0.0F;
    for (const Option& option : options)
        labels += ui.canvas().measure(option.label, TextStyle::body).x + (option.icon == Icon::none ? 0.0F : ui.px(24.0F));
    const float share = (ui.width_left() - labels) / (2.0F * static_cast<float>(options.size()));
    return std::clamp(share, ui.px(3.0F), ui.px(14.0F));
}

}

bool choice_row(Ui& ui, std::string_view name, std::span<const Option> options, std::size_t& chosen)
{
    const Theme& t = ui.theme();
    const std::size_t before = chosen;
    const float margin = margin_of_a_row(ui, options);
    for (std::size_t i = 0; i < options.size(); ++i) {
        const Option& option = options[i];
        Canvas canvas = ui.canvas();
        if (i > 0) ui.beside(0.0F);
        const float icon = option.icon == Icon::none ? 0.0F : ui.px(24.0F);
        const float words = canvas.measure(option.label, TextStyle::body).x;
        const bool is_on = chosen == i;
        const Touch touch = ui.touch({.name = joined(name, option),
                                      .role = Role::choice,
                                      .label = option.label,
                                      .size = {words + icon + 2.0F * margin, ui.px(40.0F)},
                                      .is_enabled = option.is_enabled,
                                      .is_on = is_on,
                                      .ring_rounding = 3.0F});
        if (touch.is_clicked) chosen = i;
        if (touch.has_focus && i + 1 < options.size() && ui.take_key(Key::right)) {
            chosen = i + 1;
            ui.focus_on(joined(name, options[i + 1]));
        }
        if (touch.has_focus && i > 0 && ui.take_key(Key::left)) {
            chosen = i - 1;
            ui.focus_on(joined(name, options[i - 1]));
        }
        const Color text = !option.is_enabled ? faded(t.muted, 0.7) : is_on ? t.accent : t.ink;
        if (touch.is_hovered && !is_on) canvas.fill_box(touch.box, mixed(t.paper, t.accent_tint, 0.7), ui.px(3.0F));
        canvas.fill_box({{touch.box.low.x, touch.box.high.y - ui.px(is_on ? 3.0F : 1.0F)}, touch.box.high}, is_on ? t.accent : t.line);
        const float start = touch.box.low.x + margin;
        if (icon > 0.0F) draw_icon(canvas, option.icon, {start + ui.px(8.0F), touch.box.center().y}, ui.px(16.0F), text, t.paper);
        canvas.text_in({{start + icon, touch.box.low.y}, {touch.box.high.x, touch.box.high.y}}, option.label, TextStyle::body, text);
        ui.hint(option.hint);
    }
    return chosen != before;
}

bool choose_one(Ui& ui, std::string_view name, std::span<const Option> options, std::optional<std::size_t>& chosen,
                std::span<const Verdict> verdicts)
{
    const std::optional<std::size_t> before = chosen;
    for (std::size_t i = 0; i < options.size(); ++i)
        if (answer(ui, joined(name, options[i]), options[i], chosen == i, true, i < verdicts.size() ? verdicts[i] : Verdict::none)
                .is_clicked)
            chosen = i;
    return chosen != before;
}

bool choose_several(Ui& ui, std::string_view name, std::span<const Option> options, std::vector<bool>& chosen,
                    std::span<const Verdict> verdicts)
{
    insist(chosen.size() == options.size(), "one tick an option");
    bool has_changed = false;
    for (std::size_t i = 0; i < options.size(); ++i) {
        if (!answer(ui, joined(name, options[i]), options[i], chosen[i], false, i < verdicts.size() ? verdicts[i] : Verdict::none)
                 .is_clicked)
            continue;
        chosen[i] = !chosen[i];
        has_changed = true;
    }
    return has_changed;
}

}
