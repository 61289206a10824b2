#include "rules/conditions/never.hpp"

#include "job/card_words.hpp"
#include "rules/telling.hpp"
#include "rules/vocabulary.hpp"
#include "text/language.hpp"
#include "text/leaf_reading.hpp"

#include <fmt/format.h>

namespace flapdoor::rules {

using text::sentence;
using text::to_say;

namespace {

/// The same kinds of card whatever their parameters: what the rule is about.
Spot subject_of(const Spot& spot)
{
    Spot subject = spot;
    subject.with = {};
    subject.is = {};
    return subject;
}

text::Sentence told_value(const std::string& value)
{
    if (value.empty()) return to_say("none");
    if (value == "true" || value == "false") return value == "true" ? to_say("yes") : to_say("no");
    return job::with_spaces(value);
}

text::Sentence details(const Spot& spot, const job::LogEntry& entry)
{
    text::Sentence told;
    for (const Match& match : spot.with.all)
        told = joined(std::move(told), {to_say("“{}: {}”"), {job::with_spaces(match.parameter), told_value(job::parameter(entry, match.parameter))}});
    if (const MeasureWords* words = find_measure_words(spot.measured)) told = joined(std::move(told), words->title);
    return told.empty() ? told : text::Sentence(": {}", {told});
}

}

void Never::from_node(const text::Node& node, Never& into, Problems& problems)
{
    const auto keep = [&](const text::Node& value) { Spot::from_node(value, into.any_of.emplace_back(), problems); };
    const auto* list = std::get_if<text::Array>(&node.value);
    if (!list) return keep(node);
    if (list->empty()) text::refuse(node, {"never"}, "what must not happen", problems);
    for (const text::Node& value : *list) keep(value);
}

text::Node Never::to_node(const Never& never)
{
    if (never.any_of.size() == 1) return Spot::to_node(never.any_of.front());
    text::Array list;
    for (const Spot& spot : never.any_of) list.push_back(Spot::to_node(spot));
    return {{}, std::move(list)};
}

Judgement judge(const Never& never, const Evidence& evidence, const std::string& self)
{
    Judgement judgement;
    for (const Spot& spot : never.any_of) {
        const bool is_absolute = spot.with.all.empty() && spot.measured.empty();
        if (is_absolute || !evidence.find(subject_of(spot), self).empty()) judgement.keep();
        for (const Occurrence& found : evidence.find(spot, self)) {
            const text::Sentence detail = found.entry >= 0 && spot.is_cards() ? details(spot, evidence.entry(found.entry)) : text::Sentence();
            judgement.break_by({found.entry, -1, {}, self, found.start,
                                sentence("{0}{1}{2} must never be.", card_text(evidence, found.entry), detail, thing_text(evidence, self))});
        }
    }
    return judgement;
}

}
