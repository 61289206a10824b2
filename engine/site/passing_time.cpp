#include "site/passing_time.hpp"

#include "core/insist.hpp"
#include "dust/dispersion.hpp"
#include "dust/flight_log.hpp"
#include "site/breathing.hpp"
#include "site/carried_off.hpp"
#include "site/clothes.hpp"
#include "site/landing.hpp"
#include "site/mixed_air.hpp"
#include "site/place.hpp"

#include <algorithm>
#include <cmath>

namespace flapdoor::site {

namespace {

constexpr Time longest_transport_step = 0.5_s;
/// Dust that is as old as this many mixing times counts as mixed whether it is evenly spread or not.
constexpr double longest_wait = 2.0;

/// From which age on the parcels of a class are handed to the balance of the whole zone: the mixing time, if those that are
/// so old are evenly spread.
dust::PerClass<float> ages_of_rest(const Site& site, Time mixing)
{
    const dust::CoarseBoxes& boxes = site.room_air.boxes;
    dust::PerClass<dust::Spread> spreads;
    for (std::size_t i = 0; i < site.cloud.count(); ++i) {
        if (site.cloud.fate[i] != dust::Fate::airborne || site.cloud.age[i] < static_cast<float>(mixing.si)) continue;
        spreads[site.cloud.size[i]].add(boxes.box_at(site.cloud.x[i], site.cloud.y[i], site.cloud.z[i]), static_cast<double>(site.cloud.amount[i].dust.count));
    }
    dust::PerClass<float> ages;
    for (const dust::SizeClass k : dust::all_classes()) ages[k] = static_cast<float>(mixing.si * (spreads[k].is_even(boxes) ? 1.0 : longest_wait));
    return ages;
}

/// Books what the cloud kernel decided, in the order of the parcels.
void book_fates(Site& site, const dust::StepTable& table, Time mixing)
{
    Zone& room = site.room();
    const Luck luck{site.seed, Stream::boundary};
    const dust::PerClass<float> ages = ages_of_rest(site, mixing);
    for (std::size_t i = 0; i < site.cloud.count(); ++i) {
        const dust::SizeClass k = site.cloud.size[i];
        const dust::Holding parcel{site.cloud.amount[i], room.air_account};
        const std::size_t cell = dust::cell_below(site.cloud, i, table);
        Amount all = site.cloud.amount[i];
        switch (site.cloud.fate[i]) {
            case dust::Fate::airborne:
                if (site.cloud.age[i] < ages[k]) continue;
                site.ledger.move(parcel, {room.air[k], room.air_account}, k, all);
                break;
            case dust::Fate::landed: land(site, parcel, site.work_room, cell, k, all); break;
            case dust::Fate::on_wall: stick_to_wall(site, parcel, room.raster.center(cell), Length{static_cast<double>(site.cloud.z[i])}, k, all); break;
            case dust::Fate::left: {
                const AirPath& path = path_taken(site, cell, luck.uniform(site.cloud.number[i], site.cloud.steps[i] + 1));
                const Amount through = part(all, path.passes[k]);
                carry_off(site, path, parcel, k, through);
                site.ledger.move(parcel, {room.air[k], room.air_account}, k, all - through);   // stirred up by the gap it did not get through
                break;
            }
        }
        site.cloud.fate[i] = dust::Fate::left;   // gone from the cloud, whatever took it
    }
    site.cloud.sweep();
}

/// Parcels through a spell; what another run knows of them is taken from there.
void carry_parcels(Site& site, const dust::StepTable& table)
{
    const std::uint64_t print = site.room_air.table_print;
    dust::Cloud before;
    if (site.notes != nullptr) before = site.cloud;
    site.parcel_steps += site.known == nullptr ? dust::advance(site.cloud, table, site.seed, site.threads)
                                               : dust::advance_known(site.cloud, table, print, site.seed, site.threads, *site.known);
    if (site.notes != nullptr) site.notes->note(print, before, site.cloud);
}

void move_cloud(Site& site, Time spell, Diffusivity spread)
{
    if (site.cloud.count() == 0) return;
    const Zone& room = site.room();
    const Length cell = std::min(room.raster.cell_width(), room.raster.cell_depth());
    dust::PerClass<dust::Motion> motions;
    for (const dust::SizeClass k : dust::all_classes())
        motions[k] = dust::motion(spell, spread, cell, room.plan.ceiling, site.deposition[k].floor, site.deposition[k].wall, longest_transport_step, site.room_air.wind);
    const dust::StepTable& table = step_table_for(site, motions);
    carry_parcels(site, table);
    book_fates(site, table, dust::mixing_time(std::max(room.plan.width, room.plan.depth), spread));
}

}

Time whole_seconds(Time time) { return Time{std::floor(time.si + 0.5)}; }

void pass_time(Site& site, Time duration, const Doing& doing)
{
    const Diffusivity spread = (doing.is_busy ? dust::working_room : dust::resting_room) * site.uncertain.eddy;
    for (Time left = whole_seconds(duration); left > Time{};) {
        const Time spell = std::min(left, tick);
        if (site.is_air_stale) refresh_air(site);
        if (doing.meanwhile) doing.meanwhile(site, spell);
        move_cloud(site, spell, spread);
        move_mixed(site, spell);
        shed_clothes(site, spell);
        breathe(site, spell);
        if (std::floor((site.now + spell).si / 60.0) > std::floor(site.now.si / 60.0)) share_out(site);   // at every full minute
        site.now += spell;
        left -= spell;
        if (site.watcher) site.watcher(site);
    }
}

void release_cloud(Site& site, dust::Holding from, bool is_from_paint, plan::Point where, Length height, dust::SizeClass k, Amount amount, int parcels)
{
    if (amount.is_zero()) return;
    Zone& room = site.room();
    const plan::Rect& floor = room.raster.rect();
    const Luck luck{site.seed, Stream::emission};
    const auto count = static_cast<std::size_t>(std::max(1, parcels));
    constexpr double jitter = 0.3;   // m, the size of the puff at the tool
    for (std::size_t i = 0; i < count; ++i) {
        const Amount piece = equal_piece(amount, i, count);
        const std::uint64_t number = site.luck.next(Stream::emission);
        const Draw draw = luck.draw(number, 0);
        const auto near = [&](Length center, std::uint32_t word, Length least, Length most) {
            const double at = center.si + jitter * (2.0 * unit(word) - 1.0);
            return std::clamp(at, least.si + 0.01, most.si - 0.01);
        };
        const double x = near(where.x, draw[0], floor.west, floor.east());
        const double y = near(where.y, draw[1], floor.south, floor.north());
        const double z = near(height, draw[2], Length{}, room.plan.ceiling);
        site.cloud.add(static_cast<float>(x - floor.west.si), static_cast<float>(y - floor.south.si), static_cast<float>(z), k, number, {});
        const dust::Holding parcel{site.cloud.amount.back(), room.air_account};
        if (is_from_paint) site.ledger.release(site.paint, parcel, k, piece);
        else site.ledger.move(from, parcel, k, piece);
    }
}

void raise_into_air(Site& site, dust::Holding from, std::size_t zone, dust::SizeClass k, Amount amount, dust::Pathway pathway)
{
    Zone& there = site.zones[zone];
    site.ledger.move(from, {there.air[k], there.air_account}, k, amount, pathway);
}

void raise_from_floor(Site& site, PerClassAmount& raised, std::size_t zone, plan::Point where)
{
    constexpr Length knee = 0.3_m;                      // the puff reaches from the floor to twice that (judgment)
    constexpr Picograms least_puff{1'000};              // a nanogram of dust makes no difference to anybody
    constexpr double least_of_air = 2e-4;               // of what hangs in the room of a class: puffs below that make no gradient
    Zone& there = site.zones[zone];
    PerClassAmount hanging = there.air;
    if (zone == site.work_room)
        for (std::size_t i = 0; i < site.cloud.count(); ++i) hanging[site.cloud.size[i]] += site.cloud.amount[i];
    for (const dust::SizeClass k : dust::all_classes()) {
        const dust::Holding puff{raised[k], there.air_account};
        const bool is_told = zone == site.work_room && raised[k].dust >= std::max(least_puff, part(hanging[k].dust, least_of_air / site.detail));
        if (is_told) {
            release_cloud(site, puff, false, where, knee, k, raised[k], 1);
            continue;
        }
        if (zone == site.work_room) site.luck.next(Stream::emission);   // passed over: how much dust lies about must not shift the luck of the rest
        site.ledger.move(puff, {there.air[k], there.air_account}, k, raised[k]);
    }
}

}
