#pragma once

#include "window/base/picture.hpp"

struct ImDrawData;

namespace flapdoor::window {

/// Paints a frame by the processor, without display or graphics card: for tests and for pictures in documents. Slow,
/// tens of milliseconds a screen.
Picture painted(const ImDrawData& frame, const PictureShelf& pictures, Color background);

}
