#include "window/widgets/scrubber.hpp"

#include "window/widgets/slider.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace flapdoor::window {

namespace {

/// Spacing of the ruler's figures: the least of these that leaves them room. @param least  of a figure to the next one that reads otherwise
double tick_spacing(double end, float pixels, float room, double least)
{
    for (const double every : {10.0, 30.0, 60.0, 120.0, 300.0, 600.0, 900.0, 1800.0, 3600.0, 7200.0, 14400.0, 28800.0})
        if (every >= least && static_cast<double>(pixels) * every / end >= static_cast<double>(room)) return every;
    return 86400.0;
}

double next_mark(std::span<const ScrubberMark> marks, double from, bool is_later, double otherwise)
{
    double best = otherwise;
    for (const ScrubberMark& mark : marks) {
        if (is_later && mark.seconds > from + 1e-9) best = std::min(best, mark.seconds);
        if (!is_later && mark.seconds < from - 1e-9) best = std::max(best, mark.seconds);
    }
    return best;
}

void draw_ruler(Ui& ui, Canvas& canvas, float from, float length, float rail_y, const ScrubberLook& look, double end)
{
    const double every = tick_spacing(end, length, ui.px(64.0F), look.day_time_at_start ? 60.0 : 1.0);
    const double start = look.day_time_at_start.value_or(0.0);
    for (double time = std::ceil(start / every - 1e-9) * every; time <= start + end + 1e-9; time += every) {
        const float x = from + length * static_cast<float>((time - start) / end);
        canvas.line({x, rail_y + ui.px(6.0F)}, {x, rail_y + ui.px(11.0F)}, ui.theme().muted);
        const std::string text = look.day_time_at_start ? day_time_text(time) : clock_text(time);
        const float width = canvas.measure(text, TextStyle::small).x;
        const float low = std::clamp(x - width * 0.5F, from - ui.px(9.0F), from + length + ui.px(9.0F) - width);
        canvas.text({low, rail_y + ui.px(11.0F)}, text, TextStyle::small, ui.theme().muted);
    }
}

}

std::string clock_text(double seconds)
{
    const auto whole = static_cast<long>(std::floor(std::max(seconds, 0.0)));
    if (whole < 3600) return fmt::format("{}:{:02}", whole / 60, whole % 60);
    return fmt::format("{}:{:02}:{:02}", whole / 3600, whole / 60 % 60, whole % 60);
}

std::string day_time_text(double since_midnight)
{
    const auto minutes = static_cast<long>(std::floor(std::max(since_midnight, 0.0) / 60.0));
    return fmt::format("{:02}:{:02}", minutes / 60 % 24, minutes % 60);
}

bool scrubber(Ui& ui, std::string_view name, double& seconds, const ScrubberLook& look)
{
    Canvas canvas = ui.canvas();
    const Theme& t = ui.theme();
    const double before = seconds;
    const double end = std::max(look.end, 1e-3);
    const Touch touch = ui.touch({.name = name,
                                  .role = Role::slider,
                                  .label = look.label,
                                  .value = look.day_time_at_start ? day_time_text(*look.day_time_at_start + seconds) : clock_text(seconds),
                                  .size = {look.width > 0.0F ? ui.px(look.width) : ui.width_left(), ui.px(48.0F)},
                                  .is_enabled = look.is_enabled,
                                  .is_pressed_by_keys = false});
    const float margin = ui.px(9.0F);
    const float from = touch.box.low.x + margin;
    const float length = std::max(touch.box.width() - 2.0F * margin, 1.0F);
    const float y = touch.box.low.y + ui.px(18.0F);
    if (touch.is_held) seconds = end * static_cast<double>(std::clamp((ui.input().mouse.x - from) / length, 0.0F, 1.0F));
    if (touch.has_focus) {
        while (ui.take_key(Key::page_up)) seconds = next_mark(look.marks, seconds, true, end);
        while (ui.take_key(Key::page_down)) seconds = next_mark(look.marks, seconds, false, 0.0);
        seconds = moved_by_keys(ui, seconds, 0.0, end, look.step);
    }

    const float at = from + length * static_cast<float>(std::clamp(seconds / end, 0.0, 1.0));
    const Box rail{{from, y - ui.px(3.0F)}, {from + length, y + ui.px(3.0F)}};
    canvas.fill_box(rail, t.field, ui.px(3.0F));
    canvas.frame_box(rail, t.line, 1.0F, ui.px(3.0F));
    canvas.fill_box({rail.low, {at, rail.high.y}}, t.accent, ui.px(3.0F));
    draw_ruler(ui, canvas, from, length, y, look, end);
    const ScrubberMark* under_mouse = nullptr;
    for (const ScrubberMark& mark : look.marks) {
        const float x = from + length * static_cast<float>(std::clamp(mark.seconds / end, 0.0, 1.0));
        if (mark.is_fault) {
            const Point flag[3] = {{x, y - ui.px(5.0F)}, {x - ui.px(5.5F), y - ui.px(15.0F)}, {x + ui.px(5.5F), y - ui.px(15.0F)}};
            canvas.fill_convex(flag, t.caution_fill);
            canvas.polyline(flag, t.caution, ui.px(1.2F), true);
        }
        else {
            canvas.line({x, y - ui.px(12.0F)}, {x, y - ui.px(5.0F)}, t.ink, ui.px(1.5F));
        }
        if (touch.is_hovered && std::abs(ui.input().mouse.x - x) < ui.px(6.0F)) under_mouse = &mark;
    }
    canvas.fill_box(box_around({at, y}, {ui.px(8.0F), ui.px(26.0F)}), touch.is_hovered || touch.is_held ? t.accent_deep : t.accent,
                    ui.px(3.0F));
    canvas.line({at, y - ui.px(7.0F)}, {at, y + ui.px(7.0F)}, t.on_accent, ui.px(1.2F));
    if (under_mouse != nullptr) ui.hint(under_mouse->label);
    return seconds != before;
}

}
