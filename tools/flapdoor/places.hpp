#pragma once

#include "core/result.hpp"

#include <string>
#include <vector>

// Where the shipped drills are, and how a user may name a file.
namespace flapdoor::command {

/// Exit codes of the command.
enum Exit : int { fine = 0, bad_use = 2, bad_file = 3, differs = 4, our_bug = 5 };

/// Folder with the shipped scenarios: beside the program when installed, else that of the sources.
std::string scenario_folder();

/// A scenario named by its file, its folder, or the name of a shipped drill.
std::string scenario_path(const std::string& named);

/// A plan named by its file, or by its name in the scenario's folder (`good` is good.toml there).
std::string plan_path(const std::string& named, const std::string& scenario_path);

/// A rule book named by its file or the name of a shipped one.
std::string book_path(const std::string& named);

/// Prints problems to stderr, one a line.
void tell(const Problems& problems);

}
