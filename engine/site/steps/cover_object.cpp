#include "site/hands.hpp"

#include <algorithm>
#include <utility>

namespace flapdoor::site {

Refusal why_not(const Site& site, const job::CoverObject& step, const Team& by)
{
    const job::Object& object = *find_by_id(site.scenario.objects, step.object);
    if (!find_top(site, object.title)->is_there) return sentence("{} is not in the room", object.title);
    if (find_cover(site, object.title) != nullptr) return sentence("{} is covered already", object.title);
    return first_of({must_be_inside(site, by), must_have(site, step.sheeting, {job::SupplyKindOf::sheeting, job::SupplyKindOf::drop_cloth}, to_say("to cover things"))});
}

Done carry_out(Site& site, const job::CoverObject& step, const Team& by)
{
    const job::Object& object = *find_by_id(site.scenario.objects, step.object);
    gather(site, by, {object.west, object.south});
    spend(site, job::CoverObject::takes);
    Surface cover = *find_top(site, object.title);
    cover.name = cover_name(object.title);
    cover.role = SurfaceRole::object_cover;
    cover.is_soft = false;
    cover.finish = job::FloorKind::smooth;
    for (dust::Load& load : cover.patches) load = {};
    cover.account = site.ledger.open(cover.name, cover.zone == site.work_room ? dust::Side::inside : dust::Side::outside);
    site.surfaces.push_back(std::move(cover));
    set_state(site, "objects-safe", step.object.name, step.is_sealed && kind_of(site, step.sheeting) == job::SupplyKindOf::sheeting);
    refresh_tops(site);
    return {};
}

}
