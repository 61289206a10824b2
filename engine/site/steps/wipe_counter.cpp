#include "site/checking.hpp"
#include "site/hands.hpp"

#include <algorithm>

namespace flapdoor::site {

Refusal why_not(const Site& site, const job::WipeCounter& step, const Team& by)
{
    return first_of({must_be_inside(site, by), must_have(site, step.cloth, {job::SupplyKindOf::cloth, job::SupplyKindOf::dry_cloth, job::SupplyKindOf::rag}, to_say("for a verification wipe")), must_have_card(site)});
}

namespace {

std::size_t surface_of(const Site& site, const job::CounterId& id)
{
    const job::Counter& counter = *find_by_id(site.scenario.counters, id);
    const auto found = std::find_if(site.surfaces.begin(), site.surfaces.end(), [&](const Surface& s) { return s.role == SurfaceRole::counter && s.name == counter.title; });
    return static_cast<std::size_t>(found - site.surfaces.begin());
}

}

Done carry_out(Site& site, const job::WipeCounter& step, const Team& by)
{
    WipeKind how;
    how.is_proper_cloth = kind_of(site, step.cloth) == job::SupplyKindOf::cloth;
    how.is_named = step.section != 0;
    const std::size_t counter = surface_of(site, step.counter);
    const std::string section = " " + std::to_string(step.section);
    return wipe_items(site, by, how, [&](const Item& item) {
        if (item.kind != ItemKind::counter || item.surface != counter) return false;
        const bool is_whole = item.name == step.counter.name;   // a small counter is one section and carries no number
        return step.section == 0 || (is_whole ? step.section == 1 : item.name == step.counter.name + section);
    });
}

}
