#include "debrief/side_by_side.hpp"

#include "core/insist.hpp"

#include <algorithm>

namespace flapdoor::debrief {

SideMoment side_moment(const drill::Film& left, const drill::Film& right, Time at)
{
    return {at, {&left.at(at), &right.at(at)}, {at > left.frames.back().at, at > right.frames.back().at}};
}

SideBySide side_by_side(const drill::Film& left, const drill::Film& right, std::size_t count)
{
    insist(count >= 2 && !left.frames.empty() && !right.frames.empty(), "two runs with pictures are seen at two moments at least");
    SideBySide both{std::min(left.frames.front().at, right.frames.front().at), std::max(left.frames.back().at, right.frames.back().at), {}};
    for (std::size_t i = 0; i < count; ++i) {
        const double share = static_cast<double>(i) / static_cast<double>(count - 1);
        both.moments.push_back(side_moment(left, right, i + 1 == count ? both.to : both.from + (both.to - both.from) * share));
    }
    return both;
}

}
