#include "rules/telling.hpp"

#include "rules/things.hpp"
#include "rules/vocabulary.hpp"

#include <fmt/format.h>

namespace flapdoor::rules {

std::string card_text(const Evidence& evidence, int entry)
{
    if (entry < 0) return "no card";
    const job::LogEntry& found = evidence.entry(entry);
    return fmt::format("card {} ({})", found.card + 1, title_of(found.step));
}

std::string spot_title(const Spot& spot)
{
    if (spot.moment) {
        switch (*spot.moment) {
        case Moment::start: return "the start";
        case Moment::first_dust: return "the first work on paint";
        case Moment::last_dust: return "the last work on paint";
        case Moment::passed: return "the passed verification";
        case Moment::end: return "the end";
        }
    }
    if (!spot.state.empty()) {
        const bool is_failing = !spot.is.words.empty() && spot.is.words.front() == "false";
        return fmt::format("\"{}\"", state_text(spot.state, !is_failing));
    }
    std::string titles;
    for (const std::string& step : spot.step.words) titles += fmt::format("{}\"{}\"", titles.empty() ? "" : " or ", title_of(step));
    if (!titles.empty()) return titles;
    if (const MeasureWords* words = find_measure_words(spot.measured)) return fmt::format("a card with {}", words->title);
    if (spot.phase) return fmt::format("a card of the {} phase", word_of(*spot.phase));
    return "a card";
}

std::string state_text(const std::string& state, bool held)
{
    const StateWords* words = find_state(state);
    return std::string(words ? (held ? words->held : words->failed) : std::string_view(state));
}

std::string thing_text(const Evidence& evidence, const std::string& self)
{
    return self.empty() ? std::string() : fmt::format(" ({})", title_of_thing(self, evidence.scenario()));
}

std::string missing_key(const Spot& spot, const std::string& self)
{
    return self.empty() ? spot_text(spot) : fmt::format("{} this={}", spot_text(spot), self);
}

}
