#include "site/looking.hpp"

#include "dust/visibility.hpp"
#include "dust/wipe_shade.hpp"
#include "plan/sections.hpp"
#include "site/cleaning.hpp"
#include "site/landing.hpp"

#include <algorithm>

namespace flapdoor::site {

namespace {

double coverage_of(const dust::Load& load, Area area)
{
    dust::PerClass<Loading> loading;
    for (const dust::SizeClass k : dust::all_classes()) loading[k] = mass(load.free[k].dust) / area;
    return dust::area_coverage(loading);
}

dust::Background background(const Surface& surface)
{
    if (surface.role == SurfaceRole::sheeting || surface.role == SurfaceRole::object_cover) return dust::Background::plastic_film;
    if (surface.is_soft || surface.finish == job::FloorKind::carpet) return dust::Background::carpet;
    return surface.finish == job::FloorKind::wood ? dust::Background::dark_floor : dust::Background::light_floor;
}

/// Blocks of about half a meter: what an eye takes in at a glance.
constexpr std::size_t glance = 5;

}

double coverage(const Surface& surface, std::size_t patch) { return coverage_of(surface.patches[patch], surface.patch_area); }

std::vector<Spot> visible_dust(Site& site, double contrast_light)
{
    std::vector<Spot> seen;
    // People and days differ, not the glances of one look: one draw decides how sharp the eye is this time.
    const double eye = Luck{site.seed, Stream::inspection}.uniform(site.luck.next(Stream::inspection), 0);
    std::vector<std::size_t> looked_at = ledges(site);
    for (std::size_t s = 0; s < site.surfaces.size(); ++s)
        if (site.surfaces[s].role == SurfaceRole::floor && site.surfaces[s].zone == site.work_room) looked_at.push_back(s);
    for (const std::size_t s : looked_at) {
        const Surface& surface = site.surfaces[s];
        const Part bare = bare_part(site, s);
        for (std::size_t first = 0; first < bare.patches.size(); first += glance * glance) {
            const std::size_t last = std::min(first + glance * glance, bare.patches.size());
            dust::Load together;
            for (std::size_t i = first; i < last; ++i) {
                const dust::Load& load = surface.patches[bare.patches[i]];
                for (const dust::SizeClass k : dust::all_classes()) together.free[k] += load.free[k];
            }
            // A chip of half a milligram is one that somebody sees.
            const bool has_chips = mass(together.free[dust::SizeClass::chips].dust) > 0.0005_g;
            const double share = coverage_of(together, surface.patch_area * static_cast<double>(last - first));
            const dust::Background behind = background(surface);
            // Light along a floor shows what lies on it; a pile throws shadows of its own.
            const double chance = dust::seen_probability(share, behind, behind == dust::Background::carpet ? std::max(1.0, contrast_light) : contrast_light);
            if (has_chips || eye < chance) seen.push_back({s, bare.patches[first]});
        }
    }
    return seen;
}

std::vector<Item> items_to_verify(const Site& site, int sections)
{
    std::vector<Item> items;
    for (const std::size_t s : ledges(site)) {
        const Surface& surface = site.surfaces[s];
        if (surface.role == SurfaceRole::sill) {
            const auto sill = std::find_if(site.scenario.sills.begin(), site.scenario.sills.end(), [&](const job::Sill& x) { return x.title == surface.name; });
            Item item;
            item.kind = ItemKind::sill;
            item.name = sill->id.name;
            item.surface = s;
            item.patches = whole(site, s).patches;
            items.push_back(std::move(item));
        }
        if (surface.role == SurfaceRole::counter) {
            const auto counter = std::find_if(site.scenario.counters.begin(), site.scenario.counters.end(), [&](const job::Counter& x) { return x.title == surface.name; });
            const auto count = static_cast<std::size_t>(plan::sections_needed(surface.area()));
            const std::vector<std::size_t> patches = whole(site, s).patches;
            for (std::size_t n = 0; n < count; ++n) {
                Item item;
                item.kind = ItemKind::counter;
                item.name = counter->id.name + (count > 1 ? " " + std::to_string(n + 1) : "");
                item.surface = s;
                item.patches.assign(patches.begin() + static_cast<std::ptrdiff_t>(patches.size() * n / count),
                                    patches.begin() + static_cast<std::ptrdiff_t>(patches.size() * (n + 1) / count));
                items.push_back(std::move(item));
            }
        }
    }
    const Part floor = floor_part(site, job::CleaningPath::toward_door);
    const Surface& surface = site.surfaces[floor.surface];
    if (surface.finish == job::FloorKind::carpet || floor.patches.empty()) return items;
    const Area area = surface.patch_area * static_cast<double>(floor.patches.size());
    const auto count = static_cast<std::size_t>(sections > 0 ? sections : plan::sections_needed(area));
    for (std::size_t n = 0; n < count; ++n) {
        Item item;
        item.kind = ItemKind::floor;
        item.name = "floor " + std::to_string(n + 1);
        item.surface = floor.surface;
        item.patches.assign(floor.patches.begin() + static_cast<std::ptrdiff_t>(floor.patches.size() * n / count),
                            floor.patches.begin() + static_cast<std::ptrdiff_t>(floor.patches.size() * (n + 1) / count));
        items.push_back(std::move(item));
    }
    return items;
}

bool cloth_matches(Site& site, Item& item)
{
    Surface& surface = site.surfaces[item.surface];
    dust::Load gathered;
    const double wet_bound = dust::surface_traits(kind_of(surface)).wet_bound;
    for (const std::size_t p : item.patches) {
        for (const dust::SizeClass k : dust::all_classes()) {
            if (k == dust::SizeClass::chips) continue;
            const Amount free = part(surface.patches[p].free[k], dust::verification_pickup);
            const Amount bound = part(surface.patches[p].bound[k], dust::verification_pickup * wet_bound * 0.2);
            gathered.free[k] += free + bound;
            site.ledger.move(surface.free(p, k), site.cloths.free(k), k, free);
            site.ledger.move(surface.bound(p, k), site.cloths.free(k), k, bound);
        }
    }
    item.wet_until = site.now + site.scenario.drying;
    surface.wet_until = item.wet_until;
    return dust::matches_card(coverage_of(gathered, dust::cloth_face), site.uncertain.card_coverage);
}

}
