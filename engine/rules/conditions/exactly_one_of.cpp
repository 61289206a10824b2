#include "rules/conditions/exactly_one_of.hpp"

#include "rules/telling.hpp"
#include "text/leaf_reading.hpp"

namespace flapdoor::rules {

using text::sentence;

void ExactlyOneOf::from_node(const text::Node& node, ExactlyOneOf& into, Problems& problems)
{
    const auto* list = std::get_if<text::Array>(&node.value);
    if (!list || list->size() < 2) return text::refuse(node, {"exactly_one_of"}, "a list of two or more", problems);
    for (const text::Node& value : *list) Spot::from_node(value, into.spots.emplace_back(), problems);
}

text::Node ExactlyOneOf::to_node(const ExactlyOneOf& condition)
{
    text::Array list;
    for (const Spot& spot : condition.spots) list.push_back(Spot::to_node(spot));
    return {{}, std::move(list)};
}

Judgement judge(const ExactlyOneOf& condition, const Evidence& evidence, const std::string& self)
{
    Judgement judgement;
    judgement.keep();
    std::vector<Occurrence> found;   // the first of each kind that occurs
    text::Sentence titles;
    for (const Spot& spot : condition.spots) {
        titles = joined(std::move(titles), spot_title(spot));
        if (const auto all = evidence.find(spot, self); !all.empty()) found.push_back(all.front());
    }
    if (found.empty())
        judgement.break_by({-1, -1, missing_key(condition.spots.front(), self), self, evidence.end(), sentence("None of these was done{1}: {0}.", titles, thing_text(evidence, self))});
    for (std::size_t i = 1; i < found.size(); ++i)
        judgement.break_by({found[i].entry, found.front().entry, {}, self, found[i].start,
                            sentence("{0} came besides {1}{2}; only one of them may.", card_text(evidence, found[i].entry), card_text(evidence, found.front().entry), thing_text(evidence, self))});
    return judgement;
}

}
