#include "rules/cloths.hpp"

#include "core/insist.hpp"

#include <algorithm>

namespace flapdoor::rules {

ClothCount count_cloths(const std::vector<ItemHistory>& items)
{
    ClothCount count;
    for (const ItemHistory& item : items) {
        insist(item.failures >= 0 && item.failures <= 2, "an item fails at most twice");
        insist(!item.folded_cloth || (item.is_sill && item.failures > 0), "only a sill that failed is wiped with a folded cloth");
        const int wipes = item.failures == 0 ? 1 : 2;
        count.wet_wipes += wipes;
        count.wet_cloths += wipes - (item.folded_cloth ? 1 : 0);
        count.dry_cloths += item.failures == 2 ? 1 : 0;
    }
    return count;
}

Time earliest_dry_wipe(Time second_failure, Time dry) { return std::max(second_failure + 1.0_h, dry); }

}
