#include "places.hpp"

#include <cstdio>
#include <filesystem>

namespace flapdoor::command {

namespace fs = std::filesystem;

std::string scenario_folder()
{
    std::error_code ignored;
    const fs::path program = fs::read_symlink("/proc/self/exe", ignored);
    const fs::path installed = program.parent_path().parent_path() / "share/flapdoor/scenarios";
    if (fs::is_directory(installed, ignored)) return installed.string();
    return std::string(FLAPDOOR_SOURCE_DIR) + "/scenarios";
}

std::string scenario_path(const std::string& named)
{
    std::error_code ignored;
    if (fs::is_directory(named, ignored)) return (fs::path(named) / "scenario.toml").string();
    if (fs::exists(named, ignored)) return named;
    const fs::path shipped = fs::path(scenario_folder()) / named / "scenario.toml";
    return fs::exists(shipped, ignored) ? shipped.string() : named;
}

std::string plan_path(const std::string& named, const std::string& scenario)
{
    std::error_code ignored;
    if (fs::exists(named, ignored) && !fs::is_directory(named, ignored)) return named;
    const fs::path beside = fs::path(scenario).parent_path() / (named + ".toml");
    return fs::exists(beside, ignored) ? beside.string() : named;
}

std::string book_path(const std::string& named)
{
    std::error_code ignored;
    if (fs::exists(named, ignored)) return named;
    const fs::path shipped = fs::path(scenario_folder()) / "rules" / (named + ".toml");
    return fs::exists(shipped, ignored) ? shipped.string() : named;
}

void tell(const Problems& problems)
{
    for (const Problem& problem : problems) std::fprintf(stderr, "%s\n", describe(problem).c_str());
}

}
