#include "rules/evidence.hpp"

#include "rules/value_match.hpp"
#include "rules/vocabulary.hpp"

#include <algorithm>
#include <limits>
#include <numeric>
#include <set>

namespace flapdoor::rules {
namespace {

bool is_done(const job::LogEntry& entry) { return entry.outcome == job::Outcome::done; }

bool takes_part(const std::vector<std::string>& wanted, const std::vector<job::PersonId>& crew, const std::string& self, const job::Scenario& scenario)
{
    const ParameterWords person{"by", ParameterType::id, {}, {}, ThingKind::person};
    for (const job::PersonId& who : crew)
        for (const std::string& word : wanted)
            if (fits(who.name, word, person, self, scenario)) return true;
    return false;
}

void keep_which(std::vector<Occurrence>& found, Which which)
{
    if (found.empty() || which == Which::each) return;
    found = {which == Which::first ? found.front() : found.back()};
}

bool has_word(std::string_view words, std::string_view word)
{
    for (std::size_t at = words.find(word); at != std::string_view::npos; at = words.find(word, at + 1)) {
        const std::size_t end = at + word.size();
        if ((at == 0 || words[at - 1] == ' ') && (end == words.size() || words[end] == ' ')) return true;
    }
    return false;
}

bool is_one_of(const std::vector<std::string>& words, const std::string& word) { return std::find(words.begin(), words.end(), word) != words.end(); }

}

const std::string& resolved(const std::string& name, const std::string& self) { return name == "this" ? self : name; }

Evidence::Evidence(const job::Scenario& scenario, const job::RunLog& log) : scenario_(scenario), log_(log), order_(log.entries.size())
{
    std::iota(order_.begin(), order_.end(), 0);
    std::stable_sort(order_.begin(), order_.end(), [&](int a, int b) { return entry(a).start < entry(b).start; });
    bool is_first = true;
    for (const job::LogEntry& entry : log.entries) {
        start_ = is_first ? entry.start : std::min(start_, entry.start);
        end_ = is_first ? entry.end : std::max(end_, entry.end);
        is_first = false;
    }
}

std::vector<Occurrence> Evidence::find(const Spot& spot, const std::string& self, Count count) const
{
    if (spot.moment) return find_moment(*spot.moment);
    if (!spot.state.empty()) return find_state(spot, self);
    std::vector<Occurrence> found;
    for (const int index : order_) {
        const job::LogEntry& entry = this->entry(index);
        const bool counts = is_done(entry) || (count == Count::done_or_not_needed && entry.outcome == job::Outcome::not_needed);
        if (counts && is_match(spot, entry, self)) found.push_back({index, entry.start, entry.end});
    }
    keep_which(found, spot.which);
    return found;
}

bool Evidence::is_match(const Spot& spot, const job::LogEntry& entry, const std::string& self) const
{
    if (!spot.step.words.empty() && !is_one_of(spot.step.words, entry.step)) return false;
    const StepWords* words = find_step(entry.step);
    if (spot.phase && (!words || words->phase != *spot.phase)) return false;
    if (spot.hands && (!words || words->hands != *spot.hands)) return false;
    if (!spot.by.words.empty() && !takes_part(spot.by.words, entry.by, self, scenario_)) return false;
    for (const Match& match : spot.with.all) {
        const ParameterWords* parameter = words ? words->parameter(match.parameter) : nullptr;
        if (!parameter) return false;
        const std::string value = job::parameter(entry, match.parameter);
        const bool fits_any = std::any_of(match.any_of.words.begin(), match.any_of.words.end(),
                                          [&](const std::string& wanted) { return fits(value, wanted, *parameter, self, scenario_); });
        if (!fits_any) return false;
    }
    return spot.measured.empty() || is_measure_match(spot, entry, self);
}

bool Evidence::is_measure_match(const Spot& spot, const job::LogEntry& entry, const std::string& self) const
{
    return std::any_of(entry.measured.begin(), entry.measured.end(), [&](const job::Measure& measure) {
        if (measure.name != spot.measured || (!spot.of.empty() && measure.object != resolved(spot.of, self))) return false;
        if (spot.is.words.empty()) return true;
        return std::any_of(spot.is.words.begin(), spot.is.words.end(),
                           [&](const std::string& wanted) { return measure_fits(measure.value, comparison(wanted), measure.kind); });
    });
}

std::vector<Occurrence> Evidence::find_moment(Moment moment) const
{
    if (log_.entries.empty()) return {};
    const auto at = [&](Time time, int entry) { return std::vector<Occurrence>{{entry, time, time}}; };
    if (moment == Moment::start) return at(start_, order_.front());
    if (moment == Moment::end) return at(end_, entry_at(end_));
    if (moment == Moment::passed) {
        const std::vector<Span> passed = spans("passed", "");
        return passed.empty() ? std::vector<Occurrence>{} : at(passed.front().from, entry_at(passed.front().from, "passed"));
    }
    int first = -1, last = -1;
    for (const int index : order_) {
        if (entry(index).step != "disturb-paint" || !is_done(entry(index))) continue;
        if (first < 0) first = index;
        if (last < 0 || entry(index).end >= entry(last).end) last = index;
    }
    if (first < 0) return {};
    return moment == Moment::first_dust ? at(entry(first).start, first) : at(entry(last).end, last);
}

std::vector<Occurrence> Evidence::find_state(const Spot& spot, const std::string& self) const
{
    const bool wanted = spot.is.words.empty() || spot.is.words.front() != "false";
    const std::string& object = resolved(spot.of, self);
    std::vector<Occurrence> found;
    for (const job::StateChange& change : log_.states) {
        if (change.state != spot.state || change.holds != wanted || (!object.empty() && change.object != object)) continue;
        found.push_back({entry_at(change.at, spot.state), change.at, change.at});
    }
    keep_which(found, spot.which);
    return found;
}

std::vector<Span> Evidence::spans(const std::string& state, const std::string& object) const
{
    std::vector<Span> all;
    std::set<std::string> holding;
    const Time never{std::numeric_limits<double>::infinity()};
    for (std::size_t i = 0; i < log_.states.size(); ++i) {
        const job::StateChange& change = log_.states[i];
        if (change.state != state || (!object.empty() && change.object != object)) continue;
        const bool was_holding = !holding.empty();
        if (change.holds) holding.insert(change.object);
        else holding.erase(change.object);
        if (!was_holding && !holding.empty()) {
            // Gone and back at the same instant is no gap.
            if (!all.empty() && all.back().to == change.at) all.back().to = never;
            else all.push_back({change.at, never});
        }
        else if (was_holding && holding.empty()) all.back().to = change.at;
    }
    return all;
}

bool Evidence::holds_at(const std::string& state, const std::string& object, Time at) const
{
    for (const Span& span : spans(state, object))
        if (span.from <= at && at < span.to) return true;
    return false;
}

int Evidence::entry_at(Time at, const std::string& state) const
{
    const StateWords* words = rules::find_state(state);
    int found = -1;
    bool is_changer_found = false;
    for (const int index : order_) {
        const job::LogEntry& entry = this->entry(index);
        if (!is_done(entry) || entry.start > at || entry.end < at) continue;
        const bool is_changer = words && has_word(words->steps, entry.step);
        const bool is_better = found < 0 || (is_changer && !is_changer_found) || (is_changer == is_changer_found && entry.start < at);
        if (!is_better) continue;
        found = index;
        is_changer_found = is_changer;
    }
    return found;
}

}
