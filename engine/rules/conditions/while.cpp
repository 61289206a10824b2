#include "rules/conditions/while.hpp"

#include "core/insist.hpp"
#include "rules/telling.hpp"
#include "text/show.hpp"

#include <algorithm>
#include <optional>

namespace flapdoor::rules {

using text::sentence;

namespace {

/// A stretch of time and the card that begins it.
struct Stretch {
    Span time;
    int entry;
};

std::vector<Stretch> stretches(const While& condition, const Evidence& evidence, const std::string& self)
{
    std::vector<Stretch> all;
    if (condition.during) {
        for (const Occurrence& card : evidence.find(*condition.during, self)) all.push_back({{card.start, card.end}, card.entry});
        return all;
    }
    insist(condition.from.has_value(), "a checked book says from when a state must hold");
    const auto from = evidence.find(*condition.from, self);
    if (from.empty()) return all;
    Time to = evidence.end();
    if (condition.to)
        if (const auto ends = evidence.find(*condition.to, self); !ends.empty()) to = ends.back().start;
    if (to >= from.front().start) all.push_back({{from.front().start, to}, from.front().entry});
    return all;
}

/// First instant of the stretch at which the state is not as wanted.
std::optional<Time> first_lapse(const Span& stretch, const std::vector<Span>& holding, bool wanted)
{
    Time at = stretch.from;
    for (const Span& span : holding) {
        if (wanted) {
            if (span.from > at || span.to <= at) continue;
            at = span.to;
            if (at >= stretch.to) return std::nullopt;
        }
        else if (span.to > stretch.from && (span.from < stretch.to || span.from == stretch.from)) return std::max(span.from, stretch.from);
    }
    if (!wanted) return std::nullopt;
    return at;
}

}

Judgement judge(const While& condition, const Evidence& evidence, const std::string& self)
{
    Judgement judgement;
    const auto holding = evidence.spans(condition.state, resolved(condition.of, self));
    for (const Stretch& stretch : stretches(condition, evidence, self)) {
        judgement.keep();
        const auto lapse = first_lapse(stretch.time, holding, condition.is);
        if (!lapse) continue;
        const int entry = *lapse == stretch.time.from ? stretch.entry : evidence.entry_at(*lapse, condition.state);
        judgement.break_by({entry, -1, {}, self, *lapse,
                            sentence("At {0}, {1}, {2}{3}.", text::show_clock(*lapse), card_text(evidence, entry), state_text(condition.state, !condition.is), thing_text(evidence, self))});
    }
    return judgement;
}

}
