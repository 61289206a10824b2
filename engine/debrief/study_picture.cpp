#include "debrief/study_picture.hpp"

#include "debrief/fault_panel.hpp"
#include "debrief/level.hpp"
#include "debrief/page_style.hpp"
#include "debrief/pathway_chart.hpp"
#include "debrief/plan_bands.hpp"
#include "debrief/wording.hpp"
#include "text/axis.hpp"
#include "text/language.hpp"
#include "text/page.hpp"
#include "text/show.hpp"
#include "text/svg.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <iterator>
#include <optional>
#include <vector>

namespace flapdoor::debrief {

namespace svg = text::svg;
using text::Element;
using text::say;
using text::say_with;

namespace {

constexpr double width = 960.0, margin = 24.0;
constexpr double label_room = 250.0, word_room = 200.0;
constexpr double row_height = 18.0, group_gap = 9.0, bar_height = 9.0;
constexpr double panel_head = 34.0, axis_room = 46.0;
constexpr double axis_left = margin + label_room, axis_right = width - margin - word_room;

/// One band to be drawn; nothing when a plan has none there.
struct Mark {
    std::optional<Band> band;
    std::string told;
    bool is_possible_only = false;
};

/// A place with a mark for each plan.
struct Group {
    std::string title;
    std::vector<Mark> marks;    ///< [plan]
};

struct Panel {
    std::string title, unit;
    double floor = 0.0;         ///< what lies below is drawn at the left edge
    std::vector<Group> groups;

