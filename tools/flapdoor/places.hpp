#pragma once

#include "core/result.hpp"
#include "debrief/main_job.hpp"

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

// Where the shipped drills are, and how a user may name a file.
namespace flapdoor::command {

/// Exit codes of the command.
enum Exit : int { fine = 0, bad_use = 2, bad_file = 3, differs = 4, our_bug = 5, interrupted = 130 };

/// Folder with the shipped scenarios: beside the program when installed, else that of the sources.
std::string scenario_folder();

/// The folder with the compiled catalogs of sentences: of the installed program, else of the build.
std::string catalog_folder();

/// What is wrong with a file, a folder or an option as a whole.
Problem problem_with(const std::string& what, std::string expected, std::string found);

/// Folder for what people leave on this machine: drills in progress, finished runs. May not be there yet.
std::string own_folder();

/// A scenario named by its file, its folder, or the name of a shipped drill.
std::string scenario_path(const std::string& named);

/// A plan named by its file, or by its name in the scenario's folder (`good` is good.toml there).
std::string plan_path(const std::string& named, const std::string& scenario_path);

/// A rule book named by its file or the name of a shipped one.
std::string book_path(const std::string& named);

/// A question bank, or a blueprint of papers, named by its file or the name of a shipped one.
std::string bank_path(const std::string& named);
std::string paper_path(const std::string& named);

/// The same for books that lie on one another, the lowest first.
std::vector<std::string> book_paths(const std::vector<std::string>& named);

/// Reads a scenario, plans for it and the rule books, named as above; every problem of all of them.
Result<std::vector<debrief::Inputs>> read_plans(const std::string& scenario, const std::vector<std::string>& plans, const std::vector<std::string>& books);

/// The plan that a drill brings along as the one that keeps its rules.
inline constexpr std::string_view usual_reference = "good";

/// The plan that keeps the rules, from which repairs are taken, named as above. Nothing when the usual one is named and not there.
Result<std::optional<debrief::Inputs>> read_reference(const std::string& scenario, const std::string& plan, const std::vector<std::string>& books);

/// The id of a scenario as part of a file's name: whatever would lead to another folder becomes a dash.
std::string file_name_from(std::string id);

/// Columns to print in. @param asked  0: those of the terminal
std::size_t terminal_width(int asked);

/// Prints problems to stderr, one a line.
void tell(const Problems& problems);

}
