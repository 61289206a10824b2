#pragma once

#include "debrief/report.hpp"

#include <cstddef>
#include <string>

namespace flapdoor::debrief {

/// The debrief as plain text of at most `width` columns, without colors. @param width  at least 60; insists
std::string sheet_text(const Report& report, std::size_t width = 80);

/// Two plans of one drill in two columns: marks, what each rule cost, ways out, loadings. Says so when the runs cannot be
/// compared because scenario, seed or book differ. @param width  at least 60; insists
std::string side_by_side(const Report& a, const Report& b, std::size_t width = 80);

}
