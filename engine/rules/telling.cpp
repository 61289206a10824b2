#include "rules/telling.hpp"

#include "rules/things.hpp"
#include "rules/vocabulary.hpp"
#include "text/language.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace flapdoor::rules {

using text::sentence;
using text::Sentence;
using text::to_say;

Sentence card_text(const Evidence& evidence, int entry)
{
    if (entry < 0) return to_say("no card");
    const job::LogEntry& found = evidence.entry(entry);
    return sentence("card {} ({})", found.card + 1, title_of(found.step));
}

Sentence quoted(const Sentence& words) { return {"\"{}\"", {words}}; }

/// "one", "one or another".
Sentence listed(Sentence before, Sentence last) { return before.empty() ? last : sentence("{} or {}", std::move(before), std::move(last)); }

Sentence joined(Sentence before, Sentence next) { return before.empty() ? next : Sentence("{}, {}", {std::move(before), std::move(next)}); }

Sentence spot_title(const Spot& spot)
{
    if (spot.moment) {
        switch (*spot.moment) {
        case Moment::start: return to_say("the start");
        case Moment::first_dust: return to_say("the first work on paint");
        case Moment::last_dust: return to_say("the last work on paint");
        case Moment::passed: return to_say("the passed verification");
        case Moment::end: return to_say("the end");
        }
    }
    if (!spot.state.empty()) {
        const bool is_failing = !spot.is.words.empty() && spot.is.words.front() == "false";
        return quoted(state_text(spot.state, !is_failing));
    }
    Sentence titles;
    for (const std::string& step : spot.step.words) titles = listed(std::move(titles), quoted(title_of(step)));
    if (!titles.empty()) return titles;
    if (const MeasureWords* words = find_measure_words(spot.measured)) return sentence("a card with {}", words->title);
    if (spot.phase) return sentence("a card of the {} phase", word_of(*spot.phase));
    return to_say("a card");
}

Sentence state_text(const std::string& state, bool held)
{
    const StateWords* words = find_state(state);
    return words ? (held ? words->held : words->failed) : std::string_view(state);
}

Sentence thing_text(const Evidence& evidence, const std::string& self)
{
    return self.empty() ? Sentence() : Sentence(" ({})", {title_of_thing(self, evidence.scenario())});
}

std::string cited(const std::string& cite)
{
    constexpr std::string_view gap = "; ";
    std::string said;
    for (std::size_t from = 0; from < cite.size();) {
        const std::size_t end = std::min(cite.find(gap, from), cite.size());
        said += fmt::format("{}{}", said.empty() ? "" : gap, text::say(cite.substr(from, end - from)));
        from = end + gap.size();
    }
    return said;
}

std::string missing_key(const Spot& spot, const std::string& self)
{
    return self.empty() ? spot_text(spot) : fmt::format("{} this={}", spot_text(spot), self);
}

}
