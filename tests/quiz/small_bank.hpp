#pragma once

#include "quiz/bank.hpp"
#include "quiz/making/workshop.hpp"

#include <catch2/catch.hpp>

#include <algorithm>
#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

/// Banks as tests read them.
namespace flapdoor::quiz {

inline const std::string scenario_folder = std::string(FLAPDOOR_SOURCE_DIR) + "/scenarios";

inline const FindScenario& shipped_scenarios()
{
    static const FindScenario find = scenarios_in(scenario_folder);
    return find;
}

/// One for all tests: runs are carried out once.
inline Workshop& workshop()
{
    static Workshop shop(scenario_folder);
    return shop;
}

/// Wherever the text's lines end.
inline bool says(std::string text, std::string_view words)
{
    std::replace(text.begin(), text.end(), '\n', ' ');
    return text.find(words) != std::string::npos;
}

/// All problems, one line each.
inline std::string told(const Problems& problems)
{
    std::string lines;
    for (const Problem& problem : problems) lines += describe(problem) + "\n";
    return lines;
}

/// The value; the test fails with the problems when there are any.
template <class T>
T sound(Result<T> result)
{
    INFO((result ? std::string() : told(result.error())));
    REQUIRE(result.has_value());
    return std::move(*result);
}

/// Files of scenarios/banks, in the order of their names.
inline std::vector<std::string> shipped_banks()
{
    std::vector<std::string> paths;
    for (const auto& entry : std::filesystem::directory_iterator(scenario_folder + "/banks"))
        if (entry.path().extension() == ".toml" && entry.path().stem().string().find("blueprint") == std::string::npos) paths.push_back(entry.path().string());
    std::sort(paths.begin(), paths.end());
    return paths;
}

inline Bank shipped_bank(const std::string& name) { return sound(load_bank(scenario_folder + "/banks/" + name + ".toml", shipped_scenarios())); }

inline Question question_of(const Bank& bank, std::string_view id)
{
    const Question* question = find_question(bank, id);
    INFO(id);
    REQUIRE(question != nullptr);
    return *question;
}

/// A bank with one question of these lines.
inline std::string bank_with(const std::string& question)
{
    return "format = 1\nid = \"b\"\ntitle = \"B\"\nedition = \"none\"\n[[question]]\nid = \"q\"\ntopic = \"dust\"\nlevel = \"know\"\ncite = \"common practice, no source\"\ntext = \"Q\"\nwhy = \"W\"\n" + question;
}

}
