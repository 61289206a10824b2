#include "debrief/place_line.hpp"

#include "text/language.hpp"

namespace flapdoor::debrief {

namespace {

/// What the job made of it: old dust that lay there before is nobody's doing.
Picograms lead_in(const site::Site& site, dust::AccountId account)
{
    const dust::PerClass<Amount> made = site.ledger.account(account).from_work();
    Picograms lead;
    for (const dust::SizeClass k : dust::all_classes())
        if (k != dust::SizeClass::chips) lead += made[k].lead;
    return lead;
}

Picograms lead_on(const site::Site& site, const site::Body& body) { return lead_in(site, body.account); }

PlaceLine zone_line(const site::Site& site, std::size_t zone)
{
    PlaceLine line{site.zones[zone].plan.title, lead_in(site, site.zones[zone].air_account), 0.0, true, zone == site.work_room};
    for (const site::Surface& surface : site.surfaces)
        if (surface.zone == zone) line.lead += lead_in(site, surface.account);
    return line;
}

Picograms lead_on_people(const site::Site& site)
{
    Picograms lead;
    for (const site::Worker& worker : site.crew) lead += lead_on(site, worker.shoes[0].sole) + lead_on(site, worker.clothes);
    return lead;
}

/// What waits to be sealed: the folded sheeting, and the outside of every bag.
Picograms lead_on_waste(const site::Site& site)
{
    Picograms lead = lead_on(site, site.bundle);
    for (const site::Bag& bag : site.bags) {
        lead += lead_on(site, bag.skin);
        if (!bag.is_closed) lead += lead_on(site, bag.content);
    }
    return lead;
}

}

std::vector<PlaceLine> place_lines(const site::Site& site)
{
    std::vector<PlaceLine> lines;
    for (std::size_t zone = 0; zone < site.zones.size(); ++zone) lines.push_back(zone_line(site, zone));
    lines.push_back({std::string(text::to_say("Ducts and air filter")), lead_on(site, site.duct) + lead_on(site, site.filter), 0.0, false, false});
    lines.push_back({std::string(text::to_say("Outdoors")), lead_on(site, site.outdoors), 0.0, false, false});
    lines.push_back({std::string(text::to_say("On shoes and clothes")), lead_on_people(site), 0.0, false, false});
    lines.push_back({std::string(text::to_say("On tools")), lead_on(site, site.tools), 0.0, false, false});
    lines.push_back({std::string(text::to_say("On bags, and in waste not closed")), lead_on_waste(site), 0.0, false, false, true});

    Picograms all;
    for (const PlaceLine& line : lines) all += line.lead;
    if (all > Picograms{})
        for (PlaceLine& line : lines) line.share = static_cast<double>(line.lead.count) / static_cast<double>(all.count);
    return lines;
}

}
