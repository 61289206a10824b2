#include "debrief/fault_panel.hpp"

#include "debrief/fault_harm.hpp"
#include "debrief/what_if_line.hpp"
#include "text/language.hpp"
#include "text/svg.hpp"

#include <algorithm>

namespace flapdoor::debrief {

namespace svg = text::svg;
using text::say;
using text::say_with;

namespace {

constexpr double fault_title_room = 490.0, harm_bar_width = 140.0, harm_bar_height = 9.0, fault_row = 18.0, fault_head = 34.0;

FaultPanel::Row row_of(const FaultHarm& harm)
{
    const std::string told = harm.harmful == harm.pairs ? say_with("harm in {} of {}", harm.harmful, harm.pairs)
                                                        : say_with("harm in {} of {}, harmless by luck in {}", harm.harmful, harm.pairs, harm.harmless_by_luck());
    return {say_with("{}: {}", named_faults(harm.faults), say(harm.rule)), told, static_cast<double>(harm.harmful) / static_cast<double>(harm.pairs)};
}

}

double FaultPanel::height() const { return fault_head + fault_row * static_cast<double>(rows.size()) + (rows.empty() ? 0.0 : 20.0) + (harmless.empty() ? 0.0 : 20.0); }

FaultPanel fault_panel(const Study& study, std::size_t plan, double left, double right)
{
    FaultPanel panel{left, right, say_with("How often each fault did harm: {}", say(study.basis.plans.at(plan).title)), {}, {}};
    std::vector<int> harmless;
    for (const FaultHarm& harm : fault_harms(study, plan)) {
        if (harm.harmful == 0) harmless.insert(harmless.end(), harm.faults.begin(), harm.faults.end());
        else panel.rows.push_back(row_of(harm));
    }
    std::sort(harmless.begin(), harmless.end());
    if (!harmless.empty()) panel.harmless = say_with("No harm seen in any run: {}.", named_faults(harmless));
    return panel;
}

double draw(const FaultPanel& panel, double top, text::Element& drawing)
{
    const double bars = panel.left + fault_title_room;
    drawing.add(svg::label({panel.left, top + 16.0}, panel.title, svg::Anchor::start, 15.0).with("class", "strong"));
    double y = top + fault_head;
    for (const FaultPanel::Row& row : panel.rows) {
        const double middle = y + fault_row / 2.0;
        drawing.add(svg::label({bars - 10.0, middle + 4.0}, svg::fitted(row.title, bars - 10.0 - panel.left, 12.0), svg::Anchor::end, 12.0));
        drawing.add(svg::rect(bars, middle - harm_bar_height / 2.0, harm_bar_width, harm_bar_height).with("class", "bar-paper"));
        drawing.add(svg::rect(bars, middle - harm_bar_height / 2.0, harm_bar_width * row.share, harm_bar_height).with("class", "bar"));
        drawing.add(svg::label({bars + harm_bar_width + 8.0, middle + 4.0}, svg::fitted(row.told, panel.right - bars - harm_bar_width - 8.0, 11.5), svg::Anchor::start, 11.5));
        y += fault_row;
    }
    if (!panel.rows.empty()) drawing.add(svg::label({bars, (y += 20.0) - 4.0}, say("Of all pairs of runs: filled with harm, blank without"), svg::Anchor::start, 12.0));
    if (!panel.harmless.empty()) drawing.add(svg::label({panel.left, (y += 20.0) - 4.0}, svg::fitted(panel.harmless, panel.right - panel.left, 12.0), svg::Anchor::start, 12.0));
    return y;
}

std::string described(const FaultPanel& panel)
{
    std::string told = panel.title + ". ";
    for (const FaultPanel::Row& row : panel.rows) told += row.title + ": " + row.told + ". ";
    return told + panel.harmless;
}

}
