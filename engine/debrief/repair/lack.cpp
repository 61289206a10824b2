#include "debrief/repair/lack.hpp"

#include "core/insist.hpp"
#include "drill/run.hpp"
#include "job/card_node.hpp"
#include "text/writing.hpp"

#include <algorithm>

namespace flapdoor::debrief {

namespace {

bool is_among(const std::vector<job::SupplyId>& list, const job::SupplyId& id) { return std::find(list.begin(), list.end(), id) != list.end(); }

/// A card by which somebody enters, as the plan does it elsewhere; null when nobody ever does.
const job::Card* way_in(const job::WorkPlan& plan)
{
    const auto found = std::find_if(plan.cards.begin(), plan.cards.end(), [](const job::Card& card) { return std::holds_alternative<job::EnterWorkArea>(card.step); });
    return found == plan.cards.end() ? nullptr : &*found;
}

}

Lack lack_of(const site::Site& site, const job::Card& card, int number)
{
    Lack lack{number, {}, {}};
    const std::optional<text::Sentence> refusal = drill::why_not(site, card);
    insist(refusal.has_value(), "only a refused card lacks something");
    // On a copy on which all is at hand: what is taken away again and brings the refusal back was lacking.
    site::Site other = site;
    for (const job::Supply& supply : site.scenario.supplies)
        if (!is_among(other.staged, supply.id)) other.staged.push_back(supply.id);
    if (drill::why_not(other, card) != refusal) {
        const std::vector<job::SupplyId> all = other.staged;
        for (const job::Supply& supply : site.scenario.supplies) {
            if (is_among(site.staged, supply.id)) continue;
            other.staged.erase(std::find(other.staged.begin(), other.staged.end(), supply.id));
            if (drill::why_not(other, card) == refusal) lack.left_outside.push_back(supply.id.name);
            other.staged = all;
        }
    }
    const std::optional<text::Sentence> still = drill::why_not(other, card);
    if (!still) return lack;
    std::vector<job::PersonId> outside;
    for (site::Worker& who : other.crew) {
        if (who.is_inside || std::find(card.by.begin(), card.by.end(), who.id) == card.by.end()) continue;
        who.is_inside = true;
        outside.push_back(who.id);
    }
    if (drill::why_not(other, card) != still) lack.not_inside = std::move(outside);
    return lack;
}

std::vector<PlanEdit> staging(const job::WorkPlan& plan, const std::vector<std::string>& supplies, int place)
{
    const auto stage = std::find_if(plan.cards.begin(), plan.cards.end(), [](const job::Card& c) { return std::holds_alternative<job::StageTools>(c.step); });
    if (stage == plan.cards.end() || stage - plan.cards.begin() >= place) return {};
    const text::Node node = job::card_node(*stage);
    const text::Node* brought = std::get<text::Table>(node.value).find("supplies");
    text::Array all = brought != nullptr ? std::get<text::Array>(brought->value) : text::Array{};
    const std::size_t before = all.size();
    for (const std::string& name : supplies)
        if (std::none_of(all.begin(), all.end(), [&](const text::Node& there) { return text::plain_text(there) == name; })) all.push_back(text::leaf_node(name));
    if (all.size() == before) return {};
    PlanEdit edit;
    edit.card = static_cast<int>(stage - plan.cards.begin());
    edit.values.emplace_back("supplies", text::list_node(std::move(all)));
    return {edit};
}

std::vector<PlanEdit> made_up(const Lack& lack, const job::WorkPlan& plan, const EditedPlan& changed)
{
    const int place = changed.place.at(static_cast<std::size_t>(lack.card));
    std::vector<PlanEdit> edits = staging(plan, lack.left_outside, place);
    const job::Card* entering = lack.not_inside.empty() ? nullptr : way_in(plan);
    if (entering == nullptr) return edits;
    PlanEdit enter;
    enter.kind = PlanEdit::Kind::put_in;
    enter.put = *entering;
    enter.put.label.clear();
    enter.put.by = lack.not_inside;
    enter.before = place;
    edits.push_back(std::move(enter));
    return edits;
}

}
