#pragma once

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
std::vector<Part> parts_of(const Site& site, job::Target target, job::CleaningPath path);

/// Level surfaces inside the work area that are there and can be cleaned, high before low, without the floor.
std::vector<std::size_t> ledges(const Site& site);

/// The floor of the work room, cells in cleaning order.
Part floor_part(const Site& site, job::CleaningPath path);

/// Vacuums for an exposure. What a surface gives goes into the vacuum; what its filter lets through goes into the air.
/// @return  area gone over
Area vacuum(Site& site, const Part& part, double minutes_per_square_meter, bool is_hepa, bool has_beater = false);

/// Wipes with damp cloths.
/// @param changes_cloth  a fresh face when the last one is loaded; without it the cloth saturates and smears
Area wipe(Site& site, const Part& part, bool changes_cloth);

/// How a mop is rinsed.
enum class Rinsing { separate_water, same_water };

/// Mops; dirty water brings some of it back.
Area mop(Site& site, const Part& part, Rinsing rinsing, int water_changes);

/// Notes that patches count as cleaned, or that all the work room no longer does.
void mark_cleaned(Site& site, const Part& part);

/// The person walks over a part: a footfall every 0.7 m along it.
void walk_along(Site& site, Worker& who, const Part& part);

/// A team cleans a part. Toward the door people stand on what is still to be cleaned; from the door on they step on what
/// they have just cleaned.
void go_over(Site& site, const std::vector<job::PersonId>& by, const Part& part, job::CleaningPath path, const std::function<Area()>& clean, Time per_square_meter);

/// Is that supply a vacuum whose filter is the last stage and takes all the air?
bool is_hepa(const Site& site, const job::SupplyId& vacuum);

}
