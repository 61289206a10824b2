#include "window/drawing/legend.hpp"

#include "text/show.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace flapdoor::window {

std::string loading_text(double loading)
{
    if (!(loading > 0.0)) return "0";
    if (loading < 1.0) return "< 1";
    return text::show_number(loading, 2);
}

float draw_legend(Canvas canvas, const Ui& ui, Point low, float width, const HeatScale& scale, const Ramp& ramp, const LegendWords& words,
                  std::optional<double> reading)
{
    const Theme& t = ui.theme();
    const float line = canvas.measure("0", TextStyle::small).y;
    const std::string head = fmt::format("{}, {}", words.what, words.unit);
    canvas.text_in({low, {low.x + width, low.y + line}}, head, TextStyle::small, t.ink);

    const Box bar = box_at({low.x, low.y + line + ui.px(6.0F)}, {width, ui.px(12.0F)});
    const int steps = 64;
    for (int i = 0; i < steps; ++i) {
        const float x0 = bar.low.x + bar.width() * static_cast<float>(i) / steps;
        const float x1 = bar.low.x + bar.width() * static_cast<float>(i + 1) / steps;
        canvas.fill_box({{std::floor(x0), bar.low.y}, {std::floor(x1), bar.high.y}}, ramp((i + 0.5) / steps));
    }
    canvas.frame_box(bar, t.ink, ui.px(1.0F));

    // From the top down, so that a figure without room is left out among the small ones.
    const double decades = std::log10(scale.most / scale.least);
    const int last = static_cast<int>(decades + 1e-9);
    float free_to = bar.high.x + 1.0F;
    for (int d = last; d >= 0; --d) {
        const float x = bar.low.x + bar.width() * static_cast<float>(d / decades);
        canvas.line({x, bar.high.y}, {x, bar.high.y + ui.px(4.0F)}, t.ink, ui.px(1.0F));
        const std::string text = text::show_number(scale.least * std::pow(10.0, d), 2) + (d == last ? "+" : "");
        const float w = canvas.measure(text, TextStyle::small).x;
        const float start = std::max(bar.low.x, std::min(x - w * 0.5F, bar.high.x - w));
        if (start + w > free_to) continue;
        free_to = start - ui.px(8.0F);
        canvas.text({start, bar.high.y + ui.px(5.0F)}, text, TextStyle::small, t.muted);
    }
    if (reading) {
        const float x = bar.low.x + bar.width() * static_cast<float>(scale.share(*reading));
        const Point hand[3] = {
            {x, bar.low.y + ui.px(3.0F)}, {x - ui.px(5.0F), bar.low.y - ui.px(6.0F)}, {x + ui.px(5.0F), bar.low.y - ui.px(6.0F)}};
        canvas.fill_convex(hand, t.ink);
        canvas.line({x, bar.low.y}, {x, bar.high.y}, t.sheet, ui.px(3.0F));
        canvas.line({x, bar.low.y}, {x, bar.high.y}, t.ink, ui.px(1.4F));
    }
    const float note_y = bar.high.y + ui.px(9.0F) + line;
    return note_y + canvas.text_wrapped({low.x, note_y}, width, words.caution, TextStyle::small, t.muted) - low.y;
}

void draw_slip(Canvas canvas, const Ui& ui, Point pointer, std::string_view head, std::span<const std::string> lines, Point side)
{
    const Theme& t = ui.theme();
    const float pad = ui.px(8.0F);
    Point size = canvas.measure(head, TextStyle::strong);
    for (const std::string& line : lines) {
        const Point words = canvas.measure(line, TextStyle::small);
        size = {std::max(size.x, words.x), size.y + words.y};
    }
    size = size + Point{2.0F * pad, 2.0F * pad};
    const Box screen = ui.screen().inset(ui.px(4.0F));
    const auto beside = [&](float at, float length, float from, float to, float way) {
        const float after = at + ui.px(16.0F);
        const float before = at - ui.px(12.0F) - length;
        if (way < 0.0F) return before >= from ? before : after;
        return after + length <= to ? after : before;
    };
    Point low{beside(pointer.x, size.x, screen.low.x, screen.high.x, side.x), beside(pointer.y, size.y, screen.low.y, screen.high.y, side.y)};
    low = {std::max(low.x, screen.low.x), std::max(low.y, screen.low.y)};
    const Box slip = box_at(low, size);
    canvas.fill_box(slip, t.sheet, ui.px(4.0F));
    canvas.frame_box(slip, t.ink, ui.px(1.0F), ui.px(4.0F));
    Point at = slip.low + Point{pad, pad};
    canvas.text(at, head, TextStyle::strong, t.ink);
    at.y += canvas.measure(head, TextStyle::strong).y;
    for (const std::string& line : lines) {
        canvas.text(at, line, TextStyle::small, t.muted);
        at.y += canvas.measure(line, TextStyle::small).y;
    }
}

void draw_reading(Canvas canvas, const Ui& ui, Point pointer, double loading, const LegendWords& words)
{
    const std::string note(words.caution);
    draw_slip(canvas, ui, pointer, fmt::format("{} {}", loading_text(loading), words.unit), {&note, 1});
}

}
