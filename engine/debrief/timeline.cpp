#include "debrief/timeline.hpp"

#include "core/insist.hpp"
#include "debrief/fault_mark.hpp"
#include "debrief/wording.hpp"
#include "text/language.hpp"
#include "text/show.hpp"
#include "text/svg.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <vector>

namespace flapdoor::debrief {

namespace svg = text::svg;
using text::Element;
using text::say;
using text::say_with;
using text::say_number;

namespace {

constexpr double wide = 760.0, left = 118.0, right = wide - 14.0;
constexpr double step_height = 24.0, step_bar = 14.0, lane_height = 23.0, sign_width = 23.0;
constexpr std::size_t phase_count = Words<job::Phase>::words.size();

/// The signs of all faults that begin at one step, packed into columns so that no sign hides another.
struct Cluster {
    std::size_t step = 0;
    std::vector<const FaultLine*> faults;
    double left = 0.0;
    std::size_t columns = 1;

    double width() const { return sign_width * static_cast<double>(columns); }
    std::size_t rows() const { return (faults.size() + columns - 1) / columns; }
};

struct Times {
    Time from{}, to{};

    double x(Time at) const { return left + (at - from) / (to - from) * (right - left); }
};

Times times_of(const std::vector<StepLine>& steps)
{
    Times times{steps.front().start, steps.front().end};
    for (const StepLine& step : steps) {
        times.from = std::min(times.from, step.start);
        times.to = std::max(times.to, step.end);
    }
    if (!(times.to > times.from)) times.to = times.from + 1.0_min;
    return times;
}

std::vector<Cluster> clusters_of(const Report& report)
{
    std::map<std::size_t, Cluster> by_step;
    for (const FaultLine& fault : report.faults) {
        if (fault.steps.empty()) continue;
        const auto step = static_cast<std::size_t>(fault.steps.front());
        by_step[step].step = step;
        by_step[step].faults.push_back(&fault);
    }
    std::vector<Cluster> clusters;
    for (auto& [step, cluster] : by_step) clusters.push_back(std::move(cluster));
    return clusters;
}

/// Columns of at most `most_rows` signs. @return  px that all clusters need beside each other
double pack(std::vector<Cluster>& clusters, std::size_t most_rows)
{
    double needed = 0.0;
    for (Cluster& cluster : clusters) {
        cluster.columns = (cluster.faults.size() + most_rows - 1) / most_rows;
        needed += cluster.width();
    }
    return needed;
}

/// Puts each cluster as near above its step as its neighbors allow, in the order of time.
void place(std::vector<Cluster>& clusters, const Report& report, const Times& times)
{
    std::size_t most_rows = 3;
    while (pack(clusters, most_rows) > right - left) ++most_rows;
    double free_from = left;
    for (Cluster& cluster : clusters) {
        cluster.left = std::max(free_from, times.x(report.steps[cluster.step].start) - sign_width / 2.0);
        free_from = cluster.left + cluster.width();
    }
    double free_to = right;
    for (auto cluster = clusters.rbegin(); cluster != clusters.rend(); ++cluster) {
        cluster->left = std::min(cluster->left, free_to - cluster->width());
        free_to = cluster->left;
    }
}

double height_of(const std::vector<Cluster>& clusters)
{
    std::size_t rows = 0;
    for (const Cluster& cluster : clusters) rows = std::max(rows, cluster.rows());
    return lane_height * static_cast<double>(rows);
}

void draw_hours(const Times& times, double top, double bottom, Element& drawing)
{
    const double hours = (times.to - times.from) / 1.0_h;
    const double step = hours > 9.0 ? 2.0 : hours > 2.5 ? 1.0 : 0.25;
    for (double hour = std::ceil(times.from / 1.0_h / step) * step; hour <= times.to / 1.0_h; hour += step) {
        const double x = times.x(1.0_h * hour);
        drawing.add(svg::line({x, top}, {x, bottom}).with("class", "grid"));
        drawing.add(svg::label({x, bottom + 15.0}, text::show_clock(1.0_h * hour), svg::Anchor::middle, 11.0).with("class", "muted"));
    }
}

double row_middle(double top, job::Phase phase) { return top + step_height * (static_cast<double>(phase) + 0.5); }

void draw_rows(double top, Element& drawing)
{
    for (std::size_t i = 0; i < phase_count; ++i) {
        const double y = top + step_height * static_cast<double>(i);
        drawing.add(svg::line({0.0, y}, {right, y}).with("class", "row"));
        drawing.add(svg::label({left - 8.0, y + step_height / 2.0 + 4.2}, title_of(static_cast<job::Phase>(i)), svg::Anchor::end, 12.0));
    }
}

Element bar(const StepLine& step, const Times& times, double top)
{
    const double x = times.x(step.start), long_as = std::max(2.0, times.x(step.end) - x);
    const bool is_done = step.outcome == job::Outcome::done;
    const char* look = !is_done ? "card idle" : step.faults.empty() ? "card" : "card blamed";
    Element shape = svg::rect(x, row_middle(top, step.phase) - step_bar / 2.0, long_as, step_bar).with("class", look);
    const std::string_view refused = step.outcome == job::Outcome::refused ? say(", refused") : is_done ? "" : say(", not needed");
    shape.add(Element("title").say(fmt::format("{} {}, {}{}", step.number, say(step.title), text::show_clock(step.start), refused)));
    return shape;
}

/// From the lowest sign on the left to the step, with a bend where the cluster had to give way.
void draw_drop(const Cluster& cluster, const StepLine& step, const Times& times, double top, Element& drawing)
{
    const double from = cluster.left + sign_width / 2.0, to = times.x(step.start) + 1.0;
    drawing.add(svg::polyline({{from, top - 14.0}, {to, top}, {to, row_middle(top, step.phase) - step_bar / 2.0}}).with("class", "drop"));
}

/// Row by row from the top left; the last row begins at the left, where the drop line is.
void draw_signs(const Cluster& cluster, double top, Element& drawing)
{
    const double first_row = top - 12.0 - lane_height * static_cast<double>(cluster.rows());
    for (std::size_t i = 0; i < cluster.faults.size(); ++i) {
        const auto column = static_cast<double>(i % cluster.columns), row = static_cast<double>(i / cluster.columns);
        drawing.add(fault_sign(*cluster.faults[i], {cluster.left + sign_width * (column + 0.5), first_row + lane_height * (row + 0.5)}));
    }
}

std::string description(const Report& report, const Times& times)
{
    return say_with("{} from {} to {}; {} marked at the first step each speaks of. The table of steps says the same in words.",
                       say_number("{} step", "{} steps", report.steps.size()), text::show_clock(times.from), text::show_clock(times.to),
                       say_number("{} fault", "{} faults", report.faults.size()));
}

}

Element timeline(const Report& report)
{
    insist(!report.steps.empty(), "a timeline has steps");
    const Times times = times_of(report.steps);
    std::vector<Cluster> clusters = clusters_of(report);
    place(clusters, report, times);
    const double top = height_of(clusters) + 16.0, bottom = top + step_height * phase_count;

    Element drawing = svg::drawing(wide, bottom + 22.0, say("Steps over the day"), description(report, times));
    draw_rows(top, drawing);
    draw_hours(times, top, bottom, drawing);
    for (const Cluster& cluster : clusters) draw_drop(cluster, report.steps[cluster.step], times, top, drawing);
    for (const StepLine& step : report.steps) drawing.add(bar(step, times, top));
    for (const Cluster& cluster : clusters) draw_signs(cluster, top, drawing);
    drawing.add(svg::line({left, bottom}, {right, bottom}).with("class", "axis"));
    return drawing;
}

}
