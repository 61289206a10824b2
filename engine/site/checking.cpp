#include "site/checking.hpp"

#include "site/cleaning.hpp"
#include "site/hands.hpp"
#include "site/looking.hpp"
#include "site/passing_time.hpp"

#include <algorithm>

namespace flapdoor::site {

namespace {

constexpr double counts_pass = 0.0;
constexpr double counts_darker = 1.0;
constexpr double does_not_count = 2.0;
constexpr Time waiting_time = 1.0_h;

void note_result(Site& site, const Item& item, double result)
{
    measure(site, "result", item.name, job::MeasureKind::number, result);
    measure(site, "cloth-area", item.name, job::MeasureKind::area, (site.surfaces[item.surface].patch_area * static_cast<double>(item.patches.size())).si);
}

/// One wipe of one item that is due.
void wipe_item(Site& site, Item& item, const WipeKind& how, bool may_count)
{
    spend(site, item.kind == ItemKind::floor ? job::WipeFloor::takes : job::WipeSill::takes);
    const bool is_second = item.state == ItemState::second_wipe_due;
    const bool may_fold = item.kind == ItemKind::sill && is_second;
    const bool is_valid = may_count && how.is_proper_cloth && (!how.folds_used_cloth || may_fold)
                          && (item.state == ItemState::first_wipe_due || is_second);
    if (!how.folds_used_cloth) ++site.verification.wet_cloths;
    const bool is_match = cloth_matches(site, item);
    if (!is_valid) return note_result(site, item, does_not_count);
    note_result(site, item, is_match ? counts_pass : counts_darker);
    if (is_match) item.state = ItemState::passed;
    else if (is_second) {
        item.state = ItemState::waiting;
        item.second_fail = site.now;
    }
    else {
        item.state = ItemState::reclean_due;
        item.is_vacuumed_again = item.is_wiped_again = false;
    }
    set_state(site, "verified", item.name, item.state == ItemState::passed);
}

/// A wet cloth on what waits for the dry one: not foreseen by the rule and harmless, but the surface is wet again.
void wipe_while_waiting(Site& site, Item& item)
{
    spend(site, item.kind == ItemKind::floor ? job::WipeFloor::takes : job::WipeSill::takes);
    ++site.verification.wet_cloths;
    cloth_matches(site, item);
}

/// For a floor or a counter the whole surface in the work area must be dry, for a sill that sill.
bool is_dry(const Site& site, const Item& item)
{
    if (item.kind == ItemKind::sill) return site.now >= item.wet_until;
    return std::all_of(site.surfaces.begin(), site.surfaces.end(), [&](const Surface& surface) {
        const bool matters = surface.zone == site.work_room && surface.is_there && (surface.role == SurfaceRole::floor || surface.role == SurfaceRole::counter);
        return !matters || site.now >= surface.wet_until;
    });
}

}

Done wipe_items(Site& site, const Team& by, const WipeKind& how, const std::function<bool(const Item&)>& is_chosen)
{
    const bool may_count = is_certified(site, by) && site.verification.is_inspected;
    std::vector<Item> before_list;   // wiped before an inspection passed: a list is needed all the same
    std::vector<Item>& items = site.verification.items.empty() ? before_list : site.verification.items;
    if (items.empty()) before_list = items_to_verify(site, 0);
    bool was_needed = false;
    for (Item& item : items) {
        const bool is_waiting = item.state == ItemState::waiting;
        if (!is_chosen(item) || item.state == ItemState::passed || (is_waiting && !how.is_named)) continue;
        was_needed = true;
        if (is_waiting) {
            wipe_while_waiting(site, item);
            continue;
        }
        wipe_item(site, item, how, may_count);
    }
    const auto sections = std::count_if(items.begin(), items.end(), [](const Item& item) { return item.kind == ItemKind::floor; });
    measure(site, "sections", "", job::MeasureKind::number, static_cast<double>(sections));
    settle_verification(site);
    if (!was_needed) return {false, to_say("nothing is due to be wiped there")};
    return {};
}

Done dry_wipe_items(Site& site, const Team& by, bool is_dry_cloth)
{
    bool was_needed = false;
    for (Item& item : site.verification.items) {
        if (item.state == ItemState::passed || item.state == ItemState::first_wipe_due) continue;
        was_needed = true;
        const bool waits = item.state == ItemState::waiting;
        const Time waited = waits ? site.now - item.second_fail : Time{};   // until the wipe begins
        const bool dry = is_dry(site, item);
        spend(site, job::DryWipe::takes);
        ++site.verification.dry_cloths;
        wipe_dry(site, {item.surface, item.patches});
        measure(site, "waited", item.name, job::MeasureKind::time, waited.si);
        measure(site, "is-dry", item.name, job::MeasureKind::truth, dry ? 1.0 : 0.0);
        const bool counts = waits && waited >= waiting_time && dry && is_dry_cloth && is_certified(site, by);
        note_result(site, item, counts ? counts_pass : does_not_count);
        if (counts) {
            item.state = ItemState::passed;   // no comparison with the card is asked
            set_state(site, "verified", item.name, true);
        }
    }
    settle_verification(site);
    if (!was_needed) return {false, to_say("no surface has failed twice")};
    return {};
}

Done clean_again(Site& site, const Team& by, const job::Supply* vacuum_with, bool wipes)
{
    bool was_needed = false;
    const auto clean_part = [&](const Part& part) {
        was_needed = true;
        constexpr double minutes = 3.0;
        const Surface& surface = site.surfaces[part.surface];
        const bool is_carpet = surface.role == SurfaceRole::floor && surface.finish == job::FloorKind::carpet;
        if (is_carpet && vacuum_with == nullptr) return;   // a carpet is neither mopped nor wiped
        go_over(site, by, part, job::CleaningPath::toward_door, [&] {
            Area area{};
            if (vacuum_with != nullptr) area = vacuum(site, part, {.kind = vacuum_kind(*vacuum_with), .minutes_per_square_meter = minutes, .has_beater = is_carpet});
            if (wipes && !is_carpet) area = surface.role == SurfaceRole::floor ? mop(site, part, Rinsing::separate_water, 0) : wipe(site, part, true);
            return area;
        }, job::ReClean::takes);
    };
    if (site.verification.saw_dust) {
        for (const std::size_t s : ledges(site)) clean_part(bare_part(site, s));
        const Part floor = floor_part(site, job::CleaningPath::toward_door);
        const std::vector<Part> carpets = carpet_parts(site);
        if (carpets.empty() || carpets.front().surface != floor.surface) clean_part(floor);
        for (const Part& carpet : carpets) clean_part(carpet);
        site.verification.saw_dust = false;
    }
    for (Item& item : site.verification.items) {
        if (item.state != ItemState::reclean_due) continue;
        clean_part({item.surface, item.patches});
        item.is_vacuumed_again = item.is_vacuumed_again || vacuum_with != nullptr;
        item.is_wiped_again = item.is_wiped_again || wipes;
        if (item.is_vacuumed_again && item.is_wiped_again) item.state = ItemState::second_wipe_due;
        item.wet_until = site.now + site.scenario.drying;
    }
    if (!was_needed) return {false, to_say("nothing failed and no dust was seen")};
    return {};
}

void divide_floor(Site& site, int sections)
{
    std::vector<Item>& items = site.verification.items;
    const bool has_started = std::any_of(items.begin(), items.end(), [](const Item& item) { return item.kind == ItemKind::floor && item.state != ItemState::first_wipe_due; });
    if (has_started || items.empty()) return;
    std::erase_if(items, [](const Item& item) { return item.kind == ItemKind::floor; });
    for (Item& item : items_to_verify(site, sections))
        if (item.kind == ItemKind::floor) items.push_back(std::move(item));
}

void settle_verification(Site& site)
{
    const std::vector<Item>& items = site.verification.items;
    const bool all_passed = site.verification.is_inspected && std::all_of(items.begin(), items.end(), [](const Item& item) { return item.state == ItemState::passed; });
    if (all_passed == site.verification.has_passed) return;
    site.verification.has_passed = all_passed;
    set_state(site, "passed", "", all_passed);
}

void reopen_verification(Site& site)
{
    for (const Item& item : site.verification.items) set_state(site, "verified", item.name, false);
    site.verification.items.clear();
    site.verification.is_inspected = false;
    set_state(site, "inspection-passed", "", false);
    settle_verification(site);
    for (Surface& surface : site.surfaces) surface.is_cleaned.assign(surface.is_cleaned.size(), 0);
}

}
