#pragma once

namespace flapdoor::text {

/// A finite number rounded to that many significant decimal digits, 1 to 17. Independent of the locale.
double round_to_digits(double number, int digits);

}
