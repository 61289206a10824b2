#include "debrief/fault_line.hpp"

#include <algorithm>

namespace flapdoor::debrief {

namespace {

std::vector<int> steps_of(const rules::SheetRule& rule)
{
    std::vector<int> steps;
    for (const rules::Fault& fault : rule.faults)
        for (const int entry : {fault.first, fault.second})
            if (entry >= 0) steps.push_back(entry);
    std::sort(steps.begin(), steps.end());
    steps.erase(std::unique(steps.begin(), steps.end()), steps.end());
    return steps;
}

void add(std::vector<FaultLine>& lines, const std::vector<rules::SheetRule>& rules, FaultKind kind)
{
    for (const rules::SheetRule& rule : rules) lines.push_back({static_cast<int>(lines.size()) + 1, kind, rule, steps_of(rule)});
}

}

std::vector<FaultLine> fault_lines(const rules::MarkingSheet& sheet)
{
    std::vector<FaultLine> lines;
    add(lines, sheet.broken, FaultKind::order);
    add(lines, sheet.lines, FaultKind::line);
    add(lines, sheet.consequences, FaultKind::consequence);
    add(lines, sheet.advice, FaultKind::advice);
    return lines;
}

const FaultLine* find_fault(const std::vector<FaultLine>& faults, const std::string& rule)
{
    const auto found = std::find_if(faults.begin(), faults.end(), [&](const FaultLine& fault) { return fault.rule.rule == rule; });
    return found == faults.end() ? nullptr : &*found;
}

}
