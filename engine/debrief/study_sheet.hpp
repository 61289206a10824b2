#pragma once

#include "debrief/study.hpp"

#include <cstddef>
#include <string>

namespace flapdoor::debrief {

/// A study as plain text of at most `width` columns: for each plan passes, marks and time, lead by place, ways out, and what
/// moves the result most; plans beside each other. @param width  at least 60; insists
std::string study_sheet(const Study& study, std::size_t width = 80);

}
