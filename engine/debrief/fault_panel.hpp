#pragma once

#include "debrief/study.hpp"
#include "text/markup.hpp"

#include <string>
#include <vector>

namespace flapdoor::debrief {

/// How often each fault of a plan did harm, as a part of a drawing between two edges.
struct FaultPanel {
    struct Row {
        std::string title, told;
        double share = 0.0;         ///< of the pairs of runs, 0 to 1
    };

    double left = 0.0, right = 0.0; ///< edges, px
    std::string title;
    std::vector<Row> rows;          ///< of those that did harm in a pair
    std::string harmless;           ///< the others, in one line; empty when there are none

    bool is_empty() const { return rows.empty() && harmless.empty(); }
    double height() const;
};

/// Empty where the study was not asked about faults of that plan.
/// @param right  at least 700 px to the right of `left`, or words are cut short
FaultPanel fault_panel(const Study& study, std::size_t plan, double left, double right);

/// @return  where it ends
double draw(const FaultPanel& panel, double top, text::Element& drawing);

/// For whoever cannot see it.
std::string described(const FaultPanel& panel);

}
