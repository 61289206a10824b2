#include "window/run/day_chart.hpp"

#include "window/widgets/scrubber.hpp"

#include "text/show.hpp"

#include <algorithm>
#include <cmath>
#include <vector>

namespace flapdoor::window {

namespace {

/// 1, 2 or 5 times a power of ten, so that about four lines fit.
double grid_step(double most)
{
    const double decade = std::pow(10.0, std::floor(std::log10(std::max(most, 1e-12) / 4.0)));
    for (const double factor : {1.0, 2.0, 5.0})
        if (most / (decade * factor) <= 4.5) return decade * factor;
    return decade * 10.0;
}

struct Field {
    Box box;
    DayChartLook look;

    float x(Time time) const
    {
        return box.low.x + box.width() * static_cast<float>((time - look.start).si / std::max((look.end - look.start).si, 1.0));
    }
    float y(double level) const
    {
        const double share =
            look.least > 0.0 ? std::log(std::max(level, look.least) / look.least) / std::log(look.most / look.least) : level / look.most;
        return box.high.y - box.height() * static_cast<float>(std::clamp(share, 0.0, 1.0));
    }
};

std::vector<double> grid_levels(const DayChartLook& look, float height, float room)
{
    std::vector<double> levels;
    if (look.least <= 0.0) {
        const double step = grid_step(look.most);
        for (int i = 0; i * step <= look.most * 1.0001; ++i) levels.push_back(i * step);
        return levels;
    }
    const double decades = std::log10(look.most / look.least);
    const int skip = std::max(1, static_cast<int>(std::ceil(decades * static_cast<double>(room / std::max(height, 1.0F)))));
    for (int i = 0; i <= static_cast<int>(decades + 1e-9); i += skip) levels.push_back(look.least * std::pow(10.0, i));
    return levels;
}

void draw_axes(Canvas& canvas, const Ui& ui, const Field& field)
{
    const Theme& t = ui.theme();
    for (const double level : grid_levels(field.look, field.box.height(), ui.px(20.0F))) {
        const float y = field.y(level);
        canvas.line({field.box.low.x, y}, {field.box.high.x, y}, t.hairline, ui.px(1.0F));
        canvas.text_in({{field.box.low.x - ui.px(56.0F), y - ui.px(10.0F)}, {field.box.low.x - ui.px(6.0F), y + ui.px(10.0F)}},
                       text::show_number(level, 3), TextStyle::small, t.muted, Align::right);
    }
    const float room = ui.px(50.0F);
    const double hours = (field.look.end - field.look.start).si / 3600.0;
    double every = 24.0;
    for (const double candidate : {12.0, 6.0, 4.0, 3.0, 2.0, 1.0})
        if (static_cast<double>(field.box.width()) * candidate / std::max(hours, 0.1) >= static_cast<double>(room)) every = candidate;
    for (double hour = std::ceil(field.look.start.si / 3600.0 / every) * every; hour * 3600.0 <= field.look.end.si; hour += every) {
        const float x = field.x(Time{hour * 3600.0});
        canvas.line({x, field.box.high.y}, {x, field.box.high.y + ui.px(4.0F)}, t.ink, ui.px(1.0F));
        canvas.text_in(box_around({x, field.box.high.y + ui.px(13.0F)}, {room, ui.px(18.0F)}), day_time_text(hour * 3600.0),
                       TextStyle::small, t.muted, Align::center);
    }
    canvas.line({field.box.low.x, field.box.low.y}, {field.box.low.x, field.box.high.y}, t.ink, ui.px(1.0F));
    canvas.line({field.box.low.x, field.box.high.y}, field.box.high, t.ink, ui.px(1.0F));
}

}

void draw_day_chart(Canvas canvas, const Ui& ui, const Box& box, std::span<const DayPoint> points, const DayChartLook& look)
{
    const Theme& t = ui.theme();
    const Field field{{{box.low.x + ui.px(58.0F), box.low.y + ui.px(9.0F)}, {box.high.x - ui.px(22.0F), box.high.y - ui.px(26.0F)}}, look};
    if (field.box.width() < ui.px(40.0F) || field.box.height() < ui.px(24.0F)) return;
    draw_axes(canvas, ui, field);
    std::vector<Point> past, to_come;
    for (const DayPoint& point : points) {
        std::vector<Point>& line = point.at <= look.now ? past : to_come;
        const Point here{field.x(point.at), field.y(point.level)};
        const bool shows = line.empty() || here.x - line.back().x >= 1.0F || std::abs(here.y - line.back().y) >= 1.0F;
        if (shows) line.push_back(here);
    }
    if (!past.empty() && !to_come.empty()) to_come.insert(to_come.begin(), past.back());
    if (to_come.size() > 1) canvas.polyline(to_come, t.line, ui.px(1.1F));
    if (past.size() > 1) canvas.polyline(past, t.accent, ui.px(2.2F));
    const float x = field.x(look.now);
    canvas.dashes({x, field.box.low.y}, {x, field.box.high.y}, t.ink, ui.px(1.2F), ui.px(4.0F), ui.px(3.0F));
    if (!past.empty()) canvas.fill_circle(past.back(), ui.px(4.0F), t.accent);
}

}
