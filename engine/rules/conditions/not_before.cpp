#include "rules/conditions/not_before.hpp"

#include "rules/telling.hpp"
#include "text/language.hpp"

namespace flapdoor::rules {

using text::sentence;
using text::to_say;

namespace {

/// A state counts by whether it holds, however often it came and went.
void judge_state(Judgement& judgement, const NotBefore& not_before, const Occurrence& what, const Evidence& evidence, const std::string& self)
{
    const Spot& until = not_before.until;
    const bool wanted = until.is.words.empty() || until.is.words.front() != "false";
    if (evidence.holds_at(until.state, resolved(until.of, self), what.start) == wanted) {
        for (const Occurrence& began : evidence.find(until, self))
            if (began.start <= what.start) judgement.pairs.push_back({began.entry, what.entry, {}, true});
        return;
    }
    int later = -1;
    for (const Occurrence& began : evidence.find(until, self))
        if (began.start > what.start && later < 0) later = began.entry;
    if (later >= 0) judgement.pairs.push_back({later, what.entry, {}, false});
    judgement.break_by({what.entry, later, {}, self, what.start,
                        sentence(not_before.what.moment == Moment::end ? to_say("At the end, {1}{2}.") : to_say("When {0} began, {1}{2}."), card_text(evidence, what.entry), state_text(until.state, !wanted), thing_text(evidence, self))});
}

}

Judgement judge(const NotBefore& not_before, const Evidence& evidence, const std::string& self)
{
    Judgement judgement;
    const auto untils = evidence.find(not_before.until, self, Evidence::Count::done_or_not_needed);
    for (const Occurrence& what : evidence.find(not_before.what, self)) {
        judgement.keep();
        if (!not_before.until.state.empty()) {
            judge_state(judgement, not_before, what, evidence, self);
            continue;
        }
        if (untils.empty()) {
            const std::string missing = missing_key(not_before.until, self);
            judgement.pairs.push_back({-1, what.entry, not_before.until.is_cards() ? missing : std::string(), false});
            judgement.break_by({-1, what.entry, missing, self, what.start,
                                sentence("{0}{1} began without {2}.", card_text(evidence, what.entry), thing_text(evidence, self), spot_title(not_before.until))});
        }
        for (const Occurrence& until : untils) {
            const bool is_kept = until.end <= what.start;
            judgement.pairs.push_back({until.entry, what.entry, {}, is_kept});
            if (!is_kept)
                judgement.break_by({what.entry, until.entry, {}, self, what.start,
                                    sentence("{0}{1} began before {2} was done.", card_text(evidence, what.entry), thing_text(evidence, self), card_text(evidence, until.entry))});
        }
    }
    return judgement;
}

}
