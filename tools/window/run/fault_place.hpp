#pragma once

#include "window/drawing/paper.hpp"
#include "window/run/story.hpp"

#include <optional>

namespace flapdoor::window {

/// Where on the plan a fault happened: at the opening, thing, part or sill that its card names, else where its people stood.
std::optional<PaperPoint> place_of(const Story& story, const Happening& happening);

}
