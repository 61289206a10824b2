#pragma once

#include "window/drawing/board.hpp"
#include "window/run/moment.hpp"

namespace flapdoor::window {

/// The upright cut through the work room and the passage at its entrance: which way it runs and what it takes in.
struct Section {
    bool runs_east = true; ///< along x; otherwise along y, to the north
    double from = 0.0;     ///< along that axis, m
    double to = 0.0;
    double ceiling = 2.4; ///< the highest of both zones, m

    double along(PaperPoint p) const { return runs_east ? p.x : p.y; }
    double across(PaperPoint p) const { return runs_east ? p.y : p.x; }
    PaperBox paper_box() const { return {{from, 0.0}, {to, ceiling}}; }
};

Section section_of(const job::Scenario& scenario);

/// Walls, openings, furniture, flap door, airborne dust by height and people, seen from the side, heights in feet.
void draw_site_section(Board& board, const Story& story, const Moment& moment, bool shows_points);

}
