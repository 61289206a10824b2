#pragma once

#include "window/run/story.hpp"

#include <cstddef>
#include <optional>
#include <vector>

namespace flapdoor::window {

/// A moment at which somebody said that something goes wrong.
struct SpottedMark {
    Time at{};
    std::optional<std::size_t> fault; ///< in Report::faults, when it was one
};

/// A fault that could be seen, and whether it was.
struct Sighting {
    std::size_t fault = 0;
    std::vector<Time> moments;
    bool is_spotted = false;
};

/// What came of the marks: each mark against the fault nearest before it, each fault once.
struct SpottingScore {
    std::vector<SpottedMark> marks;   ///< by time
    std::vector<Sighting> sightings;  ///< faults that cost marks and happen at some moment of the day, by time
    std::size_t spotted = 0;
    std::size_t idle = 0;             ///< marks at which nothing that was not spotted yet went wrong
};

/// A mark counts when it falls into the card at which the fault happens, or at most this long after the moment.
inline constexpr Time spotting_patience{300.0};

SpottingScore scored(const Story& story, std::vector<Time> marks);

}
