#pragma once

#include "debrief/report.hpp"

#include <string>

namespace flapdoor::debrief {

/// The debrief as one self-contained HTML page, in English: no script, nothing from elsewhere, prints on letter and A4.
std::string page(const Report& report);

/// The trainee's sheet: one page of letter or A4 paper.
std::string trainee_page(const Report& report);

}
