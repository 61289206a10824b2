#include "debrief/terminal.hpp"

#include "core/hash.hpp"
#include "core/insist.hpp"
#include "debrief/fault_mark.hpp"
#include "debrief/legal_order.hpp"
#include "debrief/level.hpp"
#include "debrief/pathway_chart.hpp"
#include "debrief/wording.hpp"
#include "rules/telling.hpp"
#include "text/language.hpp"
#include "text/show.hpp"
#include "text/table.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace flapdoor::debrief {

using text::Align;
using text::TextTable;
using text::say;
using text::say_with;
using text::say_number;

namespace {

constexpr std::size_t most_told = 3;    // sentences a fault; the rest is counted

std::string title(std::string_view words) { return fmt::format("\n{}\n", words); }

std::string head(const Report& report, std::size_t width)
{
    const auto line = [&](std::string_view name, std::string_view value) { return text::paragraph(fmt::format("{}: {}", name, value), width); };
    return text::paragraph(std::string(say(report.scenario.title)), width) + line(say("Plan"), say(report.plan)) + line(say("Seed"), std::to_string(report.seed)) +
           line(say("Book"), fmt::format("{}, {}", say(report.sheet.book), say(report.sheet.edition)));
}

std::string minus(rules::Quarters lost) { return lost.count == 0 ? "0" : "-" + points_text(lost); }

std::string charges(const Report& report, std::size_t width)
{
    TextTable table{{{std::string(say("No.")), Align::right}, {std::string(say("What"))}, {std::string(say("Class"))}, {std::string(say("Of")), Align::right}, {std::string(say("Weight")), Align::right}, {std::string(say("Points")), Align::right}}, {}};
    for (const MarkLine& line : report.marks)
        table.rows.push_back({line.fault > 0 ? std::to_string(line.fault) + (line.is_critical ? "!" : "") : "", text::as_sentence(line.what.said()),
                              line.rule_class ? std::string(title_of(*line.rule_class)) : std::string(say("implied")), std::string(share_of_weight(line.kind)),
                              std::to_string(line.weight), minus(line.lost)});
    table.rows.push_back({"", std::string(say("Lost")), "", "", "", minus(sum(report.marks))});
    return title(say("Points lost (! is critical)")) + text::lay_out(table, width);
}

std::string fault_text(const FaultLine& fault, std::size_t width)
{
    const std::string cite = fault.rule.cite.empty() ? std::string() : fmt::format(" [{}]", rules::cited(fault.rule.cite));
    std::string out = text::paragraph(fmt::format("{}: {}{}", name_of(fault), say(fault.rule.says), cite), width);
    const std::vector<rules::Fault>& all = fault.rule.faults;
    for (std::size_t i = 0; i < std::min(most_told, all.size()); ++i) out += text::paragraph(text::as_sentence(all[i].what.said()), width, 4);
    if (all.size() > most_told) out += text::paragraph(say_with("And {} more.", say_number("{} time", "{} times", all.size() - most_told)), width, 4);
    out += text::paragraph(say_with("Why: {}", say(fault.rule.reason)), width, 4);
    if (!fault.rule.harm.empty()) out += text::paragraph(say_with("What goes wrong: {}", say(fault.rule.harm)), width, 4);
    return out;
}

std::string fault_list(const Report& report, std::size_t width)
{
    if (report.faults.empty()) return title(say("No rule of the book was broken."));
    std::string out = title(say("Faults"));
    for (const FaultLine& fault : report.faults) out += fault_text(fault, width);
    return out;
}

/// Five signs, filled to the word's level.
std::string meter(double share)
{
    const auto level = static_cast<std::size_t>(share_level(share));
    return std::string(level, '#') + std::string(5 - level, '.');
}

std::string pathway_table(const Outcome& outcome, std::size_t width)
{
    TextTable table{{{std::string(say("Rank")), Align::right}, {std::string(say("Way out"))}, {std::string(say("Share"))}, {std::string(say("In words"))}}, {}};
    int rank = 0;
    for (const PathwayLine& line : outcome.pathways)
        if (line.share > 0.0)
            table.rows.push_back({std::to_string(++rank), std::string(say(word_of(line.pathway))), meter(line.share), told_share(line)});
    if (table.rows.empty()) return title(say("In this run no lead left the work area."));
    return title(say("Share of the lead that got out, by pathway")) + text::lay_out(table, width);
}

std::string pathway_table(const Outcome& outcome, const PlanBands& bands, std::size_t width)
{
    TextTable table{{{std::string(say("Rank")), Align::right}, {std::string(say("Way out"))}, {std::string(say("Share"))}, {std::string(say("In words"))}, {std::string(say("This run"))}}, {}};
    for (const PathwayBand& band : bands.pathways)
        if (band.share.high > 0.0)
            table.rows.push_back({band.rank > 0 ? std::to_string(band.rank) : "", std::string(say(word_of(band.pathway))), meter(is_barely_known(band.pathway) ? 0.0 : band.share.median), told_share(band),
                                  told_share(line_of(outcome, band.pathway))});
    if (table.rows.empty()) return title(say("In none of the runs did lead leave the work area."));
    return title(say_with("Share of the lead that got out, by pathway: median of {}", say_number("{} run", "{} runs", bands.runs))) + text::lay_out(table, width);
}

std::string loading_table(const Report& report, std::size_t width)
{
    TextTable table{{{std::string(say("Lead at the end"))}}, {}};
    for (const std::string& head : level_heads(report)) table.columns.push_back({head, Align::right});
    table.columns.push_back({std::string(say("How to read it"))});
    for (const SurfaceLine& line : report.outcome.surfaces) {
        if (line.role == site::SurfaceRole::wall) continue;
        const Level level = level_of(line.lead, report.bands ? report.bands->of_surface(line.surface) : nullptr);
        std::vector<std::string> row{as_sentence(called(line.name))};
        for (std::string& text : level_texts(report, level)) row.push_back(std::move(text));
        row.emplace_back(level.note);
        table.rows.push_back(std::move(row));
    }
    return "\n" + text::lay_out(table, width);
}

std::string breathed_table(const Report& report, std::size_t width)
{
    TextTable table{{{std::string(say("Lead that the crew breathed"))}}, {}};
    for (const std::string& head : exposure_heads(report)) table.columns.push_back({head, Align::right});
    table.columns.push_back({std::string(say("How to read it"))});
    for (std::size_t i = 0; i < report.outcome.breathed.size(); ++i) {
        const BreathedLine& line = report.outcome.breathed[i];
        const Level level = level_of(line.lead, report.bands ? report.bands->find(Measured::exposure, i) : nullptr);
        std::vector<std::string> row{called(line.who)};
        for (std::string& text : level_texts(report, level)) row.push_back(std::move(text));
        row.emplace_back(level.note);
        table.rows.push_back(std::move(row));
    }
    return "\n" + text::lay_out(table, width) + text::paragraph(say(exposure_note), width);
}

/// How the plan fared with other seeds, and what the bands are.
std::string study_lines(const Report& report, std::size_t width)
{
    if (!report.bands) return {};
    return "\n" + text::paragraph(study_line(*report.bands), width) + text::paragraph(source_line(*report.bands), width);
}

std::string last_lines(std::size_t width)
{
    return "\n" + text::paragraph(say(score_note), width) + text::paragraph(say(cautions()[1]), width);
}

// ---- two runs beside each other

/// "kept" is told only of rules that the other sheet kept too.
bool has_kept(const Report& report, const std::string& rule)
{
    return std::any_of(report.sheet.kept.begin(), report.sheet.kept.end(), [&](const rules::SheetRule& kept) { return kept.rule == rule; });
}

std::string points_lost(const Report& report, const std::string& rule)
{
    rules::Quarters lost;
    for (const MarkLine& line : report.marks)
        if (line.rule == rule) lost = lost + line.lost;
    const FaultLine* fault = find_fault(report.faults, rule);
    if (lost.count == 0 && fault) return std::string(fault->kind == FaultKind::advice ? say("advice") : say("follows"));
    if (lost.count > 0) return minus(lost);
    return std::string(has_kept(report, rule) ? say("kept") : say("does not apply"));
}

TextTable two_columns(std::string_view first)
{
    return {{{std::string(first)}, {"A", Align::right}, {"B", Align::right}}, {}};
}

std::string marks_beside(const Report& a, const Report& b, std::size_t width)
{
    TextTable table = two_columns(say("Marks"));
    const auto add = [&](std::string_view what, const auto& told) { table.rows.push_back({std::string(what), told(a), told(b)}); };
    add(say("Result"), [](const Report& r) { return std::string(r.sheet.is_passed ? say("passed as practice") : say("NOT PASSED")); });
    add(say("Points wanted"), [](const Report& r) { return std::to_string(r.sheet.wanted); });
    add(say("Points lost"), [](const Report& r) { return points_text(r.sheet.lost); });
    add(say("Score"), [](const Report& r) { return percent_text(r.sheet.score); });
    add(say("Steps in the plan"), [](const Report& r) { return std::to_string(r.steps.size()); });
    add(say("Fewest steps to move"), [](const Report& r) { return std::to_string(r.sheet.fewest_moves); });
    add(say("Site time"), [](const Report& r) { return text::show(r.outcome.took); });
    return "\n" + text::lay_out(table, width);
}

std::string rules_beside(const Report& a, const Report& b, std::size_t width)
{
    TextTable table = two_columns(say("Rules broken (! is critical)"));
    const auto add = [&](const FaultLine& fault) {
        table.rows.push_back({as_sentence(std::string(say(fault.rule.says))) + (fault.rule.is_critical ? " (!)" : ""), points_lost(a, fault.rule.rule), points_lost(b, fault.rule.rule)});
    };
    for (const FaultLine& fault : a.faults) add(fault);
    for (const FaultLine& fault : b.faults)
        if (!find_fault(a.faults, fault.rule.rule)) add(fault);
    const auto implied = [](const Report& report) {
        rules::Quarters lost;
        for (const MarkLine& line : report.marks)
            if (line.rule.empty()) lost = lost + line.lost;
        return lost;
    };
    if (implied(a).count + implied(b).count > 0) table.rows.push_back({std::string(say("Orders that are only implied")), minus(implied(a)), minus(implied(b))});
    return table.rows.empty() ? title(say("Neither plan broke a rule of the book.")) : "\n" + text::lay_out(table, width);
}

/// Bands stand beside each other only when both plans have them.
bool has_bands(const Report& a, const Report& b) { return a.bands && b.bands; }

std::string told_beside(const Report& report, dust::Pathway pathway, bool is_banded)
{
    if (!is_banded) {
        const double share = line_of(report.outcome, pathway).share;
        return fmt::format("{} {:<6}", meter(share), said_share(share));
    }
    for (const PathwayBand& band : report.bands->pathways)
        if (band.pathway == pathway) return is_barely_known(pathway) ? told_share(band) : fmt::format("{} {}", meter(band.share.median), told_share(band));
    return fmt::format("..... {}", said_share(0.0));
}

std::string pathways_beside(const Report& a, const Report& b, std::size_t width)
{
    const bool is_banded = has_bands(a, b);
    TextTable table{{{std::string(is_banded ? say("Way out, median share of what got out (band)") : say("Way out, share of what got out"))}, {"A"}, {"B"}}, {}};
    std::vector<dust::Pathway> order;
    if (is_banded)
        for (const PathwayBand& band : a.bands->pathways) order.push_back(band.pathway);
    else
        for (const PathwayLine& line : a.outcome.pathways) order.push_back(line.pathway);
    for (const dust::Pathway pathway : order)
        table.rows.push_back({is_barely_known(pathway) ? say_with("{} (possible only)", say(word_of(pathway))) : std::string(say(word_of(pathway))), told_beside(a, pathway, is_banded), told_beside(b, pathway, is_banded)});
    return "\n" + text::lay_out(table, width);
}

std::string lower_first(std::string text)
{
    if (!text.empty() && text.front() >= 'A' && text.front() <= 'Z') text.front() = static_cast<char>(text.front() - 'A' + 'a');
    return text;
}

/// A level of both runs: median, band and this run, a row each, or this run alone.
/// @param heads  what the rows are, level_heads() or exposure_heads()
void add_beside(std::string_view where, const Level& in_a, const Level& in_b, const std::vector<std::string>& heads, TextTable& table)
{
    const auto add = [&](std::string what, const std::string& told_a, const std::string& told_b) { table.rows.push_back({std::move(what), told_a, told_b, std::string(in_a.note)}); };
    if (in_a.median.empty() || in_b.median.empty()) return add(std::string(where), in_a.own, in_b.own);
    add(fmt::format("{}: {}", where, lower_first(heads[0])), in_a.median, in_b.median);
    add("- " + lower_first(heads[1]), in_a.range, in_b.range);
    add(std::string(say("- this run")), in_a.own, in_b.own);
}

const Band* band_in(const Report& report, Measured what, bool is_banded) { return is_banded ? report.bands->find(what) : nullptr; }

/// The worst of a kind of surface in each run of the study.
const Band* worst_floor(const Report& report, Measured what, bool is_banded)
{
    const Band* worst = nullptr;
    if (!is_banded) return worst;
    for (const auto& [column, band] : report.bands->columns)
        if (column.what == what && (worst == nullptr || band.median > worst->median)) worst = &band;
    return worst;
}

std::string loadings_beside(const Report& a, const Report& b, std::size_t width)
{
    const bool is_banded = has_bands(a, b);
    TextTable table = two_columns(say("Lead at the end"));
    table.columns.push_back({std::string(say("How to read it"))});
    const auto sill = [&](const Report& report) { return is_banded && report.bands->worst_sill ? &*report.bands->worst_sill : nullptr; };
    const auto floor = [&](const Report& report, Measured what) { return worst_floor(report, what, is_banded); };
    add_beside(say("Work room, floor"), level_of(a.outcome.floor, floor(a, Measured::work_floor)), level_of(b.outcome.floor, floor(b, Measured::work_floor)), level_heads(a), table);
    add_beside(say("Worst sill"), level_of(a.outcome.sill, sill(a)), level_of(b.outcome.sill, sill(b)), level_heads(a), table);
    add_beside(say("Beyond the entrance, floor"), level_of(a.outcome.hall_floor, floor(a, Measured::passage_floor)), level_of(b.outcome.hall_floor, floor(b, Measured::passage_floor)), level_heads(a), table);
    add_beside(say("All lead that got out"), level_of(a.outcome.outside.lead, band_in(a, Measured::outside, is_banded)), level_of(b.outcome.outside.lead, band_in(b, Measured::outside, is_banded)), level_heads(a), table);
    for (std::size_t i = 0; i < std::min(a.outcome.breathed.size(), b.outcome.breathed.size()); ++i) {
        const auto band = [&](const Report& report) { return is_banded ? report.bands->find(Measured::exposure, i) : nullptr; };
        const std::string who = called(a.outcome.breathed[i].who).substr(0, called(a.outcome.breathed[i].who).find(','));
        add_beside(say_with("Breathed by {}", who), level_of(a.outcome.breathed[i].lead, band(a)), level_of(b.outcome.breathed[i].lead, band(b)), exposure_heads(a), table);
    }
    return "\n" + text::lay_out(table, width) + text::paragraph(say(exposure_note), width);
}

std::string studies_beside(const Report& a, const Report& b, std::size_t width)
{
    if (!has_bands(a, b)) return {};
    return "\n" + text::paragraph(fmt::format("A: {}", study_line(*a.bands)), width) + text::paragraph(fmt::format("B: {}", study_line(*b.bands)), width) + text::paragraph(source_line(*a.bands), width);
}

std::string why_not_alike(const Report& a, const Report& b)
{
    std::string what;
    const auto differs = [&](bool is_different, std::string_view name) {
        if (is_different) what += fmt::format("{}{}", what.empty() ? "" : ", ", name);
    };
    differs(a.scenario.id != b.scenario.id, say("scenarios"));
    differs(a.seed != b.seed, say("seeds"));
    differs(a.sheet.book != b.sheet.book || a.sheet.edition != b.sheet.edition, say("rule books"));
    return what.empty() ? what : say_with("Compare with care: the two runs have different {}.", what);
}

}

