#include "drill/unfinished.hpp"

#include "text/atomic_file.hpp"
#include "text/reading.hpp"
#include "text/writing.hpp"

#include <charconv>
#include <filesystem>
#include <optional>

namespace flapdoor::drill {

namespace {

std::optional<std::uint64_t> seed_in(const std::string& digits)
{
    std::uint64_t seed = 0;
    const auto [end, error] = std::from_chars(digits.data(), digits.data() + digits.size(), seed);
    if (error != std::errc{} || end != digits.data() + digits.size()) return std::nullopt;
    return seed;
}

}

Result<void> save_unfinished(const Unfinished& drill, const std::string& path)
{
    std::error_code told_by_the_save;
    std::filesystem::create_directories(std::filesystem::path(path).parent_path(), told_by_the_save);
    return text::save_atomically(path, text::write_toml(drill));
}

Result<Resumed> load_unfinished(const std::string& path)
{
    Result<Unfinished> kept = text::load<Unfinished>(path);
    if (!kept) return failed(kept.error());
    const auto seed = seed_in(kept->seed);
    if (!seed) {
        Problem problem;
        problem.where.file = path;
        problem.expected = "a seed of digits";
        problem.found = "`" + kept->seed + "`";
        return failed(std::move(problem));
    }
    Result<job::Scenario> scenario = job::read_scenario(kept->scenario, path + " (scenario)");
    if (!scenario) return failed(scenario.error());
    Result<job::WorkPlan> plan = job::read_plan(kept->plan, path + " (plan)", *scenario);
    if (!plan) return failed(plan.error());
    return Resumed{std::move(*kept), std::move(*scenario), std::move(*plan), *seed};
}

}
