#include "quiz/number_answer.hpp"

#include <algorithm>
#include <cmath>

namespace flapdoor::quiz {

namespace {

bool is_bare_number(std::string_view answer)
{
    return !answer.empty() && answer.find_first_not_of("0123456789.,-+ ") == std::string_view::npos && answer.find_first_of("0123456789") != std::string_view::npos;
}

}

NumberMark mark_number(std::string_view answer, const NumberKey& key)
{
    if (is_bare_number(answer)) return NumberMark::no_unit;
    const Result<double> value = text::parse_si(answer, key.kind);
    if (!value) return NumberMark::wrong_kind;
    // 72 in and 6 ft differ in the last bit: turning units into SI rounds.
    const double rounding = 1e-9 * std::fabs(key.si);
    const double allowed = std::max(key.absolute_tolerance, key.relative_tolerance * std::fabs(key.si));
    return std::fabs(*value - key.si) <= allowed + rounding ? NumberMark::right : NumberMark::wrong;
}

}
