#pragma once

#include "debrief/fault_line.hpp"
#include "text/markup.hpp"
#include "text/svg.hpp"

#include <string>

namespace flapdoor::debrief {

/// The sign of a fault, told by its shape and its number, never by color alone: a dark diamond for a critical one, a ring
/// for a weighed one, a square for what is not weighed.
text::Element fault_sign(const FaultLine& fault, text::svg::Point center);

/// The same as a small drawing that stands in a line of text.
text::Element inline_fault_sign(const FaultLine& fault);

/// `Critical fault 3`, `Fault 3`, `Consequence 3`, `Advice 3`.
std::string name_of(const FaultLine& fault);

}
