#include "site/passing_time.hpp"

#include "core/insist.hpp"
#include "core/steady.hpp"
#include "dust/clothing.hpp"
#include "dust/dispersion.hpp"
#include "air/duct.hpp"
#include "air/filter.hpp"
#include "site/landing.hpp"
#include "site/place.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace flapdoor::site {

namespace {

constexpr Time longest_transport_step = 0.5_s;
constexpr Length return_duct_width = 0.2_m;

air::FilterGrade grade_of(int merv)
{
    if (merv >= 13) return air::FilterGrade::merv_13;
    return merv >= 8 ? air::FilterGrade::merv_8 : air::FilterGrade::none;
}

/// Dust of one class that an air path takes along: to another zone, outdoors, or through duct and filter into the house.
void deliver(Site& site, const AirPath& path, dust::Holding from, dust::SizeClass k, Amount amount)
{
    if (amount.is_zero()) return;
    if (!path.to) {
        site.ledger.move(from, site.outdoors.free(k), k, amount, path.pathway);
        return;
    }
    if (path.is_return) {
        const job::AirHandling& hvac = site.scenario.air_handling;
        const Area duct_floor = hvac.duct_floor * return_duct_width;
        const Amount settled = part(amount, air::duct_settled_share(site.deposition[k].floor, duct_floor, path.flow));
        site.ledger.move(from, site.duct.free(k), k, settled, path.pathway);
        amount -= settled;
        const Amount caught = part(amount, air::filter_efficiency(grade_of(hvac.filter_merv), dust::typical_diameter(k)));
        site.ledger.move(from, site.filter.free(k), k, caught, path.pathway);
        amount -= caught;
    }
    Zone& there = site.zones[*path.to];
    site.ledger.move(from, {there.air[k], there.air_account}, k, amount, path.pathway);
}

/// The path that takes a parcel which left at this cell: by chance, in proportion to what each draws there.
const AirPath* path_taken(const Site& site, std::size_t cell, double luck)
{
    const AirPath* taken = nullptr;
    double sum = 0.0;
    std::vector<std::pair<const AirPath*, double>> candidates;
    for (const AirPath& path : site.air.paths) {
        if (path.from != site.work_room) continue;
        const std::vector<std::size_t> cells = cells_near(site, path.opening);
        if (!std::binary_search(cells.begin(), cells.end(), cell)) continue;
        sum += path.flow.si / static_cast<double>(cells.size());
        candidates.emplace_back(&path, sum);
    }
    for (const auto& [path, up_to] : candidates) {
        taken = path;
        if (luck * sum < up_to) break;
    }
    return taken;
}

plan::Point place_of(const Site& site, std::size_t parcel)
{
    const plan::Rect& floor = site.room().raster.rect();
    return {floor.west + Length{static_cast<double>(site.cloud.x[parcel])}, floor.south + Length{static_cast<double>(site.cloud.y[parcel])}};
}

/// Books what the cloud kernel decided, in the order of the parcels.
void book_fates(Site& site, Time mixing)
{
    Zone& room = site.room();
    const Luck luck{site.seed, Stream::boundary};
    for (std::size_t i = 0; i < site.cloud.count(); ++i) {
        const dust::SizeClass k = site.cloud.size[i];
        const dust::Holding parcel{site.cloud.amount[i], room.air_account};
        const plan::Point where = place_of(site, i);
        const Amount all = site.cloud.amount[i];
        switch (site.cloud.fate[i]) {
            case dust::Fate::airborne:
                // Older than the room's mixing time: the class is handed to the balance of the whole zone.
                if (site.cloud.age[i] < static_cast<float>(mixing.si)) continue;
                site.ledger.move(parcel, {room.air[k], room.air_account}, k, all);
                break;
            case dust::Fate::landed: land(site, parcel, site.work_room, room.raster.cell_at(where), k, all); break;
            case dust::Fate::on_wall: stick_to_wall(site, parcel, where, Length{static_cast<double>(site.cloud.z[i])}, k, all); break;
            case dust::Fate::left: {
                const AirPath* path = path_taken(site, room.raster.cell_at(where), luck.uniform(site.cloud.number[i], site.cloud.steps[i] + 1));
                insist(path != nullptr, "a parcel leaves near an opening");
                deliver(site, *path, parcel, k, all);
                break;
            }
        }
        site.cloud.fate[i] = dust::Fate::left;   // gone from the cloud, whatever took it
    }
    site.cloud.sweep();
}

void move_cloud(Site& site, Time spell, Diffusivity spread)
{
    if (site.cloud.count() == 0) return;
    const Zone& room = site.room();
    dust::PerClass<dust::Motion> motions;
    for (const dust::SizeClass k : dust::all_classes())
        motions[k] = dust::motion(spell, spread, room.raster.cell_width(), room.plan.ceiling, site.deposition[k].floor, site.deposition[k].wall, longest_transport_step);
    site.parcel_steps += dust::advance(site.cloud, site.cloud_room, motions, site.seed, site.threads);
    book_fates(site, dust::mixing_time(std::max(room.plan.width, room.plan.depth), spread));
}

/// Mixed dust of a zone: settles, goes to the walls and rides with the air. Exact for the zone's own losses over the
/// spell; what arrives from other zones waits for the next one, which a tick far below every exchange time allows.
void move_mixed(Site& site, std::size_t z, Time spell)
{
    Zone& zone = site.zones[z];
    std::vector<const AirPath*> paths;
    for (const AirPath& path : site.air.paths)
        if (path.from == z) paths.push_back(&path);
    const bool has_walls = z == site.work_room;
    const Area wall_area = (zone.plan.width + zone.plan.depth) * zone.plan.ceiling * 2.0;
    for (const dust::SizeClass k : dust::all_classes()) {
        if (zone.air[k].is_zero()) continue;
        const Rate fallout = site.deposition[k].floor / zone.plan.ceiling;
        const Rate to_walls = has_walls ? site.deposition[k].wall * wall_area / zone.volume : Rate{};
        Rate loss = fallout + to_walls;
        for (const AirPath* path : paths) loss += path->flow / zone.volume;
        if (loss <= Rate{}) continue;
        const double gone = -steady::expm1(-(loss * spell));
        const Amount start = zone.air[k];
        const dust::Holding air{zone.air[k], zone.air_account};
        // Running totals, so that rounding never takes more than there is.
        Amount taken;
        Rate so_far{};
        const auto take = [&](Rate rate) {
            so_far += rate;
            const Amount up_to_here = part(start, gone * (so_far / loss));
            const Amount piece = up_to_here - taken;
            taken = up_to_here;
            return piece;
        };
        site.ledger.move(air, {zone.falling[k], zone.air_account}, k, take(fallout));
        if (has_walls) site.ledger.move(air, {zone.reaching_walls[k], zone.air_account}, k, take(to_walls));
        for (const AirPath* path : paths) deliver(site, *path, air, k, take(path->flow / zone.volume));
    }
}

/// Shares out among the cells what the mixed air has let go. Done once a minute: cell by cell it costs more than all
/// the rest of the balance.
void share_out(Site& site)
{
    for (std::size_t z = 0; z < site.zones.size(); ++z) {
        Zone& zone = site.zones[z];
        for (const dust::SizeClass k : dust::all_classes()) {
            if (!zone.falling[k].is_zero()) spread_over_floor(site, {zone.falling[k], zone.air_account}, z, k, zone.falling[k]);
            if (!zone.reaching_walls[k].is_zero()) spread_over_walls(site, {zone.reaching_walls[k], zone.air_account}, k, zone.reaching_walls[k]);
        }
    }
}

/// Clothes of people outside the work area shed where they stand.
void shed_clothes(Site& site, Time spell)
{
    for (Worker& person : site.crew) {
        if (person.is_inside || dust::total(person.clothes.load).is_zero()) continue;
        const Zone& zone = site.zones[person.zone];
        const double share = dust::clothing_loss(spell);
        for (const dust::SizeClass k : dust::all_classes())
            land(site, person.clothes.free(k), person.zone, zone.raster.cell_at(person.at), k, part(person.clothes.load.free[k], share));
    }
}

}

Time whole_seconds(Time time) { return Time{std::floor(time.si + 0.5)}; }

void pass_time(Site& site, Time duration, const Doing& doing)
{
    const Diffusivity spread = doing.is_busy ? dust::working_room : dust::resting_room;
    constexpr int ticks_between_shares = 6;
    int ticks = 0;
    for (Time left = whole_seconds(duration); left > Time{};) {
        const Time spell = std::min(left, tick);
        if (site.is_air_stale) refresh_air(site);
        if (doing.meanwhile) doing.meanwhile(site, spell);
        move_cloud(site, spell, spread);
        for (std::size_t z = 0; z < site.zones.size(); ++z) move_mixed(site, z, spell);
        shed_clothes(site, spell);
        site.now += spell;
        left -= spell;
        if (++ticks % ticks_between_shares == 0 || left == Time{}) share_out(site);
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
        const std::uint64_t number = site.next_parcel++;
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

}
