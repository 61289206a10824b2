#include "site/crossing.hpp"

#include "air/passage.hpp"
#include "dust/resuspension.hpp"
#include "dust/tack_pad.hpp"
#include "site/feet.hpp"
#include "site/hands.hpp"
#include "site/landing.hpp"
#include "site/passing_time.hpp"
#include "site/place.hpp"

#include <algorithm>
#include <cmath>

namespace flapdoor::site {

namespace {

constexpr Area pad_area = 0.55_m2;      // 2 ft by 3 ft
constexpr Length steps_outside = 3.0_m; // how far somebody walks into the passage

std::size_t zone_beyond(const Site& site)
{
    const OpeningState& door = entrance(site);
    return door.zone == site.work_room ? *door.leads_to : door.zone;
}

plan::Point threshold(const Site& site)
{
    const OpeningState& door = entrance(site);
    return middle(site.zones[door.zone].plan, door.plan);
}

/// Air swapped by one passage without net flow. A flap door swaps the typical volume times what it stands open for, compared
/// with one hung with care in a usual doorway that somebody walks in by; never more than a doorway without one.
Volume swapped_in_still_air(Site& site, const OpeningState& door, mechanics::Heading heading)
{
    if (!door.flap) return air::hinged_door_passage;
    const mechanics::OpenFor usual = site.flaps.swing(careful_door, mechanics::Heading::into_room).open_for;
    return std::min(air::flap_passage * (site.flaps.swing(hung_door(door), heading).open_for / usual), air::hinged_door_passage);
}

/// Air swept through the doorway by one passage, both ways: the parcels near it and a share of the mixed dust.
void swing(Site& site, mechanics::Heading heading, bool is_carrying)
{
    if (site.is_air_stale) refresh_air(site);
    const OpeningState& door = entrance(site);
    const auto index = static_cast<std::size_t>(&door - site.openings.data());
    AirFlow net{};   // into the work room
    for (const AirPath& path : site.air.paths)
        if (path.opening == index) net += path.from == site.work_room ? -path.flow : path.flow;
    const Speed inward = std::max(AirFlow{}, net) / (door.plan.width * door.plan.height);
    const Volume still = swapped_in_still_air(site, door, heading) * (is_carrying ? air::carrying_factor : 1.0) * site.uncertain.passage;
    const Volume swept = air::passage_volume(still, inward);

    Zone& room = site.room();
    Zone& hall = site.zones[zone_beyond(site)];
    const std::vector<std::size_t> near = cells_near(site, index);
    const Volume near_volume = room.raster.cell_area() * room.plan.ceiling * static_cast<double>(near.size());
    const double chance = std::min(1.0, swept / near_volume);
    const Luck luck{site.seed, Stream::walking};
    const std::uint64_t passage = site.luck.next(Stream::walking);
    const auto when = static_cast<std::uint32_t>(0x80000000U | (passage ^ passage >> 32));   // no transport step is numbered so high
    for (std::size_t i = 0; i < site.cloud.count(); ++i) {
        const plan::Rect& floor = room.raster.rect();
        const plan::Point at{floor.west + Length{static_cast<double>(site.cloud.x[i])}, floor.south + Length{static_cast<double>(site.cloud.y[i])}};
        if (!std::binary_search(near.begin(), near.end(), room.raster.cell_at(at))) continue;
        if (luck.uniform(site.cloud.number[i], when) >= chance) continue;
        const dust::SizeClass k = site.cloud.size[i];
        const Amount all = site.cloud.amount[i];
        site.ledger.move({site.cloud.amount[i], room.air_account}, {hall.air[k], hall.air_account}, k, all, dust::Pathway::doorway);
        site.cloud.fate[i] = dust::Fate::left;
    }
    site.cloud.sweep();
    for (const dust::SizeClass k : dust::all_classes()) {
        const Amount out = part(room.air[k], std::min(1.0, swept / room.volume));
        const Amount in = part(hall.air[k], std::min(1.0, swept / hall.volume));
        site.ledger.move({room.air[k], room.air_account}, {hall.air[k], hall.air_account}, k, out, dust::Pathway::doorway);
        site.ledger.move({hall.air[k], hall.air_account}, {room.air[k], room.air_account}, k, in, dust::Pathway::recovered);
    }
}

void tread_on_pad(Site& site, Worker& who)
{
    const dust::Pathway pathway = who.is_inside ? dust::Pathway::none : dust::Pathway::shoes;
    const Loading on_pad = mass(dust::total(site.tack_pad.load).dust) / pad_area;
    const double captured = dust::captured_in(dust::pad_capture_at(site.uncertain.pad_capture, on_pad), dust::contacts_per_foot);
    for (Shoe& shoe : who.shoes) pour(site, shoe.sole, site.tack_pad, captured, pathway);
}

/// The first foot beyond the door.
void cross_threshold(Site& site, Worker& who) { step_on(site, who, site.zones[who.zone].raster.cell_at(who.at)); }

}

void note_exit(Site& site, const Worker& who)
{
    measure(site, "soles-cleaned", who.id.name, job::MeasureKind::truth, who.has_clean_soles ? 1.0 : 0.0);
    measure(site, "clothes-cleaned", who.id.name, job::MeasureKind::truth, who.has_clean_clothes ? 1.0 : 0.0);
}

void leave(Site& site, Worker& who, bool is_carrying)
{
    const bool had_clean_soles = who.has_clean_soles;
    const bool had_clean_clothes = who.has_clean_clothes;
    walk_to(site, who, threshold(site));
    if (site.has_tack_pad && !site.is_tack_pad_outside) tread_on_pad(site, who);
    swing(site, mechanics::Heading::out_of_room, is_carrying);
    who.is_inside = false;
    who.zone = zone_beyond(site);
    who.at = threshold(site);
    site.ledger.move_account(who.shoes[0].sole.account, dust::Side::outside, dust::Pathway::shoes);
    site.ledger.move_account(who.clothes.account, dust::Side::outside, dust::Pathway::clothing);
    if (site.has_tack_pad && site.is_tack_pad_outside) tread_on_pad(site, who);
    cross_threshold(site, who);
    const plan::Point middle_of_hall = site.zones[who.zone].raster.rect().center();
    const double far = plan::distance(who.at, middle_of_hall).si;
    const double share = far > 0.0 ? std::min(1.0, steps_outside.si / far) : 0.0;
    walk_to(site, who, {who.at.x + (middle_of_hall.x - who.at.x) * share, who.at.y + (middle_of_hall.y - who.at.y) * share});
    who.has_clean_soles = had_clean_soles;
    who.has_clean_clothes = had_clean_clothes;
}

void enter(Site& site, Worker& who, bool is_carrying)
{
    walk_to(site, who, threshold(site));
    if (site.has_tack_pad && site.is_tack_pad_outside) tread_on_pad(site, who);
    swing(site, mechanics::Heading::into_room, is_carrying);
    who.is_inside = true;
    who.zone = site.work_room;
    who.at = threshold(site);
    site.ledger.move_account(who.shoes[0].sole.account, dust::Side::inside, dust::Pathway::shoes);
    site.ledger.move_account(who.clothes.account, dust::Side::inside, dust::Pathway::clothing);
    cross_threshold(site, who);
    walk_to(site, who, site.room().raster.rect().center());
}

}
