#include "quiz/making/generator.hpp"

#include "rules/scope.hpp"
#include "rules/things.hpp"
#include "text/language.hpp"
#include "text/show.hpp"

#include <algorithm>

namespace flapdoor::quiz {
namespace {

using rules::JobScope;
using rules::RoomWork;
using text::to_say;

/// A small job in words, and as the rule sees it.
struct SmallJob {
    std::string id;
    Phrase text;
    JobScope scope;
    std::string_view if_chosen;     ///< mistake of whoever calls it covered, or of whoever does not
};

Phrase with_areas(std::string_view text, std::map<std::string, Phrase> blanks)
{
    Phrase phrase = quiz::phrase(text);
    phrase.blanks = std::move(blanks);
    return phrase;
}

Phrase area(double square_feet) { return phrase(text::show_short(1.0_ft2 * square_feet)); }

/// Which of these jobs fall under the rule? In the drill's own house.
std::optional<Made> minor_repair(const Setting& setting)
{
    Dice dice = setting.dice("minor-repair");
    JobScope house;
    house.built = setting.scenario.building.built;
    house.housing = setting.scenario.building.housing;
    const auto with = [&](std::vector<RoomWork> work) {
        JobScope job = house;
        job.interior = std::move(work);
        return job;
    };
    const double each = 0.5 * dice.between(6, 10), over = 6.0 + 0.5 * dice.between(1, 6), first = 0.5 * dice.between(7, 10), second = 0.5 * dice.between(7, 10), window = 0.5 * dice.between(2, 8);
    const int soon = dice.between(5, 25), late = dice.between(35, 90);
    std::vector<SmallJob> jobs;
    jobs.push_back({"just-six", with_areas(to_say("{area} of one wall, scraped by hand"), {{"area", area(6.0)}}), with({{"a", 6.0_ft2, 0}}), "equal-is-over"});
    jobs.push_back({"over-six", with_areas(to_say("{area} of one wall, scraped by hand"), {{"area", area(over)}}), with({{"a", 1.0_ft2 * over, 0}}), "twenty-indoors"});
    jobs.push_back({"three-rooms", with_areas(to_say("{area} in each of three rooms on one day"), {{"area", area(each)}}),
                    with({{"a", 1.0_ft2 * each, 0}, {"b", 1.0_ft2 * each, 0}, {"c", 1.0_ft2 * each, 0}}), "rooms-added-up"});
    jobs.push_back({"soon-again", with_areas(to_say("{first} in a room, and {second} more in it {days} days later"), {{"first", area(first)}, {"second", area(second)}, {"days", as_count(soon).shown}}),
                    with({{"a", 1.0_ft2 * first, 0}, {"a", 1.0_ft2 * second, soon}}), "days-not-added-up"});
    jobs.push_back({"late-again", with_areas(to_say("{first} in a room, and {second} more in it {days} days later"), {{"first", area(second)}, {"second", area(first)}, {"days", as_count(late).shown}}),
                    with({{"a", 1.0_ft2 * second, 0}, {"a", 1.0_ft2 * first, late}}), "days-added-for-ever"});
    JobScope replaced = with({{"a", 1.0_ft2 * window, 0}});
    replaced.replaces_window = true;
    jobs.push_back({"window", with_areas(to_say("One small window replaced, {area} of paint touched"), {{"area", area(window)}}), replaced, "windows-by-area"});
    dice.shuffle(jobs);
    jobs.resize(5);
    MadeChoice choice;
    for (const SmallJob& job : jobs) choice.options.push_back({job.id, job.text, rules::scope_of(job.scope) == rules::Scope::covered, std::string(job.if_chosen)});
    const auto right = std::count_if(choice.options.begin(), choice.options.end(), [](const MadeOption& option) { return option.is_right; });
    if (right == 0 || right == static_cast<std::ptrdiff_t>(choice.options.size())) return std::nullopt;
    return Made{{{"built", as_count(house.built).shown}}, std::move(choice)};
}

}

std::vector<Generator> scope_generators()
{
    return {{"minor-repair", {"built"}, {"equal-is-over", "twenty-indoors", "rooms-added-up", "days-not-added-up", "days-added-for-ever", "windows-by-area"}, minor_repair}};
}

}
