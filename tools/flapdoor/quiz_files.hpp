#pragma once

#include "core/result.hpp"
#include "quiz/bank.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace flapdoor::command {

/// Files named, and of folders named all files in them, at any depth, that end so; in the order of their names.
Result<std::vector<std::string>> files_in(const std::vector<std::string>& named, std::string_view ending);

/// The shipped banks, and those named besides. Problems of all of them.
Result<std::vector<quiz::Bank>> read_banks(const std::vector<std::string>& named, bool with_shipped, const quiz::FindScenario& find);

/// Makes a folder, or says why not.
Result<void> make_folder(const std::string& folder);

}
