#pragma once

#include "drill/run.hpp"

#include <string>
#include <vector>

namespace flapdoor::debrief {

/// What went outside by one pathway.
struct PathwayLine {
    dust::Pathway pathway = dust::Pathway::none;
    Amount amount;          ///< net; may be negative where more was brought back than left
    double share = 0.0;     ///< of all that went outside, 0 to 1
};

/// Lead lying on one surface at the end.
struct SurfaceLine {
    std::size_t surface = 0;    ///< in the site
    std::string name;
    site::SurfaceRole role = site::SurfaceRole::floor;
    std::size_t zone = 0;
    Area area{};
    Loading lead{};         ///< chips apart
    Loading dust{};
};

/// What one of the crew breathed: inhalable lead outside any respirator, averaged over eight hours.
struct BreathedLine {
    std::string who;
    dust::Concentration lead{};
};

/// Where the dust of a run is at its end.
struct Outcome {
    Amount released;
    Amount inside;          ///< left in the work area: air, surfaces, people
    Amount outside;
    Amount contained;       ///< in sealed bags, vacuum, cloths, water
    std::vector<PathwayLine> pathways;  ///< largest first
    std::vector<SurfaceLine> surfaces;  ///< in the site's order; sheeting that was taken up is left out
    Loading floor{};        ///< lead on the work room's floor; the worst one where a carpet lies besides
    Loading sill{};         ///< lead on the worst sill
    Loading hall_floor{};   ///< lead on the floor beyond the entrance, the worst one
    std::vector<BreathedLine> breathed; ///< in the order of the crew
    Time took{};
};

Outcome outcome(const drill::Run& run);

/// What went out by a pathway; nothing where none did.
PathwayLine line_of(const Outcome& outcome, dust::Pathway pathway);

/// The zone on the far side of the entrance.
std::size_t passage_of(const site::Site& site);

/// Where a surface stands in a list: floors, sills, counters, tops, sheeting that was left, walls.
int order_of(site::SurfaceRole role);

/// "most" (over half), "much", "some", "little", "trace" (below 1 %): shares are told in words, because the figures
/// behind them are no better than that.
std::string_view share_in_words(double share);

/// The same in the language spoken.
std::string_view said_share(double share);

}
