#include "site/bagging.hpp"

#include "dust/bag.hpp"

#include <algorithm>

namespace flapdoor::site {

Bag& start_bag(Site& site, const job::BagId& id, bool is_heavy_duty)
{
    if (Bag* bag = find_bag(site, id)) return *bag;
    Bag bag;
    bag.id = id;
    bag.is_heavy_duty = is_heavy_duty;
    bag.content.account = site.ledger.open("in bag " + id.name, dust::Side::inside);
    bag.skin.account = site.ledger.open("on bag " + id.name, dust::Side::inside);
    site.bags.push_back(std::move(bag));
    return site.bags.back();
}

BagClosing closing_of(const job::CloseBag& step, double fill)
{
    BagClosing closing;
    const bool is_gooseneck = step.closure == job::Closure::gooseneck && step.twist >= least_twist && step.is_folded && step.has_loop && fill <= fullest;
    // A knot in thick plastic does not seal.
    if (step.closure != job::Closure::knot) closing.neck = is_gooseneck ? dust::Neck::gooseneck : dust::Neck::taped;
    switch (step.press) {
        case job::Press::gently: closing.pressed_out = dust::pressed_out_share(fill); break;
        case job::Press::hard: closing.pressed_out = 1.0; break;     // what still hangs over the content comes out with the air: all of it
        case job::Press::by_vacuum: closing.drawn_off = 1.0; break;
        case job::Press::none: break;
    }
    closing.air_out = dust::bag_volume * (1.0 - fill) * (closing.pressed_out + closing.drawn_off);
    closing.burst = dust::burst_probability({fill, false, true});
    return closing;
}

void dust_the_skin(Site& site, Bag& bag)
{
    // A bag set down and dragged picks up what lies under half a square meter of it, as a sole would.
    const Zone& room = site.room();
    const plan::Point middle = room.raster.rect().center();
    Area touched{};
    const double picked_up = std::min(1.0, 0.1 * site.uncertain.handling);   // at most the loading of the room
    for (const std::size_t cell : room.raster.cells_within({middle.x, middle.y, {}, {}}, 0.4_m)) {
        const Spot spot = room.top[cell];
        Surface& surface = site.surfaces[spot.surface];
        for (const dust::SizeClass k : dust::all_classes())
            if (k != dust::SizeClass::chips)
                site.ledger.move(surface.free(spot.patch, k), bag.skin.free(k), k, part(surface.patches[spot.patch].free[k], picked_up));
        touched += surface.patch_area;
        if (touched >= dust::bag_outside) break;
    }
    bag.is_skin_clean = false;
}

}
