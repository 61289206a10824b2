#include "rules/conditions/never.hpp"

#include "rules/telling.hpp"
#include "rules/vocabulary.hpp"
#include "text/leaf_reading.hpp"

#include <fmt/format.h>

namespace flapdoor::rules {
namespace {

/// The same kinds of card whatever their parameters: what the rule is about.
Spot subject_of(const Spot& spot)
{
    Spot subject = spot;
    subject.with = {};
    subject.is = {};
    return subject;
}

std::string details(const Spot& spot, const job::LogEntry& entry)
{
    std::string text;
    for (const Match& match : spot.with.all) {
        const std::string value = job::parameter(entry, match.parameter);
        text += fmt::format("{}{} {}", text.empty() ? ": " : ", ", match.parameter, value.empty() ? "none" : value);
    }
    if (const MeasureWords* words = find_measure_words(spot.measured)) text += fmt::format("{}{}", text.empty() ? ": " : ", ", words->title);
    return text;
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
            const std::string detail = found.entry >= 0 && spot.is_cards() ? details(spot, evidence.entry(found.entry)) : std::string();
            judgement.break_by({found.entry, -1, {}, self, found.start,
                                {"{0}{1}{2} must never be.", {card_text(evidence, found.entry), detail, thing_text(evidence, self)}}});
        }
    }
    return judgement;
}

}
