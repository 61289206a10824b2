#include "dust/soles.hpp"

#include "core/insist.hpp"

namespace flapdoor::dust {

double sole_loss(int clean_steps)
{
    insist(clean_steps >= 0, "steps are counted from none");
    return 1.0 / (clean_steps + 3.68);
}

double sole_remaining(int clean_steps)
{
    insist(clean_steps >= 0, "steps are counted from none");
    return 2.68 / (clean_steps + 2.68);
}

double uptake_weight(SizeClass size, SoleKind kind)
{
    if (size == SizeClass::chips) return kind == SoleKind::treaded ? 0.1 : 0.0;
    if (size >= SizeClass::um_160) return 0.3;
    return size >= SizeClass::um_40 ? 0.7 : 1.0;
}

double sole_pickup(SizeClass size, SoleKind kind, double equilibrium)
{
    insist(equilibrium >= 0.0 && equilibrium <= 1.0, "a sole takes no more than lies there");
    // A tread holds its share of the chips outright: they do not come and go with each step.
    if (size == SizeClass::chips) return uptake_weight(size, kind);
    return equilibrium * sole_loss(0) * uptake_weight(size, kind);
}

}
