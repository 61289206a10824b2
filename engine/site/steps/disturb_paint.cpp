#include "core/insist.hpp"
#include "core/steady.hpp"
#include "dust/apportion.hpp"
#include "dust/emission.hpp"
#include "site/checking.hpp"
#include "site/crossing.hpp"
#include "site/feet.hpp"
#include "site/hands.hpp"
#include "site/landing.hpp"
#include "site/passing_time.hpp"
#include "site/place.hpp"

#include <algorithm>
#include <cmath>

namespace flapdoor::site {

namespace {

constexpr Density film_density = 2000.0_kgpm3;
constexpr Density wall_plaster = 1600.0_kgpm3;
constexpr Length plaster_thickness = 2.0_cm;
constexpr int parcels_per_class = 4;                    // in each tick of work
constexpr double hottest_allowed_kelvin = 866.483;      // 1100 F
constexpr Length tool_reach = 0.3_m;                    // the tool is this far from the wall
constexpr Length fade = 0.5_m, farthest = 1.5_m;        // how far falling dust lands from the work

bool is_machine(job::Technique technique) { return technique == job::Technique::machine_sand; }

struct Work {
    dust::Activity activity;
    double units;           ///< of what the activity is counted by
    double fume = 0.0;      ///< share of the lead of the worked film that goes up as fume
};

Work work_of(const job::Component& component, const job::DisturbPaint& step)
{
    const double area = component.area.si * step.share;
    switch (step.technique) {
        case job::Technique::pry: return {dust::Activity::prying_trim, std::max(1.0, area / 0.2)};
        case job::Technique::remove_window: return {dust::Activity::window_removal, step.share};
        case job::Technique::hand_scrape: return {dust::Activity::dry_scraping, area};
        case job::Technique::hand_sand: return {dust::Activity::dry_hand_sanding, area};
        case job::Technique::machine_sand: return {dust::Activity::power_sanding, area};
        case job::Technique::saw: return {dust::Activity::sawing_trim, area / 0.1};
        case job::Technique::heat_gun:   // lead boils off in earnest only far above the allowed heat (judgment)
            return {dust::Activity::dry_scraping, area * 0.5, step.heat.kelvin >= hottest_allowed_kelvin ? 2e-3 : 0.0};
        case job::Technique::open_flame: return {dust::Activity::dry_scraping, area * 0.5, 1e-2};
        case job::Technique::demolish: return {dust::Activity::plaster_demolition, area};
        case job::Technique::drill: return {dust::Activity::drilling, std::max(1.0, area / 0.1)};
    }
    insist(false, "a technique is one of ten");
    return {};
}

dust::DustControl control_of(const job::DisturbPaint& step)
{
    if (is_machine(step.technique)) return step.has_shroud && step.has_hepa ? dust::DustControl::hepa_shroud : dust::DustControl::none;
    return step.is_misted ? dust::DustControl::misted : dust::DustControl::none;
}

/// Lead in what comes off: that of the film, or of the film and the plaster behind it.
double lead_share(const job::Component& component, const job::DisturbPaint& step)
{
    const Loading film = component.film * film_density;
    const Loading plaster = step.technique == job::Technique::demolish ? plaster_thickness * wall_plaster : Loading{};
    return dust::lead_fraction(component.lead, film + plaster);
}

/// Where falling debris lands: cells within reach of the work, weighted by how far it flies.
struct Fall {
    std::vector<std::size_t> cells;
    std::vector<double> weights;
};

Fall fall_around(const Site& site, plan::Point where)
{
    const plan::Raster& raster = site.room().raster;
    Fall fall;
    for (const std::size_t cell : raster.cells_within({where.x, where.y, {}, {}}, farthest)) {
        const double r = std::max(0.05, plan::distance(where, raster.center(cell)).si);
        fall.cells.push_back(cell);
        fall.weights.push_back(steady::exp(-r / fade.si) / r);   // the distance has density exp(-r/r0): per area divide by r
    }
    return fall;
}

struct Yield {
    dust::PerClass<Amount> cloud, fallen;
};

/// All that one card lets loose, class by class.
Yield yield_of(const job::Component& component, const job::DisturbPaint& step)
{
    const Work work = work_of(component, step);
    const dust::Release release = dust::release(work.activity, control_of(step), work.units);
    const dust::EmissionTraits& traits = dust::emission_traits(work.activity);
    const double lead = lead_share(component, step);
    const dust::PerClass<double> cloud_shares = dust::dust_shares(traits.cloud);
    const dust::PerClass<double> fall_shares = dust::dust_shares(traits.fall);
    const auto amount = [&](Mass dust) { return Amount{picograms(dust), picograms(dust * lead)}; };
    Yield yield;
    for (const dust::SizeClass k : dust::all_classes()) {
        yield.cloud[k] = amount(release.cloud * cloud_shares[k]);
        yield.fallen[k] = amount(k == dust::SizeClass::chips ? release.chips : release.fallen * fall_shares[k]);
    }
    if (work.fume > 0.0) {
        const Mass fume = Mass{component.lead.si * component.area.si * step.share * work.fume};
        yield.cloud[dust::SizeClass::um_0_5] += {picograms(fume * 1.1), picograms(fume)};   // oxide weighs a little more
    }
    return yield;
}

void soil_tools(Site& site, std::size_t cell)
{
    constexpr double touched = 0.02;   // of what lies where the tools lie, in each spell (judgment)
    const Spot spot = site.room().top[cell];
    Surface& surface = site.surfaces[spot.surface];
    for (const dust::SizeClass k : dust::all_classes())
        if (k != dust::SizeClass::chips) site.ledger.move(surface.free(spot.patch, k), site.tools.free(k), k, part(surface.patches[spot.patch].free[k], touched));
}

}

Refusal why_not(const Site& site, const job::DisturbPaint& step, const Team& by)
{
    const job::Component& component = *find_by_id(site.scenario.components, step.component);
    if (component.zone != site.room().plan.id) return component.title + " is not in the work room";
    if (step.technique == job::Technique::remove_window && component.kind != job::ComponentKindOf::window) return component.title + " is not a window";
    return must_be_inside(site, by);
}

Done carry_out(Site& site, const job::DisturbPaint& step, const Team& by)
{
    const job::Component& component = *find_by_id(site.scenario.components, step.component);
    const plan::Rect line = footprint(site.scenario, component);
    const plan::Point center = site.room().raster.rect().center();
    const plan::Point on_wall = line.center();
    const Length away = plan::distance(on_wall, center);
    const double share = away > tool_reach ? tool_reach / away : 0.0;
    const plan::Point where{on_wall.x + (center.x - on_wall.x) * share, on_wall.y + (center.y - on_wall.y) * share};

    site.ledger.move_account(site.tools.account, dust::Side::inside, dust::Pathway::tools);
    if (!site.has_begun) {
        for (const job::PersonId& id : by)   // until now people came and went freely
            if (Worker& who = worker(site, id); !who.is_inside) enter(site, who, false);
        site.has_begun = true;
        site.first_dust = site.now;
        set_state(site, "paint-disturbed", "", true);
    }
    reopen_verification(site);
    const bool shows_dust = is_machine(step.technique) && !(step.has_shroud && step.has_hepa);
    measure(site, "visible-release", component.id.name, job::MeasureKind::truth, shows_dust ? 1.0 : 0.0);

    const Yield yield = yield_of(component, step);
    const Fall fall = fall_around(site, where);
    const auto ticks = static_cast<std::size_t>(std::ceil(whole_seconds(step.time) / tick));
    std::size_t now = 0;
    gather(site, by, where);
    pass_time(site, step.time, {true, [&](Site& s, Time spell) {
        Amount in_hand;   // falling debris passes through no holding of its own; released straight onto what it meets
        for (const dust::SizeClass k : dust::all_classes()) {
            release_cloud(s, {in_hand, s.paint}, true, where, component.height, k, equal_piece(yield.cloud[k], now, ticks), parcels_per_class);
            const Amount falling = equal_piece(yield.fallen[k], now, ticks);
            if (falling.is_zero()) continue;
            const std::vector<Amount> pieces = dust::apportion(falling, fall.weights);
            for (std::size_t i = 0; i < pieces.size(); ++i) {
                const Spot spot = s.room().top[fall.cells[i]];
                Surface& surface = s.surfaces[spot.surface];
                if (pieces[i].is_zero()) continue;
                s.ledger.release(s.paint, surface.free(spot.patch, k), k, pieces[i]);
                seep(s, spot.surface, spot.patch, k, pieces[i]);
            }
        }
        for (const job::PersonId& id : by) {
            Worker& who = worker(s, id);
            shuffle(s, who, where, 1.0_m, 1);
            soil_clothes(s, who, spell);
        }
        soil_tools(s, s.room().raster.cell_at(where));
        ++now;
    }});
    site.last_dust = site.now;
    if (std::find(site.disturbed.begin(), site.disturbed.end(), component.id.name) == site.disturbed.end()) site.disturbed.push_back(component.id.name);
    return {};
}

}
