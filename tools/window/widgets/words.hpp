#pragma once

#include "window/stage/ui.hpp"

#include <string_view>

namespace flapdoor::window {

/// Text that is only read, wrapped to the width left.
void title(Ui& ui, std::string_view text);
void strong(Ui& ui, std::string_view text);
void words(Ui& ui, std::string_view text);
void aside(Ui& ui, std::string_view text); ///< small, second rank
void rule(Ui& ui);                         ///< a thin line across

enum class Standing : int { plain, good, caution, critical };

/// A word with a sign on a small label: never color alone.
void mark(Ui& ui, Standing standing, std::string_view text);

/// The same drawn anywhere, e.g. on the plan; opaque, so that it reads on any ground.
/// @return the box it took
Box draw_mark(Canvas& canvas, const Ui& ui, Point low, Standing standing, std::string_view text);
Box draw_label(Canvas& canvas, const Ui& ui, Point center, std::string_view text);

}
