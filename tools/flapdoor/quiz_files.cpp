#include "quiz_files.hpp"

#include "places.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <filesystem>
#include <set>

namespace flapdoor::command {

namespace fs = std::filesystem;

Result<std::vector<std::string>> files_in(const std::vector<std::string>& named, std::string_view ending)
{
    constexpr std::size_t most = 5000;
    std::vector<std::string> files;
    Problems problems;
    for (const std::string& name : named) {
        std::error_code error;
        if (!fs::is_directory(name, error)) {
            files.push_back(name);
            continue;
        }
        std::vector<std::string> inside;
        for (fs::recursive_directory_iterator at(name, fs::directory_options::skip_permission_denied, error), end; !error && at != end && inside.size() <= most; at.increment(error))
            if (at->is_regular_file(error) && at->path().extension() == fs::path(std::string(ending))) inside.push_back(at->path().string());
        if (error) problems.push_back(problem_with(name, "a folder that can be read", error.message()));
        else if (inside.empty()) problems.push_back(problem_with(name, fmt::format("a folder with files that end in {}", ending), "none"));
        else if (inside.size() > most) problems.push_back(problem_with(name, fmt::format("at most {} files", most), "more"));
        std::sort(inside.begin(), inside.end());
        files.insert(files.end(), inside.begin(), inside.end());
    }
    if (!problems.empty()) return failed(std::move(problems));
    return files;
}

Result<std::vector<quiz::Bank>> read_banks(const std::vector<std::string>& named, bool with_shipped, const quiz::FindScenario& find)
{
    std::vector<std::string> paths;
    if (with_shipped) {
        const auto shipped = files_in({(fs::path(scenario_folder()) / "banks").string()}, ".toml");
        if (!shipped) return failed(shipped.error());
        paths = *shipped;
    }
    for (const std::string& name : named) paths.push_back(bank_path(name));
    std::vector<quiz::Bank> banks;
    Problems problems;
    std::set<std::string> ids;
    for (const std::string& path : paths) {
        Result<quiz::Bank> bank = quiz::load_bank(path, find);
        if (!bank) problems.insert(problems.end(), bank.error().begin(), bank.error().end());
        else if (ids.insert(bank->id).second) banks.push_back(std::move(*bank));
    }
    if (!problems.empty()) return failed(std::move(problems));
    return banks;
}

Result<void> make_folder(const std::string& folder)
{
    std::error_code error;
    fs::create_directories(folder, error);
    if (error) return failed(problem_with(folder, "a folder that can be made", error.message()));
    return {};
}

}
