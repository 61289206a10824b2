#pragma once

#include "debrief/fault_line.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace flapdoor::debrief {

enum class MarkKind {
    move,       ///< a card to move, to put in or to leave out: three quarters of its points
    order,      ///< a broken rule of order: a quarter of its weight
    line        ///< any other broken rule: its whole weight
};

/// One charge on the marking sheet. All charges together are exactly what the sheet says is lost.
struct MarkLine {
    MarkKind kind = MarkKind::move;
    text::Sentence what;            ///< the sentence about the card, or what the rule asks
    std::string rule;               ///< id; of a card the heaviest broken rule it stands in, may be empty
    std::string cite;
    std::optional<rules::RuleClass> rule_class;
    int weight = 0;                 ///< of a card its points
    rules::Quarters lost;
    bool is_critical = false;
    int fault = 0;                  ///< number of the fault, 0 for none
};

std::vector<MarkLine> mark_lines(const rules::MarkingSheet& sheet, const std::vector<FaultLine>& faults);

rules::Quarters sum(const std::vector<MarkLine>& lines);

/// Charges that belong to one rule: its own and those of cards that move for its sake.
rules::Quarters cost_of(const std::vector<MarkLine>& lines, const std::string& rule);

/// `3/4`, `1/4`, `all`: how much of the weight is lost.
std::string_view share_of_weight(MarkKind kind);

/// Heads the charges of a kind.
std::string_view title_of(MarkKind kind);

}
