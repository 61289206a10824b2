#include "rules/conditions/before.hpp"

#include "rules/telling.hpp"

#include <algorithm>

namespace flapdoor::rules {

using text::sentence;

namespace {

/// The one that is done soonest: if any serves a later card, it does.
const Occurrence& earliest_ended(const std::vector<Occurrence>& found)
{
    return *std::min_element(found.begin(), found.end(), [](const Occurrence& a, const Occurrence& b) { return a.end < b.end; });
}

}

Judgement judge(const Before& before, const Evidence& evidence, const std::string& self)
{
    Judgement judgement;
    const auto firsts = evidence.find(before.first, self, Evidence::Count::done_or_not_needed);
    for (const Occurrence& then : evidence.find(before.then, self)) {
        judgement.keep();
        if (firsts.empty()) {
            const std::string missing = missing_key(before.first, self);
            judgement.break_by({-1, then.entry, missing, self, then.start,
                                sentence("{0}{1} was not done before {2}.", spot_title(before.first), thing_text(evidence, self), card_text(evidence, then.entry))});
            judgement.pairs.push_back({-1, then.entry, before.first.is_cards() ? missing : std::string(), false});
            continue;
        }
        const Occurrence& first = earliest_ended(firsts);
        const bool is_kept = first.end <= then.start && (first.entry != then.entry || !before.first.is_cards());
        judgement.pairs.push_back({first.entry, then.entry, {}, is_kept});
        if (!is_kept)
            judgement.break_by({first.entry, then.entry, {}, self, then.start,
                                sentence("{0}{1} was not done when {2} began.", card_text(evidence, first.entry), thing_text(evidence, self), card_text(evidence, then.entry))});
    }
    return judgement;
}

}
