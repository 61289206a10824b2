#include "site/landing.hpp"

#include "core/insist.hpp"
#include "site/place.hpp"

#include <algorithm>
#include <limits>

namespace flapdoor::site {

namespace {

// Share of fresh dust that gets under sheeting: judgment, no data found; a band of ten either way.
constexpr double under_taped_edge = 0.01;
constexpr double under_loose_edge = 0.10;
constexpr double through_cloth = 0.05;

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

void lay_on(Site& site, dust::Holding from, std::size_t surface, std::size_t patch, dust::SizeClass k, Amount amount, dust::Pathway pathway)
{
    Surface& s = site.surfaces[surface];
    const double bound_share = k == dust::SizeClass::chips ? 0.0 : dust::surface_traits(kind_of(s)).bound_share.typical;
    const Amount bound = part(amount, bound_share);
    site.ledger.move(from, s.bound(patch, k), k, bound, pathway);
    site.ledger.move(from, s.free(patch, k), k, amount - bound, pathway);
    s.is_cleaned[patch] = 0;
    seep(site, surface, patch, k, amount - bound);
}

void seep(Site& site, std::size_t surface, std::size_t patch, dust::SizeClass k, Amount landed)
{
    Surface& sheet = site.surfaces[surface];
    if (sheet.role != SurfaceRole::sheeting || k == dust::SizeClass::chips) return;
    const double share = site.is_sheet_porous ? through_cloth : sheet.is_edge[patch] == 0 ? 0.0 : site.is_sheet_taped ? under_taped_edge : under_loose_edge;
    const Amount under = part(landed, share);
    if (under.is_zero()) return;
    const std::size_t floor = floor_of(site, sheet.zone);
    lay_on(site, sheet.free(patch, k), floor, sheet.cells[patch], k, under);   // a floor has one patch per raster cell
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

void spread_over_floor(Site& site, dust::Holding from, std::size_t zone, dust::SizeClass k, Amount amount, dust::Pathway pathway)
{
    const std::size_t cells = site.zones[zone].top.size();
    for (std::size_t cell = 0; cell < cells; ++cell) {
        // The few picograms left over by the division fall on other cells each time.
        const Amount piece = equal_piece(amount, (cell + site.draws) % cells, cells);
        if (!piece.is_zero()) land(site, from, zone, cell, k, piece, pathway);
    }
    ++site.draws;
}

void spread_over_walls(Site& site, dust::Holding from, dust::SizeClass k, Amount amount)
{
    std::size_t patches = 0;
    for (const Surface& wall : site.surfaces)
        if (wall.role == SurfaceRole::wall) patches += wall.patches.size();
    std::size_t index = 0;
    for (std::size_t s = 0; s < site.surfaces.size(); ++s) {
        if (site.surfaces[s].role != SurfaceRole::wall) continue;
        for (std::size_t p = 0; p < site.surfaces[s].patches.size(); ++p, ++index) {
            const Amount piece = equal_piece(amount, index, patches);
            if (!piece.is_zero()) lay_on(site, from, s, p, k, piece);
        }
    }
}

}
