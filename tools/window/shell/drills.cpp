#include "window/shell/drills.hpp"

#include <algorithm>

namespace flapdoor::window {

namespace fs = std::filesystem;

namespace {

constexpr const char* careful_plan = "good.toml";

std::vector<fs::path> sorted_entries(const fs::path& folder)
{
    std::vector<fs::path> entries;
    std::error_code unreadable;
    for (const fs::directory_entry& entry : fs::directory_iterator(folder, unreadable)) entries.push_back(entry.path());
    std::sort(entries.begin(), entries.end());
    return entries;
}

std::vector<fs::path> other_plans(const fs::path& folder)
{
    std::vector<fs::path> plans;
    for (const fs::path& file : sorted_entries(folder))
        if (file.extension() == ".toml" && file.filename() != "scenario.toml" && file.filename() != careful_plan) plans.push_back(file);
    return plans;
}

}

std::shared_ptr<const Drill> DrillShelf::find(const std::string& id) const
{
    const auto found = std::find_if(drills.begin(), drills.end(), [&](const auto& drill) { return drill->id == id; });
    return found == drills.end() ? nullptr : *found;
}

DrillShelf read_drills(const fs::path& scenarios, const std::string& book)
{
    DrillShelf shelf;
    const std::string book_file = (scenarios / "rules" / (book + ".toml")).string();
    for (const fs::path& folder : sorted_entries(scenarios)) {
        std::error_code unreadable;
        if (!fs::exists(folder / "scenario.toml", unreadable)) continue;
        auto inputs = debrief::read_inputs((folder / "scenario.toml").string(), (folder / careful_plan).string(), {book_file});
        if (!inputs) {
            shelf.broken.push_back({folder.filename().string(), inputs.error()});
            continue;
        }
        std::string id = inputs->scenario.id;
        shelf.drills.push_back(std::make_shared<const Drill>(Drill{std::move(id), std::move(*inputs), other_plans(folder)}));
    }
    return shelf;
}

}
