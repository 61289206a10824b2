#include "air/passage.hpp"

#include "core/steady.hpp"

#include <numbers>

namespace flapdoor::air {

Volume passage_volume(Volume still, Speed inward)
{
    if (inward.si <= 0.0) return still;
    return still * steady::exp(-(inward / sheltering_speed));
}

Volume swept_volume(Length leaf_width, Length leaf_height) { return leaf_width * leaf_width * leaf_height * (std::numbers::pi / 4.0); }

}
