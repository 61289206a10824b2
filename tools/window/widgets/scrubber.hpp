#pragma once

#include "window/stage/ui.hpp"

#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace flapdoor::window {

/// Something that happened, shown on the scrubber as a tick with its own shape and, for faults, color.
struct ScrubberMark {
    double seconds = 0.0;
    bool is_fault = false;
    std::string label = {};
};

struct ScrubberLook {
    double end = 0.0;   ///< seconds; the scrubber runs from 0
    double step = 10.0; ///< of one arrow key, seconds
    std::span<const ScrubberMark> marks = {};
    float width = -1.0F;         ///< at 100 %; below 0 takes all that is left
    std::string_view label = {}; ///< for reading aloud
    /// Time of day at the left end, seconds since midnight: the ruler then shows times of day instead of elapsed time.
    std::optional<double> day_time_at_start = {};
    bool is_enabled = true;
};

/// The time of a run to drag through. Page Up and Down jump from mark to mark. True when the time changed.
bool scrubber(Ui& ui, std::string_view name, double& seconds, const ScrubberLook& look);

/// `h:mm:ss`, or `m:ss` below an hour. Negative times count as 0.
std::string clock_text(double seconds);

/// `14:05`, past midnight from `00:00` again.
std::string day_time_text(double since_midnight);

}
