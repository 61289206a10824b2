#include "debrief/outcome.hpp"

#include "site/breathing.hpp"
#include "text/language.hpp"

#include <algorithm>

namespace flapdoor::debrief {

using text::to_say_of;

namespace {

Loading dust_loading(const site::Surface& surface)
{
    Picograms dust;
    for (const dust::Load& load : surface.patches) dust += dust::dust_only(load).dust;
    return surface.area() > Area{} ? mass(dust) / surface.area() : Loading{};
}

std::vector<PathwayLine> pathways_of(const dust::Ledger& ledger)
{
    std::vector<PathwayLine> lines;
    Picograms all;
    for (std::size_t p = 1; p < dust::pathway_count; ++p) {
        const auto pathway = static_cast<dust::Pathway>(p);
        if (pathway == dust::Pathway::recovered) continue;
        lines.push_back({pathway, dust::total(ledger.crossed(pathway)), 0.0});
        all += std::max(Picograms{}, lines.back().amount.lead);
    }
    for (PathwayLine& line : lines)
        if (all > Picograms{}) line.share = static_cast<double>(std::max(Picograms{}, line.amount.lead).count) / static_cast<double>(all.count);
    std::stable_sort(lines.begin(), lines.end(), [](const PathwayLine& a, const PathwayLine& b) { return a.amount.lead > b.amount.lead; });
    return lines;
}

}

Outcome outcome(const drill::Run& run)
{
    const site::Site& site = run.site;
    Outcome result;
    result.released = site.ledger.released();
    result.inside = site.ledger.on(dust::Side::inside);
    result.outside = site.ledger.on(dust::Side::outside);
    result.contained = site.ledger.on(dust::Side::contained);
    result.pathways = pathways_of(site.ledger);
    result.took = site.now - site.scenario.start;
    for (const site::Worker& worker : site.crew) result.breathed.push_back({worker.title, site::exposure_of(worker).lead});
    const std::size_t hall = passage_of(site);
    for (std::size_t s = 0; s < site.surfaces.size(); ++s) {
        const site::Surface& surface = site.surfaces[s];
        if (!surface.is_there) continue;
        const SurfaceLine line{s, surface.name, surface.role, surface.zone, surface.area(), s == site::floor_of(site, surface.zone) ? site::floor_loading(site, surface.zone) : site::lead_loading(surface), dust_loading(surface)};
        if (surface.role == site::SurfaceRole::floor && surface.zone == site.work_room) result.floor = std::max(result.floor, line.lead);
        if (surface.role == site::SurfaceRole::floor && surface.zone == hall) result.hall_floor = std::max(result.hall_floor, line.lead);
        if (surface.role == site::SurfaceRole::sill) result.sill = std::max(result.sill, line.lead);
        result.surfaces.push_back(line);
    }
    return result;
}

PathwayLine line_of(const Outcome& outcome, dust::Pathway pathway)
{
    for (const PathwayLine& line : outcome.pathways)
        if (line.pathway == pathway) return line;
    return {pathway, {}, 0.0};
}

std::size_t passage_of(const site::Site& site)
{
    const site::OpeningState& door = site::entrance(site);
    return door.zone == site.work_room ? *door.leads_to : door.zone;
}

int order_of(site::SurfaceRole role)
{
    switch (role) {
        case site::SurfaceRole::floor: return 0;
        case site::SurfaceRole::sill: return 1;
        case site::SurfaceRole::counter: return 2;
        case site::SurfaceRole::object_top: return 3;
        case site::SurfaceRole::wall: return 5;
        default: return 4;
    }
}

std::string_view share_in_words(double share)
{
    if (share > 0.5) return to_say_of("share", "most");
    if (share > 0.2) return to_say_of("share", "much");
    if (share > 0.05) return to_say_of("share", "some");
    if (share >= 0.01) return to_say_of("share", "little");
    return share > 0.0 ? to_say_of("share", "trace") : to_say_of("share", "none");
}

std::string_view said_share(double share) { return text::say_of("share", share_in_words(share)); }

}