std::string sheet_text(const Report& report, std::size_t width)
{
    insist(width >= 60, "a debrief on a terminal needs 60 columns");
    std::string out = head(report, width) + "\n" + text::paragraph(result_line(report), width) + text::paragraph(score_line(report), width);
    if (!report.marks.empty()) out += charges(report, width);
    out += legal_order_text(report, width);
    out += fault_list(report, width);
    out += report.bands ? pathway_table(report.outcome, *report.bands, width) : pathway_table(report.outcome, width);
    out += loading_table(report, width) + breathed_table(report, width) + study_lines(report, width);
    out += "\n" + text::paragraph(say_with("The run can be repeated: seed {}, {}, site at the end {}.", report.seed, say_number("{} step", "{} steps", report.steps.size()), to_hex(report.end_hash)), width);
    return out + last_lines(width);
}

std::string side_by_side(const Report& a, const Report& b, std::size_t width)
{
    insist(width >= 60, "two debriefs on a terminal need 60 columns");
    std::string out = text::paragraph(std::string(say(a.scenario.title)), width);
    out += text::paragraph(say_with("A: {} (seed {})", say(a.plan), a.seed), width) + text::paragraph(say_with("B: {} (seed {})", say(b.plan), b.seed), width);
    out += text::paragraph(say_with("Book: {}, {}", say(a.sheet.book), say(a.sheet.edition)), width);
    const std::string warning = why_not_alike(a, b);
    if (!warning.empty()) out += text::paragraph(warning, width);
    return out + marks_beside(a, b, width) + rules_beside(a, b, width) + pathways_beside(a, b, width) + loadings_beside(a, b, width) + studies_beside(a, b, width) + last_lines(width);
}

}
