#pragma once

#include "window/base/picture.hpp"
#include "window/drawing/heat_map.hpp"
#include "window/run/story.hpp"
#include "window/run/view_kind.hpp"

#include <optional>
#include <vector>

namespace flapdoor::window {

/// Loadings, ug/ft2, and air, ug/m3, on the one ramp.
inline constexpr HeatScale floor_scale{1.0, 100000.0};
inline constexpr HeatScale air_scale{0.1, 10000.0};

/// Coverage from which an eye notices dust on what lies at a cell of a zone, in the light of an ordinary room.
double least_seen(const Story& story, const drill::Frame& frame, std::size_t zone, std::size_t cell);

/// Dust that could be seen, as grain: clear below the threshold, denser above it. The same for the same frame.
/// @param fineness  pixels a cell along one side
Picture grain_picture(const Story& story, const drill::Frame& frame, std::size_t zone, Color grain, int fineness);

/// One zone's loadings, as the heat map wants them.
HeatGrid heat_grid(const Story& story, const drill::Frame& frame, std::size_t zone);

/// The dust of all zones as pictures on the shelf, made anew only when the frame or the view changes.
class DustPictures {
public:
    /// @return  one picture a zone; the shelf keeps them
    const std::vector<PictureId>& of(PictureShelf& shelf, const Story& story, std::size_t frame, ViewKind view, Color grain);

private:
    struct Key {
        std::size_t frame;
        ViewKind view;
        std::uint64_t edition;
        friend bool operator==(const Key&, const Key&) = default;
    };
    std::vector<PictureId> ids_;
    std::optional<Key> shown_;
};

}
