#include "rules/conditions/within.hpp"

#include "core/insist.hpp"
#include "rules/telling.hpp"
#include "rules/value_match.hpp"
#include "text/show.hpp"

#include <fmt/format.h>

namespace flapdoor::rules {

using text::sentence;

namespace {

Judgement judge_counted(const Within& condition, const Evidence& evidence, const std::string& self)
{
    Judgement judgement;
    for (const Occurrence& card : evidence.find(condition.what, self)) {
        judgement.keep();
        const job::LogEntry& entry = evidence.entry(card.entry);
        const StepWords* words = find_step(entry.step);
        const ParameterWords* parameter = words ? words->parameter(condition.counted) : nullptr;
        const std::string value = job::parameter(entry, condition.counted);
        const auto number = parameter ? number_in(value, *parameter) : std::nullopt;
        if (number && *number <= *condition.most) continue;
        judgement.break_by({card.entry, -1, {}, self, card.start,
                            sentence("{0}: {1} is {2}; at most {3}.", card_text(evidence, card.entry), condition.counted, value, fmt::format("{}", *condition.most))});
    }
    return judgement;
}

}

Judgement judge(const Within& condition, const Evidence& evidence, const std::string& self)
{
    if (!condition.counted.empty()) return judge_counted(condition, evidence, self);
    insist(condition.after && condition.time, "a checked book says within what time of what");
    Judgement judgement;
    const auto after = evidence.find(*condition.after, self);
    if (after.empty()) return judgement;
    judgement.keep();
    const Time latest = after.front().end + *condition.time;
    const auto done = evidence.find(condition.what, self, Evidence::Count::done_or_not_needed);
    const std::string clock = text::show(*condition.time);
    if (done.empty())
        judgement.break_by({-1, after.front().entry, missing_key(condition.what, self), self, latest,
                            sentence("{0} was not done within {1} of {2}.", spot_title(condition.what), clock, card_text(evidence, after.front().entry))});
    else if (done.front().start > latest)
        judgement.break_by({done.front().entry, after.front().entry, {}, self, done.front().start,
                            sentence("{0} began more than {1} after {2}.", card_text(evidence, done.front().entry), clock, card_text(evidence, after.front().entry))});
    return judgement;
}

}
