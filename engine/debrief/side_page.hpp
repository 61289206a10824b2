#pragma once

#include "debrief/report.hpp"
#include "drill/film.hpp"

#include <string>

namespace flapdoor::debrief {

/// Two runs of one scenario beside each other on one time line, as a self-contained HTML page: marks, lead outside over the day, floors at
/// the same times. Insists that both films have pictures and that the scenario is one.
std::string side_page(const Report& left, const drill::Film& left_film, const Report& right, const drill::Film& right_film);

}
