#pragma once

#include "window/drawing/paper.hpp"
#include "window/run/story.hpp"

namespace flapdoor::window {

/// Somebody between two pictures of the film.
struct Walker {
    PaperPoint at;
    double facing = 0.0; ///< radians, 0 to the east, counterclockwise
    bool has_gear = false;
    bool is_busy = false; ///< named on the card under way
};

/// The site at any time, between two pictures of the film.
struct Moment {
    Time at{};
    std::size_t frame = 0; ///< the last one not after `at`
    const drill::Frame* now = nullptr;
    std::size_t card = 0; ///< entry of the log
    std::vector<Walker> crew;
};

/// @param glides  false: people stand where the last picture shows them
Moment moment_of(const Story& story, Time at, bool glides);

PaperPoint paper(plan::Point p);
PaperBox paper(const plan::Rect& rect);

}
