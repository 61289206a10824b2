#include "quiz/find_scenario.hpp"

#include "job/files.hpp"
#include "text/input_file.hpp"

#include <algorithm>
#include <filesystem>
#include <utility>

namespace flapdoor::quiz {
namespace {

namespace fs = std::filesystem;

/// An id is a name, not a way to another folder.
bool is_name(const std::string& id) { return !id.empty() && id.find_first_of("/\\") == std::string::npos && id != ".."; }

}

FindScenario::FindScenario(std::string folder) : folder_(std::move(folder)), read_(std::make_shared<std::map<std::string, Found>>()) {}

FindScenario::Found FindScenario::operator()(const std::string& id) const
{
    if (const auto known = read_->find(id); known != read_->end()) return known->second;
    const fs::path path = fs::path(folder_) / id / "scenario.toml";
    std::error_code error;
    if (!is_name(id) || !fs::exists(path, error)) return nullptr;
    Found found = text::read_file(path.string()).and_then([&](const std::string& text) { return job::read_scenario(text, path.string()); }).map([](job::Scenario scenario) {
        return std::make_shared<const job::Scenario>(std::move(scenario));
    });
    read_->emplace(id, found);
    return found;
}

std::vector<std::string> FindScenario::all() const
{
    std::vector<std::string> ids;
    std::error_code error;
    for (const auto& entry : fs::directory_iterator(folder_, error))
        if (fs::exists(entry.path() / "scenario.toml", error)) ids.push_back(entry.path().filename().string());
    std::sort(ids.begin(), ids.end());
    return ids;
}

std::vector<std::string> FindScenario::plans(const std::string& id) const
{
    std::vector<std::string> names;
    std::error_code error;
    if (!is_name(id)) return names;
    for (const auto& entry : fs::directory_iterator(fs::path(folder_) / id, error))
        if (entry.path().extension() == ".toml" && entry.path().stem() != "scenario") names.push_back(entry.path().stem().string());
    std::sort(names.begin(), names.end());
    return names;
}

FindScenario scenarios_in(const std::string& folder) { return FindScenario(folder); }

}
