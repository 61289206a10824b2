#pragma once

#include "window/stage/ui.hpp"

#include "debrief/fault_line.hpp"

namespace flapdoor::window {

/// A fault's number in its shape, as on the printed debrief: dark diamond for a critical one, ring for a weighed one,
/// square for what is not weighed. Never by color alone.
/// @param radius  pixels
void draw_fault_sign(Canvas& canvas, const Ui& ui, Point center, float radius, const debrief::FaultLine& fault);

}
