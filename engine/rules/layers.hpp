#pragma once

#include "rules/rule_book.hpp"

#include <string>
#include <vector>

/// Books laid on one another: the federal text below, a state's, a programme's or a firm's own book above.
namespace flapdoor::rules {

/// `upper` on top of `base`: rules with a new id are added, rules with a known id take the place of the old one, `[[change]]`
/// gives a rule below other points. `[passing]` and `[[outside]]` of the upper book take the place of those below. A rule
/// that asks less than a must-rule below (less weight, lower class, no longer critical) has to say `loosens = true`. The
/// result is checked as one book and stands alone.
Result<RuleBook> layered(const RuleBook& base, const RuleBook& upper);

struct BookText {
    std::string name;       ///< file name, for messages
    std::string text;
};

/// The lowest book first, each further one lying on what is below it. Every problem of every text.
Result<RuleBook> read_layers(const std::vector<BookText>& texts);

enum class LayerChange { added, replaced, changed };

/// What a layer did to one rule.
struct LayerLine {
    LayerChange change = LayerChange::added;
    std::string rule;
    std::string what;       ///< "weight 3 -> 6, now critical"; of an added rule what it says
    Place where;            ///< in the upper book
};

/// In the order of the upper book: its changes, then its rules. Both books as read; `upper` lies on `base`.
std::vector<LayerLine> layer_lines(const RuleBook& base, const RuleBook& upper);

}

namespace flapdoor::inline core {
template <> struct Words<rules::LayerChange> { static constexpr std::array<std::string_view, 3> words{"added", "replaced", "changed"}; };
}
