#include "debrief/terminal.hpp"

#include "core/hash.hpp"
#include "core/insist.hpp"
#include "debrief/fault_mark.hpp"
#include "debrief/pathway_chart.hpp"
#include "debrief/wording.hpp"
#include "text/show.hpp"
#include "text/table.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace flapdoor::debrief {

using text::Align;
using text::TextTable;

namespace {

constexpr std::size_t most_told = 3;    // sentences a fault; the rest is counted

std::string title(std::string_view words) { return fmt::format("\n{}\n", words); }

std::string head(const Report& report, std::size_t width)
{
    const auto line = [&](std::string_view name, std::string_view value) { return text::paragraph(fmt::format("{}: {}", name, value), width); };
    return text::paragraph(report.scenario.title, width) + line("Plan", report.plan) + line("Seed", std::to_string(report.seed)) +
           line("Book", fmt::format("{}, {}", report.sheet.book, report.sheet.edition));
}

std::string minus(rules::Quarters lost) { return lost.count == 0 ? "0" : "-" + points_text(lost); }

std::string charges(const Report& report, std::size_t width)
{
    TextTable table{{{"No.", Align::right}, {"What"}, {"Class"}, {"Of", Align::right}, {"Weight", Align::right}, {"Points", Align::right}}, {}};
    for (const MarkLine& line : report.marks)
        table.rows.push_back({line.fault > 0 ? std::to_string(line.fault) + (line.is_critical ? "!" : "") : "", as_sentence(line.what),
                              line.rule_class ? std::string(title_of(*line.rule_class)) : "implied", std::string(share_of_weight(line.kind)),
                              std::to_string(line.weight), minus(line.lost)});
    table.rows.push_back({"", "Lost", "", "", "", minus(sum(report.marks))});
    return title("Points lost (! is critical)") + text::lay_out(table, width);
}

std::string fault_text(const FaultLine& fault, std::size_t width)
{
    const std::string cite = fault.rule.cite.empty() ? std::string() : fmt::format(" [{}]", fault.rule.cite);
    std::string out = text::paragraph(fmt::format("{}: {}{}", name_of(fault), fault.rule.says, cite), width);
    const std::vector<rules::Fault>& all = fault.rule.faults;
    for (std::size_t i = 0; i < std::min(most_told, all.size()); ++i) out += text::paragraph(as_sentence(all[i].what.text()), width, 4);
    if (all.size() > most_told) out += text::paragraph(fmt::format("And {} more.", counted(all.size() - most_told, "time", "times")), width, 4);
    out += text::paragraph("Why: " + fault.rule.reason, width, 4);
    if (!fault.rule.harm.empty()) out += text::paragraph("What goes wrong: " + fault.rule.harm, width, 4);
    return out;
}

std::string fault_list(const Report& report, std::size_t width)
{
    if (report.faults.empty()) return title("No rule of the book was broken.");
    std::string out = title("Faults");
    for (const FaultLine& fault : report.faults) out += fault_text(fault, width);
    return out;
}

/// Five signs, filled to the word's level.
std::string meter(double share)
{
    const auto level = static_cast<std::size_t>(share_level(share));
    return std::string(level, '#') + std::string(5 - level, '.');
}

std::string pathway_table(const Report& report, std::size_t width)
{
    TextTable table{{{"Rank", Align::right}, {"Way out"}, {"Share"}, {"In words"}}, {}};
    int rank = 0;
    for (const PathwayLine& line : report.outcome.pathways)
        if (line.share > 0.0)
            table.rows.push_back({std::to_string(++rank), std::string(word_of(line.pathway)), meter(line.share), told_share(line)});
    if (table.rows.empty()) return title("In this run no lead left the work area.");
    return title("Share of the lead that got out, by pathway") + text::lay_out(table, width);
}

std::string loading_table(const Report& report, std::size_t width)
{
    TextTable table{{{"Lead at the end"}, {"Loading", Align::right}, {"How to read it"}}, {}};
    for (const SurfaceLine& line : report.outcome.surfaces)
        if (line.role != site::SurfaceRole::wall)
            table.rows.push_back({as_sentence(line.name), text::show_short(line.lead), std::string(loading_note)});
    return "\n" + text::lay_out(table, width);
}

std::string last_lines(std::size_t width)
{
    return "\n" + text::paragraph(score_note, width) + text::paragraph(cautions()[1], width);
}

// ---- two runs beside each other

std::string points_lost(const Report& report, const std::string& rule)
{
    rules::Quarters lost;
    for (const MarkLine& line : report.marks)
        if (line.rule == rule) lost = lost + line.lost;
    const FaultLine* fault = find_fault(report.faults, rule);
    if (lost.count == 0 && fault) return fault->kind == FaultKind::advice ? "advice" : "follows";
    return lost.count == 0 ? "kept" : minus(lost);
}

/// "kept" is told only of rules that the other sheet kept too.
bool has_kept(const Report& report, const std::string& rule)
{
    return std::any_of(report.sheet.kept.begin(), report.sheet.kept.end(), [&](const rules::SheetRule& kept) { return kept.rule == rule; });
}

std::string cost_of(const Report& report, const std::string& rule)
{
    const std::string points = points_lost(report, rule);
    return points != "kept" || has_kept(report, rule) ? points : "does not apply";
}

TextTable two_columns(std::string_view first)
{
    return {{{std::string(first)}, {"A", Align::right}, {"B", Align::right}}, {}};
}

std::string marks_beside(const Report& a, const Report& b, std::size_t width)
{
    TextTable table = two_columns("Marks");
    const auto add = [&](std::string_view what, const auto& told) { table.rows.push_back({std::string(what), told(a), told(b)}); };
    add("Result", [](const Report& r) { return std::string(r.sheet.is_passed ? "passed as practice" : "NOT PASSED"); });
    add("Points wanted", [](const Report& r) { return std::to_string(r.sheet.wanted); });
    add("Points lost", [](const Report& r) { return points_text(r.sheet.lost); });
    add("Score", [](const Report& r) { return percent_text(r.sheet.score); });
    add("Steps in the plan", [](const Report& r) { return std::to_string(r.steps.size()); });
    add("Fewest steps to move", [](const Report& r) { return std::to_string(r.sheet.fewest_moves); });
    add("Site time", [](const Report& r) { return text::show(r.outcome.took); });
    return "\n" + text::lay_out(table, width);
}

std::string rules_beside(const Report& a, const Report& b, std::size_t width)
{
    TextTable table = two_columns("Rules broken (! is critical)");
    const auto add = [&](const FaultLine& fault) {
        table.rows.push_back({as_sentence(fault.rule.says) + (fault.rule.is_critical ? " (!)" : ""), cost_of(a, fault.rule.rule), cost_of(b, fault.rule.rule)});
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
    if (implied(a).count + implied(b).count > 0) table.rows.push_back({"Orders that are only implied", minus(implied(a)), minus(implied(b))});
    return table.rows.empty() ? title("Neither plan broke a rule of the book.") : "\n" + text::lay_out(table, width);
}

std::string pathways_beside(const Report& a, const Report& b, std::size_t width)
{
    TextTable table{{{"Way out, share of what got out"}, {"A"}, {"B"}}, {}};
    const auto told = [](const Report& report, dust::Pathway pathway) {
        for (const PathwayLine& line : report.outcome.pathways)
            if (line.pathway == pathway) return fmt::format("{} {:<6}", meter(line.share), share_in_words(line.share));
        return std::string("..... none  ");
    };
    for (const PathwayLine& line : a.outcome.pathways) {
        const std::string_view doubt = is_barely_known(line.pathway) ? " (possible only)" : "";
        table.rows.push_back({fmt::format("{}{}", word_of(line.pathway), doubt), told(a, line.pathway), told(b, line.pathway)});
    }
    table.rows.push_back({"All lead that got out", show_roughly(a.outcome.outside.lead), show_roughly(b.outcome.outside.lead)});
    return "\n" + text::lay_out(table, width);
}

std::string loadings_beside(const Report& a, const Report& b, std::size_t width)
{
    TextTable table = two_columns("Lead at the end");
    table.columns.push_back({"How to read it"});
    const auto add = [&](std::string_view where, Loading in_a, Loading in_b) {
        table.rows.push_back({std::string(where), text::show_short(in_a), text::show_short(in_b), std::string(loading_note)});
    };
    add("Work room, floor", a.outcome.floor, b.outcome.floor);
    add("Worst sill", a.outcome.sill, b.outcome.sill);
    add("Beyond the entrance, floor", a.outcome.hall_floor, b.outcome.hall_floor);
    return "\n" + text::lay_out(table, width);
}

std::string why_not_alike(const Report& a, const Report& b)
{
    std::string what;
    const auto differs = [&](bool is_different, std::string_view name) {
        if (is_different) what += fmt::format("{}{}", what.empty() ? "" : ", ", name);
    };
    differs(a.scenario.id != b.scenario.id, "scenarios");
    differs(a.seed != b.seed, "seeds");
    differs(a.sheet.book != b.sheet.book || a.sheet.edition != b.sheet.edition, "rule books");
    return what.empty() ? what : fmt::format("Compare with care: the two runs have different {}.", what);
}

}

std::string sheet_text(const Report& report, std::size_t width)
{
    insist(width >= 60, "a debrief on a terminal needs 60 columns");
    std::string out = head(report, width) + "\n" + text::paragraph(result_line(report), width) + text::paragraph(score_line(report), width);
    if (!report.marks.empty()) out += charges(report, width);
    out += fault_list(report, width);
    out += pathway_table(report, width) + loading_table(report, width);
    out += "\n" + text::paragraph(fmt::format("The run can be repeated: seed {}, {}, site at the end {}.", report.seed, counted(report.steps.size(), "step", "steps"), to_hex(report.end_hash)), width);
    return out + last_lines(width);
}

std::string side_by_side(const Report& a, const Report& b, std::size_t width)
{
    insist(width >= 60, "two debriefs on a terminal need 60 columns");
    std::string out = text::paragraph(a.scenario.title, width);
    out += text::paragraph(fmt::format("A: {} (seed {})", a.plan, a.seed), width) + text::paragraph(fmt::format("B: {} (seed {})", b.plan, b.seed), width);
    out += text::paragraph(fmt::format("Book: {}, {}", a.sheet.book, a.sheet.edition), width);
    const std::string warning = why_not_alike(a, b);
    if (!warning.empty()) out += text::paragraph(warning, width);
    return out + marks_beside(a, b, width) + rules_beside(a, b, width) + pathways_beside(a, b, width) + loadings_beside(a, b, width) + last_lines(width);
}

}
