#include "site/hands.hpp"

namespace flapdoor::site {

Refusal why_not(const Site& site, const job::MoveOut& step, const Team& by)
{
    const job::Object& object = *find_by_id(site.scenario.objects, step.object);
    if (!object.can_move) return sentence("{} cannot be moved", object.title);
    if (!find_top(site, object.title)->is_there) return sentence("{} is out already", object.title);
    return must_be_inside(site, by);
}

Done carry_out(Site& site, const job::MoveOut& step, const Team& by)
{
    const job::Object& object = *find_by_id(site.scenario.objects, step.object);
    gather(site, by, {object.west, object.south});
    spend(site, job::MoveOut::takes);
    Surface& top = *find_top(site, object.title);
    top.is_there = false;
    site.ledger.move_account(top.account, dust::Side::outside, dust::Pathway::tools);
    if (Surface* cover = find_cover(site, object.title)) {   // it goes along, with what lies on it
        cover->is_there = false;
        site.ledger.move_account(cover->account, dust::Side::outside, dust::Pathway::tools);
    }
    set_state(site, "objects-safe", step.object.name, true);
    refresh_tops(site);
    return {};
}

}
