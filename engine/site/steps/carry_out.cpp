#include "dust/bag.hpp"
#include "site/crossing.hpp"
#include "site/dragging.hpp"
#include "site/hands.hpp"
#include "site/landing.hpp"
#include "site/place.hpp"

namespace flapdoor::site {

Refusal why_not(const Site& site, const job::CarryOut& step, const Team& by)
{
    const Bag* bag = find_bag(site, step.bag);
    if (bag == nullptr) return to_say("there is no such bag yet");
    if (bag->is_out) return to_say("it is out already");
    return first_of({must_be_inside(site, by), must_be_way(site, step.opening, to_say("{} is not the way out of the work area"))});
}

Done carry_out(Site& site, const job::CarryOut& step, const Team& by)
{
    Bag& bag = *find_bag(site, step.bag);
    measure(site, "skin-cleaned", step.bag.name, job::MeasureKind::truth, bag.is_skin_clean ? 1.0 : 0.0);
    measure(site, "sealed", step.bag.name, job::MeasureKind::truth, bag.is_closed ? 1.0 : 0.0);
    const dust::Pathway pathway = bag.holds_sheeting ? dust::Pathway::sheeting_removal : dust::Pathway::bag;
    const OpeningState& door = entrance(site);
    const plan::Point threshold = middle(site.zones[door.zone].plan, door.plan);
    const bool drags = is_dragged(bag, by.size());
    if (drags) drag(site, bag, site.work_room, site.room().raster.rect().center(), threshold, pathway);   // from where it was filled
    for (const job::PersonId& id : by) {
        note_exit(site, worker(site, id));
        leave(site, worker(site, id), true);
    }
    const std::size_t hall = worker(site, by.front()).zone;
    const plan::Point stands = worker(site, by.front()).at;
    const std::size_t cell = site.zones[hall].raster.cell_at(stands);
    if (drags) drag(site, bag, hall, threshold, stands, pathway);
    // The skin sheds on the way; an open bag breathes; an overfilled one may burst.
    constexpr double shed = 0.3;
    const bool bursts = Luck{site.seed, Stream::handling}.uniform(site.luck.next(Stream::handling), 0)
                        < dust::burst_probability({bag.fill, false, bag.is_heavy_duty});
    for (const dust::SizeClass k : dust::all_classes()) {
        land(site, bag.skin.free(k), hall, cell, k, part(bag.skin.load.free[k], shed), pathway);
        double lost = dust::let_out_per_move(bag.is_gooseneck ? dust::Neck::gooseneck : bag.is_closed ? dust::Neck::taped : dust::Neck::open);
        if (bursts) lost += dust::burst_spill.typical;
        land(site, bag.content.free(k), hall, cell, k, part(bag.content.load.free[k], lost), pathway);
    }
    pour(site, bag.content, site.store, 1.0);
    pour(site, bag.skin, site.store, 1.0);
    bag.is_out = true;
    spend(site, job::CarryOut::takes);
    if (bursts) return {true, to_say("the bag burst when it was lifted and spilled part of what was in it")};
    return {};
}

}