    double height() const
    {
        double rows = 0.0;
        for (const Group& group : groups) rows += row_height * static_cast<double>(group.marks.size()) + group_gap;
        return panel_head + rows + axis_room;
    }
};

bool is_shown(const StudyColumn& column) { return is_loading(column.what) && column.what != Measured::wall; }

Panel loadings(const Study& study, const std::vector<PlanBands>& plans)
{
    Panel panel{std::string(say("Lead left on surfaces at the end of the job (chips apart)")), "ug/ft2", 0.01, {}};
    for (const StudyColumn& column : study.basis.columns) {
        if (!is_shown(column)) continue;
        Group group{column.what == Measured::left_sheeting ? std::string(say("Sheeting and covers left lying")) : as_sentence(called(column.title)), {}};
        bool is_anywhere = false;
        for (const PlanBands& plan : plans) {
            const Band* band = plan.find(column.what, column.which);
            is_anywhere = is_anywhere || band != nullptr;
            group.marks.push_back(band ? Mark{*band, loading_text(*band)} : Mark{{}, std::string(say("not there"))});
        }
        if (is_anywhere) panel.groups.push_back(std::move(group));
    }
    return panel;
}

Panel breathed(const Study& study, const std::vector<PlanBands>& plans)
{
    Panel panel{std::string(say("Inhalable lead that the crew breathed, outside any respirator, over eight hours")), "ug/m3", 0.001, {}};
    for (const StudyColumn& column : study.basis.columns) {
        if (column.what != Measured::exposure) continue;
        Group group{called(column.title), {}};
        for (const PlanBands& plan : plans) {
            const Band* band = plan.find(column.what, column.which);
            group.marks.push_back(band ? Mark{*band, exposure_text(*band)} : Mark{{}, std::string(say("none"))});
        }
        panel.groups.push_back(std::move(group));
    }
    return panel;
}

Mark mark_of(const PathwayBand& band)
{
    if (is_barely_known(band.pathway)) return {band.share.high > 0.0 ? std::optional(band.lead) : std::nullopt, told_share(band), true};
    return {band.lead, amount_text(band.lead)};
}

Panel ways_out(const std::vector<PlanBands>& plans)
{
    Panel panel{std::string(say("Lead that got out of the work area, by pathway (what came back the same way is taken off)")), "ug", 0.01, {}};
    for (std::size_t p = 1; p < dust::pathway_count; ++p) {
        const auto pathway = static_cast<dust::Pathway>(p);
        if (pathway == dust::Pathway::recovered) continue;
        Group group{as_sentence(std::string(say(word_of(pathway)))), {}};
        for (const PlanBands& plan : plans) {
            const auto band = std::find_if(plan.pathways.begin(), plan.pathways.end(), [&](const PathwayBand& b) { return b.pathway == pathway; });
            group.marks.push_back(band == plan.pathways.end() ? Mark{{}, std::string(say("none"))} : mark_of(*band));
        }
        panel.groups.push_back(std::move(group));
    }
    Group all{std::string(say("All of it")), {}};
    for (const PlanBands& plan : plans) {
        const Band* band = plan.find(Measured::outside);
        all.marks.push_back(band ? Mark{*band, amount_text(*band)} : Mark{{}, std::string(say("none"))});
    }
    panel.groups.push_back(std::move(all));
    return panel;
}

text::Axis axis_of(const Panel& panel)
{
    double least = 0.0, most = 0.0;
    for (const Group& group : panel.groups)
        for (const Mark& mark : group.marks) {
            if (!mark.band) continue;
            most = std::max(most, mark.band->high);
            if (mark.band->low > 0.0 && (least == 0.0 || mark.band->low < least)) least = mark.band->low;
        }
    if (!(most > panel.floor)) return text::log_axis(panel.floor, 10.0 * panel.floor);
    return text::log_axis(std::clamp(least, panel.floor, most), most);
}

void draw_axis(const Panel& panel, const text::Axis& axis, double top, double bottom, Element& drawing)
{
    const auto x = [&](double value) { return axis_left + axis.share(value) * (axis_right - axis_left); };
    double free_from = -1.0;
    for (const double tick : axis.ticks) {
        drawing.add(svg::line({x(tick), top}, {x(tick), bottom + 4.0}).with("class", "grid"));
        const std::string name = text::show_number(tick);
        const double half = svg::text_width(name, 12.0) / 2.0;
        if (x(tick) - half < free_from) continue;   // long names of large ticks would run into each other
        drawing.add(svg::label({x(tick), bottom + 18.0}, name, svg::Anchor::middle, 12.0).with("class", "muted"));
        free_from = x(tick) + half + 4.0;
    }
    drawing.add(svg::line({axis_left, top}, {axis_left, bottom}).with("class", "axis"));
    drawing.add(svg::label({(axis_left + axis_right) / 2.0, bottom + 36.0}, say_with("{} (each line ten times the one before; the left edge also stands for less)", panel.unit), svg::Anchor::middle, 12.0));
}

/// A plan is told by the look of its bar and by its letter, not by color alone.
const char* look_of(std::size_t plan, bool is_possible_only)
{
    if (is_possible_only) return "bar vague";
    constexpr std::array<const char*, 4> looks{"bar", "bar-ink", "bar-paper", "bar light"};
    return looks[plan % looks.size()];
}

std::string letter_of(std::size_t plan) { return plan < 26 ? std::string(1, static_cast<char>('A' + plan)) : std::to_string(plan + 1); }

void draw_mark(const Mark& mark, std::size_t plan, const text::Axis& axis, double y, Element& drawing)
{
    const auto x = [&](double value) { return axis_left + axis.share(value) * (axis_right - axis_left); };
    drawing.add(svg::label({axis_left - 10.0, y + 4.0}, letter_of(plan), svg::Anchor::end, 11.0).with("class", "muted"));
    double end = axis_left;
    if (mark.band) {
        const double low = x(mark.band->low), high = x(mark.band->high), median = x(mark.band->median);
        const double middle = 0.5 * (low + high), half = std::max(0.5 * (high - low), 1.5);
        Element bar = svg::rect(middle - half, y - bar_height / 2.0, 2.0 * half, bar_height).with("class", look_of(plan, mark.is_possible_only));
        drawing.add(std::move(bar));
        // Of what nobody has measured no median is shown.
        if (!mark.is_possible_only) {
            drawing.add(svg::line({median, y - bar_height / 2.0 - 3.0}, {median, y + bar_height / 2.0 + 3.0}).with("class", "halo"));
            drawing.add(svg::line({median, y - bar_height / 2.0 - 3.0}, {median, y + bar_height / 2.0 + 3.0}).with("class", "median"));
        }
        end = high;
    }
    drawing.add(svg::label({end + 8.0, y + 4.0}, svg::fitted(mark.told, width - end - 12.0, 11.5), svg::Anchor::start, 11.5));
}

/// @return  where the next panel begins
double draw_panel(const Panel& panel, double top, Element& drawing)
{
    drawing.add(svg::label({margin, top + 16.0}, panel.title, svg::Anchor::start, 15.0).with("class", "strong"));
    const text::Axis axis = axis_of(panel);
    const double first = top + panel_head;
    const double bottom = top + panel.height() - axis_room;
    draw_axis(panel, axis, first, bottom, drawing);
    double y = first + group_gap / 2.0;
    for (const Group& group : panel.groups) {
        const double middle = y + row_height * static_cast<double>(group.marks.size()) / 2.0;
        drawing.add(svg::label({axis_left - 30.0, middle + 4.0}, svg::fitted(group.title, label_room - 34.0), svg::Anchor::end));
        for (std::size_t plan = 0; plan < group.marks.size(); ++plan) {
            draw_mark(group.marks[plan], plan, axis, y + row_height / 2.0, drawing);
            y += row_height;
        }
        y += group_gap;
    }
    return top + panel.height() + 10.0;
}

std::string described(const std::vector<Panel>& panels, const std::vector<PlanBands>& plans)
{
    std::string text;
    for (const Panel& panel : panels) {
        fmt::format_to(std::back_inserter(text), "{}. ", panel.title);
        for (const Group& group : panel.groups)
            for (std::size_t plan = 0; plan < group.marks.size(); ++plan)
                fmt::format_to(std::back_inserter(text), "{}, {}: {}. ", group.title, say(plans[plan].title), group.marks[plan].told);
    }
    return text;
}

}

std::string study_picture(const Study& study)
{
    std::vector<PlanBands> plans;
    for (const std::size_t plan : plans_asked_about(study)) plans.push_back(bands_of(study, plan));
    const std::vector<Panel> panels{loadings(study, plans), ways_out(plans), breathed(study, plans)};
    std::vector<FaultPanel> faults;
    for (std::size_t plan = 0; plan < plans.size(); ++plan)
        if (FaultPanel panel = fault_panel(study, plan, margin, width - margin); !panel.is_empty()) faults.push_back(std::move(panel));
    const double head = 62.0 + 20.0 * static_cast<double>(plans.size()), foot = 34.0;
    double height = head + foot;
    for (const Panel& panel : panels) height += panel.height() + 10.0;
    for (const FaultPanel& panel : faults) height += panel.height() + 10.0;

    std::string description = described(panels, plans);
    for (const FaultPanel& panel : faults) description += described(panel);
    Element drawing = svg::drawing(width, height, say_with("{}: bands over many runs", say(study.basis.scenario.title)), description);
    drawing.with("xmlns", "http://www.w3.org/2000/svg");
    drawing.add(Element("style").say(text::page_style() + page_style()));
    drawing.add(svg::rect(0.0, 0.0, width, height).with("class", "paper"));
    drawing.add(svg::label({margin, 32.0}, say(study.basis.scenario.title), svg::Anchor::start, 20.0).with("class", "strong"));
    double y = 56.0;
    for (std::size_t plan = 0; plan < plans.size(); ++plan, y += 20.0) {
        drawing.add(svg::label({margin, y}, letter_of(plan), svg::Anchor::start, 13.0).with("class", "strong"));
        drawing.add(svg::rect(margin + 20.0, y - 9.0, 26.0, bar_height).with("class", look_of(plan, false)));
        drawing.add(svg::label({margin + 54.0, y}, say_with("{} ({}): bars are {}, the stroke is the median", say(plans[plan].title), plans[plan].name, meaning_of_band(plans[plan].runs))));
    }
    y = head;
    for (const Panel& panel : panels) y = draw_panel(panel, y, drawing);
    for (const FaultPanel& panel : faults) y = draw(panel, y, drawing) + 10.0;
    drawing.add(svg::label({margin, height - 14.0}, fmt::format("{}. {}", as_sentence(std::string(say(model_note))), say("Dashed: nobody has measured what leaves with bags and sheeting.")), svg::Anchor::start, 13.0).with("class", "strong"));
    return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + drawing.html() + "\n";
}

}
