#pragma once

#include "text/units.hpp"

#include <span>
#include <string_view>
#include <vector>

namespace flapdoor::text {

/// One spelling of a unit. SI value = number * times / over, written like the literals of core/quantity.hpp so that both
/// give the same bits. Temperatures have their own rule (units.cpp).
struct Unit {
    std::string_view spelling;
    Kind kind;
    double times = 1.0;
    double over = 1.0;
    bool is_canonical = false;  ///< used when writing; the first of a kind is tried first
    int rank = 0;               ///< 1, 2, 3: may follow a unit of smaller rank in one text, `6 ft 3 in`; 0: stands alone
};

std::span<const Unit> units();

/// Largest magnitude, in SI, that can be meant by a value of the kind.
double largest(Kind kind);

std::vector<std::string_view> spellings(Kind kind);

}
