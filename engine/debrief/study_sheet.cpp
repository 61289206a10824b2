#include "debrief/study_sheet.hpp"

#include "core/insist.hpp"
#include "debrief/fault_harm.hpp"
#include "debrief/influence.hpp"
#include "debrief/level.hpp"
#include "debrief/pathway_chart.hpp"
#include "debrief/plan_bands.hpp"
#include "debrief/uncertainty.hpp"
#include "debrief/what_if_line.hpp"
#include "debrief/wording.hpp"
#include "text/language.hpp"
#include "text/show.hpp"
#include "text/table.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace flapdoor::debrief {

using text::say;
using text::say_with;

namespace {

using text::TextTable;

TextTable beside(std::string_view first, const std::vector<PlanBands>& plans, bool has_note)
{
    TextTable table{{{std::string(first)}}, {}};
    for (const PlanBands& plan : plans) table.columns.push_back({plan.name});
    if (has_note) table.columns.push_back({std::string(say("How to read it"))});
    return table;
}

template <class Tell>
void add_row(TextTable& table, std::string_view what, const std::vector<PlanBands>& plans, const Tell& tell, bool has_note = false)
{
    std::vector<std::string> row{std::string(what)};
    for (const PlanBands& plan : plans) row.push_back(tell(plan));
    if (has_note) row.emplace_back(say(model_note));
    table.rows.push_back(std::move(row));
}

std::string number_band(const PlanBands& plan, Measured what, std::string (*show)(double))
{
    const Band* band = plan.find(what);
    if (band == nullptr) return std::string(say("none"));
    const std::string range = range_text(*band, show);
    return range == show(band->median) ? range : fmt::format("{} ({})", show(band->median), range);
}

std::string outcomes(const std::vector<PlanBands>& plans, std::size_t width)
{
    TextTable table = beside(say("Median (band)"), plans, false);
    add_row(table, say("Runs"), plans, [](const PlanBands& plan) { return std::to_string(plan.runs); });
    add_row(table, say("Passed as practice"), plans, [](const PlanBands& plan) { return say_with("{} of {}", plan.passed, plan.runs); });
    add_row(table, say("Cloth check passed"), plans, [](const PlanBands& plan) { return say_with("{} of {}", plan.verified, plan.runs); });
    const auto show_points = [](double points) { return text::show_number(points, 5); };
    const auto show_whole = [](double count) { return fmt::format("{:.0f}", count); };
    const auto show_minutes = [](double minutes) { return text::show(Time{minutes * 60.0}); };
    add_row(table, say("Points lost"), plans, [&](const PlanBands& plan) { return number_band(plan, Measured::points_lost, show_points); });
    add_row(table, say("Wet cloths"), plans, [&](const PlanBands& plan) { return number_band(plan, Measured::wet_cloths, show_whole); });
    add_row(table, say("Site time"), plans, [&](const PlanBands& plan) { return number_band(plan, Measured::took, show_minutes); });
    return text::lay_out(table, width);
}

std::string surface_title(const StudyColumn& column) { return column.what == Measured::left_sheeting ? std::string(say("Sheeting and covers left lying")) : as_sentence(called(column.title)); }

std::string loadings(const Study& study, const std::vector<PlanBands>& plans, std::size_t width)
{
    TextTable table = beside(say("Lead at the end"), plans, true);
    for (const StudyColumn& column : study.basis.columns) {
        if (!is_loading(column.what) || column.what == Measured::wall) continue;
        const auto tell = [&](const PlanBands& plan) {
            const Band* band = plan.find(column.what, column.which);
            return band ? loading_text(*band) : std::string(say("not there"));
        };
        if (std::any_of(plans.begin(), plans.end(), [&](const PlanBands& plan) { return plan.find(column.what, column.which) != nullptr; }))
            add_row(table, surface_title(column), plans, tell, true);
    }
    add_row(table, say("All lead that got out"), plans, [](const PlanBands& plan) {
        const Band* band = plan.find(Measured::outside);
        return band ? amount_text(*band) : std::string(say("none"));
    }, true);
    return "\n" + text::lay_out(table, width);
}

std::string breathed(const Study& study, const std::vector<PlanBands>& plans, std::size_t width)
{
    TextTable table = beside(say("Lead that the crew breathed"), plans, true);
    for (const StudyColumn& column : study.basis.columns) {
        if (column.what != Measured::exposure) continue;
        add_row(table, called(column.title), plans, [&](const PlanBands& plan) {
            const Band* band = plan.find(column.what, column.which);
            return band ? exposure_text(*band) : std::string(say("none"));
        }, true);
    }
    return table.rows.empty() ? std::string() : "\n" + text::lay_out(table, width) + text::paragraph(say(exposure_note), width);
}

std::string ways_out(const std::vector<PlanBands>& plans, std::size_t width)
{
    TextTable table = beside(say("Way out, share of what got out"), plans, false);
    for (std::size_t p = 1; p < dust::pathway_count; ++p) {
        const auto pathway = static_cast<dust::Pathway>(p);
        if (pathway == dust::Pathway::recovered) continue;
        add_row(table, say(word_of(pathway)), plans, [&](const PlanBands& plan) {
            for (const PathwayBand& band : plan.pathways)
                if (band.pathway == pathway) return band.rank > 0 ? fmt::format("{}. {}", band.rank, told_share(band)) : told_share(band);
            return std::string(say("none"));
        });
    }
    return "\n" + text::lay_out(table, width);
}

std::string influences(const std::vector<PlanBands>& plans, std::size_t width)
{
    TextTable table = beside(say("What moves the result most"), plans, false);
    const auto tell = [](const std::vector<Influence>& all, std::size_t runs) {
        std::string text;
        for (const Influence& influence : beyond_chance(all, runs))
            text += fmt::format("{}{} {:+.2f}", text.empty() ? "" : "\n", say(uncertainties[influence.parameter].title), influence.correlation);
        return text.empty() ? std::string(say("none stands out from chance")) : text;
    };
    add_row(table, say("Lead on the work room's floor"), plans, [&](const PlanBands& plan) { return tell(plan.on_floor, plan.runs); });
    add_row(table, say("Lead that got out"), plans, [&](const PlanBands& plan) { return tell(plan.on_outside, plan.runs); });
    return "\n" + text::lay_out(table, width) + text::paragraph(say("Figures are rank correlations over the runs: +1 when more of it always means more lead, -1 when less."), width);
}

std::string change_cell(const Band& band, Compared what) { return fmt::format("{}\n({})", change_text(band.median, what), change_range(band, what)); }

std::string luck_text(const FaultHarm& harm)
{
    if (harm.harmful == 0) return std::string(say("no harm seen"));
    if (harm.harmful == harm.pairs) return std::string(say("never"));
    return say_with("{} of {}", harm.harmless_by_luck(), harm.pairs);
}

/// Which fault of a plan does harm, and which is harmless by luck.
std::string faults(const Study& study, std::size_t plan, std::size_t width)
{
    const std::vector<FaultHarm> harms = fault_harms(study, plan);
    if (harms.empty()) return {};
    TextTable table{{{std::string(say("Fault"))}, {std::string(say("Rule"))}, {std::string(say("Harm in")), text::Align::right}, {std::string(say("Harmless by luck in")), text::Align::right},
                     {std::string(say("Lead out, added")), text::Align::right}, {std::string(say("Floor, added")), text::Align::right}, {std::string(say("Sill, added")), text::Align::right}, {std::string(say("Cloth check passed")), text::Align::right}}, {}};
    for (const FaultHarm& harm : harms)
        table.rows.push_back({named_faults(harm.faults), as_sentence(std::string(say(harm.rule))), say_with("{} of {}", harm.harmful, harm.pairs), luck_text(harm), change_cell(harm.outside, Compared::outside),
                              change_cell(harm.floor, Compared::floor), change_cell(harm.sill, Compared::sill), say_with("{} with it, {} without", harm.passed_with, harm.passed_without)});
    return "\n" + text::paragraph(say_with("{}: which fault does harm. Each run once with the fault and once, with the same luck, with it repaired.", say(study.basis.plans[plan].title)), width)
           + text::lay_out(table, width)
           + text::paragraph(say_with("Added: the median, with the range in brackets. Harm: a tenth more lead got out or lies on the worst floor or sill, and more than a trifle ({} or {}); a judgment. Beside a large fault a small one counts as harmless. {}.",
                                      text::show(trifle_outside), text::show_short(trifle_on_surface), as_sentence(std::string(say(model_note)))), width);
}

}

std::string study_sheet(const Study& study, std::size_t width)
{
    insist(width >= 60, "a study on a terminal needs 60 columns");
    std::vector<PlanBands> plans;
    for (const std::size_t plan : plans_asked_about(study)) plans.push_back(bands_of(study, plan));
    std::string out = text::paragraph(say(study.basis.scenario.title), width);
    for (const PlanBands& plan : plans) out += text::paragraph(fmt::format("{}: {}", plan.name, say(plan.title)), width);
    out += text::paragraph(say_with("Book: {}", say(study.basis.book.title)), width);
    out += "\n" + outcomes(plans, width) + loadings(study, plans, width) + breathed(study, plans, width) + ways_out(plans, width);
    for (std::size_t plan = 0; plan < plans.size(); ++plan) out += faults(study, plan, width);
    const auto fewest = std::min_element(plans.begin(), plans.end(), [](const PlanBands& a, const PlanBands& b) { return a.runs < b.runs; });
    if (fewest->runs >= fewest_for_a_band) out += influences(plans, width);
    return out + "\n" + text::paragraph(source_line(*fewest), width) + text::paragraph(as_sentence(std::string(say(model_note))) + ".", width);
}

}
