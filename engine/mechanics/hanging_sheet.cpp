#include "mechanics/hanging_sheet.hpp"

#include <numbers>

namespace flapdoor::mechanics {

namespace {

constexpr double plate_drag_coefficient = 4.0;

}

LengthDensity air_moved(Length width, Density air) { return air * width * width * (0.25 * std::numbers::pi); }

Loading plate_drag(Length width, Density air) { return air * width * (0.5 * plate_drag_coefficient); }

HangingSheet whole_sheet(Length top, Length length, Length width, Loading film, Mass dowel, Density air)
{
    HangingSheet sheet;
    sheet.top = top;
    sheet.length = length;
    sheet.film = film * width;
    sheet.air = air_moved(width, air);
    sheet.pressed_width = width;
    sheet.drag = plate_drag(width, air);
    sheet.dowel = dowel;
    return sheet;
}

HangingSheet slit_edges(Length top, Length length, Length sheet_width, Loading film, Length slack, Density air)
{
    HangingSheet edges;
    edges.top = top;
    edges.length = length;
    edges.film = film * sheet_width / 3.0;
    edges.air = air_moved(sheet_width, air) / 3.0;
    edges.pressed_width = sheet_width * 0.5;
    edges.drag = plate_drag(sheet_width, air) * 0.25;
    edges.foot_slack = slack;
    return edges;
}

}
