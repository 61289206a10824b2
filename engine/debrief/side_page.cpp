#include "debrief/side_page.hpp"

#include "core/insist.hpp"
#include "debrief/floor_map.hpp"
#include "debrief/level.hpp"
#include "debrief/page_style.hpp"
#include "debrief/sections/parts.hpp"
#include "debrief/side_by_side.hpp"
#include "debrief/wording.hpp"
#include "text/axis.hpp"
#include "text/language.hpp"
#include "text/page.hpp"
#include "text/show.hpp"
#include "text/svg.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace flapdoor::debrief {

namespace svg = text::svg;
using sections::piece;
using sections::table;
using sections::titled;
using text::Element;
using text::say;
using text::say_with;

namespace {

using Reports = std::array<const Report*, 2>;
using Films = std::array<const drill::Film*, 2>;

constexpr double picograms_per_microgram = 1e6;

/// What the same plans came to with other seeds, when both have a study of their own.
void add_bands(const Reports& reports, const auto& add)
{
    const std::string runs = text::say_number("{} run", "{} runs", reports[0]->bands->runs);
    const auto noted = [](const Band& band) { return loading_text(band) + "; " + std::string(say(model_note)); };
    const auto have = [&](const auto& band_of) { return band_of(*reports[0]) != nullptr && band_of(*reports[1]) != nullptr; };
    const auto outside = [](const Report& r) { return r.bands->find(Measured::outside); };
    const auto floor = [](const Report& r) { return r.bands->find(Measured::work_floor); };
    const auto sill = [](const Report& r) { return r.bands->worst_sill ? &*r.bands->worst_sill : nullptr; };
    if (have(outside)) add(say_with("Lead that got out, over {}", runs), [&](const Report& r) { return amount_text(*outside(r)); });
    if (have(floor)) add(say_with("Lead on the work room's floor, over {}", runs), [&](const Report& r) { return noted(*floor(r)); });
    if (have(sill)) add(say_with("Lead on the worst sill, over {}", runs), [&](const Report& r) { return noted(*sill(r)); });
}

Element marks_beside(const Reports& reports)
{
    const std::string left = "A: " + std::string(say(reports[0]->plan)), right = "B: " + std::string(say(reports[1]->plan));
    Element list = table(say("Marks and dust"), {say("What"), left, right}).with("class", "beside");
    Element body("tbody");
    const auto add = [&](std::string_view what, const auto& told) {
        Element row = Element("tr").add(piece("th", what).with("scope", "row"));
        for (const Report* report : reports) row.add(Element("td").say(told(*report)));
        body.add(std::move(row));
    };
    add(say("Result"), [](const Report& r) { return std::string(r.sheet.is_passed ? say("passed as practice") : say("NOT PASSED")); });
    add(say("Score"), [](const Report& r) { return rules::percent_text(r.sheet.score); });
    add(say("Faults"), [](const Report& r) { return std::to_string(r.faults.size()); });
    add(say("Steps in the plan"), [](const Report& r) { return std::to_string(r.steps.size()); });
    add(say("Site time"), [](const Report& r) { return text::show(r.outcome.took); });
    add(say("Lead that got out of the work area"), [](const Report& r) { return show_roughly(r.outcome.outside.lead); });
    add(say("Lead left in the work area"), [](const Report& r) { return show_roughly(r.outcome.inside.lead); });
    add(say("Lead on the work room's floor at the end"), [](const Report& r) { return text::show(r.outcome.floor) + "; " + std::string(say(loading_note)); });
    add(say("Lead on the worst sill at the end"), [](const Report& r) { return text::show(r.outcome.sill) + "; " + std::string(say(loading_note)); });
    if (reports[0]->bands && reports[1]->bands) add_bands(reports, add);
    return list.add(std::move(body));
}

/// Lead outside over the day: A drawn through, B dashed.
Element lead_chart(const SideBySide& both, const Reports& reports)
{
    constexpr double width = 720.0, height = 250.0, left = 64.0, right = width - 20.0, top = 34.0, bottom = height - 30.0;
    double most = 0.0;
    const auto value = [&](const SideMoment& moment, std::size_t side) { return static_cast<double>(std::max<std::int64_t>(0, moment.frames[side]->outside_lead.count)) / picograms_per_microgram; };
    for (const SideMoment& moment : both.moments) most = std::max({most, value(moment, 0), value(moment, 1)});
    constexpr double long_figures = 10'000.0;     // ug: five digits are read as milligrams
    const bool is_long = most >= long_figures;
    const double unit = is_long ? 1000.0 : 1.0;
    const text::Axis axis = text::linear_axis(0.0, most / unit, 4);
    const auto x = [&](Time at) { return left + (at - both.from) / (both.to - both.from) * (right - left); };
    const auto y = [&](double micrograms) { return bottom - axis.share(micrograms / unit) * (bottom - top); };
    const std::string ends = say_with("A ends at {}, B at {}.", show_roughly(both.moments.back().frames[0]->outside_lead), show_roughly(both.moments.back().frames[1]->outside_lead));
    Element drawing = svg::drawing(width, height, say("Lead outside the work area over the day"), ends);
    drawing.add(svg::label({0.0, 14.0}, is_long ? say("Lead outside the work area, mg (single runs)") : say("Lead outside the work area, ug (single runs)"), svg::Anchor::start, 12.0));
    for (const double tick : axis.ticks) {
        drawing.add(svg::line({left, y(tick * unit)}, {right, y(tick * unit)}).with("class", "grid"));
        drawing.add(svg::label({left - 6.0, y(tick * unit) + 4.0}, text::show_number(tick), svg::Anchor::end, 11.0).with("class", "muted"));
    }
    const double step = (both.to - both.from) / 1.0_h > 9.0 ? 2.0 : 1.0;
    for (double hour = std::ceil(both.from / 1.0_h / step) * step; hour <= both.to / 1.0_h; hour += step)
        drawing.add(svg::label({x(1.0_h * hour), bottom + 16.0}, text::show_clock(1.0_h * hour), svg::Anchor::middle, 11.0).with("class", "muted"));
    for (std::size_t side = 0; side < 2; ++side) {
        std::vector<svg::Point> points;
        for (const SideMoment& moment : both.moments)
            if (!moment.has_ended[side]) points.push_back({x(moment.at), y(value(moment, side))});
        if (points.size() < 2) continue;
        drawing.add(svg::polyline(points).with("class", side == 0 ? "run-line-a" : "run-line-b"));
        drawing.add(svg::label({std::min(points.back().x + 4.0, right - 12.0), points.back().y - 6.0}, side == 0 ? "A" : "B", svg::Anchor::start, 12.5).with("class", "strong"));
    }
    drawing.add(svg::line({left, bottom}, {right, bottom}).with("class", "axis"));
    Element figure("figure");
    figure.add(Element("figcaption").say(say_with("Lead outside the work area over the day: A ({}) drawn through, B ({}) dashed", say(reports[0]->plan), say(reports[1]->plan))));
    return figure.add(std::move(drawing));
}

std::string step_at(const Report& report, const drill::Frame& frame, bool has_ended)
{
    if (has_ended) return std::string(say("the job is over"));
    const StepLine& step = report.steps.at(static_cast<std::size_t>(std::clamp(frame.card, 0, static_cast<int>(report.steps.size()) - 1)));
    return say_with("step {}, {}", step.number, say(step.title));
}

Element floors(const SideBySide& both, const Reports& reports)
{
    Element section = titled(say("The floors at the same times"));
    section.add(floor_map_key(360.0));
    MapLook look;
    look.has_key = false;
    for (const SideMoment& moment : both.moments) {
        Element together = Element("div").with("class", "moment");
        together.add(Element("h3").say(text::show_clock(moment.at)));
        Element row = Element("div").with("class", "maps");
        for (std::size_t side = 0; side < 2; ++side) {
            const Report& report = *reports[side];
            const std::string name = (side == 0 ? "A, " : "B, ") + step_at(report, *moment.frames[side], moment.has_ended[side]);
            Element figure("figure");
            figure.add(Element("figcaption").say(name));
            figure.add(floor_map({report.scenario, report.rasters, report.work_room, *moment.frames[side], text::show_clock(moment.at) + ", " + name}, look));
            row.add(std::move(figure));
        }
        together.add(std::move(row));
        section.add(std::move(together));
    }
    return section;
}

/// Moments at which something has just happened in one run or the other: the work done, the cleaning done, the end.
SideBySide telling_moments(const Reports& reports, const Films& films)
{
    SideBySide both = side_by_side(*films[0], *films[1], 2);
    std::vector<Time> times{both.to};
    for (const Report* report : reports) {
        Time last_work{-1.0};
        for (const StepLine& step : report->steps)
            if (step.phase == job::Phase::work && step.outcome == job::Outcome::done) last_work = std::max(last_work, step.end);
        if (last_work > Time{}) times.push_back(last_work);
        times.push_back(report->steps.back().end);
    }
    std::sort(times.begin(), times.end());
    std::vector<Time> apart;
    for (const Time at : times)
        if (apart.empty() || at - apart.back() > 10.0_min) apart.push_back(at);
    if (apart.back() < both.to) apart.back() = both.to;    // the end itself is shown, whatever stands close before it
    both.moments.clear();
    for (const Time at : apart) both.moments.push_back(side_moment(*films[0], *films[1], at));
    return both;
}

}

