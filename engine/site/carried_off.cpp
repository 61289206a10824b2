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

double settled_in_duct(const Site& site, const AirPath& path, dust::SizeClass k)
{
    return air::duct_settled_share(site.deposition[k].floor, site.scenario.air_handling.duct_floor * return_duct_width, path.flow);
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
        const Amount settled = part(amount, settled_in_duct(site, path, k));
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
    return (1.0 - settled_in_duct(site, path, k)) * (1.0 - caught_by_filter(site, k));
}

}
