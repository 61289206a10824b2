#include "dust/slip.hpp"

#include "core/insist.hpp"
#include "core/steady.hpp"

#include <array>
#include <cstddef>

namespace flapdoor::dust {

double slip_correction(Length diameter, Length free_path, SlipSet set)
{
    insist(diameter.si > 0.0 && free_path.si > 0.0, "slip needs a diameter and a free path");
    struct Constants {
        double a, b, c;
    };
    constexpr std::array<Constants, 3> constants = {{{1.165, 0.483, 0.997}, {1.142, 0.558, 0.999}, {1.257, 0.400, 1.10}}};
    const auto [a, b, c] = constants[static_cast<std::size_t>(set)];
    const double knudsen = 2.0 * (free_path / diameter);
    return 1.0 + knudsen * (a + b * steady::exp(-c / knudsen));
}

}
