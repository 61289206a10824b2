#include "rules/conditions/at_least.hpp"

#include "plan/sections.hpp"
#include "rules/telling.hpp"
#include "rules/value_match.hpp"
#include "text/language.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <map>

namespace flapdoor::rules {

using text::sentence;
using text::to_say;

namespace {

struct Reading {
    int entry;
    Time at;
    const job::Measure* measure;
};

/// Measurements of the named kind, each object's apart, in the order in which they were made.
std::map<std::string, std::vector<Reading>> readings(const AtLeast& condition, const Evidence& evidence, const std::string& self)
{
    Spot at = condition.at.value_or(Spot{});
    at.measured = condition.measured;
    at.of = condition.of;
    std::map<std::string, std::vector<Reading>> of_object;
    for (const Occurrence& card : evidence.find(at, self))
        for (const job::Measure& measure : evidence.entry(card.entry).measured) {
            const bool is_wanted = measure.name == condition.measured && (condition.of.empty() || measure.object == resolved(condition.of, self));
            if (is_wanted) of_object[measure.object].push_back({card.entry, card.end, &measure});
        }
    for (auto& [object, list] : of_object) {
        if (condition.which == Which::first) list.resize(1, list.front());
        if (condition.which == Which::last) list = {list.back()};
    }
    return of_object;
}

/// Sections the bare floor must be divided into: by its measured area, or where nobody measured it by the areas that were wiped.
std::string sections_due(const Evidence& evidence)
{
    std::map<std::string, double> area_of;
    for (const job::LogEntry& entry : evidence.log().entries)
        if (const job::Measure* floor = job::find_measure(entry, "bare-floor")) return fmt::format("{}", plan::sections_needed(Area{floor->value}));
    for (const job::LogEntry& entry : evidence.log().entries)
        for (const job::Measure& measure : entry.measured)
            if (entry.step == "wipe-floor" && measure.name == "cloth-area") area_of[measure.object] = measure.value;
    double all = 0.0;
    for (const auto& [section, area] : area_of) all += area;
    return fmt::format("{}", all > 0.0 ? plan::sections_needed(Area{all}) : 0);
}

void check_limit(Judgement& judgement, const Reading& reading, const Comparison& limit, std::string_view words, const Evidence& evidence)
{
    const job::Measure& measure = *reading.measure;
    if (measure_fits(measure.value, limit, measure.kind)) return;
    const MeasureWords* known = find_measure_words(measure.name);
    const text::Sentence object = thing_text(evidence, measure.object);
    if (measure.kind == job::MeasureKind::truth) {   // a yes or no is not "at least"
        judgement.break_by({reading.entry, -1, {}, measure.object, reading.at,
                            sentence("{0}: {1}{2}: {3}.", card_text(evidence, reading.entry), known ? known->title : std::string_view(measure.name), object, show_measure(measure.value, measure.kind))});
        return;
    }
    judgement.break_by({reading.entry, -1, {}, measure.object, reading.at,
                        sentence("{0}: {1}{2} is {3}; it must be {4} {5}.", card_text(evidence, reading.entry), known ? known->title : std::string_view(measure.name), object, show_measure(measure.value, measure.kind), words, limit.value)});
}

Judgement judge_measured(const AtLeast& condition, const Evidence& evidence, const std::string& self)
{
    Judgement judgement;
    for (const auto& [object, list] : readings(condition, evidence, self))
        for (const Reading& reading : list) {
            judgement.keep();
            const auto check = [&](const std::string& limit, Comparison::Sign sign, std::string_view words) {
                if (limit.empty()) return;
                check_limit(judgement, reading, {sign, limit == "sections-due" ? sections_due(evidence) : limit}, words, evidence);
            };
            check(condition.least, Comparison::Sign::at_least, to_say("at least"));
            check(condition.most, Comparison::Sign::at_most, to_say("at most"));
            check(condition.below, Comparison::Sign::less, to_say("less than"));
        }
    return judgement;
}

Judgement judge_count(const AtLeast& condition, const Evidence& evidence, const std::string& self)
{
    Judgement judgement;
    const auto done = evidence.find(*condition.done, self, Evidence::Count::done_or_not_needed);
    const auto enough = [&](Time by, int excluded) {
        return std::count_if(done.begin(), done.end(), [&](const Occurrence& d) { return d.end <= by && d.entry != excluded; }) >= condition.times;
    };
    const std::string missing = missing_key(*condition.done, self);
    const text::Sentence times = condition.times == 1 ? text::Sentence() : sentence(" {} times", condition.times);
    if (!condition.by) {
        judgement.keep();
        if (!enough(evidence.end(), -1))
            judgement.break_by({-1, -1, missing, self, evidence.end(),
                                sentence("{0}{1} was not done{2}.", spot_title(*condition.done), thing_text(evidence, self), times)});
        return judgement;
    }
    for (const Occurrence& by : evidence.find(*condition.by, self)) {
        judgement.keep();
        if (!enough(by.start, by.entry))
            judgement.break_by({by.entry, -1, missing, self, by.start,
                                sentence("{0}{1} was not done{2} before {3}.", spot_title(*condition.done), thing_text(evidence, self), times, card_text(evidence, by.entry))});
    }
    return judgement;
}

}

Judgement judge(const AtLeast& condition, const Evidence& evidence, const std::string& self)
{
    return condition.done ? judge_count(condition, evidence, self) : judge_measured(condition, evidence, self);
}

}
