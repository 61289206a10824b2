#include "verbs.hpp"

#include "places.hpp"

#include "job/files.hpp"
#include "job/work_plan.hpp"
#include "text/field_table.hpp"
#include "text/input_file.hpp"
#include "text/language.hpp"
#include "text/nearest.hpp"
#include "text/show.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <filesystem>

namespace flapdoor::command {

using text::say;
using text::say_with;
using text::to_say;

namespace fs = std::filesystem;

int list_drills()
{
    std::vector<fs::path> folders;
    std::error_code ignored;
    for (const auto& entry : fs::directory_iterator(scenario_folder(), ignored))
        if (fs::exists(entry.path() / "scenario.toml", ignored)) folders.push_back(entry.path());
    std::sort(folders.begin(), folders.end());
    for (const fs::path& folder : folders) {
        const std::string path = (folder / "scenario.toml").string();
        const Result<std::string> text = text::read_file(path);
        const Result<job::Scenario> scenario = text ? job::read_scenario(*text, path) : Result<job::Scenario>(failed(text.error()));
        if (!scenario) {
            tell(scenario.error());
            continue;
        }
        fmt::print("{}: {}\n", folder.filename().string(), text::say(scenario->title));
        std::vector<std::string> plans;
        for (const auto& entry : fs::directory_iterator(folder, ignored))
            if (entry.path().extension() == ".toml" && entry.path().stem() != "scenario") plans.push_back(entry.path().stem().string());
        std::sort(plans.begin(), plans.end());
        fmt::print("  {}\n", say_with("plans: {}", fmt::format("{}", fmt::join(plans, ", "))));
    }
    return fine;
}

namespace {

template <class S>
void print_card()
{
    fmt::print("{:<18} {}\n", S::name, say_with(S::hands == job::Hands::certified ? to_say("{} ({}, certified renovator only)") : "{} ({})", say(S::title), say(word_of(S::phase))));
}

std::string time_text(Time takes, job::Per per)
{
    switch (per) {
        case job::Per::card: return text::show(takes);
        case job::Per::person: return say_with("{} for each person", text::show(takes));
        case job::Per::item: return say_with("{} for each surface or section", text::show(takes));
        case job::Per::area: return say_with("{} for 100 ft2", text::show(takes * (100.0_ft2).si));
        case job::Per::own: return std::string(say("as long as its own parameters say"));
    }
    return {};
}

template <class S>
void explain_card()
{
    print_card<S>();
    fmt::print("  {}\n", say_with("takes: {}", time_text(S::takes, S::per)));
    if (!S::needs.empty()) fmt::print("  {}\n", say_with("needs: {}", say(S::needs)));
    for (const text::FieldRow& row : text::field_table<S>()) {
        const std::string given = row.is_required                ? std::string(say("required"))
                                  : row.default_value.empty() ? std::string(say("may be left out"))
                                                              : say_with("default {}", row.default_value);
        fmt::print("  {:<26} {}{}; {}{}{}\n", row.key, row.kind, row.range.empty() ? "" : ", " + row.range, given, row.about.empty() ? "" : ": ", say(row.about));
    }
}

}

int list_cards(const std::string& step)
{
    bool is_known = step.empty();
    text::each_alternative<job::Step>([&]<class S>(const S&) {
        if (step.empty()) print_card<S>();
        else if (step == S::name) {
            explain_card<S>();
            is_known = true;
        }
    });
    if (is_known) return fine;
    constexpr auto& names = text::NamesOf<job::Step>::names;
    const auto near = text::nearest(step, names);
    Problem unknown;
    unknown.expected = near ? fmt::format("a kind of step, perhaps `{}`", *near) : "a kind of step";
    unknown.found = fmt::format("`{}`", step);
    tell({unknown});
    return bad_use;
}

}
