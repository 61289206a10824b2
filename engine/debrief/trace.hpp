#pragma once

#include "dust/ledger.hpp"
#include "site/site.hpp"

#include <string>
#include <vector>

namespace flapdoor::debrief {

/// Lead that one card let loose and that left the work area by one way while one step was carried out.
struct TraceLine {
    int source = 0;             ///< entry of the log whose card let it loose
    int step = 0;               ///< entry of the log in which it crossed
    dust::Pathway pathway = dust::Pathway::none;
    Amount amount;              ///< net; below nothing where more came back than left
    double share = 0.0;         ///< of all that left and did not come back by the same way, 0 to 1
};

/// What one card let loose and that lies in one place of the work area at the end.
struct LeftLine {
    int source = 0;
    std::string place;          ///< the account it is booked on: a surface, the air, somebody's soles
    Amount amount;
};

/// One card and all that became of what it let loose. The four add up to it exactly.
struct SourceLine {
    int source = 0;
    Amount released, outside, inside, contained;
};

/// Every picogram that the job made and that is outside or was left inside, by the card that let it loose.
struct Trace {
    std::vector<SourceLine> sources;    ///< in the order of the log
    std::vector<TraceLine> crossings;   ///< most lead first, what came back last
    std::vector<LeftLine> left;         ///< most lead first

    bool is_kept() const { return !sources.empty(); }
};

/// From a site whose ledger was traced; empty when it was not. Insists that the parts add up to what the ledger says is outside, inside
/// and contained, and by each pathway.
Trace trace_of(const site::Site& site);

/// One line for each card and way out, over all steps: what can be compared between runs of one plan.
struct WayOfSource {
    int source = 0;
    dust::Pathway pathway = dust::Pathway::none;
    Amount amount;
    double share = 0.0;         ///< as above
};
std::vector<WayOfSource> ways_of_sources(const Trace& trace);

}
