#pragma once

#include "quiz/figure.hpp"

#include <optional>
#include <string>

namespace flapdoor::quiz {

/// The number of a figure counted in a unit, `75` for "6 ft 3 in" in `in`. A plain number has no unit, a share `%`.
/// Insists on a unit that measures what the figure does.
std::string number_text(const Figure& figure, const std::string& unit);

/// How many of a unit a difference in SI is: a tolerance has no zero of its own.
double width_in(double si, const std::string& unit);

/// A figure from a number and its unit; nothing when they are none.
std::optional<Figure> figure_from(const std::string& number, const std::string& unit);

}
