#pragma once

#include "debrief/study.hpp"

#include <string>

namespace flapdoor::debrief {

/// A study as the text of an .svg file that stands alone: bands on logarithmic axes with their units, a row a place and plan,
/// plans beside each other; lead by surface, lead that got out by pathway. Says how many runs are behind it and what it is not.
std::string study_picture(const Study& study);

}
