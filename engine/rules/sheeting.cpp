#include "rules/sheeting.hpp"

#include <algorithm>

namespace flapdoor::rules {

plan::Rect least_sheeting(const plan::Rect& worked, const plan::Rect& up_to) { return plan::intersection(plan::grown(worked, least_reach), up_to); }

bool is_reach_enough(Length reach, Length floor) { return reach >= std::min(least_reach, floor); }

}
