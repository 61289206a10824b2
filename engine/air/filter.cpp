#include "air/filter.hpp"

namespace flapdoor::air {

double filter_efficiency(FilterGrade grade, Length diameter)
{
    struct Bands {
        double below_1, below_3, above_3;
    };
    constexpr std::array<Bands, 4> bands = {{
        {0.0, 0.0, 0.0},
        {0.0, 0.20, 0.70},
        {0.50, 0.85, 0.90},
        {0.9997, 0.9997, 0.9997},
    }};
    const Bands& of = bands[static_cast<std::size_t>(grade)];
    if (diameter < 1.0_um) return of.below_1;
    return diameter < 3.0_um ? of.below_3 : of.above_3;
}

}
