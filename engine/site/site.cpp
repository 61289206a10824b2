#include "site/site.hpp"

#include "core/hash.hpp"
#include "core/insist.hpp"

#include <algorithm>
#include <utility>

namespace flapdoor::site {

namespace {

/// Calls `see(account, class, amount)` for every amount held anywhere on the site, in a fixed order.
void for_each_held(const Site& site, const auto& see)
{
    const auto see_load = [&](dust::AccountId account, const dust::Load& load) {
        for (const dust::SizeClass k : dust::all_classes()) {
            see(account, k, load.free[k]);
            see(account, k, load.bound[k]);
        }
    };
    for (const Zone& zone : site.zones)
        for (const dust::SizeClass k : dust::all_classes()) see(zone.air_account, k, zone.air[k] + zone.falling[k] + zone.reaching_walls[k]);
    for (std::size_t i = 0; i < site.cloud.count(); ++i) see(site.room().air_account, site.cloud.size[i], site.cloud.amount[i]);
    for (const Surface& surface : site.surfaces)
        for (const dust::Load& load : surface.patches) see_load(surface.account, load);
    for (const Worker& worker : site.crew) {
        see_load(worker.soles.account, worker.soles.load);
        see_load(worker.clothes.account, worker.clothes.load);
    }
    for (const Bag& bag : site.bags) {
        see_load(bag.content.account, bag.content.load);
        see_load(bag.skin.account, bag.skin.load);
    }
    for (const Body* body : {&site.outdoors, &site.duct, &site.filter, &site.vacuum, &site.cloths, &site.mop_water, &site.tools, &site.tack_pad, &site.store, &site.bundle})
        see_load(body->account, body->load);
}

template <class Things, class IdOf>
auto& known(Things& things, const IdOf& id, const auto& id_of)
{
    const auto found = std::find_if(things.begin(), things.end(), [&](const auto& thing) { return id_of(thing) == id; });
    insist(found != things.end(), "a checked plan names things that exist");
    return *found;
}

}

void audit(const Site& site)
{
    std::vector<dust::PerClass<Amount>> held(site.ledger.accounts().size());
    for_each_held(site, [&](dust::AccountId account, dust::SizeClass k, Amount amount) {
        insist(amount.dust.count >= 0 && amount.lead.count >= 0, "nothing holds less than nothing");
        held.at(account)[k] += amount;
    });
    for (dust::AccountId a = 0; a < held.size(); ++a) {
        if (site.ledger.account(a).side == dust::Side::paint) continue;
        for (const dust::SizeClass k : dust::all_classes())
            insist(held[a][k] == site.ledger.account(a).balance[k], "what an account says is what is really held");
    }
    insist(site.ledger.closes(), "the ledger closes to 0 pg");
}

std::uint64_t fingerprint(const Site& site)
{
    Fingerprint print;
    print.add(site.seed);
    print.add(site.now.si);
    print.add_word(dust::fingerprint(site.cloud));
    for_each_held(site, [&](dust::AccountId account, dust::SizeClass k, Amount amount) {
        if (amount.is_zero()) return;
        print.add_word(account * dust::class_count + static_cast<std::size_t>(k));
        print.add(amount.dust.count);
        print.add(amount.lead.count);
    });
    for (std::size_t p = 0; p < dust::pathway_count; ++p) {
        const Amount crossed = total(site.ledger.crossed(static_cast<dust::Pathway>(p)));
        print.add(crossed.dust.count);
        print.add(crossed.lead.count);
    }
    for (const OpeningState& o : site.openings) {
        print.add(o.is_open);
        print.add(o.is_covered);
        print.add(o.is_cover_taped);
        print.add(o.seam_layers);
        print.add(o.flap.has_value());
    }
    for (const Worker& w : site.crew) {
        print.add(w.at.x.si);
        print.add(w.at.y.si);
        print.add(w.zone);
        print.add(w.clean_steps);
    }
    for (const Item& item : site.verification.items) print.add(item.state);
    print.add(site.verification.wet_cloths);
    print.add(site.draws);
    return print.value();
}

OpeningState& opening(Site& site, const job::OpeningId& id)
{
    return known(site.openings, id, [](const OpeningState& o) -> const auto& { return o.plan.id; });
}
const OpeningState& opening(const Site& site, const job::OpeningId& id)
{
    return known(site.openings, id, [](const OpeningState& o) -> const auto& { return o.plan.id; });
}
Worker& worker(Site& site, const job::PersonId& id) { return known(site.crew, id, [](const Worker& w) -> const auto& { return w.id; }); }
const Worker& worker(const Site& site, const job::PersonId& id) { return known(site.crew, id, [](const Worker& w) -> const auto& { return w.id; }); }

Bag* find_bag(Site& site, const job::BagId& id)
{
    const auto found = std::find_if(site.bags.begin(), site.bags.end(), [&](const Bag& bag) { return bag.id == id; });
    return found == site.bags.end() ? nullptr : &*found;
}
const Bag* find_bag(const Site& site, const job::BagId& id) { return find_bag(const_cast<Site&>(site), id); }

Surface* find_top(Site& site, const std::string& title)
{
    return &known(site.surfaces, title, [](const Surface& s) { return s.role == SurfaceRole::object_top ? s.name : std::string(); });
}
const Surface* find_top(const Site& site, const std::string& title) { return find_top(const_cast<Site&>(site), title); }

const job::Supply* find_supply(const Site& site, const job::SupplyId& id) { return find_by_id(site.scenario.supplies, id); }

void measure(Site& site, std::string name, std::string object, job::MeasureKind kind, double value)
{
    site.measured.push_back({std::move(name), std::move(object), kind, value});
}

void set_state(Site& site, const std::string& state, const std::string& object, bool holds)
{
    if (job::holds(site.log, state, object, site.now) != holds) site.log.states.push_back({site.now, state, object, holds});
}

const OpeningState& entrance(const Site& site)
{
    const OpeningState* best = nullptr;
    for (const OpeningState& o : site.openings) {
        if (o.plan.kind != job::OpeningKindOf::door || !o.leads_to) continue;
        const bool touches_room = o.zone == site.work_room || *o.leads_to == site.work_room;
        const std::size_t beyond = o.zone == site.work_room ? *o.leads_to : o.zone;
        if (!touches_room) continue;
        if (o.flap) return o;   // where people hung the flap is where they pass
        if (best == nullptr && site.zones[beyond].plan.role == job::ZoneRole::passage) best = &o;
    }
    insist(best != nullptr, "a checked scenario has a door from the work room to a passage");
    return *best;
}

}
