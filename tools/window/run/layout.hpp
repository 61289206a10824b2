#pragma once

#include "window/base/geometry.hpp"

namespace flapdoor::window {

/// What the middle of a small screen shows; a large one shows plan, section and one of the sheets at once.
enum class Page : int { plan, section, steps, faults, marks, dust, what_if };
inline constexpr int page_count = 7;

/// Where the parts of the screen stand. Empty boxes are parts that have no room of their own; then the tabs lead to them.
struct Layout {
    bool is_wide = true;  ///< plan and sheet side by side
    bool is_tall = true;  ///< the section below the plan
    bool is_roomy = true; ///< full labels in the header and the time bar
    Box header;
    Box plan;
    Box section; ///< with what is happening now; empty when it is a page of its own
    Box tabs;
    Box sheet; ///< steps, faults, marks, dust, what if
    Box time;
};

/// @param screen  in pixels @param scale  of the text, 1 to 2
Layout lay_out(const Box& screen, float scale);

}
