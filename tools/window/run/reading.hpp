#pragma once

#include "window/run/flashlight.hpp"
#include "window/run/moment.hpp"

#include <optional>
#include <string>

namespace flapdoor::window {

/// Which zone and what lies on the cell there; nothing beside the zones.
struct Reading {
    std::size_t zone = 0;
    double loading = 0.0;   ///< ug/ft2
    double coverage = 0.0;  ///< share hidden by free dust
    double threshold = 0.0; ///< coverage from which it is seen
    bool is_lit = false;    ///< by the flashlight
    double air = 0.0;       ///< ug/m3 in the zone's air
    std::string surface;    ///< "floor", "sheeting", title of an object
};
std::optional<Reading> reading_at(const Story& story, const Moment& moment, PaperPoint at, const std::optional<Beam>& beam = {});

/// A share of an area that may be very small, two digits: `0.05 %`.
std::string fine_percent(double share);

}
