#include "rules/conditions/repeat_until.hpp"

#include "rules/telling.hpp"
#include "rules/value_match.hpp"

#include <algorithm>

namespace flapdoor::rules {

using text::sentence;

namespace {

bool is_good(const RepeatUntil& condition, const job::LogEntry& entry, const std::string& self)
{
    return std::all_of(entry.measured.begin(), entry.measured.end(), [&](const job::Measure& measure) {
        const bool is_other = measure.name != condition.measured || (!condition.of.empty() && measure.object != resolved(condition.of, self));
        return is_other || measure_fits(measure.value, comparison(condition.good), measure.kind);
    });
}

}

Judgement judge(const RepeatUntil& condition, const Evidence& evidence, const std::string& self)
{
    Judgement judgement;
    Spot with_result = condition.check;
    with_result.measured = condition.measured;
    with_result.of = condition.of;
    const auto checks = evidence.find(with_result, self);
    const auto agains = evidence.find(condition.again, self, Evidence::Count::done);
    const auto bars = condition.bars ? evidence.find(*condition.bars, self) : std::vector<Occurrence>{};
    for (std::size_t i = 0; i < checks.size(); ++i) {
        judgement.keep();
        const Occurrence& check = checks[i];
        if (is_good(condition, evidence.entry(check.entry), self)) continue;
        const bool has_next = i + 1 < checks.size();
        const auto bar = std::find_if(bars.begin(), bars.end(), [&](const Occurrence& b) { return b.start >= check.end && (!has_next || b.start < checks[i + 1].start); });
        if (bar != bars.end()) {
            judgement.break_by({bar->entry, check.entry, {}, self, bar->start,
                                sentence("{0}{1} came although {2} had not come out good.", card_text(evidence, bar->entry), thing_text(evidence, self), card_text(evidence, check.entry))});
            continue;
        }
        if (!has_next) {
            judgement.break_by({-1, check.entry, missing_key(condition.check, self), self, check.end,
                                sentence("{0}{1} did not come out good and was not repeated.", card_text(evidence, check.entry), thing_text(evidence, self))});
            continue;
        }
        const Occurrence& next = checks[i + 1];
        const bool is_redone = std::any_of(agains.begin(), agains.end(), [&](const Occurrence& a) { return a.start >= check.end && a.end <= next.start; });
        if (!is_redone)
            judgement.break_by({next.entry, check.entry, missing_key(condition.again, self), self, next.start,
                                sentence("{0} was not done between {1} and {2}.", spot_title(condition.again), card_text(evidence, check.entry), card_text(evidence, next.entry))});
    }
    return judgement;
}

}
