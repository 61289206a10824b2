#include "rules/conditions/after_each.hpp"

#include "rules/telling.hpp"

#include <algorithm>

namespace flapdoor::rules {

using text::sentence;

Judgement judge(const AfterEach& condition, const Evidence& evidence, const std::string& self)
{
    Judgement judgement;
    const auto remedies = evidence.find(condition.remedy, self, Evidence::Count::done_or_not_needed);
    const auto limits = condition.until ? evidence.find(*condition.until, self) : std::vector<Occurrence>{};
    for (const Occurrence& event : evidence.find(condition.event, self)) {
        judgement.keep();
        const auto limit = std::find_if(limits.begin(), limits.end(), [&](const Occurrence& l) { return l.start >= event.end && l.entry != event.entry; });
        if (condition.until && limit == limits.end()) continue;
        const bool is_done = std::any_of(remedies.begin(), remedies.end(), [&](const Occurrence& remedy) {
            return remedy.start >= event.end && (limit == limits.end() || remedy.end <= limit->start);
        });
        if (is_done) continue;
        const std::string missing = missing_key(condition.remedy, self);
        if (limit == limits.end())
            judgement.break_by({-1, event.entry, missing, self, event.end,
                                sentence("{0}{1} did not follow {2}.", spot_title(condition.remedy), thing_text(evidence, self), card_text(evidence, event.entry))});
        else
            judgement.break_by({-1, limit->entry, missing, self, limit->start,
                                sentence("{0}{1} was not done between {2} and {3}.", spot_title(condition.remedy), thing_text(evidence, self), card_text(evidence, event.entry), card_text(evidence, limit->entry))});
    }
    return judgement;
}

}
