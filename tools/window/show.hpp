#pragma once

#include "window/shell/screens.hpp"

#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>

namespace flapdoor::window {

/// Opens the window on its first screen and stays until the person closes it. Needs a display.
/// @return exit code: 0 when it was closed, 3 when fonts or display are missing (told on stderr)
int show(Places places);

/// The same with a plan that is carried out meanwhile and then played.
/// @param careful  the careful plan of the same drill, where there is one
int show_run(Places places, const debrief::Inputs& inputs, std::uint64_t seed, std::optional<debrief::Inputs> careful = {});

/// The same with a paper of questions. @param file  keeps the answers after each one
int show_quiz(Places places, quiz::Paper paper, quiz::SittingResult sitting, std::filesystem::path file);

/// Measures how long frames of several scenes take and prints a table. Needs a display.
/// @return exit code: 0, or 3 when fonts, display or drills are missing (told on stderr)
int show_frames(Places places);

/// How a picture of a screen is painted.
struct PictureLook {
    std::filesystem::path file;
    int width = 1440, height = 900; ///< pixels, 320 to 8192 each; insists
    float text_scale = 1.0F;        ///< 1 to 2
};

/// Carries the plan out and paints the screen as it stands at a time of day, by the processor: no display needed.
/// @param at  time of day; kept within the run
/// @return exit code: 0, or 3 when fonts are missing or the file cannot be written (told on stderr)
int picture_run(const debrief::Inputs& inputs, std::uint64_t seed, Time at, const PictureLook& look);

/// Paints a screen before anybody has pressed anything. @param screen  one of screen_names(); insists
int picture_screen(Places places, const std::string& screen, Sitting sitting, const PictureLook& look);

/// Names of the screens that can be painted: "start", "brief", ...
std::vector<std::string> screen_names();

}
