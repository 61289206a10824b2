#pragma once

#include "debrief/floor_map.hpp"
#include "debrief/report.hpp"

#include <string>

namespace flapdoor::debrief {

/// A floor map as the text of an .svg file that stands alone: its style, its color scale and its note are in it.
std::string picture(const MapScene& scene, const MapLook& look = {720.0, true, true});

/// The maps of a report by their place in it; insists that there is one.
std::string picture(const Report& report, std::size_t map);

/// A frame of a film.
std::string picture(const job::Scenario& scenario, const drill::Film& film, const drill::Frame& frame, const std::string& title);

}
