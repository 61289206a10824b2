#include "dust/drag.hpp"

#include "core/insist.hpp"
#include "core/steady.hpp"

#include <numbers>

namespace flapdoor::dust {

double drag_coefficient(double reynolds)
{
    insist(reynolds > 0.0 && reynolds <= 1500.0, "the drag curve covers Reynolds numbers up to 1500");
    const double w = steady::log(reynolds) / std::numbers::ln10;
    if (reynolds <= 20.0) return 24.0 / reynolds * (1.0 + 0.1315 * steady::pow(reynolds, 0.82 - 0.05 * w));
    if (reynolds <= 260.0) return 24.0 / reynolds * (1.0 + 0.1935 * steady::pow(reynolds, 0.6305));
    return steady::pow(10.0, 1.6435 - 1.1242 * w + 0.1558 * w * w);
}

double drag_coefficient_schiller_naumann(double reynolds)
{
    insist(reynolds > 0.0 && reynolds <= 800.0, "the short drag form covers Reynolds numbers up to 800");
    return 24.0 / reynolds * (1.0 + 0.15 * steady::pow(reynolds, 0.687));
}

}
