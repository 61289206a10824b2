#pragma once

#include "dust/size_class.hpp"
#include "job/ids.hpp"
#include "plan/raster.hpp"
#include "site/site.hpp"

#include <cstdint>
#include <string>
#include <vector>

namespace flapdoor::drill {

/// A person as a picture shows him.
struct PersonShot {
    std::size_t zone = 0;
    plan::Point at;
    bool is_inside = true;
    bool has_gear = false;
};

/// An opening as a picture shows it.
struct OpeningShot {
    bool is_open = false, is_covered = false, has_flap = false, has_sign = false;
};

/// A wall of the work room as a picture shows it.
struct WallShot {
    job::WallSide wall = job::WallSide::south;
    std::uint8_t bands = 0;
    std::vector<float> lead;    ///< [band][column] ug/ft2; band 0 lowest, columns from west or south
};

/// One airborne parcel: place in meters from the work room's south-west floor corner.
struct PointShot {
    float x = 0, y = 0, z = 0;
    dust::SizeClass size = dust::SizeClass::um_10;
};

/// The site at one moment, as far as it can be drawn.
struct Frame {
    Time at{};
    int card = 0;                           ///< the card in progress
    std::vector<std::vector<float>> lead;   ///< [zone][raster cell] lead lying on what is open to the air, ug/ft2
    std::vector<std::vector<float>> seen;   ///< [zone][raster cell] share of the cell that free dust hides: what an eye could see
    std::vector<WallShot> walls;            ///< of the work room: south, east, north, west
    std::vector<double> air_lead;           ///< [zone] lead in the air, ug/m3, parcels included
    std::vector<PointShot> points;
    std::vector<PersonShot> people;         ///< in the order of the crew
    std::vector<OpeningShot> openings;      ///< in the order of the scenario
    std::vector<std::uint8_t> is_sheeted;   ///< [cell of the work room] sheeting or a cover lies there
    std::vector<std::uint8_t> is_object_there;  ///< in the order of the scenario's objects
    bool has_tack_pad = false;
    bool is_hvac_running = false;
    bool has_runner = false;
    Picograms outside_lead;                 ///< all lead outside the work area so far
};

/// A run as pictures: a frame every so often, and one at the end of each card.
struct Film {
    std::vector<job::Zone> zones;
    std::vector<plan::Raster> rasters;      ///< [zone]
    std::size_t work_room = 0;
    std::vector<Frame> frames;              ///< in order of time

    /// The last frame not after a time; the first when the time is earlier.
    const Frame& at(Time time) const;
};

/// Watches a run and keeps frames. Give `watch` and `end_card` to RunOptions.
class Camera {
public:
    /// @param every  shortest site time between frames
    explicit Camera(Time every = 30.0_s, std::size_t most_points = 4000) : every_(every), most_points_(most_points) {}

    void watch(const site::Site& site);
    void end_card(const site::Site& site);
    Film take_film() { return std::move(film_); }

private:
    void shoot(const site::Site& site, int card);

    Time every_;
    std::size_t most_points_;
    Time last_{-1e9};
    Film film_;
};

}
