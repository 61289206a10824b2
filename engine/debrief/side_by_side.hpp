#pragma once

#include "drill/film.hpp"

#include <array>
#include <vector>

namespace flapdoor::debrief {

/// Two runs at one time of day. Refers to the films, which must outlive it.
struct SideMoment {
    Time at{};
    std::array<const drill::Frame*, 2> frames{};    ///< the last picture of each not after the time; its first when it begins later
    std::array<bool, 2> has_ended{};                ///< that run was over by then
};

/// Two runs on one time line. Refers to the films.
struct SideBySide {
    Time from{}, to{};                              ///< from the earlier beginning to the later end
    std::vector<SideMoment> moments;                ///< in order of time, both ends among them
};

SideMoment side_moment(const drill::Film& left, const drill::Film& right, Time at);

/// Moments at equal distances. @param count  at least 2. Insists on it and on films with pictures
SideBySide side_by_side(const drill::Film& left, const drill::Film& right, std::size_t count);

}