std::string side_page(const Report& left, const drill::Film& left_film, const Report& right, const drill::Film& right_film)
{
    insist(left.scenario.id == right.scenario.id, "runs of one scenario stand beside each other");
    insist(!left.steps.empty() && !right.steps.empty(), "a run has steps");
    const Reports reports{&left, &right};
    const Films films{&left_film, &right_film};
    Element content("main");
    Element header("header");
    header.add(piece("p", say("Two practice runs side by side"), "eyebrow"));
    header.add(Element("h1").say(say(left.scenario.title)));
    header.add(piece("p", say_with("A: {}, seed {}. B: {}, seed {}. Rule book: {}.", say(left.plan), left.seed, say(right.plan), right.seed, say(left.sheet.book)), "small"));
    content.add(std::move(header));
    content.add(titled(say("Marks and dust of both")).add(marks_beside(reports)));
    content.add(titled(say("Over the day")).add(lead_chart(side_by_side(left_film, right_film, 241), reports)));
    content.add(floors(telling_moments(reports, films), reports));
    content.add(sections::caution_list());
    std::string html = text::make_page({say_with("{}: {} and {}", say(left.scenario.title), say(left.plan), say(right.plan)), std::string(text::code_of(text::spoken()))}, std::move(content));
    html.insert(html.find("</style>"), page_style());
    return html;
}

}
