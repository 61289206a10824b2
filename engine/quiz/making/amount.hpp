#pragma once

#include "quiz/figure.hpp"
#include "quiz/phrase.hpp"

namespace flapdoor::quiz {

/// A figure that a generator worked out: as a bank would have it, and as people read it.
struct Amount {
    Figure figure;
    Phrase shown;
};

/// How a figure is written down; SI in, shares for percent, seconds since midnight for the clock.
using AsAmount = Amount (*)(double);

Amount as_count(double number);
Amount as_length(double meters);
Amount as_area(double square_meters);           ///< whole square feet where it is one, else a tenth
Amount as_time(double seconds);
Amount as_rough_time(double seconds);           ///< two significant digits
Amount as_clock(double seconds);
Amount as_loading(double kilograms_per_square_meter);
Amount as_concentration(double kilograms_per_cubic_meter);
Amount as_plain_meters(double meters);          ///< metric alone: "3.05 m"
Amount as_plain_square_meters(double square_meters);
Amount as_celsius(double kelvin);

}
