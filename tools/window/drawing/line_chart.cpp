#include "window/drawing/line_chart.hpp"

#include "text/show.hpp"

#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

namespace flapdoor::window {

namespace {

/// 1, 2 or 5 times a power of ten, so that at most `parts` steps fit.
double even_step(double most, double parts)
{
    const double decade = std::pow(10.0, std::floor(std::log10(std::max(most, 1e-9) / parts)));
    for (const double factor : {1.0, 2.0, 5.0})
        if (most / (decade * factor) <= parts) return decade * factor;
    return decade * 10.0;
}

struct ChartField {
    Box box;
    const ChartLook& look;

    Point at(ChartPoint p) const
    {
        return {box.low.x + box.width() * static_cast<float>(std::clamp(p.x / look.x_most, 0.0, 1.0)),
                box.high.y - box.height() * static_cast<float>(std::clamp(p.y / look.y_most, 0.0, 1.0))};
    }
};

void draw_axes(Canvas& canvas, const Ui& ui, const ChartField& field)
{
    const Theme& t = ui.theme();
    const ChartLook& look = field.look;
    const double y_step = even_step(look.y_most, std::max(1.0, static_cast<double>(field.box.height() / ui.px(26.0F))));
    for (int i = 0; i * y_step <= look.y_most * 1.0001; ++i) {
        const float y = field.at({0.0, i * y_step}).y;
        canvas.line({field.box.low.x, y}, {field.box.high.x, y}, t.hairline, ui.px(1.0F));
        const std::string figure = text::show_number(i * y_step, 3);
        const Point size = canvas.measure(figure, TextStyle::small);
        canvas.text({field.box.low.x - ui.px(6.0F) - size.x, y - size.y * 0.5F}, figure, TextStyle::small, t.muted);
    }
    const double x_step = even_step(look.x_most, std::max(1.0, static_cast<double>(field.box.width() / ui.px(58.0F))));
    for (int i = 0; i * x_step <= look.x_most * 1.0001; ++i) {
        const float x = field.at({i * x_step, 0.0}).x;
        canvas.line({x, field.box.high.y}, {x, field.box.high.y + ui.px(4.0F)}, t.ink, ui.px(1.0F));
        const std::string figure = text::show_number(i * x_step, 3);
        const Point size = canvas.measure(figure, TextStyle::small);
        canvas.text({x - size.x * 0.5F, field.box.high.y + ui.px(5.0F)}, figure, TextStyle::small, t.muted);
    }
    canvas.line({field.box.low.x, field.box.low.y}, {field.box.low.x, field.box.high.y}, t.ink, ui.px(1.0F));
    canvas.line({field.box.low.x, field.box.high.y}, field.box.high, t.ink, ui.px(1.0F));
    canvas.text({field.box.low.x + ui.px(5.0F), field.box.low.y - ui.px(22.0F)}, look.y_unit, TextStyle::small, t.muted);
    const Point unit = canvas.measure(look.x_unit, TextStyle::small);
    canvas.text({field.box.high.x + ui.px(8.0F), field.box.high.y - unit.y * 0.5F}, look.x_unit, TextStyle::small, t.muted);
}

void draw_dashed(Canvas& canvas, const Ui& ui, std::span<const Point> line, Color color)
{
    // Dashes run on across the corners: a curve of many short pieces would otherwise look whole.
    const float dash = ui.px(6.0F);
    const float gap = ui.px(4.0F);
    float gone = 0.0F;
    for (std::size_t i = 1; i < line.size(); ++i) {
        const Point way = line[i] - line[i - 1];
        const float length = std::hypot(way.x, way.y);
        for (float from = 0.0F; from < length;) {
            const float in_period = std::fmod(gone + from, dash + gap);
            const bool is_on = in_period < dash;
            const float to = std::min(length, from + std::max((is_on ? dash : dash + gap) - in_period, 0.25F));
            if (is_on) canvas.line(line[i - 1] + way * (from / length), line[i - 1] + way * (to / length), color, ui.px(1.6F));
            from = to;
        }
        gone += length;
    }
}

}

void draw_line_chart(Canvas canvas, const Ui& ui, const Box& box, std::span<const ChartLine> lines, const ChartLook& look)
{
    const Theme& t = ui.theme();
    const float unit = canvas.measure(look.x_unit, TextStyle::small).x;
    const ChartField field{{{box.low.x + ui.px(44.0F), box.low.y + ui.px(24.0F)}, {box.high.x - unit - ui.px(14.0F), box.high.y - ui.px(26.0F)}}, look};
    if (field.box.width() < ui.px(40.0F) || field.box.height() < ui.px(24.0F)) return;
    draw_axes(canvas, ui, field);
    for (const bool is_main : {false, true})
        for (const ChartLine& line : lines) {
            if (line.is_main != is_main || line.points.size() < 2) continue;
            std::vector<Point> points;
            for (const ChartPoint& p : line.points) { // points on each other would spoil the joints of the line
                const Point at = field.at(p);
                if (points.empty() || std::hypot(at.x - points.back().x, at.y - points.back().y) >= 1.0F) points.push_back(at);
            }
            if (is_main)
                canvas.polyline(points, t.accent, ui.px(2.4F));
            else
                draw_dashed(canvas, ui, points, t.ink);
        }
    if (!look.x_now) return;
    const float x = field.at({*look.x_now, 0.0}).x;
    canvas.dashes({x, field.box.low.y}, {x, field.box.high.y}, t.ink, ui.px(1.2F), ui.px(3.0F), ui.px(3.0F));
    for (const ChartLine& line : lines) {
        if (!line.is_main || line.points.empty()) continue;
        const auto after = std::find_if(line.points.begin(), line.points.end(), [&](const ChartPoint& p) { return p.x >= *look.x_now; });
        canvas.fill_circle(field.at(after == line.points.end() ? line.points.back() : *after), ui.px(4.5F), t.accent);
    }
}

}
