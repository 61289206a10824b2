#include "debrief/mark_line.hpp"

#include "text/language.hpp"

#include <array>

namespace flapdoor::debrief {

using text::say;
using text::to_say;

namespace {

MarkLine line_of(const rules::SheetMove& move, const std::vector<FaultLine>& faults)
{
    MarkLine line{MarkKind::move, move.what, move.rule, {}, {}, move.points, move.lost, false, 0};
    if (const FaultLine* fault = find_fault(faults, move.rule)) {
        line.cite = fault->rule.cite;
        line.rule_class = fault->rule.weight_class;
        line.is_critical = fault->rule.is_critical;
        line.fault = fault->number;
    }
    return line;
}

}

std::vector<MarkLine> mark_lines(const rules::MarkingSheet& sheet, const std::vector<FaultLine>& faults)
{
    std::vector<MarkLine> lines;
    for (const rules::SheetMove& move : sheet.moves) lines.push_back(line_of(move, faults));
    for (const FaultLine& fault : faults) {
        if (!fault.is_weighed()) continue;
        const rules::SheetRule& rule = fault.rule;
        const MarkKind kind = fault.kind == FaultKind::order ? MarkKind::order : MarkKind::line;
        lines.push_back({kind, rule.says, rule.rule, rule.cite, rule.weight_class, rule.weight, rule.lost, rule.is_critical, fault.number});
    }
    return lines;
}

rules::Quarters sum(const std::vector<MarkLine>& lines)
{
    rules::Quarters all;
    for (const MarkLine& line : lines) all = all + line.lost;
    return all;
}

rules::Quarters cost_of(const std::vector<MarkLine>& lines, const std::string& rule)
{
    rules::Quarters all;
    for (const MarkLine& line : lines)
        if (line.rule == rule) all = all + line.lost;
    return all;
}

std::string_view share_of_weight(MarkKind kind)
{
    constexpr std::array<std::string_view, 3> shares{"3/4", "1/4", to_say("all")};
    return say(shares[static_cast<std::size_t>(kind)]);
}

std::string_view title_of(MarkKind kind)
{
    constexpr std::array<std::string_view, 3> titles{to_say("Steps to move, put in or leave out"), to_say("Rules of order broken"), to_say("Other rules broken")};
    return say(titles[static_cast<std::size_t>(kind)]);
}

}
