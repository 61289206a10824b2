#include "site/breathing.hpp"

#include "site/passing_time.hpp"

#include <algorithm>

namespace flapdoor::site {

namespace {

struct Inhalable {
    Mass dust{}, lead{};

    void add(dust::SizeClass k, Amount amount)
    {
        if (k == dust::SizeClass::chips || amount.is_zero()) return;
        const double share = dust::inhalable_share(dust::typical_diameter(k));
        dust += mass(amount.dust) * share;
        lead += mass(amount.lead) * share;
    }
};

Inhalable in_air(const Site& site, std::size_t zone)
{
    Inhalable sum;
    for (const dust::SizeClass k : dust::all_classes()) sum.add(k, site.zones[zone].air[k]);
    if (zone != site.work_room) return sum;
    dust::PerClass<Amount> young;
    for (std::size_t i = 0; i < site.cloud.count(); ++i) young[site.cloud.size[i]] += site.cloud.amount[i];
    for (const dust::SizeClass k : dust::all_classes()) sum.add(k, young[k]);
    return sum;
}

}

void breathe(Site& site, Time spell)
{
    for (std::size_t z = 0; z < site.zones.size(); ++z) {
        if (std::none_of(site.crew.begin(), site.crew.end(), [&](const Worker& who) { return who.zone == z; })) continue;
        const Inhalable there = in_air(site, z);
        for (Worker& who : site.crew) {
            if (who.zone != z || !who.is_on_site) continue;
            who.breathed_dust += there.dust / site.zones[z].volume * spell;
            who.breathed_lead += there.lead / site.zones[z].volume * spell;
        }
    }
}

void breathe_near(Site& site, const Team& by, std::size_t zone, dust::SizeClass k, Amount puff)
{
    Inhalable close;
    close.add(k, puff);
    for (const job::PersonId& id : by) {
        Worker& who = worker(site, id);
        if (who.zone != zone) continue;
        who.breathed_dust += dust::dose_of_puff(close.dust, dust::closed_room_exchange);
        who.breathed_lead += dust::dose_of_puff(close.lead, dust::closed_room_exchange);
    }
}

void raise_near(Site& site, const Team& by, dust::Holding from, std::size_t zone, dust::SizeClass k, Amount amount)
{
    breathe_near(site, by, zone, k, amount);
    raise_into_air(site, from, zone, k, amount);
}

Exposure exposure_of(const Worker& who) { return {dust::eight_hour_average(who.breathed_dust), dust::eight_hour_average(who.breathed_lead)}; }

}
