#include "drill/film.hpp"

#include "core/insist.hpp"
#include "site/looking.hpp"

#include <algorithm>
#include <array>

namespace flapdoor::drill {

namespace {

constexpr double micrograms_per_picogram = 1e-6;

float lead_per_square_foot(const site::Surface& surface, std::size_t patch)
{
    const double micrograms = static_cast<double>(dust::dust_only(surface.patches[patch]).lead.count) * micrograms_per_picogram;
    return static_cast<float>(micrograms / (surface.patch_area / 1.0_ft2));
}

void shoot_floors(const site::Site& site, Frame& frame)
{
    for (const site::Zone& zone : site.zones) {
        std::vector<float> lead(zone.top.size());
        std::vector<float> seen(zone.top.size());
        for (std::size_t cell = 0; cell < zone.top.size(); ++cell) {
            const site::Surface& surface = site.surfaces[zone.top[cell].surface];
            lead[cell] = lead_per_square_foot(surface, zone.top[cell].patch);
            seen[cell] = static_cast<float>(site::coverage(surface, zone.top[cell].patch));
        }
        frame.lead.push_back(std::move(lead));
        frame.seen.push_back(std::move(seen));
    }
    frame.is_sheeted.resize(site.room().top.size());
    for (std::size_t cell = 0; cell < frame.is_sheeted.size(); ++cell) {
        const site::SurfaceRole role = site.surfaces[site.room().top[cell].surface].role;
        frame.is_sheeted[cell] = role == site::SurfaceRole::sheeting || role == site::SurfaceRole::object_cover;
    }
}

void shoot_walls(const site::Site& site, Frame& frame)
{
    constexpr std::array sides{job::WallSide::south, job::WallSide::east, job::WallSide::north, job::WallSide::west}; // as site::build puts them up
    for (const site::Surface& surface : site.surfaces) {
        if (surface.role != site::SurfaceRole::wall || surface.zone != site.work_room) continue;
        WallShot wall{sides.at(frame.walls.size()), static_cast<std::uint8_t>(surface.band.back() + 1), {}};
        for (std::size_t patch = 0; patch < surface.patches.size(); ++patch) wall.lead.push_back(lead_per_square_foot(surface, patch));
        frame.walls.push_back(std::move(wall));
    }
}

void shoot_air(const site::Site& site, Frame& frame, std::size_t most_points)
{
    std::vector<Picograms> lead(site.zones.size());
    for (std::size_t z = 0; z < site.zones.size(); ++z)
        for (const dust::SizeClass k : dust::all_classes()) lead[z] += site.zones[z].air[k].lead;
    const std::size_t every = std::max<std::size_t>(1, site.cloud.count() / std::max<std::size_t>(1, most_points));
    for (std::size_t i = 0; i < site.cloud.count(); ++i) {
        lead[site.work_room] += site.cloud.amount[i].lead;
        if (i % every == 0) frame.points.push_back({site.cloud.x[i], site.cloud.y[i], site.cloud.z[i], site.cloud.size[i]});
    }
    for (std::size_t z = 0; z < site.zones.size(); ++z)
        frame.air_lead.push_back(static_cast<double>(lead[z].count) * micrograms_per_picogram / site.zones[z].volume.si);
}

}

const Frame& Film::at(Time time) const
{
    insist(!frames.empty(), "a film has frames");
    const auto after = std::upper_bound(frames.begin(), frames.end(), time, [](Time t, const Frame& frame) { return t < frame.at; });
    return after == frames.begin() ? frames.front() : *(after - 1);
}

void Camera::watch(const site::Site& site)
{
    // The card in progress is not logged yet, so the log's length is its number.
    if (site.now - last_ >= every_) shoot(site, static_cast<int>(site.log.entries.size()));
}

void Camera::end_card(const site::Site& site) { shoot(site, static_cast<int>(site.log.entries.size()) - 1); }

void Camera::shoot(const site::Site& site, int card)
{
    if (film_.zones.empty()) {
        for (const site::Zone& zone : site.zones) {
            film_.zones.push_back(zone.plan);
            film_.rasters.push_back(zone.raster);
        }
        film_.work_room = site.work_room;
    }
    last_ = site.now;
    Frame frame;
    frame.at = site.now;
    frame.card = card;
    shoot_floors(site, frame);
    shoot_walls(site, frame);
    shoot_air(site, frame, most_points_);
    for (const site::Worker& w : site.crew) frame.people.push_back({w.zone, w.at, w.is_inside, w.has_coverall});
    for (const site::OpeningState& o : site.openings) frame.openings.push_back({o.is_open, o.is_covered, o.flap.has_value(), o.has_sign});
    for (const job::Object& object : site.scenario.objects) frame.is_object_there.push_back(site::find_top(site, object.title)->is_there);
    frame.has_tack_pad = site.has_tack_pad;
    frame.is_hvac_running = site.is_hvac_running;
    frame.has_runner = std::any_of(site.surfaces.begin(), site.surfaces.end(), [](const site::Surface& s) { return s.role == site::SurfaceRole::runner; });
    frame.outside_lead = site.ledger.on(dust::Side::outside).lead;
    film_.frames.push_back(std::move(frame));
}

}
