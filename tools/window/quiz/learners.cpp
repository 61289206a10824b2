#include "window/quiz/learners.hpp"

#include "core/insist.hpp"
#include "quiz/practice/practice_file.hpp"
#include "records/now.hpp"

#include <algorithm>
#include <cctype>

namespace flapdoor::window {

namespace fs = std::filesystem;

namespace {

constexpr std::size_t longest_name = 40;

bool may_stand_in_a_name(char c)
{
    const auto byte = static_cast<unsigned char>(c);
    return byte >= 0x80 || std::isalnum(byte) != 0 || c == ' ' || c == '-' || c == '_';
}

}

std::vector<Learner> read_learners(const Places& places)
{
    std::vector<Learner> learners;
    std::error_code unreadable;
    for (const fs::directory_entry& entry : fs::directory_iterator(places.own / "practice", unreadable))
        if (entry.path().extension() == ".toml") learners.push_back({entry.path().stem().string(), quiz::load_practice(entry.path().string())});
    std::sort(learners.begin(), learners.end(), [](const Learner& a, const Learner& b) { return a.name < b.name; });
    return learners;
}

bool is_learner_name(std::string_view name)
{
    return !name.empty() && name.size() <= longest_name && name.front() != ' ' && name.back() != ' ' && std::all_of(name.begin(), name.end(), may_stand_in_a_name);
}

fs::path practice_file(const Places& places, const std::string& name)
{
    insist(is_learner_name(name), "a practice is kept under a name that a file can have");
    return places.own / "practice" / (name + ".toml");
}

quiz::Day today_of(const Places& places)
{
    const auto day = quiz::parse_day(places.today.empty() ? records::today_here() : places.today);
    insist(day.has_value(), "today is a day of the calendar");
    return *day;
}

}
