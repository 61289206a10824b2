#include "core/insist.hpp"
#include "core/steady.hpp"
#include "dust/apportion.hpp"
#include "dust/clothing.hpp"
#include "dust/emission.hpp"
#include "site/breathing.hpp"
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
constexpr double parcels_per_class = 4.0;               // in each tick of work, at full detail
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

/// This run's draw. Sanding and scraping never take off more than the film.
dust::EmissionDraw draw_of(const Site& site, const job::Component& component, const job::DisturbPaint& step, const Work& work)
{
    dust::EmissionDraw draw{.yield = site.uncertain.yield, .airborne = site.uncertain.airborne, .cloud_median = site.uncertain.cloud_median};
    const bool is_film_only = work.activity == dust::Activity::dry_scraping || work.activity == dust::Activity::dry_hand_sanding || work.activity == dust::Activity::power_sanding;
    if (!is_film_only || work.units <= 0.0) return draw;
    const dust::EmissionTraits& traits = dust::emission_traits(work.activity);
    const Mass film = component.film * film_density * (component.area * step.share);
    const Mass dust{traits.debris_grams.typical * 1e-3 * traits.dust_share.typical * work.units};
    draw.yield = std::min(draw.yield, film / dust);
    return draw;
}

/// All that one card lets loose, class by class.
Yield yield_of(const Site& site, const job::Component& component, const job::DisturbPaint& step)
{
    const Work work = work_of(component, step);
    const dust::EmissionDraw draw = draw_of(site, component, step, work);
    const dust::Release release = dust::release(work.activity, control_of(step), work.units, draw);
    const double lead = std::min(1.0, lead_share(component, step) * site.uncertain.lead_share);
    const dust::PerClass<double> cloud_shares = dust::dust_shares(dust::cloud_sizes(work.activity, draw));
    const dust::PerClass<double> fall_shares = dust::dust_shares(dust::emission_traits(work.activity).fall);
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

/// Parcels of a class let go at one time, and how many ticks of work go into one release: studies take fewer, larger parcels.
struct Packing {
    int parcels;
    std::size_t ticks;
};

Packing packing(double detail)
{
    const double wanted = parcels_per_class * detail;
    return {static_cast<int>(std::max(1.0, std::floor(wanted + 0.5))), static_cast<std::size_t>(std::max(1.0, std::floor(1.0 / wanted + 0.5)))};
}

/// Cells on which the tools lie, an arm's length from the work: as many as their upward surface takes up. What falls there
/// lies on the tools; chips slide off.
std::vector<std::size_t> tool_cells(const Site& site, plan::Point where)
{
    const plan::Raster& raster = site.room().raster;
    const plan::Point center = raster.rect().center();
    constexpr Length arm = 0.6_m;
    const Length away = plan::distance(where, center);
    const double share = away > arm ? arm / away : 0.0;
    const plan::Point there{where.x + (center.x - where.x) * share, where.y + (center.y - where.y) * share};
    std::vector<std::size_t> cells = raster.cells_within({there.x, there.y, {}, {}}, arm);
    std::stable_sort(cells.begin(), cells.end(), [&](std::size_t a, std::size_t b) { return plan::distance(raster.center(a), there) < plan::distance(raster.center(b), there); });
    cells.resize(std::min(cells.size(), static_cast<std::size_t>(std::floor(dust::tool_surface / raster.cell_area() + 0.5))));
    std::sort(cells.begin(), cells.end());
    return cells;
}

/// Debris that falls in one tick, straight from the paint onto what it meets.
void let_fall(Site& site, const Fall& fall, const std::vector<std::size_t>& under_tools, dust::SizeClass k, Amount falling)
{
    if (falling.is_zero()) return;
    const std::vector<Amount> pieces = dust::apportion(falling, fall.weights);
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        if (pieces[i].is_zero()) continue;
        const bool is_on_tool = k != dust::SizeClass::chips && std::binary_search(under_tools.begin(), under_tools.end(), fall.cells[i]);
        if (is_on_tool) {
            site.ledger.release(site.paint, site.tools.free(k), k, pieces[i]);
            continue;
        }
        const Spot spot = site.room().top[fall.cells[i]];
        Surface& surface = site.surfaces[spot.surface];
        const Amount in_cracks = part(pieces[i], bound_share(site, surface, is_at_joint(surface, spot.patch), k));
        site.ledger.release(site.paint, surface.bound(spot.patch, k), k, in_cracks);
        site.ledger.release(site.paint, surface.free(spot.patch, k), k, pieces[i] - in_cracks);
        seep(site, spot.surface, spot.patch, k, pieces[i] - in_cracks);
    }
}

}

Refusal why_not(const Site& site, const job::DisturbPaint& step, const Team& by)
{
    const job::Component& component = *find_by_id(site.scenario.components, step.component);
    if (component.zone != site.room().plan.id) return sentence("{} is not in the work room", component.title);
    if (step.technique == job::Technique::remove_window && component.kind != job::ComponentKindOf::window) return sentence("{} is not a window", component.title);
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
    measure(site, "reach", component.id.name, job::MeasureKind::length, sheeting_reach(site, component).si);
    const bool shows_dust = is_machine(step.technique) && !(step.has_shroud && step.has_hepa);
    measure(site, "visible-release", component.id.name, job::MeasureKind::truth, shows_dust ? 1.0 : 0.0);

    const Yield yield = yield_of(site, component, step);
    const Fall fall = fall_around(site, where);
    const std::vector<std::size_t> under_tools = tool_cells(site, where);
    const Packing packed = packing(site.detail);
    const auto ticks = static_cast<std::size_t>(std::ceil(whole_seconds(step.time) / tick));
    const std::size_t releases = (ticks + packed.ticks - 1) / packed.ticks;
    std::size_t now = 0;
    gather(site, by, where);
    soil_at_work(site, by, where, step.time * 0.5);
    pass_time(site, step.time, {true, [&](Site& s, Time) {
        Amount in_hand;   // the cloud passes through no holding of its own: it is released straight into its parcels
        for (const dust::SizeClass k : dust::all_classes()) {
            breathe_near(s, by, s.work_room, k, equal_piece(yield.cloud[k], now, ticks));
            if (now % packed.ticks == 0)
                release_cloud(s, {in_hand, s.paint}, true, where, component.height, k, equal_piece(yield.cloud[k], now / packed.ticks, releases), packed.parcels);
            let_fall(s, fall, under_tools, k, equal_piece(yield.fallen[k], now, ticks));
        }
        for (const job::PersonId& id : by) {
            Worker& who = worker(s, id);
            shuffle(s, who, where, 1.0_m, 1);
            wear_sheeting(s, s.room().raster.cell_at(who.at));
        }
        ++now;
    }});
    soil_at_work(site, by, where, step.time * 0.5);
    site.last_dust = site.now;
    measure(site, "debris-beyond", component.id.name, job::MeasureKind::truth, has_debris_on_floor(site) ? 1.0 : 0.0);
    if (std::find(site.disturbed.begin(), site.disturbed.end(), component.id.name) == site.disturbed.end()) site.disturbed.push_back(component.id.name);
    return {};
}

}
