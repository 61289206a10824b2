#include "site/landing.hpp"

#include "core/insist.hpp"
#include "dust/vacuuming.hpp"
#include "site/place.hpp"

#include <algorithm>
#include <limits>

namespace flapdoor::site {

namespace {

// Share of fresh dust that gets under sheeting: judgment, no data found; a band of ten either way.
constexpr double under_taped_edge = 0.01;
constexpr double under_loose_edge = 0.10;
constexpr double through_cloth = 0.05;
constexpr double through_tear = 0.3;
constexpr double most_seeping = 0.5;
constexpr double torn_in_a_step = 5e-4;     // one layer; judgment

}

dust::SurfaceKind kind_of(const Surface& surface)
{
    if (surface.is_soft) return dust::SurfaceKind::carpet_fresh;
    switch (surface.finish) {
        case job::FloorKind::smooth: return dust::SurfaceKind::smooth_sealed;
        case job::FloorKind::linoleum: return dust::SurfaceKind::worn_linoleum;
        case job::FloorKind::wood: return dust::SurfaceKind::bare_wood;
        case job::FloorKind::cracked: return dust::SurfaceKind::deteriorated;
        case job::FloorKind::carpet: return dust::SurfaceKind::carpet_fresh;
    }
    insist(false, "a floor is one of five kinds");
    return dust::SurfaceKind::smooth_sealed;
}

double bound_share(const Site& site, const Surface& surface, bool at_joint, dust::SizeClass k)
{
    if (k == dust::SizeClass::chips) return 0.0;
    const double in_the_open = std::min(most_bound, dust::surface_traits(kind_of(surface)).bound_share.typical * site.uncertain.bound);
    return at_joint ? std::min(most_bound, dust::bound_at_edge(in_the_open, site.uncertain.edge_penalty)) : in_the_open;
}

void lay_on(Site& site, dust::Holding from, std::size_t surface, std::size_t patch, dust::SizeClass k, Amount amount, dust::Pathway pathway)
{
    Surface& s = site.surfaces[surface];
    const Amount bound = part(amount, bound_share(site, s, is_at_joint(s, patch), k));
    site.ledger.move(from, s.bound(patch, k), k, bound, pathway);
    site.ledger.move(from, s.free(patch, k), k, amount - bound, pathway);
    s.is_cleaned[patch] = 0;
    seep(site, surface, patch, k, amount - bound);
}

void seep(Site& site, std::size_t surface, std::size_t patch, dust::SizeClass k, Amount landed)
{
    Surface& sheet = site.surfaces[surface];
    if (sheet.role != SurfaceRole::sheeting || k == dust::SizeClass::chips) return;
    double share = site.is_sheet_porous ? through_cloth : sheet.is_edge[patch] == 0 ? 0.0 : site.is_sheet_taped ? under_taped_edge : under_loose_edge;
    share *= site.uncertain.handling;
    if (!sheet.is_torn.empty() && sheet.is_torn[patch] != 0) share = std::max(share, through_tear);
    const Amount under = part(landed, std::min(share, most_seeping));
    if (under.is_zero()) return;
    const Spot below = floor_at(site, sheet.zone, sheet.cells[patch]);
    lay_on(site, sheet.free(patch, k), below.surface, below.patch, k, under);
}

void wear_sheeting(Site& site, std::size_t cell)
{
    const Spot spot = site.room().top[cell];
    Surface& sheet = site.surfaces[spot.surface];
    if (sheet.role != SurfaceRole::sheeting) return;
    const double luck = Luck{site.seed, Stream::handling}.uniform(site.luck.next(Stream::handling), 1);
    if (site.is_sheet_porous || luck >= torn_in_a_step * site.uncertain.handling / (sheet.layers * sheet.layers)) return;
    sheet.is_torn.resize(sheet.patches.size(), 0);
    sheet.is_torn[spot.patch] = 1;
    for (const dust::SizeClass k : dust::all_classes()) seep(site, spot.surface, spot.patch, k, sheet.patches[spot.patch].free[k]);
}

void land(Site& site, dust::Holding from, std::size_t zone, std::size_t cell, dust::SizeClass k, Amount amount, dust::Pathway pathway)
{
    const Spot spot = site.zones[zone].top[cell];
    lay_on(site, from, spot.surface, spot.patch, k, amount, pathway);
}

void stick_to_wall(Site& site, dust::Holding from, plan::Point where, Length height, dust::SizeClass k, Amount amount)
{
    const Zone& room = site.room();
    const Length band_height = room.plan.ceiling / 3.0;
    const auto band = static_cast<std::uint8_t>(std::clamp(height / band_height, 0.0, 2.0));
    std::size_t best_surface = 0;
    std::size_t best_patch = 0;
    Length best{std::numeric_limits<double>::max()};
    for (std::size_t s = 0; s < site.surfaces.size(); ++s) {
        const Surface& wall = site.surfaces[s];
        if (wall.role != SurfaceRole::wall) continue;
        for (std::size_t p = 0; p < wall.cells.size(); ++p) {
            if (wall.band[p] != band) continue;
            const Length away = plan::distance(room.raster.center(wall.cells[p]), where);
            if (away < best) best = away, best_surface = s, best_patch = p;
        }
    }
    lay_on(site, from, best_surface, best_patch, k, amount);
}

Amount equal_piece(Amount amount, std::size_t index, std::size_t count)
{
    const auto piece = [&](Picograms whole) {
        const auto n = static_cast<std::int64_t>(count);
        return Picograms{whole.count / n + (static_cast<std::int64_t>(index) < whole.count % n ? 1 : 0)};
    };
    return {piece(amount.dust), piece(amount.lead)};
}

}
