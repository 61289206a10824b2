#pragma once

#include "drill/film.hpp"
#include "job/scenario.hpp"
#include "plan/raster.hpp"
#include "text/axis.hpp"
#include "text/markup.hpp"

#include <string>
#include <vector>

namespace flapdoor::debrief {

/// What a floor map shows. Refers to its parts, which must outlive it.
struct MapScene {
    const job::Scenario& scenario;
    const std::vector<plan::Raster>& rasters;   ///< [zone]
    std::size_t work_room = 0;
    const drill::Frame& frame;
    std::string title;
};

struct MapLook {
    double width = 360.0;           ///< px
    bool shows_all_rooms = false;   ///< otherwise the work room, its passages and closets, and a strip of the rest
    bool has_title = false;         ///< written into the drawing, for a picture that stands alone
    bool has_key = true;            ///< signs and color scale below the plan; without them `floor_map_key` stands nearby
};

/// The scale of every floor map of every run, so that any two can be compared: lead, ug/ft2, six decades.
text::Axis map_axis();

/// The part of the plan that a map shows.
plan::Rect map_window(const MapScene& scene, const MapLook& look);

/// The plan with the lead that lies on what is open to the air, north up: one rectangle of class `cell` for each raster
/// cell of the shown part with any load, a scale bar in feet, the color scale with its unit and its note.
text::Element floor_map(const MapScene& scene, const MapLook& look);

/// What a map's signs and colors mean, as a drawing of its own.
text::Element floor_map_key(double width);

}
