#pragma once

#include "window/shell/shell.hpp"

#include "quiz/blueprint.hpp"
#include "quiz/sitting.hpp"

#include <cstdint>
#include <filesystem>
#include <string>
#include <vector>

namespace flapdoor::window {

/// A way to draw papers that is shipped, or why its file does not read.
struct ShelvedPaper {
    std::filesystem::path file;
    Result<quiz::Blueprint> blueprint;
};

/// All of `scenarios/papers`, the shortest first.
std::vector<ShelvedPaper> read_papers(const Places& places);

int questions_of(const quiz::Blueprint& blueprint);

/// A sitting that was left before its end, or a file that should hold one and does not read. Such a file stays where it is.
struct LeftSitting {
    std::filesystem::path file;
    Result<quiz::SittingResult> sitting;
};

/// All that are not finished, the latest first.
std::vector<LeftSitting> left_sittings(const Places& places);

/// File that keeps the answers to a paper.
std::filesystem::path sitting_file(const Places& places, const std::string& blueprint, std::uint64_t seed, quiz::Feedback feedback);

/// The first seed of that blueprint whose paper nobody has begun here.
std::uint64_t fresh_seed(const Places& places, const std::string& blueprint, quiz::Feedback feedback);

/// A paper to be drawn.
struct PaperOrder {
    std::filesystem::path blueprint;
    std::uint64_t seed = 1;
    quiz::Feedback feedback = quiz::Feedback::after;
    std::string person;
    std::filesystem::path keep;     ///< file of the answers
};

/// A paper with what was answered already, ready to be sat.
struct DrawnPaper {
    quiz::Paper paper;
    quiz::SittingResult sitting;
    std::filesystem::path keep;
};

/// Draws it; questions about runs carry them out, which takes seconds. To practice there is no time limit. Files are made when first written.
Result<DrawnPaper> drawn(const Places& places, const PaperOrder& order);

}
