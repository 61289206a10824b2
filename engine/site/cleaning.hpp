#pragma once

#include "dust/clothing.hpp"
#include "dust/resuspension.hpp"
#include "job/steps/vacuum_surfaces.hpp"
#include "site/site.hpp"

#include <functional>
#include <vector>

namespace flapdoor::site {

/// What cleaning went over.
struct Part {
    std::size_t surface = 0;
    std::vector<std::size_t> patches;
};

/// Every patch of a surface.
Part whole(const Site& site, std::size_t surface);

/// The patches of a surface that lie open to the air: the rest is under something.
Part bare_part(const Site& site, std::size_t surface);

/// What a cleaning target names, in the order of cleaning: high before low. The floor is taken strip by strip.
std::vector<Part> parts_of(const Site& site, job::Target target, job::CleaningPath path, const job::Route& route = {});

/// Level surfaces inside the work area that are there and can be cleaned, high before low, without the floor.
std::vector<std::size_t> ledges(const Site& site);

/// The floor of the work room, cells in cleaning order; without a carpet that lies on part of it.
/// @param route  when one was drawn: only the cells within half a head's width of it, in the order it comes to them
Part floor_part(const Site& site, job::CleaningPath path, const job::Route& route = {});

/// Width of floor that one pass of a mop or floor nozzle along a drawn route takes (16 in; judgment).
inline constexpr Length head_width{0.4};

/// Cells of a raster along a route, each once, in the order the route comes to them. Nobody can stand on blocked ones.
std::vector<std::size_t> cells_along(const plan::Raster& raster, const std::vector<bool>& is_blocked, const job::Route& route);

/// A drawn route goes toward the door when it ends nearer to it than it began; otherwise the card's own word holds.
job::CleaningPath way_of(const Site& site, job::CleaningPath path, const job::Route& route);

/// What is carpet on the floor of the work room: all of it, a part that leaves a bare border, or none.
std::vector<Part> carpet_parts(const Site& site);

/// Share of fine dust that a vacuum blows out again as it draws it in.
double through_vacuum(const Site& site, dust::VacuumKind kind, dust::SizeClass k);
double through_vacuum(const Site& site, const job::SupplyId& vacuum, dust::SizeClass k);

/// How a vacuum is handled.
struct Vacuuming {
    dust::VacuumKind kind = dust::VacuumKind::hepa_sealed;
    double minutes_per_square_meter = 2.5;  ///< above 0
    bool has_beater = false;
    bool crosses = true;                    ///< a second pass across the first reaches the rows that it missed
    bool does_edges = true;                 ///< goes along the edges once more
};

/// Vacuums for an exposure. What a surface gives goes into the vacuum; what its filter lets through, and what the going over
/// stirs up, goes into the air.
/// @return  area gone over
Area vacuum(Site& site, const Part& part, const Vacuuming& how);

/// Wipes with damp cloths.
/// @param changes_cloth  a fresh face when the last one is loaded; without it the cloth saturates and smears
Area wipe(Site& site, const Part& part, bool changes_cloth);

/// Wipes with a dry electrostatic cloth.
void wipe_dry(Site& site, const Part& part);

/// How a mop is rinsed.
enum class Rinsing { separate_water, same_water };

/// Mops, patch after patch in the order of the part: the water takes up what the mop lifts and leaves some of it on every patch
/// that comes later, until it is changed.
Area mop(Site& site, const Part& part, Rinsing rinsing, int water_changes);

/// Notes that patches count as cleaned, or that all the work room no longer does.
void mark_cleaned(Site& site, const Part& part);

/// What somebody who walks over a part stands on.
enum class Footing { still_to_clean, may_be_clean };

/// The person walks over a part: a footfall every 0.7 m along it. Footsteps on cells that are clean for good are measured.
void walk_along(Site& site, Worker& who, const Part& part, Footing footing = Footing::may_be_clean);

/// A team cleans a part. Toward the door people stand on what is still to be cleaned; from the door on they step on what
/// they have just cleaned. Those who clean a floor get dust of it on their clothes: most with a vacuum.
void go_over(Site& site, const std::vector<job::PersonId>& by, const Part& part, job::CleaningPath path, const std::function<Area()>& clean, Time per_square_meter,
             dust::Stirring how = dust::Stirring::working);

/// What a supply is as a vacuum. Anything but a HEPA vacuum counts as an ordinary one.
dust::VacuumKind vacuum_kind(const job::Supply& supply);
dust::VacuumKind vacuum_kind(const Site& site, const job::SupplyId& supply);

}
