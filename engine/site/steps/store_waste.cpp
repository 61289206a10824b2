#include "site/hands.hpp"

#include <algorithm>

namespace flapdoor::site {

Refusal why_not(const Site& site, const job::StoreWaste&, const Team&)
{
    if (std::none_of(site.bags.begin(), site.bags.end(), [](const Bag& bag) { return bag.is_out; })) return to_say("no waste has been carried out yet");
    return std::nullopt;
}

Done carry_out(Site& site, const job::StoreWaste&, const Team&)
{
    spend(site, job::StoreWaste::takes);
    return {};
}

}
