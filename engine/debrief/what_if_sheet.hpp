#pragma once

#include "debrief/report.hpp"

#include <cstddef>
#include <string>

namespace flapdoor::debrief {

/// What each mistake did, for a terminal, in the language spoken; empty for a report without what-ifs.
/// @param width  columns
std::string what_if_sheet(const Report& report, std::size_t width);

}
