#include "site/site.hpp"

#include "core/hash.hpp"
#include "core/insist.hpp"

#include <algorithm>
#include <span>
#include <utility>

namespace flapdoor::site {

namespace {

/// Calls `see(body)` for all that carries dust about, in a fixed order.
void for_each_body(const Site& site, const auto& see)
{
    for (const Worker& worker : site.crew) {
        for (const Shoe& shoe : worker.shoes) see(shoe.sole);
        see(worker.clothes);
    }
    for (const Bag& bag : site.bags) {
        see(bag.content);
        see(bag.skin);
    }
    for (const Body* body : {&site.outdoors, &site.duct, &site.filter, &site.vacuum, &site.cloths, &site.mop_water, &site.tools, &site.tack_pad, &site.store, &site.bundle})
        see(*body);
}

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
    for_each_body(site, [&](const Body& body) { see_load(body.account, body.load); });
}

void add_dust(Fingerprint& print, const Site& site)
{
    const auto add_row = [&](const PerClassAmount& row) { print.add_all(std::span<const Amount>(row.values)); };
    const auto add_load = [&](const dust::Load& load) {
        add_row(load.free);
        add_row(load.bound);
    };
    print.add_word(dust::fingerprint(site.cloud));
    for (const float age : site.cloud.age) print.add(age);
    for (const Zone& zone : site.zones)
        for (const PerClassAmount* row : {&zone.air, &zone.falling, &zone.reaching_walls}) add_row(*row);
    for (const Surface& surface : site.surfaces) print.add_all(std::span<const dust::Load>(surface.patches));
    for_each_body(site, [&](const Body& body) { add_load(body.load); });
    for (std::size_t p = 0; p < dust::pathway_count; ++p) {
        const Amount crossed = total(site.ledger.crossed(static_cast<dust::Pathway>(p)));
        print.add(crossed.dust.count);
        print.add(crossed.lead.count);
    }
    for (const dust::Account& account : site.ledger.accounts()) {
        print.add(account.side);
        add_row(account.old);
    }
}

void add_place(Fingerprint& print, const Site& site)
{
    for (const OpeningState& o : site.openings) {
        for (const bool flag : {o.is_open, o.is_covered, o.is_cover_taped, o.has_sign, o.flap.has_value()}) print.add(flag);
        print.add(o.seam_layers);
        if (!o.flap) continue;
        for (const bool flag : {o.flap->is_taped, o.flap->has_folds, o.flap->has_dowel}) print.add(flag);
        print.add(o.flap->sheets);
        print.add(o.flap->gap.si);
        const FlapState usual{};    // a slit cut as usual adds nothing, so that older hashes still compare
        if (o.flap->slit_length == usual.slit_length && o.flap->slit_foot == usual.slit_foot && !o.flap->is_slit_through) continue;
        print.add(o.flap->slit_length.si);
        print.add(o.flap->slit_foot.si);
        print.add(o.flap->is_slit_through);
    }
    for (const Surface& surface : site.surfaces) {
        print.add(surface.is_there);
        print.add(surface.wet_until.si);
        std::string cleaned(surface.is_cleaned.size(), '0');
        for (std::size_t p = 0; p < cleaned.size(); ++p) cleaned[p] = surface.is_cleaned[p] != 0 ? '1' : '0';
        print.add_text(cleaned);
        for (std::size_t p = 0; p < surface.is_torn.size(); ++p)
            if (surface.is_torn[p] != 0) print.add_word(p);
    }
    for (const Bag& bag : site.bags) {
        print.add_text(bag.id.name);
        print.add(bag.fill);
        print.add(bag.filled.si);
        print.add(bag.is_damp);
        for (const bool flag : {bag.is_heavy_duty, bag.is_closed, bag.is_gooseneck, bag.is_skin_clean, bag.is_out, bag.holds_sheeting}) print.add(flag);
    }
}

void add_people(Fingerprint& print, const Site& site)
{
    for (const Worker& w : site.crew) {
        print.add(w.at.x.si);
        print.add(w.at.y.si);
        print.add(w.zone);
        for (const Shoe& shoe : w.shoes) print.add(shoe.clean_steps);
        print.add(w.next_shoe);
        print.add(w.breathed_dust.si);
        print.add(w.breathed_lead.si);
        for (const bool flag : {w.is_inside, w.is_on_site, w.is_reachable, w.is_trained, w.has_respirator, w.has_coverall, w.has_covers, w.has_gloves, w.has_clean_soles, w.has_clean_clothes}) print.add(flag);
    }
}

void add_verification(Fingerprint& print, const Verification& verification)
{
    for (const Item& item : verification.items) {
        print.add(item.state);
        print.add(item.is_vacuumed_again);
        print.add(item.is_wiped_again);
        print.add(item.second_fail.si);
        print.add(item.wet_until.si);
        print.add(item.patches.size());
    }
    for (const bool flag : {verification.is_inspected, verification.saw_dust, verification.has_passed}) print.add(flag);
    print.add(verification.wet_cloths);
    print.add(verification.dry_cloths);
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
        if (site.ledger.account(a).side == dust::Side::paint || site.ledger.account(a).side == dust::Side::before) continue;
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
    add_dust(print, site);
    add_place(print, site);
    add_people(print, site);
    add_verification(print, site.verification);
    for (const auto flag : {site.is_hvac_running, site.is_sheet_taped, site.is_sheet_porous, site.has_tack_pad, site.is_tack_pad_outside, site.is_checked, site.has_begun}) print.add(flag);
    print.add(site.sheet);
    for (const job::SupplyId& supply : site.staged) print.add_text(supply.name);
    for (const std::string& component : site.disturbed) print.add_text(component);
    for (const auto& [key, times] : site.luck.begun()) {
        print.add_word(key);
        print.add(times);
    }
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

std::size_t floor_of(const Site& site, std::size_t zone)
{
    const auto found = std::find_if(site.surfaces.begin(), site.surfaces.end(), [&](const Surface& s) { return s.role == SurfaceRole::floor && s.zone == zone; });
    insist(found != site.surfaces.end(), "every zone has a floor");
    return static_cast<std::size_t>(found - site.surfaces.begin());
}

Spot floor_at(const Site& site, std::size_t zone, std::size_t cell)
{
    Spot found{floor_of(site, zone), cell};   // a bare floor has one patch per raster cell
    for (std::size_t s = found.surface + 1; s < site.surfaces.size(); ++s) {
        const Surface& surface = site.surfaces[s];
        if (surface.role != SurfaceRole::floor || surface.zone != zone) continue;
        const auto at = std::lower_bound(surface.cells.begin(), surface.cells.end(), cell);
        if (at != surface.cells.end() && *at == cell) found = {s, static_cast<std::size_t>(at - surface.cells.begin())};
    }
    return found;
}

Loading floor_loading(const Site& site, std::size_t zone)
{
    const std::size_t floor = floor_of(site, zone);
    std::vector<std::size_t> bare;
    for (std::size_t cell = 0; cell < site.surfaces[floor].patches.size(); ++cell)
        if (floor_at(site, zone, cell).surface == floor) bare.push_back(cell);
    return lead_loading(site.surfaces[floor], bare);
}

Surface* find_top(Site& site, const std::string& title)
{
    return &known(site.surfaces, title, [](const Surface& s) { return s.role == SurfaceRole::object_top ? s.name : std::string(); });
}
const Surface* find_top(const Site& site, const std::string& title) { return find_top(const_cast<Site&>(site), title); }

std::string cover_name(const std::string& title) { return "cover of " + title; }

Surface* find_cover(Site& site, const std::string& title)
{
    const auto found = std::find_if(site.surfaces.begin(), site.surfaces.end(), [&](const Surface& s) {
        return s.role == SurfaceRole::object_cover && s.is_there && s.name == cover_name(title);
    });
    return found == site.surfaces.end() ? nullptr : &*found;
}
const Surface* find_cover(const Site& site, const std::string& title) { return find_cover(const_cast<Site&>(site), title); }

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
