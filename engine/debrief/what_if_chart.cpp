#include "debrief/what_if_chart.hpp"

#include "core/insist.hpp"
#include "debrief/what_if_line.hpp"
#include "text/axis.hpp"
#include "text/language.hpp"
#include "text/show.hpp"
#include "text/svg.hpp"

#include <algorithm>
#include <cmath>

namespace flapdoor::debrief {

namespace svg = text::svg;
using text::Element;
using text::say;
using text::say_with;

namespace {

constexpr double width = 720.0, row_height = 30.0, bar_height = 12.0, label_room = 330.0, figure_room = 90.0, head = 44.0, label_size = 11.0;
constexpr double picograms_per_microgram = 1e6;

struct Row {
    std::string label, told;
    double own = 0.0, low = 0.0, high = 0.0;    ///< ug
    bool has_band = false;
};

Row row_of(const Report& report, const WhatIf& what_if)
{
    const WhatIfLine line = what_if_line(report, what_if);
    const FaultLine* fault = find_fault(report.faults, what_if.rules.front());
    Row row;
    row.label = what_if.rules.size() == 1 && fault != nullptr ? say_with("{}: {}", fault->number, say(fault->rule.says)) : line.name;
    row.told = line.outside.own;
    row.own = harm_of(what_if, Compared::outside) / picograms_per_microgram;
    if (const std::optional<Band> band = harm_band(what_if, Compared::outside)) {
        row.low = band->low / picograms_per_microgram;
        row.high = band->high / picograms_per_microgram;
        row.has_band = true;
    }
    return row;
}

/// Micrograms become milligrams where their figures would be long. @return  the unit
std::string_view in_readable_unit(std::vector<Row>& rows)
{
    constexpr double long_figures = 10'000.0;
    const bool is_long = std::any_of(rows.begin(), rows.end(), [&](const Row& row) { return std::max({std::abs(row.own), std::abs(row.low), std::abs(row.high)}) >= long_figures; });
    if (!is_long) return "ug";
    for (Row& row : rows)
        for (double* value : {&row.own, &row.low, &row.high}) *value /= 1000.0;
    return "mg";
}

class Scale {
public:
    explicit Scale(const std::vector<Row>& rows)
    {
        double least = 0.0, most = 0.0;
        for (const Row& row : rows) {
            least = std::min({least, row.own, row.low});
            most = std::max({most, row.own, row.high});
        }
        axis_ = text::linear_axis(least, most, 5);
    }

    double x(double value) const { return label_room + axis_.share(value) * (width - label_room - figure_room); }
    const std::vector<double>& ticks() const { return axis_.ticks; }

private:
    text::Axis axis_;
};

void draw_whisker(const Row& row, const Scale& scale, double y, Element& drawing)
{
    for (const char* look : {"halo", "whisker"}) {
        Element whisker = svg::group(look);
        whisker.add(svg::line({scale.x(row.low), y}, {scale.x(row.high), y}));
        for (const double value : {row.low, row.high}) whisker.add(svg::line({scale.x(value), y - 4.0}, {scale.x(value), y + 4.0}));
        drawing.add(std::move(whisker));
    }
}

/// The label in one line or two, to the left of its bar.
void draw_label(const std::string& label, double y, Element& drawing)
{
    constexpr double room = label_room - 12.0;
    const auto draw = [&](const std::string& text, double at) { drawing.add(svg::label({label_room - 8.0, at}, text, svg::Anchor::end, label_size)); };
    if (svg::text_width(label, label_size) <= room) return draw(label, y + 4.0);
    std::size_t cut = std::string::npos;
    for (std::size_t space = label.find(' '); space != std::string::npos && svg::text_width(label.substr(0, space), label_size) <= room; space = label.find(' ', space + 1)) cut = space;
    if (cut == std::string::npos) return draw(svg::fitted(label, room, label_size), y + 4.0);
    draw(label.substr(0, cut), y - 2.0);
    draw(svg::fitted(label.substr(cut + 1), room, label_size), y + 10.0);
}

void draw_row(const Row& row, const Scale& scale, double y, Element& drawing)
{
    draw_label(row.label, y, drawing);
    drawing.add(svg::rect(scale.x(0.0), y - bar_height / 2.0, scale.x(row.own) - scale.x(0.0), bar_height).with("class", "bar"));
    if (row.has_band) draw_whisker(row, scale, y, drawing);
    drawing.add(svg::label({std::max({scale.x(row.own), scale.x(row.high), scale.x(0.0)}) + 7.0, y + 4.0}, row.told, svg::Anchor::start, 11.5));
}

}

Element what_if_chart(const Report& report, std::size_t most)
{
    insist(report.what_ifs.has_value(), "a chart of what-ifs has some");
    std::vector<Row> rows;
    for (const WhatIf* what_if : costliest(*report.what_ifs))
        if (rows.size() < most) rows.push_back(row_of(report, *what_if));
    insist(!rows.empty(), "a chart of what-ifs has some");
    const std::string_view unit = in_readable_unit(rows);
    const Scale scale(rows);
    const double bottom = head + row_height * static_cast<double>(rows.size());
    std::string description(say("Lead that got out because of each mistake"));
    for (const Row& row : rows) description += "; " + row.label + ": " + row.told;
    Element drawing = svg::drawing(width, bottom + 8.0, say("Lead that got out because of each mistake"), description);
    drawing.add(svg::label({0.0, 14.0}, say_with(rows.front().has_band ? text::to_say("Lead added outside the work area, {}: bar this run, whisker the band") : text::to_say("Lead added outside the work area, {}: this run"), unit), svg::Anchor::start, 11.5));
    for (const double tick : scale.ticks()) {
        drawing.add(svg::line({scale.x(tick), head - 6.0}, {scale.x(tick), bottom}).with("class", "grid"));
        drawing.add(svg::label({scale.x(tick), head - 12.0}, text::show_number(tick), svg::Anchor::middle, 11.0).with("class", "muted"));
    }
    for (std::size_t i = 0; i < rows.size(); ++i) draw_row(rows[i], scale, head + row_height * (static_cast<double>(i) + 0.5), drawing);
    drawing.add(svg::line({scale.x(0.0), head - 6.0}, {scale.x(0.0), bottom}).with("class", "axis"));
    return drawing;
}

}
