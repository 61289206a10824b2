#pragma once

#include "window/shell/shell.hpp"

#include "quiz/practice/attempt.hpp"

#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

namespace flapdoor::window {

/// Whoever has begun to practise here, or a file that should hold a practice and does not read. Such a file stays where it is.
struct Learner {
    std::string name;               ///< chosen by the person; the name of the file
    Result<quiz::Practice> practice;
};

/// All of them, by name.
std::vector<Learner> read_learners(const Places& places);

/// Whether a file can be named so: letters, digits, spaces, - and _, at most 40 bytes, no space at the ends.
bool is_learner_name(std::string_view name);

std::filesystem::path practice_file(const Places& places, const std::string& name);

/// The day that practice goes by.
quiz::Day today_of(const Places& places);

}
