#include "dust/fan_loss.hpp"

#include <algorithm>

namespace flapdoor::dust {

Rate fan_loss(Rate still)
{
    constexpr Rate most{2.0 / 3600.0};
    return std::min(still, most);
}

}
