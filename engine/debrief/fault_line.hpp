#pragma once

#include "rules/marking_sheet.hpp"

#include <vector>

namespace flapdoor::debrief {

/// Where a broken rule stands on the marking sheet.
enum class FaultKind {
    order,          ///< weighed, a rule of order
    line,           ///< weighed, in full
    consequence,    ///< follows from another fault, not weighed
    advice          ///< weight 0
};

/// A broken rule with the number it carries on the sheet, in the text and on the timeline.
struct FaultLine {
    int number = 1;             ///< from 1, in the order of the sheet: order, lines, consequences, advice
    FaultKind kind = FaultKind::order;
    rules::SheetRule rule;
    std::vector<int> steps;     ///< entries of the log it speaks of, rising, each once

    bool is_weighed() const { return kind == FaultKind::order || kind == FaultKind::line; }
};

std::vector<FaultLine> fault_lines(const rules::MarkingSheet& sheet);

/// The fault in which that rule was broken, or null.
const FaultLine* find_fault(const std::vector<FaultLine>& faults, const std::string& rule);

}

namespace flapdoor::inline core {
template <> struct Words<debrief::FaultKind> { static constexpr std::array<std::string_view, 4> words{"order", "line", "consequence", "advice"}; };
}
