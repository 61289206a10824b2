#include "text/chart.hpp"

#include "core/insist.hpp"
#include "text/language.hpp"
#include "text/ramp.hpp"
#include "text/show.hpp"
#include "text/svg.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <iterator>

namespace flapdoor::text {
namespace {

using svg::Anchor;

constexpr double row_height = 30.0;
constexpr double bar_height = 16.0;
constexpr double label_gap = 14.0;          // between a label and its bar
constexpr double top_of_levels = 18.0;      // room for one row of level names

/// Where things stand: labels on the left, bars, shown values on the right.
struct Frame {
    double left = 0.0, right = 0.0, top = 0.0, bottom = 0.0;
    Axis axis;

    double x(double value) const { return left + axis.share(value) * (right - left); }
};

Axis axis_of(const BarChart& chart)
{
    double most = 0.0, least_positive = 0.0;
    const auto look_at = [&](double value) {
        insist(std::isfinite(value) && value >= 0.0, "a bar is as long as a finite value that is not negative");
        most = std::max(most, value);
        if (value > 0.0 && (least_positive == 0.0 || value < least_positive)) least_positive = value;
    };
    for (const Bar& bar : chart.bars) {
        look_at(bar.value);
        if (bar.band) look_at(bar.band->low), look_at(bar.band->high);
    }
    for (const Level& level : chart.levels) look_at(level.value);
    return chart.is_log ? log_axis(least_positive, most) : linear_axis(0.0, most);
}

Frame frame_of(const BarChart& chart)
{
    double labels = 40.0, values = 20.0;
    for (const Bar& bar : chart.bars) {
        labels = std::max(labels, svg::text_width(bar.label));
        values = std::max(values, svg::text_width(bar.shown));
    }
    Frame frame;
    frame.left = std::min(labels, chart.width * 0.35) + label_gap;
    frame.right = chart.width - std::min(values, chart.width * 0.25) - label_gap;
    frame.top = 4.0 + top_of_levels * static_cast<double>(chart.levels.size());
    frame.bottom = frame.top + row_height * static_cast<double>(chart.bars.size());
    frame.axis = axis_of(chart);
    return frame;
}

void draw_ticks(const Frame& frame, Element& drawing)
{
    double free_from = -1.0;
    for (const double tick : frame.axis.ticks) {
        const double x = frame.x(tick);
        drawing.add(svg::line({x, frame.top}, {x, frame.bottom + 4.0}).with("class", "grid"));
        const std::string text = show_number(tick);
        const double half = svg::text_width(text, 12.0) / 2.0;
        if (x - half < free_from) continue;     // the names of narrow ticks would run into each other
        drawing.add(svg::label({x, frame.bottom + 18.0}, text, Anchor::middle, 12.0).with("class", "muted"));
        free_from = x + half + 4.0;
    }
}

Element whisker(const Band& band, const Frame& frame, double y, std::string_view class_name)
{
    const double low = frame.x(band.low), high = frame.x(band.high);
    Element whisker = svg::group(class_name);
    whisker.add(svg::line({low, y}, {high, y}));
    for (const double x : {low, high}) whisker.add(svg::line({x, y - 5.0}, {x, y + 5.0}));
    return whisker;
}

void draw_bar(const Bar& bar, const Frame& frame, double y, Element& drawing)
{
    Element shape = svg::rect(frame.left, y - bar_height / 2.0, frame.x(bar.value) - frame.left, bar_height).with("class", bar.is_marked ? "bar marked" : "bar");
    shape.add(Element("title").say(fmt::format("{}: {}", bar.label, bar.shown)));
    drawing.add(std::move(shape));
    if (!bar.band) return;
    drawing.add(whisker(*bar.band, frame, y, "halo"));     // a dark line would be lost on a dark bar
    drawing.add(whisker(*bar.band, frame, y, "whisker"));
}

void draw_words(const Bar& bar, const Frame& frame, double y, Element& drawing)
{
    const double end = frame.x(bar.band ? std::max(bar.value, bar.band->high) : bar.value);
    drawing.add(svg::label({frame.left - 8.0, y + 4.5}, svg::fitted(bar.label, frame.left - 8.0), Anchor::end));
    drawing.add(svg::label({end + 6.0, y + 4.5}, bar.shown));
}

void draw_level(const Level& level, const Frame& frame, double y, Element& drawing)
{
    const double x = frame.x(level.value);
    drawing.add(svg::line({x, y}, {x, frame.bottom}).with("class", "level"));
    const bool is_right = x > (frame.left + frame.right) / 2.0;
    drawing.add(svg::label({x + (is_right ? -5.0 : 5.0), y + 11.0}, level.label, is_right ? Anchor::end : Anchor::start, 12.0).with("class", "caution"));
}

std::string description(const BarChart& chart)
{
    std::string text = chart.axis_title;
    for (const Bar& bar : chart.bars) fmt::format_to(std::back_inserter(text), "; {}: {}", bar.label, bar.shown);
    return text;
}

}

Element bar_chart(const BarChart& chart)
{
    const Frame frame = frame_of(chart);
    Element drawing = svg::drawing(chart.width, frame.bottom + 44.0, chart.title, description(chart));
    draw_ticks(frame, drawing);
    const auto middle = [&](std::size_t i) { return frame.top + row_height * (static_cast<double>(i) + 0.5); };
    for (std::size_t i = 0; i < chart.bars.size(); ++i) draw_bar(chart.bars[i], frame, middle(i), drawing);
    for (std::size_t i = 0; i < chart.levels.size(); ++i) draw_level(chart.levels[i], frame, 2.0 + top_of_levels * static_cast<double>(i), drawing);
    for (std::size_t i = 0; i < chart.bars.size(); ++i) draw_words(chart.bars[i], frame, middle(i), drawing);
    drawing.add(svg::line({frame.left, frame.top}, {frame.left, frame.bottom}).with("class", "axis"));
    const std::string scale = chart.is_log ? " " + std::string(say("(each line ten times the one before)")) : "";
    drawing.add(svg::label({(frame.left + frame.right) / 2.0, frame.bottom + 38.0}, chart.axis_title + scale, Anchor::middle, 12.0));

    Element figure("figure");
    figure.add(Element("figcaption").say(chart.title));
    figure.add(std::move(drawing));
    return figure;
}

Element dust_legend(const Axis& axis, const std::string& title, double width)
{
    constexpr int steps = 48;
    constexpr double margin = 24.0, height = 14.0;
    const double length = width - 2.0 * margin;
    Element drawing = svg::drawing(width, 56.0, title);
    for (int i = 0; i < steps; ++i) {
        const double x = margin + length * i / steps;
        // A hair wider than its share, against seams between neighbors.
        drawing.add(svg::rect(x, 4.0, length / steps + 0.5, height).with("fill", to_hex(dust_color((i + 0.5) / steps))));
    }
    drawing.add(svg::rect(margin, 4.0, length, height).with("class", "frame"));
    for (const double tick : axis.ticks) {
        const double x = margin + length * axis.share(tick);
        drawing.add(svg::line({x, 4.0 + height}, {x, 8.0 + height}).with("class", "axis"));
        drawing.add(svg::label({x, 20.0 + height}, show_number(tick), Anchor::middle, 12.0));
    }
    drawing.add(svg::label({width / 2.0, 52.0}, title, Anchor::middle, 12.0).with("class", "muted"));
    return drawing;
}

}
