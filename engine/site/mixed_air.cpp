#include "site/mixed_air.hpp"

#include "dust/fan_loss.hpp"
#include "dust/mixed_zone.hpp"
#include "site/carried_off.hpp"
#include "site/landing.hpp"

#include <algorithm>
#include <utility>
#include <vector>

namespace flapdoor::site {

namespace {

/// Less than this of a class in a zone's air counts as settled: 20 ng, of which the slowest class lets go a picogram a tick.
constexpr Picograms last_wisp{20'000};

/// Less than this of a class waits until more has come: 0.1 ug of dust over a whole floor is far below any wipe.
constexpr Picograms worth_sharing{100'000};

/// One way out of a zone's stirred air.
struct Exit {
    enum class Kind { floor, walls, path, duct, filter } kind;
    std::size_t zone;
    Rate rate;
    const AirPath* path = nullptr;
    Amount left{};          ///< still to be booked
};

std::vector<Exit> exits_of(const Site& site, const HouseRound& round, dust::SizeClass k)
{
    std::vector<Exit> exits;
    const Rate in_duct = round.rate * round.in_duct[k];
    const Rate in_filter = round.rate * round.in_filter[k];
    for (std::size_t z = 0; z < site.zones.size(); ++z) {
        const Zone& zone = site.zones[z];
        Rate floor = site.deposition[k].floor / zone.plan.ceiling;
        if (round.rate > Rate{} && is_served(site, z)) {
            exits.push_back({Exit::Kind::duct, z, in_duct});
            exits.push_back({Exit::Kind::filter, z, in_filter});
            floor += std::max(Rate{}, dust::fan_loss(floor) - in_duct - in_filter);   // what duct and filter do not explain, stirring does
        }
        exits.push_back({Exit::Kind::floor, z, floor});
        if (z != site.work_room) continue;
        const Area walls = (zone.plan.width + zone.plan.depth) * zone.plan.ceiling * 2.0;
        exits.push_back({Exit::Kind::walls, z, site.deposition[k].wall * walls / zone.volume});
    }
    for (const AirPath& path : site.air.paths) exits.push_back({Exit::Kind::path, path.from, path.flow * path.passes[k] / site.zones[path.from].volume, &path});
    return exits;
}

dust::CoupledZones rates_of(const Site& site, const std::vector<Exit>& exits, dust::SizeClass k)
{
    dust::CoupledZones zones(site.zones.size());
    for (const Exit& exit : exits) {
        zones.loss[exit.zone] += exit.rate;
        if (exit.kind == Exit::Kind::path && exit.path->to) zones.pass(exit.zone, *exit.path->to) += exit.rate * arriving_share(site, *exit.path, k);
    }
    return zones;
}

/// What goes each way in the spell, rounded down.
void work_out(const Site& site, std::vector<Exit>& exits, dust::SizeClass k, Time spell)
{
    const dust::CoupledZones zones = rates_of(site, exits, k);
    const auto integrals = [&](auto mass_of) {
        std::vector<double> start;
        for (const Zone& zone : site.zones) start.push_back(static_cast<double>(mass_of(zone.air[k]).count));
        return dust::time_integrals(zones, start, spell);
    };
    const std::vector<double> dust = integrals([](const Amount& amount) { return amount.dust; });
    const std::vector<double> lead = integrals([](const Amount& amount) { return amount.lead; });
    for (Exit& exit : exits) {
        const auto taken = [&](const std::vector<double>& integral) { return Picograms{static_cast<std::int64_t>(exit.rate.si * integral[exit.zone])}; };
        exit.left = {taken(dust), taken(lead)};
    }
}

/// Books as much of an exit as its zone holds at the moment. @return  was it anything
bool book(Site& site, Exit& exit, dust::SizeClass k)
{
    Zone& zone = site.zones[exit.zone];
    const Amount amount{std::min(exit.left.dust, zone.air[k].dust), std::min(exit.left.lead, zone.air[k].lead)};
    if (amount.is_zero()) return false;
    const dust::Holding air{zone.air[k], zone.air_account};
    switch (exit.kind) {
        case Exit::Kind::floor: site.ledger.move(air, {zone.falling[k], zone.air_account}, k, amount); break;
        case Exit::Kind::walls: site.ledger.move(air, {zone.reaching_walls[k], zone.air_account}, k, amount); break;
        case Exit::Kind::duct: site.ledger.move(air, site.duct.free(k), k, amount); break;
        case Exit::Kind::filter: site.ledger.move(air, site.filter.free(k), k, amount); break;
        case Exit::Kind::path: carry_off(site, *exit.path, air, k, amount); break;
    }
    exit.left -= amount;
    return true;
}

/// One class through the spell. A zone may pass on within the spell what it gets in the spell: such exits wait until it has
/// come, and what never comes for rounding is left.
void move_class(Site& site, const HouseRound& round, dust::SizeClass k, Time spell)
{
    std::vector<Exit> exits = exits_of(site, round, k);
    work_out(site, exits, k, spell);
    for (bool has_moved = true; has_moved;) {
        has_moved = false;
        for (Exit& exit : exits)
            if (!exit.left.is_zero() && book(site, exit, k)) has_moved = true;
    }
}

/// Equal pieces of an amount. The few picograms that the division leaves over fall on other spots each turn.
struct Pieces {
    Amount each;
    std::size_t more_dust, more_lead, count, turn;

    Pieces(Amount all, std::size_t spots, std::uint64_t draw) : count(spots), turn(static_cast<std::size_t>(draw % spots))
    {
        const auto n = static_cast<std::int64_t>(spots);
        each = {{all.dust.count / n}, {all.lead.count / n}};
        more_dust = static_cast<std::size_t>(all.dust.count % n);
        more_lead = static_cast<std::size_t>(all.lead.count % n);
    }

    Amount at(std::size_t i) const
    {
        const std::size_t index = i + turn < count ? i + turn : i + turn - count;
        return {{each.dust.count + (index < more_dust ? 1 : 0)}, {each.lead.count + (index < more_lead ? 1 : 0)}};
    }
};

/// What a surface is due of one class.
struct Due {
    Amount amount;
    double bound = 0.0, bound_at_joint = 0.0;   ///< shares
};

/// One class that is to be spread.
struct Share {
    dust::SizeClass size;
    Pieces pieces;
    std::vector<Due> due;       ///< [surface]
};

/// Books what one class gives to each surface. It is then in nobody's hand until it is laid down.
Share booked(Site& site, dust::Holding from, const std::vector<Spot>& spots, dust::SizeClass k)
{
    Share share{k, Pieces(from.held, spots.size(), site.luck.next(Stream::boundary)), std::vector<Due>(site.surfaces.size())};
    for (std::size_t i = 0; i < spots.size(); ++i) share.due[spots[i].surface].amount += share.pieces.at(i);
    for (std::size_t s = 0; s < share.due.size(); ++s) {
        if (share.due[s].amount.is_zero()) continue;
        Amount in_hand;
        site.ledger.move(from, {in_hand, site.surfaces[s].account}, k, share.due[s].amount);
        share.due[s].bound = bound_share(site, site.surfaces[s], false, k);
        share.due[s].bound_at_joint = bound_share(site, site.surfaces[s], true, k);
    }
    return share;
}

/// Spreads evenly over spots what waits of the classes that are worth it. Booked surface by surface and laid down spot by
/// spot, which costs far less than a booking for every spot and class.
void spread(Site& site, PerClassAmount& waiting, dust::AccountId account, const std::vector<Spot>& spots)
{
    std::vector<Share> shares;
    for (const dust::SizeClass k : dust::all_classes())
        if (waiting[k].dust >= worth_sharing) shares.push_back(booked(site, {waiting[k], account}, spots, k));
    if (shares.empty()) return;
    for (std::size_t i = 0; i < spots.size(); ++i) {
        Surface& surface = site.surfaces[spots[i].surface];
        dust::Load& patch = surface.patches[spots[i].patch];
        surface.is_cleaned[spots[i].patch] = 0;
        for (const Share& share : shares) {
            const Amount piece = share.pieces.at(i);
            const Due& due = share.due[spots[i].surface];
            const Amount bound = part(piece, is_at_joint(surface, spots[i].patch) ? due.bound_at_joint : due.bound);
            patch.bound[share.size] += bound;
            patch.free[share.size] += piece - bound;
            if (surface.role == SurfaceRole::sheeting) seep(site, spots[i].surface, spots[i].patch, share.size, piece - bound);
        }
    }
}

std::vector<Spot> wall_spots(const Site& site)
{
    std::vector<Spot> spots;
    for (std::size_t s = 0; s < site.surfaces.size(); ++s)
        if (site.surfaces[s].role == SurfaceRole::wall)
            for (std::size_t p = 0; p < site.surfaces[s].patches.size(); ++p) spots.push_back({s, p});
    return spots;
}

}

void move_mixed(Site& site, Time spell)
{
    const HouseRound round = house_round(site);
    for (const dust::SizeClass k : dust::all_classes()) {
        bool is_any = false;
        for (Zone& zone : site.zones) {
            if (zone.air[k].dust < last_wisp) site.ledger.move({zone.air[k], zone.air_account}, {zone.falling[k], zone.air_account}, k, zone.air[k]);
            is_any = is_any || !zone.air[k].is_zero();
        }
        if (is_any) move_class(site, round, k, spell);
    }
}

void share_out(Site& site)
{
    for (Zone& zone : site.zones) {
        spread(site, zone.falling, zone.air_account, zone.top);
        const bool is_at_walls = std::any_of(zone.reaching_walls.begin(), zone.reaching_walls.end(), [](Amount amount) { return amount.dust >= worth_sharing; });
        if (is_at_walls) spread(site, zone.reaching_walls, zone.air_account, wall_spots(site));
    }
}

}
