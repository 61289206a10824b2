#pragma once

#include "window/base/picture.hpp"
#include "window/drawing/heat_map.hpp"
#include "window/run/flashlight.hpp"
#include "window/run/story.hpp"
#include "window/run/view_kind.hpp"

#include "dust/visibility.hpp"

#include <optional>
#include <vector>

namespace flapdoor::window {

/// Loadings, ug/ft2, and air, ug/m3, on the one ramp.
inline constexpr HeatScale floor_scale{1.0, 100000.0};
inline constexpr HeatScale air_scale{0.1, 10000.0};

/// Of dust that is seen.
inline constexpr Color grain_color{0x5B, 0x4A, 0x36, 0xFF};

/// Coverage from which an eye notices dust on what lies at a cell of a zone: where half of the looks of the inspection card see it
/// (dust::seen_probability), in the light of the scenario's room or of a flashlight held low, which shows no more on carpet.
double least_seen(const Story& story, const drill::Frame& frame, std::size_t zone, std::size_t cell, dust::Light light = dust::Light::room);

/// Dust that could be seen, as grain: clear below the threshold, denser above it. The same for the same frame.
/// @param fineness  pixels a cell along one side
/// @param beam      a flashlight's: what lies in it shows by its light, on a bright ground
Picture grain_picture(const Story& story, const drill::Frame& frame, std::size_t zone, Color grain, int fineness, const std::optional<Beam>& beam = {});

/// One zone's loadings, as the heat map wants them.
HeatGrid heat_grid(const Story& story, const drill::Frame& frame, std::size_t zone);

/// The dust of all zones as pictures on the shelf, made anew only when the frame or the view changes.
class DustPictures {
public:
    /// @param beam  a flashlight's, in the view of what could be seen
    /// @return  one picture a zone; the shelf keeps them
    const std::vector<PictureId>& of(PictureShelf& shelf, const Story& story, std::size_t frame, ViewKind view, Color grain, const std::optional<Beam>& beam = {});

private:
    struct Key {
        std::size_t frame;
        ViewKind view;
        std::uint64_t edition;
        std::optional<Beam> beam; ///< in this zone only: the others stay when it moves
        friend bool operator==(const Key&, const Key&) = default;
    };
    std::vector<PictureId> ids_;
    std::vector<Key> shown_; ///< [zone]
};

}
