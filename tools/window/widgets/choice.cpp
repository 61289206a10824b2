#include "window/widgets/choice.hpp"

#include "core/insist.hpp"
#include "text/language.hpp"
#include "window/widgets/words.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace flapdoor::window {

namespace {

std::string joined(std::string_view name, const Option& option) { return fmt::format("{}/{}", name, option.name); }

/// How an answer came out, as a label at its right end: the right one says so whether it was chosen or not.
struct VerdictLook {
    Standing standing = Standing::plain;
    std::string_view word = {};
};

VerdictLook look_of(Verdict verdict)
{
    switch (verdict) {
        case Verdict::right:
        case Verdict::missed: return {Standing::good, text::say("right answer")};
        case Verdict::wrong: return {Standing::caution, text::say("not right")};
        case Verdict::none: break;
    }
    return {};
}

/// A round or square answer with its words. @return its touch
Touch answer(Ui& ui, std::string_view name, const Option& option, bool is_on, bool is_round, Verdict verdict)
{
    Canvas canvas = ui.canvas();
    const Theme& t = ui.theme();
    const float sign = ui.px(22.0F);
    const float left = ui.px(12.0F) + sign + ui.px(12.0F);
    const float width = ui.width_left();
    const VerdictLook told = look_of(verdict);
    const float chip = told.word.empty() ? 0.0F : canvas.measure(told.word, TextStyle::small).x + ui.px(34.0F);
    const bool has_chip_beside = width - left - chip > ui.px(170.0F);
    const float text_width = width - left - (has_chip_beside ? std::max(chip + ui.px(20.0F), ui.px(40.0F)) : ui.px(12.0F));
    const float label_height = canvas.measure_wrapped(text_width, option.label, TextStyle::body).y;
    const float note_height = option.note.empty() ? 0.0F : canvas.measure_wrapped(text_width, option.note, TextStyle::small).y;
    const float chip_height = told.word.empty() || has_chip_beside ? 0.0F : ui.px(30.0F);
    const float text_height = label_height + note_height + chip_height;
    const float height = std::max(text_height + ui.px(option.note.empty() ? 22.0F : 16.0F), ui.px(44.0F));
    const Touch touch = ui.touch({.name = name,
                                  .role = Role::choice,
                                  .label = option.label,
                                  .value = told.word,
                                  .size = {width, height},
                                  .is_enabled = option.is_enabled,
                                  .is_on = is_on,
                                  .ring_rounding = 5.0F});

    const bool needs_care = verdict == Verdict::wrong;
    const bool is_right = verdict == Verdict::right || verdict == Verdict::missed;
    const Color ground = needs_care ? t.caution_tint : is_on || is_right ? t.accent_tint : touch.is_hovered ? t.field : t.sheet;
    const Color edge = needs_care ? t.caution : is_on || is_right ? t.accent : t.line;
    canvas.fill_box(touch.box, ground, ui.px(5.0F));
    canvas.frame_box(touch.box, edge, is_on || needs_care || is_right ? ui.px(1.6F) : 1.0F, ui.px(5.0F));
    const Point center{touch.box.low.x + ui.px(12.0F) + sign * 0.5F, touch.box.center().y};
    const Box square = box_around(center, {sign, sign});
    const float rounding = is_round ? sign * 0.5F : ui.px(4.0F);
    canvas.fill_box(square, is_on ? t.accent : t.field, rounding);
    canvas.frame_box(square, is_on ? t.accent : t.line, ui.px(1.5F), rounding);
    if (is_on && is_round) canvas.fill_circle(center, sign * 0.2F, t.on_accent);
    if (is_on && !is_round) draw_icon(canvas, Icon::check, center, sign * 0.65F, t.on_accent, t.accent);
    const Point low{touch.box.low.x + left, touch.box.center().y - text_height * 0.5F};
    canvas.text_wrapped(low, text_width, option.label, TextStyle::body, t.ink);
    if (!option.note.empty()) canvas.text_wrapped(low + Point{0.0F, label_height}, text_width, option.note, TextStyle::small, t.muted);
    if (!told.word.empty()) {
        const Point at = has_chip_beside ? Point{touch.box.high.x - chip - ui.px(10.0F), touch.box.center().y - ui.px(12.0F)}
                                         : Point{low.x, low.y + label_height + note_height + ui.px(5.0F)};
        draw_mark(canvas, ui, at, told.standing, told.word);
    }
    ui.hint(option.hint);
    return touch;
}

/// How a row is set: smaller letters, and less left and right of each label, where long words would run out of the width left.
struct RowLook {
    TextStyle style = TextStyle::body;
    float margin = 0.0F;
};

RowLook look_of_a_row(Ui& ui, std::span<const Option> options)
{
    RowLook look;
    for (const TextStyle style : {TextStyle::body, TextStyle::small}) {
        float labels = 0.0F;
        for (const Option& option : options) labels += ui.canvas().measure(option.label, style).x + (option.icon == Icon::none ? 0.0F : ui.px(24.0F));
        const float share = (ui.width_left() - ui.px(6.0F) - labels) / (2.0F * static_cast<float>(options.size()));
        look = {style, std::clamp(share, ui.px(3.0F), ui.px(14.0F))};
        if (share >= ui.px(4.0F)) break;
    }
    return look;
}

}

bool choice_row(Ui& ui, std::string_view name, std::span<const Option> options, std::size_t& chosen)
{
    const Theme& t = ui.theme();
    const std::size_t before = chosen;
    const auto [style, margin] = look_of_a_row(ui, options);
    for (std::size_t i = 0; i < options.size(); ++i) {
        const Option& option = options[i];
        Canvas canvas = ui.canvas();
        if (i > 0) ui.beside(0.0F);
        const float icon = option.icon == Icon::none ? 0.0F : ui.px(24.0F);
        const float words = canvas.measure(option.label, style).x;
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
        canvas.text_in({{start + icon, touch.box.low.y}, {touch.box.high.x, touch.box.high.y}}, option.label, style, text);
        ui.hint(option.hint);
    }
    return chosen != before;
}

/// Up and Down walk from answer to answer while one of them has the focus.
void walk(Ui& ui, std::string_view name, std::span<const Option> options, std::size_t at, const Touch& touch)
{
    if (!touch.has_focus) return;
    if (at + 1 < options.size() && ui.take_key(Key::down)) ui.focus_on(joined(name, options[at + 1]));
    if (at > 0 && ui.take_key(Key::up)) ui.focus_on(joined(name, options[at - 1]));
}

bool choose_one(Ui& ui, std::string_view name, std::span<const Option> options, std::optional<std::size_t>& chosen,
                std::span<const Verdict> verdicts)
{
    const std::optional<std::size_t> before = chosen;
    for (std::size_t i = 0; i < options.size(); ++i) {
        const Touch touch =
            answer(ui, joined(name, options[i]), options[i], chosen == i, true, i < verdicts.size() ? verdicts[i] : Verdict::none);
        if (touch.is_clicked) chosen = i;
        walk(ui, name, options, i, touch);
    }
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
