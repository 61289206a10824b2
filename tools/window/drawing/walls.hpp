#pragma once

#include "window/drawing/board.hpp"

#include <span>
#include <string_view>

namespace flapdoor::window {

/// Bare floor of a room, with the one-foot squares of a drafting sheet.
void draw_floor(Board& board, std::span<const PaperPoint> polygon, bool has_grid = true);

/// A wall along its center line.
struct PlanWall {
    PaperPoint from;
    PaperPoint to;
    double thickness = 0.12; ///< m
};

/// Cut walls, filled. Corners close because every wall reaches half its thickness beyond its ends.
void draw_walls(Board& board, std::span<const PlanWall> walls);

/// A hole in a wall, from jamb to jamb on the wall's center line.
struct PlanOpening {
    PaperPoint from;
    PaperPoint to;
    double thickness = 0.12; ///< of the wall, m
};

struct DoorLook {
    bool is_hinged_at_from = true;
    bool swings_left = true; ///< to the left of the way from `from` to `to`
    double open_share = 1.0; ///< 0 shut, 1 at a right angle
    bool has_leaf = true;    ///< false: a cased opening
};
void draw_door(Board& board, const PlanOpening& opening, const DoorLook& look);

struct WindowLook {
    bool is_open = false;
    double sill_depth = 0.0; ///< m, shown to the left of the way from `from` to `to`; 0 shows none
};
void draw_window(Board& board, const PlanOpening& opening, const WindowLook& look = {});

/// What a room is called, on a faint ground so that it reads over dust.
void draw_room_name(Board& board, PaperPoint center, std::string_view name);

}
