#include "dust/load.hpp"

namespace flapdoor::dust {

Amount total(const Load& load)
{
    Amount sum;
    for (const SizeClass k : all_classes()) sum += load.free[k] + load.bound[k];
    return sum;
}

Amount dust_only(const Load& load) { return total(load) - load.free[SizeClass::chips] - load.bound[SizeClass::chips]; }

}
