#include "places.hpp"

#include <sys/ioctl.h>
#include <unistd.h>

#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <set>

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

std::string catalog_folder()
{
    std::error_code ignored;
    const fs::path program = fs::read_symlink("/proc/self/exe", ignored);
    const fs::path installed = program.parent_path().parent_path() / "share/flapdoor/translations";
    return fs::is_directory(installed, ignored) ? installed.string() : std::string(FLAPDOOR_CATALOGS);
}

Problem problem_with(const std::string& what, std::string expected, std::string found)
{
    Problem problem;
    problem.where.file = what;
    problem.expected = std::move(expected);
    problem.found = std::move(found);
    return problem;
}

std::string own_folder()
{
    const auto named = [](const char* variable) {
        const char* value = std::getenv(variable);
        return fs::path(value == nullptr ? "" : value);
    };
    const fs::path data = named("XDG_DATA_HOME");
    if (data.is_absolute()) return (data / "flapdoor").string();
    const fs::path home = named("HOME");
    return (home.is_absolute() ? home / ".local/share/flapdoor" : fs::temp_directory_path() / "flapdoor").string();
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

namespace {

/// A file, or the name of a shipped one in that folder of the scenarios.
std::string shipped_path(const std::string& named, const char* folder)
{
    std::error_code ignored;
    if (fs::exists(named, ignored)) return named;
    const fs::path shipped = fs::path(scenario_folder()) / folder / (named + ".toml");
    return fs::exists(shipped, ignored) ? shipped.string() : named;
}

}

std::string book_path(const std::string& named) { return shipped_path(named, "rules"); }

std::string bank_path(const std::string& named) { return shipped_path(named, "banks"); }

std::string paper_path(const std::string& named) { return shipped_path(named, "papers"); }

std::vector<std::string> book_paths(const std::vector<std::string>& named)
{
    std::vector<std::string> paths;
    for (const std::string& book : named) paths.push_back(book_path(book));
    return paths;
}

namespace {

std::string listed(const std::set<std::string>& names)
{
    std::string all;
    for (const std::string& name : names) all += (all.empty() ? "" : ", ") + name;
    return all;
}

std::string shipped_drills()
{
    std::set<std::string> names;
    std::error_code ignored;
    for (const fs::directory_entry& entry : fs::directory_iterator(scenario_folder(), ignored))
        if (fs::exists(entry.path() / "scenario.toml", ignored)) names.insert(entry.path().filename().string());
    return listed(names);
}

std::string plans_beside(const fs::path& scenario)
{
    std::set<std::string> names;
    std::error_code ignored;
    for (const fs::directory_entry& entry : fs::directory_iterator(scenario.parent_path(), ignored))
        if (entry.path().extension() == ".toml" && entry.path() != scenario) names.insert(entry.path().stem().string());
    return listed(names);
}

/// What is named and is not there, with the names that are.
Problems missing(const std::string& scenario, const std::string& place, const std::vector<std::string>& plans)
{
    Problems problems;
    const auto add = [&](const std::string& named, std::string expected) { problems.push_back(problem_with(named, std::move(expected), "no such file or name")); };
    std::error_code ignored;
    if (!fs::exists(place, ignored)) {
        add(scenario, "a scenario file, its folder, or a shipped drill (" + shipped_drills() + ")");
        return problems;    // whose plans these would be nobody knows
    }
    for (const std::string& plan : plans)
        if (!fs::exists(plan_path(plan, place), ignored)) add(plan, "a plan file, or a plan in the scenario's folder (" + plans_beside(place) + ")");
    return problems;
}

}

Result<std::vector<debrief::Inputs>> read_plans(const std::string& scenario, const std::vector<std::string>& plans, const std::vector<std::string>& books)
{
    const std::string place = scenario_path(scenario);
    std::vector<debrief::Inputs> inputs;
    Problems problems = missing(scenario, place, plans);
    if (!problems.empty()) return failed(std::move(problems));
    std::set<std::string> told;     // what is wrong with the scenario or the book is told once
    for (const std::string& plan : plans) {
        Result<debrief::Inputs> read = debrief::read_inputs(place, plan_path(plan, place), book_paths(books));
        if (read) inputs.push_back(std::move(*read));
        else
            for (Problem& problem : read.error())
                if (told.insert(describe(problem)).second) problems.push_back(std::move(problem));
    }
    if (!problems.empty()) return failed(std::move(problems));
    return inputs;
}

Result<std::optional<debrief::Inputs>> read_reference(const std::string& scenario, const std::string& plan, const std::vector<std::string>& books)
{
    const bool is_usual = plan == usual_reference;
    std::error_code ignored;
    if (is_usual && !fs::exists(plan_path(plan, scenario_path(scenario)), ignored)) return std::optional<debrief::Inputs>{};
    auto read = read_plans(scenario, {plan}, books);
    if (!read) return failed(read.error());
    return std::optional<debrief::Inputs>(std::move(read->front()));
}

std::string file_name_from(std::string id)
{
    for (char& c : id)
        if (c == '/') c = '-';
    return id;
}

std::size_t terminal_width(int asked)
{
    if (asked > 0) return static_cast<std::size_t>(asked);
    winsize size{};
    if (isatty(STDOUT_FILENO) != 0 && ioctl(STDOUT_FILENO, TIOCGWINSZ, &size) == 0 && size.ws_col >= 60) return size.ws_col;
    return 110;
}

void tell(const Problems& problems)
{
    for (const Problem& problem : problems) std::fprintf(stderr, "%s\n", describe(problem).c_str());
}

}
