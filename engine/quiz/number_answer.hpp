#pragma once

#include "text/units.hpp"

#include <string_view>

namespace flapdoor::quiz {

/// What a question with a number for an answer holds: the key in SI and how far off is still right.
struct NumberKey {
    text::Kind kind = text::Kind::length;
    double si = 0.0;
    double absolute_tolerance = 0.0;    ///< SI
    double relative_tolerance = 0.0;    ///< share of the key
};

enum class NumberMark {
    right,
    wrong,
    no_unit,        ///< a bare number where a unit is part of the answer
    wrong_kind      ///< a unit of something else, or no number at all
};

/// Marks a typed answer such as `6 ft` or `1.83 m`; any unit of the right kind will do.
NumberMark mark_number(std::string_view answer, const NumberKey& key);

}
