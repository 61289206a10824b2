#include "debrief/place_line.hpp"

namespace flapdoor::debrief {

namespace {

Picograms lead_on(const site::Surface& surface)
{
    Picograms lead;
    for (const dust::Load& load : surface.patches) lead += dust::dust_only(load).lead;
    return lead;
}

Picograms lead_on(const site::Body& body) { return dust::dust_only(body.load).lead; }

Picograms lead_in_air(const site::Site& site, std::size_t zone)
{
    const site::Zone& air = site.zones[zone];
    Picograms lead;
    for (const dust::SizeClass k : dust::all_classes()) {
        if (k == dust::SizeClass::chips) continue;
        lead += air.air[k].lead + air.falling[k].lead + air.reaching_walls[k].lead;
    }
    if (zone == site.work_room)
        for (std::size_t i = 0; i < site.cloud.count(); ++i)
            if (site.cloud.size[i] != dust::SizeClass::chips) lead += site.cloud.amount[i].lead;
    return lead;
}

PlaceLine zone_line(const site::Site& site, std::size_t zone)
{
    PlaceLine line{site.zones[zone].plan.title, lead_in_air(site, zone), 0.0, {}, zone == site.work_room};
    for (const site::Surface& surface : site.surfaces) {
        if (surface.zone != zone) continue;
        line.lead += lead_on(surface);
        if (surface.role == site::SurfaceRole::floor) line.floor = site::lead_loading(surface);
    }
    return line;
}

Picograms lead_on_people(const site::Site& site)
{
    Picograms lead;
    for (const site::Worker& worker : site.crew) lead += lead_on(worker.soles) + lead_on(worker.clothes);
    return lead;
}

/// What waits to be sealed: the folded sheeting, and the outside of every bag.
Picograms lead_on_waste(const site::Site& site)
{
    Picograms lead = lead_on(site.bundle);
    for (const site::Bag& bag : site.bags) {
        lead += lead_on(bag.skin);
        if (!bag.is_closed) lead += lead_on(bag.content);
    }
    return lead;
}

}

std::vector<PlaceLine> place_lines(const site::Site& site)
{
    std::vector<PlaceLine> lines;
    for (std::size_t zone = 0; zone < site.zones.size(); ++zone) lines.push_back(zone_line(site, zone));
    lines.push_back({"Ducts and air filter", lead_on(site.duct) + lead_on(site.filter), 0.0, {}, false});
    lines.push_back({"Outdoors", lead_on(site.outdoors), 0.0, {}, false});
    lines.push_back({"On shoes and clothes", lead_on_people(site), 0.0, {}, false});
    lines.push_back({"On tools", lead_on(site.tools), 0.0, {}, false});
    lines.push_back({"On bags, and in waste not closed", lead_on_waste(site), 0.0, {}, false});

    Picograms all;
    for (const PlaceLine& line : lines) all += line.lead;
    if (all > Picograms{})
        for (PlaceLine& line : lines) line.share = static_cast<double>(line.lead.count) / static_cast<double>(all.count);
    return lines;
}

}
