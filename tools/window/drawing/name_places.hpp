#pragma once

#include "window/base/geometry.hpp"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace flapdoor::window {

/// A name on a drawing and where it stands.
struct PlacedName {
    std::string name;  ///< stable, the same in every language: "room/hall", "person/rosa"
    std::string words; ///< as shown
    Box box;
};

/// Room on a drawing for names that must not lie on each other: what is taken, and the first free of several places.
class NamePlaces {
public:
    /// @param window  names stay within it
    explicit NamePlaces(const Box& window) : window_(window) {}

    void take(const Box& box) { taken_.push_back(box); } ///< by something that is no name
    /// The first of `places` that lies in the window and on nothing taken; it is taken from then on. Nothing when none is free.
    std::optional<Box> place(const std::string& name, const std::string& words, std::span<const Box> places);
    bool is_free(const Box& box) const;

    const std::vector<PlacedName>& placed() const { return placed_; }

private:
    Box window_;
    std::vector<Box> taken_;
    std::vector<PlacedName> placed_;
};

/// Places about `center` for a box of that size, the nearer first: rings of eight.
/// @param reach  from the center to the nearest edge of a box on the first ring, pixels
/// @param step   from ring to ring, pixels
std::vector<Box> places_around(Point center, Point size, float reach, float step, int rings);

/// Places for a box of that size within a larger one, its middle first; none when it does not fit.
std::vector<Box> places_within(const Box& whole, Point size);

}
