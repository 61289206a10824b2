#pragma once

#include "text/units.hpp"

#include <optional>
#include <string_view>

namespace flapdoor::quiz {

/// What a number counts in.
struct NumberUnit {
    std::optional<text::Kind> kind; ///< nothing: a plain number, or percent
    bool is_percent = false;

    NumberUnit() = default;
    NumberUnit(text::Kind of) : kind(of) {}
    static NumberUnit percent()
    {
        NumberUnit unit;
        unit.is_percent = true;
        return unit;
    }
    friend bool operator==(const NumberUnit&, const NumberUnit&) = default;
};

/// A number as it was written: SI with a unit, a share with `%`, plain without.
struct WrittenNumber {
    NumberUnit unit;
    double si = 0.0;
};

/// The number in a text such as `6 ft`, `75 %`, `4`. A unit that measures two kinds of thing is taken for the first of
/// text::Kind. Nothing when it is no number or the unit is not known.
std::optional<WrittenNumber> number_in(std::string_view text);

/// The same for how far two numbers lie apart: `1 F` is then 5/9 K, not a temperature.
std::optional<WrittenNumber> difference_in(std::string_view text);

/// What a question with a number for an answer holds: the key in SI and how far off is still right.
struct NumberKey {
    NumberUnit unit;
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

/// Marks a typed answer such as `6 ft` or `1.83 m`; any unit of the right kind will do. A plain number is asked for without
/// one; what stands behind it is not minded unless it is a unit: `4 cloths`, but not `4 ft`.
NumberMark mark_number(std::string_view answer, const NumberKey& key);

}
