#include "window/run/plan_openings.hpp"

#include "window/drawing/containment.hpp"
#include "window/drawing/fixtures.hpp"
#include "window/drawing/walls.hpp"
#include "window/run/openings.hpp"

namespace flapdoor::window {

namespace {

constexpr double register_depth = 0.14; // m, as drawn

const job::Sill* sill_of(const job::Scenario& scenario, const job::OpeningId& window)
{
    for (const job::Sill& sill : scenario.sills)
        if (sill.window == window) return &sill;
    return nullptr;
}

/// Sheeting taped over a door that is not used.
void draw_door_cover(Board& board, const PlanOpening& opening)
{
    const PaperBox strip = strip_along(opening, wall_thickness * 0.5, 0.06);
    draw_sheeting(board, corners(strip));
    const PaperPoint side = left_of(along(opening.from, opening.to)) * (wall_thickness * 0.5 + 0.03);
    for (const PaperPoint end : {opening.from, opening.to}) draw_tape(board, end - side * 0.2, end + side);
}

void draw_door_now(Board& board, const job::Opening& opening, const PlanOpening& place, const drill::OpeningShot& shot)
{
    const bool is_arch = opening.id.name.find("arch") != std::string::npos;
    draw_door(
        board, place,
        {.is_hinged_at_from = true, .swings_left = true, .open_share = shot.is_open ? 0.97 : 0.0, .has_leaf = !is_arch && !shot.has_flap});
    if (shot.is_covered) draw_door_cover(board, place);
    if (shot.has_flap) draw_flap_door(board, place.from, place.to);
}

}

void draw_opening(Board& board, const job::Scenario& scenario, const job::Opening& opening, const drill::OpeningShot& shot)
{
    const PlanOpening place = plan_opening(scenario, opening);
    switch (opening.kind) {
        case job::OpeningKindOf::door:
            return draw_door_now(board, opening, place, shot);
        case job::OpeningKindOf::window: {
            const job::Sill* sill = sill_of(scenario, opening.id);
            return draw_window(board, place, {.is_open = shot.is_open, .sill_depth = sill ? sill->depth.si : 0.0});
        }
        case job::OpeningKindOf::supply:
        case job::OpeningKindOf::return_air:
        case job::OpeningKindOf::exhaust: {
            const auto kind = opening.kind == job::OpeningKindOf::supply ? RegisterKind::supply : RegisterKind::extract;
            const PaperBox box = strip_along(place, wall_thickness * 0.5, register_depth);
            draw_register(board, box, kind, shot.is_covered);
            if (!shot.is_open) { // its louver is shut: one bar along it
                const Box on_screen = board.view.at(box);
                const bool is_wide = on_screen.width() >= on_screen.height();
                const Point c = on_screen.center();
                const Point a = is_wide ? Point{on_screen.low.x, c.y} : Point{c.x, on_screen.low.y};
                const Point b = is_wide ? Point{on_screen.high.x, c.y} : Point{c.x, on_screen.high.y};
                board.canvas.line(a, b, board.theme().ink, board.px(3.0F));
            }
        }
    }
}

}
