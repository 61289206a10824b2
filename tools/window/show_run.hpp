#pragma once

#include "debrief/main_job.hpp"

#include <cstdint>
#include <filesystem>

namespace flapdoor::window {

/// Opens the window, carries the plan out meanwhile, and plays the run until the person closes it. Needs a display.
/// @return exit code: 0 when it was closed, 3 when fonts or display are missing (told on stderr)
int show_run(const debrief::Inputs& inputs, std::uint64_t seed);

/// Carries the plan out and paints the screen as it stands at a time of day, by the processor: no display needed.
/// @param at  time of day; kept within the run
/// @param width, height  pixels, 320 to 8192 each; insists
/// @return exit code: 0, or 3 when fonts are missing or the file cannot be written (told on stderr)
int picture_run(const debrief::Inputs& inputs, std::uint64_t seed, Time at, const std::filesystem::path& path, int width, int height);

}
