#include "site/carried_off.hpp"

#include "air/duct.hpp"
#include "air/filter.hpp"

namespace flapdoor::site {

namespace {

constexpr Length return_duct_width = 0.2_m;

air::FilterGrade grade_of(int merv)
{
    if (merv >= 13) return air::FilterGrade::merv_13;
    return merv >= 8 ? air::FilterGrade::merv_8 : air::FilterGrade::none;
}

double settled_in_duct(const Site& site, AirFlow flow, dust::SizeClass k)
{
    return air::duct_settled_share(site.deposition[k].floor, site.scenario.air_handling.duct_floor * return_duct_width, flow);
}

double caught_by_filter(const Site& site, dust::SizeClass k)
{
    return air::filter_efficiency(grade_of(site.scenario.air_handling.filter_merv), dust::typical_diameter(k));
}

}

void carry_off(Site& site, const AirPath& path, dust::Holding from, dust::SizeClass k, Amount amount)
{
    if (amount.is_zero()) return;
    if (!path.to) {
        site.ledger.move(from, site.outdoors.free(k), k, amount, path.pathway);
        return;
    }
    if (path.is_return) {
        const Amount settled = part(amount, settled_in_duct(site, path.flow, k));
        site.ledger.move(from, site.duct.free(k), k, settled, path.pathway);
        amount -= settled;
        const Amount caught = part(amount, caught_by_filter(site, k));
        site.ledger.move(from, site.filter.free(k), k, caught, path.pathway);
        amount -= caught;
    }
    Zone& there = site.zones[*path.to];
    site.ledger.move(from, {there.air[k], there.air_account}, k, amount, path.pathway);
}

double arriving_share(const Site& site, const AirPath& path, dust::SizeClass k)
{
    if (!path.to) return 0.0;
    if (!path.is_return) return 1.0;
    return (1.0 - settled_in_duct(site, path.flow, k)) * (1.0 - caught_by_filter(site, k));
}

bool is_served(const Site& site, std::size_t zone) { return zone != site.work_room && site.zones[zone].plan.role != job::ZoneRole::closet; }

HouseRound house_round(const Site& site)
{
    HouseRound round;
    const AirFlow flow = site.scenario.air_handling.house_flow;
    Volume served{};
    for (std::size_t z = 0; z < site.zones.size(); ++z)
        if (is_served(site, z)) served += site.zones[z].volume;
    if (!site.is_hvac_running || !(flow > AirFlow{}) || !(served > Volume{})) return round;
    round.rate = flow / served;
    for (const dust::SizeClass k : dust::all_classes()) {
        round.in_duct[k] = settled_in_duct(site, flow, k);
        round.in_filter[k] = (1.0 - round.in_duct[k]) * caught_by_filter(site, k);
    }
    return round;
}

}
