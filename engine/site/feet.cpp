#include "site/feet.hpp"

#include "dust/resuspension.hpp"
#include "dust/soles.hpp"
#include "mechanics/floor_walk.hpp"
#include "plan/walking.hpp"
#include "site/landing.hpp"
#include "site/passing_time.hpp"
#include "site/standing_things.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <set>
#include <utility>

namespace flapdoor::site {

namespace {

constexpr Length stride = 0.7_m;

/// Where a foot comes down: its cell and, as a sole is longer than that, the one where the heel stands, on the side that the
/// person comes from or else on the other.
std::vector<std::size_t> footprint(const Zone& zone, std::size_t cell, plan::Point came_from)
{
    const plan::Raster& raster = zone.raster;
    if (raster.cell_area() * 1.5 > dust::sole_contact) return {cell};
    const plan::Point center = raster.center(cell);
    const double east = (came_from.x - center.x).si;
    const double north = (came_from.y - center.y).si;
    const bool is_along_row = std::abs(east) >= std::abs(north);
    const std::size_t place = is_along_row ? raster.column(cell) : raster.row(cell);
    const std::size_t places = is_along_row ? raster.columns() : raster.rows();
    const std::size_t apart = is_along_row ? 1 : raster.columns();
    const bool comes_from_higher = (is_along_row ? east : north) > 0.0;
    for (const bool is_higher : {comes_from_higher, !comes_from_higher}) {
        if (is_higher ? place + 1 >= places : place == 0) continue;
        const std::size_t heel = is_higher ? cell + apart : cell - apart;
        if (!zone.is_blocked[heel]) return {cell, heel};
    }
    return {cell};
}

/// What a step raises from a surface in its present state.
double raised_share(const Site& site, const Surface& surface, dust::SizeClass k)
{
    const dust::SurfaceKind kind = kind_of(surface);
    double share = dust::raised_per_step(k, kind) * site.uncertain.raised;
    if (!dust::surface_traits(kind).is_carpet) share *= dust::fresh_dust_factor.typical;
    if (site.now < surface.wet_until) share *= dust::misted_factor.typical;
    return std::min(1.0, share);
}

/// Dust that feet kick aside rather than raise.
constexpr std::array kicked_classes{dust::SizeClass::um_80, dust::SizeClass::um_160, dust::SizeClass::chips};

/// Loose dust of a cell that a foot can push along: none on carpet, none in the wet.
Picograms pushable(const Site& site, const Zone& zone, std::size_t cell)
{
    const Spot spot = zone.top[cell];
    const Surface& surface = site.surfaces[spot.surface];
    if (zone.is_blocked[cell] || site.now < surface.wet_until || dust::surface_traits(kind_of(surface)).is_carpet) return {};
    Picograms sum;
    for (const dust::SizeClass k : kicked_classes) sum += surface.patches[spot.patch].free[k].dust;
    return sum;
}

/// The cells beside a way where most lies to be kicked, in cell order. One chip stands for each.
std::vector<std::size_t> kicked_cells(const Site& site, const Zone& zone, const std::vector<std::size_t>& path)
{
    constexpr Length aside = 0.15_m;            // feet go this far to either side
    constexpr std::size_t most = 24;            // a passage is to cost a few milliseconds at most
    constexpr Picograms trifle = picograms(1e-6_g);
    std::set<std::size_t> beside;
    for (const std::size_t cell : path) {
        const plan::Point at = zone.raster.center(cell);
        for (const std::size_t near : zone.raster.cells_within({at.x, at.y, {}, {}}, aside)) beside.insert(near);
    }
    std::vector<std::pair<Picograms, std::size_t>> loaded;
    for (const std::size_t cell : beside)
        if (const Picograms there = pushable(site, zone, cell); there > trifle) loaded.emplace_back(there, cell);
    std::sort(loaded.begin(), loaded.end(), [](const auto& a, const auto& b) { return a.first != b.first ? a.first > b.first : a.second < b.second; });
    loaded.resize(std::min(loaded.size(), most));
    std::vector<std::size_t> cells;
    for (const auto& [amount, cell] : loaded) cells.push_back(cell);
    std::sort(cells.begin(), cells.end());
    return cells;
}

void kick(Site& site, const Zone& zone, std::size_t from, std::size_t to)
{
    if (from == to || zone.is_blocked[to]) return;
    const Spot here = zone.top[from];
    const Spot there = zone.top[to];
    for (const dust::SizeClass k : kicked_classes) {
        Surface& surface = site.surfaces[here.surface];
        const Amount moved = part(surface.patches[here.patch].free[k], dust::kicked_share);
        if (!moved.is_zero()) lay_on(site, surface.free(here.patch, k), there.surface, there.patch, k, moved);
    }
}

/// One footstep; what it raises is added to `raised`, which belongs to the air of the zone.
void tread(Site& site, Worker& who, std::size_t cell, PerClassAmount& raised)
{
    const Zone& zone = site.zones[who.zone];
    const std::vector<std::size_t> print = footprint(zone, cell, who.at);
    Shoe& shoe = who.shoes[who.next_shoe];
    who.next_shoe = 1 - who.next_shoe;
    Amount taken;
    Amount given;
    for (const dust::SizeClass k : dust::all_classes()) {
        const Amount left = part(shoe.sole.load.free[k], dust::sole_loss(shoe.clean_steps));
        for (const std::size_t under : print) {
            const Spot spot = zone.top[under];
            Surface& surface = site.surfaces[spot.surface];
            Amount& lying = surface.patches[spot.patch].free[k];
            if (lying.is_zero()) continue;
            const double under_foot = std::min(1.0, dust::sole_contact / (surface.patch_area * static_cast<double>(print.size())));
            site.ledger.move(surface.free(spot.patch, k), {raised[k], zone.air_account}, k, part(lying, raised_share(site, surface, k) * under_foot));
            const double room_on_sole = 1.0 - mass(dust::total(shoe.sole.load).dust) / dust::sole_capacity;
            const Amount up = part(lying, std::clamp(room_on_sole, 0.0, 1.0) * under_foot * dust::sole_pickup(k, dust::SoleKind::smooth, site.uncertain.sole_uptake));
            site.ledger.move(surface.free(spot.patch, k), shoe.sole.free(k), k, up);
            taken += up;
        }
        for (std::size_t i = 0; i < print.size(); ++i) {
            const Amount piece = equal_piece(left, i, print.size());
            if (piece.is_zero()) continue;
            const Spot spot = zone.top[print[i]];
            lay_on(site, shoe.sole.free(k), spot.surface, spot.patch, k, piece);
            given += piece;
        }
    }
    // Dust that has stayed on longest holds best; a floor that gives about as much as it gets starts the count again.
    const bool is_in_dust = taken.dust > Picograms{} && taken.dust + taken.dust >= given.dust;
    shoe.clean_steps = is_in_dust ? 0 : shoe.clean_steps + 1;
    if (who.is_inside && site.has_begun && !site.verification.is_inspected) who.has_clean_soles = false;
    who.at = zone.raster.center(cell);
}

/// Dust that feet whirl up on their way. It hangs about the legs of who walks there: a puff for every few steps.
class Whirl {
public:
    Whirl(Site& site, const Worker& who) : site_(&site), zone_(who.zone) {}

