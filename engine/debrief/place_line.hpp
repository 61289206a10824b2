#pragma once

#include "site/site.hpp"

#include <optional>
#include <string>
#include <vector>

namespace flapdoor::debrief {

/// Loose lead dust (chips apart) in one place at the end: what is neither sealed in bags nor taken up.
struct PlaceLine {
    std::string title;
    Picograms lead;                 ///< on its surfaces and in its air, or on what is carried about
    double share = 0.0;             ///< of all that is loose, 0 to 1
    std::optional<Loading> floor;   ///< lead on the floor; zones only
    bool is_work_room = false;
};

/// Zones in the scenario's order, then ducts, outdoors, people, tools and waste.
std::vector<PlaceLine> place_lines(const site::Site& site);

}
