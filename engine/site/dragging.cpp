#include "site/dragging.hpp"

#include "dust/soles.hpp"
#include "mechanics/floor_walk.hpp"
#include "plan/walking.hpp"
#include "site/landing.hpp"
#include "site/standing_things.hpp"

#include <algorithm>
#include <vector>

namespace flapdoor::site {

namespace {

// Judgment, no data found.
constexpr Length half_print = 0.18_m;           // of the part of a bag that lies on the floor
constexpr double shaken_off = 0.05;             // of what is on the skin, by a bump

/// What passes between the skin and the patches it slides over by a share of its own length.
void scrape(Site& site, Bag& bag, std::size_t zone, plan::Point at, double share, int clean_lengths, dust::Pathway way_out)
{
    const Zone& there = site.zones[zone];
    const std::vector<std::size_t> cells = there.raster.cells_within({at.x, at.y, {}, {}}, half_print);
    const bool is_outside = zone != site.work_room;
    for (const dust::SizeClass k : dust::all_classes()) {
        const double up = dust::sole_pickup(k, dust::SoleKind::smooth, site.uncertain.sole_uptake) * share;
        const Amount down = part(bag.skin.load.free[k], dust::sole_loss(clean_lengths) * share);
        for (std::size_t i = 0; i < cells.size(); ++i) {
            if (there.is_blocked[cells[i]]) continue;
            const Spot spot = there.top[cells[i]];
            Surface& surface = site.surfaces[spot.surface];
            site.ledger.move(surface.free(spot.patch, k), bag.skin.free(k), k, part(surface.patches[spot.patch].free[k], up), is_outside ? dust::Pathway::recovered : dust::Pathway::none);
            land(site, bag.skin.free(k), zone, cells[i], k, equal_piece(down, i, cells.size()), is_outside ? way_out : dust::Pathway::none);
        }
    }
}

}

bool is_dragged(const Bag& bag, std::size_t people) { return people < 2 && bag.fill > 0.5; }

void drag(Site& site, Bag& bag, std::size_t zone, plan::Point from, plan::Point to, dust::Pathway way_out)
{
    const Zone& there = site.zones[zone];
    const std::vector<std::size_t> path = plan::walk(there.raster, there.is_blocked, from, to);
    if (path.empty()) return;
    mechanics::FloorScene scene;
    scene.floor = there.raster.rect();
    scene.obstacles = standing_things(site, zone);
    scene.bag = mechanics::DraggedBag{there.raster.center(path.front())};
    std::vector<plan::Point> way;
    for (const std::size_t cell : path) way.push_back(there.raster.center(cell));

    Length slid{};
    for (const mechanics::FloorContact& contact : mechanics::walk_over(scene, way)) {
        if (contact.kind == mechanics::FloorContactKind::bag_scraped) {
            const Length piece = plan::distance(contact.from, contact.to);
            scrape(site, bag, zone, contact.to, std::min(1.0, piece / (half_print * 2.0)), static_cast<int>(slid / (half_print * 2.0)), way_out);
            slid += piece;
        }
        if (contact.kind == mechanics::FloorContactKind::bag_bumped)
            for (const dust::SizeClass k : dust::all_classes())
                land(site, bag.skin.free(k), zone, there.raster.cell_at(contact.to), k, part(bag.skin.load.free[k], shaken_off), zone != site.work_room ? way_out : dust::Pathway::none);
    }
}

}