    void step(Worker& who, std::size_t cell)
    {
        tread(*site_, who, cell, raised_);
        at_ = cell;
        if (++steps_ == steps_a_puff) rise();
    }

    /// What was whirled up since the last puff.
    void rise()
    {
        if (steps_ > 0) raise_from_floor(*site_, raised_, zone_, site_->zones[zone_].raster.center(at_));
        steps_ = 0;
    }

private:
    static constexpr int steps_a_puff = 7;      // 5 m of a walk

    Site* site_;
    std::size_t zone_;
    std::size_t at_ = 0;
    int steps_ = 0;
    PerClassAmount raised_;
};

/// Along a way through the dusty room: what feet do there is left to the mechanics of chips and soles.
void walk_through_dust(Site& site, Worker& who, const std::vector<std::size_t>& path)
{
    const Zone& zone = site.zones[who.zone];
    const plan::Raster& raster = zone.raster;
    mechanics::FloorScene scene;
    scene.floor = raster.rect();
    scene.obstacles = standing_things(site, who.zone);
    const std::vector<std::size_t> cells = kicked_cells(site, zone, path);
    const Luck luck{site.seed, Stream::walking};
    const std::uint64_t number = site.luck.next(Stream::walking);
    for (const std::size_t cell : cells) {
        const Draw draw = luck.draw(number, static_cast<std::uint32_t>(cell));
        const plan::Point center = raster.center(cell);
        scene.chips.push_back({{center.x + raster.cell_width() * (unit(draw[0]) - 0.5), center.y + raster.cell_depth() * (unit(draw[1]) - 0.5)}});
    }
    std::vector<plan::Point> way;
    for (const std::size_t cell : path) way.push_back(raster.center(cell));
    Whirl whirl(site, who);
    for (const mechanics::FloorContact& contact : mechanics::walk_over(scene, way)) {
        const std::size_t to = raster.cell_at(contact.to);
        if (contact.kind == mechanics::FloorContactKind::chip_kicked) kick(site, zone, raster.cell_at(contact.from), to);
        if (contact.kind == mechanics::FloorContactKind::foot_down && !zone.is_blocked[to]) whirl.step(who, to);
    }
    whirl.rise();
}

}

void step_on(Site& site, Worker& who, std::size_t cell) { walk_over(site, who, {cell}); }

void walk_over(Site& site, Worker& who, const std::vector<std::size_t>& cells)
{
    Whirl whirl(site, who);
    for (const std::size_t cell : cells) whirl.step(who, cell);
    whirl.rise();
}

void walk_to(Site& site, Worker& who, plan::Point where)
{
    const Zone& zone = site.zones[who.zone];
    const std::vector<std::size_t> path = plan::walk(zone.raster, zone.is_blocked, who.at, where);
    if (path.empty()) return;
    if (who.is_inside && site.has_begun) walk_through_dust(site, who, path);
    else {
        std::vector<std::size_t> cells;
        for (const plan::Point at : plan::footsteps(zone.raster, path, stride)) cells.push_back(zone.raster.cell_at(at));
        cells.erase(cells.begin());     // that foot is on the floor already
        walk_over(site, who, cells);
    }
    who.at = zone.raster.center(path.back());
}

void shuffle(Site& site, Worker& who, plan::Point around, Length radius, int steps)
{
    const Zone& zone = site.zones[who.zone];
    const std::vector<std::size_t> cells = zone.raster.cells_within({around.x, around.y, {}, {}}, radius);
    const Luck luck{site.seed, Stream::walking};
    std::vector<std::size_t> trodden;
    for (int s = 0; s < steps && !cells.empty(); ++s) {
        const auto pick = static_cast<std::size_t>(luck.uniform(site.luck.next(Stream::walking), 0) * static_cast<double>(cells.size()));
        const std::size_t cell = cells[std::min(pick, cells.size() - 1)];
        if (!zone.is_blocked[cell]) trodden.push_back(cell);
    }
    walk_over(site, who, trodden);
}

}
