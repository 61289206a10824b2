#include "plan/sections.hpp"

#include <cmath>

namespace flapdoor::plan {

std::int64_t hundredths_of_square_foot(Area area)
{
    return static_cast<std::int64_t>(std::nearbyint(area.si / (1.0_ft2).si * 100.0));
}

int sections_needed(Area area)
{
    constexpr std::int64_t limit = 4000;
    const std::int64_t hundredths = hundredths_of_square_foot(area);
    if (hundredths <= 0) return 0;
    return hundredths <= limit ? 1 : static_cast<int>(hundredths / limit + 1);
}

}
