#include "site/clothes.hpp"

#include "dust/resuspension.hpp"
#include "site/landing.hpp"

#include <algorithm>

namespace flapdoor::site {

namespace {

constexpr Length reach = 1.0_m;

std::vector<std::size_t> cells_around(const Zone& zone, plan::Point where) { return zone.raster.cells_within({where.x, where.y, {}, {}}, reach); }

}

std::vector<std::size_t> floor_within_reach(const Site& site, std::size_t zone, plan::Point where)
{
    std::vector<std::size_t> cells = cells_around(site.zones[zone], where);
    std::erase_if(cells, [&](std::size_t cell) { return site.zones[zone].is_blocked[cell]; });
    return cells;
}

void soil_clothes(Site& site, Worker& who, const std::vector<std::size_t>& cells, dust::Stirring how, Time spell)
{
    if (!site.has_begun) return;
    const auto gain = [&](bool on_carpet) { return dust::clothing_gain(how, on_carpet, true, spell); };   // where paint is taken off, floors are dirty
    const double from_hard_floor = gain(false);
    const double from_carpet = gain(true);
    const Zone& zone = site.zones[who.zone];
    for (const std::size_t cell : cells) {
        const Spot spot = zone.top[cell];
        Surface& surface = site.surfaces[spot.surface];
        if (surface.height > Length{}) continue;
        double share = dust::surface_traits(kind_of(surface)).is_carpet ? from_carpet : from_hard_floor;
        if (site.now < surface.wet_until) share *= dust::misted_factor.typical;     // what is not stirred up gets on nobody
        for (const dust::SizeClass k : dust::all_classes())
            if (k != dust::SizeClass::chips) site.ledger.move(surface.free(spot.patch, k), who.clothes.free(k), k, part(surface.patches[spot.patch].free[k], share));
    }
    if (!site.verification.is_inspected) who.has_clean_clothes = false;
}

void shed_clothes(Site& site, Time spell)
{
    const double share = dust::clothing_loss(spell);
    const Luck luck{site.seed, Stream::walking};
    for (Worker& who : site.crew) {
        if (!who.is_on_site || dust::total(who.clothes.load).is_zero()) continue;
        const std::vector<std::size_t> cells = cells_around(site.zones[who.zone], who.at);
        if (cells.empty()) continue;
        const auto pick = static_cast<std::size_t>(luck.uniform(site.luck.next(Stream::walking), 0) * static_cast<double>(cells.size()));
        const std::size_t cell = cells[std::min(pick, cells.size() - 1)];
        for (const dust::SizeClass k : dust::all_classes()) land(site, who.clothes.free(k), who.zone, cell, k, part(who.clothes.load.free[k], share));
    }
}

}
