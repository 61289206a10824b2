#include "site/hands.hpp"

#include "site/clothes.hpp"
#include "site/feet.hpp"
#include "site/landing.hpp"
#include "site/passing_time.hpp"
#include "site/place.hpp"

#include <algorithm>

namespace flapdoor::site {

Refusal must_be_inside(const Site& site, const Team& by)
{
    if (!site.has_begun) return std::nullopt;
    for (const job::PersonId& id : by)
        if (const Worker& who = worker(site, id); !who.is_inside) return sentence("{} is outside the work area; enter first", who.title);
    return std::nullopt;
}

Refusal must_be_outside(const Site& site, const Team& by)
{
    if (!site.has_begun) return std::nullopt;
    for (const job::PersonId& id : by)
        if (const Worker& who = worker(site, id); who.is_inside) return sentence("{} is in the work area; leave first", who.title);
    return std::nullopt;
}

Refusal must_be_on_site(const Site& site, const Team& by)
{
    for (const job::PersonId& id : by)
        if (const Worker& who = worker(site, id); !who.is_on_site) return sentence("{} is off the site", who.title);
    return std::nullopt;
}

Refusal must_have_card(const Site& site)
{
    Refusal refusal = to_say("there is no card to compare the cloth with");
    for (const job::Supply& supply : site.scenario.supplies)
        if (supply.kind == job::SupplyKindOf::card) {
            refusal = must_have(site, supply.id, {job::SupplyKindOf::card}, to_say("to compare the cloth with"));
            if (!refusal) return std::nullopt;
        }
    return refusal;
}

Refusal must_have(const Site& site, const job::SupplyId& id, std::initializer_list<job::SupplyKindOf> kinds, std::string_view purpose)
{
    const job::Supply* supply = find_supply(site, id);
    if (supply == nullptr) return sentence("nothing is chosen {}", purpose);
    if (std::find(kinds.begin(), kinds.end(), supply->kind) == kinds.end()) return sentence("{} cannot be used {}", supply->title, purpose);
    const bool is_staged = std::find(site.staged.begin(), site.staged.end(), id) != site.staged.end();
    if (site.has_begun && entrance(site).flap && !is_staged) return supply->title + " was left outside the flap door; fetch it first";
    return std::nullopt;
}

Refusal must_be(const OpeningState& opening, std::initializer_list<job::OpeningKindOf> kinds, std::string_view wanted)
{
    if (std::find(kinds.begin(), kinds.end(), opening.plan.kind) != kinds.end()) return std::nullopt;
    return sentence("{} is not {}", opening.plan.title, wanted);
}

Refusal must_be_way(const Site& site, const job::OpeningId& id, std::string_view otherwise)
{
    const OpeningState& asked = opening(site, id);
    if (&asked != &entrance(site)) return text::Sentence(otherwise, {asked.plan.title});
    if (asked.is_covered) return sentence("{} is covered; nobody gets through", asked.plan.title);
    return std::nullopt;
}

Refusal first_of(std::initializer_list<Refusal> refusals)
{
    for (const Refusal& refusal : refusals)
        if (refusal) return refusal;
    return std::nullopt;
}

job::SupplyKindOf kind_of(const Site& site, const job::SupplyId& supply) { return find_supply(site, supply)->kind; }

bool is_certified(const Site& site, const Team& by)
{
    return !by.empty() && std::all_of(by.begin(), by.end(), [&](const job::PersonId& id) { return worker(site, id).role == job::Role::certified_renovator; });
}

bool is_inside(const Site& site, const Team& by)
{
    return std::all_of(by.begin(), by.end(), [&](const job::PersonId& id) { return worker(site, id).is_inside; });
}

void gather(Site& site, const Team& by, plan::Point where)
{
    for (const job::PersonId& id : by) {
        Worker& who = worker(site, id);
        if (!site.has_begun) {   // no dust yet: where people walk does not matter
            if (who.is_inside) who.at = where;
            continue;
        }
        walk_to(site, who, where);
    }
}

void work_at(Site& site, const Team& by, plan::Point where, Time time)
{
    gather(site, by, where);
    soil_at_work(site, by, where, time * 0.5);
    pass_time(site, time, {true, [&](Site& s, Time) {
                               if (!s.has_begun) return;
                               for (const job::PersonId& id : by) {
                                   Worker& who = worker(s, id);
                                   shuffle(s, who, where, 1.0_m, 1);
                                   if (who.zone == s.work_room) wear_sheeting(s, s.room().raster.cell_at(who.at));
                               }
                           }});
    soil_at_work(site, by, where, time * 0.5);
}

void soil_at_work(Site& site, const Team& by, plan::Point where, Time time)
{
    for (const job::PersonId& id : by) {
        Worker& who = worker(site, id);
        soil_clothes(site, who, floor_within_reach(site, who.zone, where), dust::Stirring::working, time);
    }
}

void spend(Site& site, Time time) { pass_time(site, time, {false, {}}); }

bool is_containment_whole(const Site& site)
{
    if (site.sheet != SheetState::laid) return false;
    for (const OpeningState& o : site.openings) {
        const bool touches = o.zone == site.work_room || (o.leads_to && *o.leads_to == site.work_room);
        if (!touches) continue;
        switch (o.plan.kind) {
            case job::OpeningKindOf::window:
                if (o.is_open) return false;
                break;
            case job::OpeningKindOf::door:
                if (!o.flap && !(o.is_covered && o.is_cover_taped && !o.is_open)) return false;
                break;
            default:
                if (!o.is_covered || !o.is_cover_taped || o.is_open) return false;
        }
    }
    return true;
}

void containment_changed(Site& site)
{
    site.is_air_stale = true;
    set_state(site, "containment-whole", "", is_containment_whole(site));
}

void presence_changed(Site& site)
{
    const auto is_any = [&](const auto& is_so) {
        return std::any_of(site.crew.begin(), site.crew.end(), [&](const Worker& who) { return who.role == job::Role::certified_renovator && is_so(who); });
    };
    set_state(site, "certified-on-site", "", is_any([](const Worker& who) { return who.is_on_site; }));
    set_state(site, "certified-reachable", "", is_any([](const Worker& who) { return who.is_reachable; }));
}

Length sheeting_reach(const Site& site, const job::Component& component)
{
    const Zone& room = site.room();
    const plan::Rect from = footprint(site.scenario, component);
    Length nearest = room.plan.width + room.plan.depth;
    for (std::size_t cell = 0; cell < room.top.size(); ++cell)
        if (site.surfaces[room.top[cell].surface].role == SurfaceRole::floor) nearest = std::min(nearest, plan::distance(from, room.raster.center(cell)));
    return nearest;
}

bool has_debris_on_floor(const Site& site)
{
    const Mass one_chip = 0.0005_g;   // half a milligram is one that somebody sees
    return std::any_of(site.room().top.begin(), site.room().top.end(), [&](const Spot& spot) {
        const Surface& surface = site.surfaces[spot.surface];
        return surface.role == SurfaceRole::floor && mass(surface.patches[spot.patch].free[dust::SizeClass::chips].dust) > one_chip;
    });
}

void pour(Site& site, Body& from, Body& to, double share, dust::Pathway pathway)
{
    for (const dust::SizeClass k : dust::all_classes()) {
        const bool crosses = (site.ledger.account(from.account).side == dust::Side::outside) != (site.ledger.account(to.account).side == dust::Side::outside);
        site.ledger.move(from.free(k), to.free(k), k, part(from.load.free[k], share), crosses ? pathway : dust::Pathway::none);
    }
}

}
