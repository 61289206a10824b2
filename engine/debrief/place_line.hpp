#pragma once

#include "site/site.hpp"

#include <string>
#include <vector>

namespace flapdoor::debrief {

/// Loose lead dust that the job made (chips apart) in one place at the end: what is neither sealed in bags nor taken up.
struct PlaceLine {
    std::string title;
    Picograms lead;                 ///< on its surfaces and in its air, or on what is carried about
    double share = 0.0;             ///< of all that is loose, 0 to 1
    bool is_zone = false;
    bool is_work_room = false;
    bool is_barely_known = false;   ///< hangs on what bags and sheeting let go, which nobody has measured
};

/// Zones in the scenario's order, then ducts, outdoors, people, tools and waste.
std::vector<PlaceLine> place_lines(const site::Site& site);

}
