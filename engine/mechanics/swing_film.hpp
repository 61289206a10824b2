#pragma once

#include "mechanics/doorway_section.hpp"
#include "mechanics/flap_swing.hpp"

#include <vector>

namespace flapdoor::mechanics {

/// The section at one moment of a passage; places on the grid of DoorwaySection.
struct SwingFrame {
    std::vector<SectionPoint> first;    ///< slit sheet from its upper edge to its foot; of a taped one the edges of the slit alone
    std::vector<SectionPoint> second;   ///< empty without one
    Length passer{};                    ///< middle of the body
    bool has_torn_loose = false;        ///< the slit sheet's foot by now
};

/// A passage as pictures: what `swing` says of it, and how the sheets hung meanwhile.
struct SwingFilm {
    FlapSwing swing;
    std::vector<SwingFrame> frames;     ///< one each swing_grid, like swing.openings

    Time length() const { return swing_grid * static_cast<double>(frames.size() - 1); }
};

/// The passage that `swing` works out, kept frame by frame. Gives the same figures.
SwingFilm film_swing(const FlapDoor& door, Heading heading, Speed pace = 1.0_mps);

/// The section between two frames of a film, points part of the way. @param at  since the start; kept within the film
SwingFrame frame_at(const SwingFilm& film, Time at);

}
