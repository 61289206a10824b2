#include "debrief/repair/shelf.hpp"

#include "core/insist.hpp"
#include "core/place_in_list.hpp"
#include "debrief/repair/lack.hpp"
#include "job/card_key.hpp"
#include "job/card_node.hpp"
#include "rules/vocabulary.hpp"
#include "text/language.hpp"
#include "text/writing.hpp"

#include <algorithm>
#include <sstream>

namespace flapdoor::debrief {

namespace {

text::Table& table_of(text::Node& node) { return std::get<text::Table>(node.value); }

const text::Node* value_in(const text::Node& card, const std::string& key) { return std::get<text::Table>(card.value).find(key); }

bool is_same(const text::Node& a, const text::Node& b) { return text::plain_text(a) == text::plain_text(b); }

/// Names of the supplies a card uses.
std::vector<std::string> supplies_of(const job::Card& card)
{
    std::vector<std::string> names;
    std::visit([&]<class S>(const S& step) {
        S::fields(step, [&]<class Field>(std::string_view, const Field& field, const auto&...) {
            if constexpr (std::is_same_v<Field, job::SupplyId>)
                if (!field.is_empty()) names.push_back(field.name);
        });
    }, card.step);
    return names;
}

}

Shelf::Shelf(const RepairShop& shop) : shop_(shop), here_(shop.scenario, shop.log)
{
    if (!shop.pattern) {
        twin_of_.assign(shop.plan.cards.size(), -1);
        return;
    }
    there_.emplace(shop.scenario, shop.pattern->log);
    twin_of_ = job::cards_in_common(shop.plan, shop.pattern->plan);
    twin_here_.assign(shop.pattern->plan.cards.size(), -1);
    for (std::size_t i = 0; i < twin_of_.size(); ++i)
        if (twin_of_[i] >= 0) twin_here_[at(twin_of_[i])] = static_cast<int>(i);
}

bool Shelf::is_spoken_of(int card, const rules::Spot& spot, const std::string& object) const
{
    const std::vector<rules::Occurrence> all = here_.find(spot, object);
    return std::any_of(all.begin(), all.end(), [&](const rules::Occurrence& found) { return found.entry == card; });
}

int Shelf::last_of(const rules::Spot& spot, const std::string& object) const
{
    const std::vector<rules::Occurrence> all = here_.find(spot, object);
    return all.empty() ? -1 : all.back().entry;
}

int Shelf::last_before(const std::string& step, int card, const std::string& object) const
{
    for (int i = card - 1; i >= 0; --i) {
        if (entry(i).step != step || entry(i).outcome == job::Outcome::refused) continue;
        const std::string bag = job::parameter(entry(i), "bag");
        if (bag.empty() ? step == "lay-floor-sheet" : bag == object) return i;
    }
    return -1;
}

int Shelf::set_otherwise(const rules::Spot& spot, const std::string& object, int before) const
{
    if (spot.with.all.empty()) return -1;
    rules::Spot any = spot;
    any.with.all.clear();
    const std::vector<rules::Occurrence> all = here_.find(any, object);
    const auto found = std::find_if(all.rbegin(), all.rend(), [&](const rules::Occurrence& o) { return o.entry >= 0 && o.entry < before && !settings_of_twin(o.entry).empty(); });
    return found == all.rend() ? -1 : found->entry;
}

/// How the site stood at the beginning is no card's doing, though one begins then.
int Shelf::changer_at(Time when, const std::string& state) const
{
    const int found = here_.entry_at(when, state);
    const rules::StateWords* words = rules::find_state(state);
    if (found < 0 || words == nullptr || words->steps.empty()) return found;
    std::istringstream steps{std::string(words->steps)};
    for (std::string step; steps >> step;)
        if (step == entry(found).step) return found;
    return -1;
}

int Shelf::changed_by(const std::string& state, const std::string& object, bool holds, Time when) const
{
    for (const job::StateChange& change : shop_.log.states)
        if (change.at == when && change.state == state && (object.empty() || change.object == object) && change.holds == holds) return changer_at(when, state);
    return -1;
}

int Shelf::first_to_bring_about(const std::string& state, const std::string& object, bool wanted, int from) const
{
    for (const job::StateChange& change : shop_.log.states) {
        if (change.state != state || (!object.empty() && change.object != object) || change.holds != wanted) continue;
        if (const int by = changer_at(change.at, state); by >= from) return by;
    }
    return -1;
}

bool Shelf::hangs_on_a_result(const std::string& state) const
{
    return state == "passed" || state == "verified" || state == "inspection-passed" || state == "containment-whole";
}

int Shelf::twin_here(int card_there) const { return twin_here_.at(at(card_there)); }

std::optional<Shelf::Taken> Shelf::from_pattern(const rules::Spot& spot, const std::string& object) const
{
    if (!there_) return std::nullopt;
    const std::vector<rules::Occurrence> all = there_->find(spot, object, rules::Evidence::Count::done_or_not_needed);
    const rules::Occurrence* best = nullptr;
    for (const rules::Occurrence& found : all) {
        if (found.entry < 0) continue;
        if (best == nullptr || (twin_here(best->entry) >= 0 && twin_here(found.entry) < 0)) best = &found;    // one that this plan lacks
    }
    if (best == nullptr) return std::nullopt;
    return Taken{shop_.pattern->plan.cards.at(at(best->entry)), best->entry};
}

std::optional<Shelf::Taken> Shelf::from_pattern_for(const std::string& step, int served, const std::string& object) const
{
    if (!there_) return std::nullopt;
    const std::vector<job::Card>& cards = shop_.pattern->plan.cards;
    const auto found = std::find_if(cards.begin(), cards.end(), [&](const job::Card& c) { return std::visit([&](const auto& s) { return s.name == step; }, c.step); });
    if (found == cards.end()) return std::nullopt;
    text::Node node = job::card_node(*found);
    for (text::Entry& entry : table_of(node).entries)
        if (entry.key == "bag") entry.value = text::leaf_node(object);
    Result<job::Card> card = job::card_from(node);
    insist(card.has_value(), "a card with another bag is a card");
    // On the way out each cleans himself; a bag is looked after by those who then carry it.
    card->by = this->card(served).by;
    return Taken{std::move(*card), static_cast<int>(found - cards.begin())};
}

std::optional<Shelf::Taken> Shelf::bringer_of_pattern(const std::string& state, const std::string& object, bool wanted) const
{
    if (!there_) return std::nullopt;
    for (const job::StateChange& change : shop_.pattern->log.states) {
        if (change.state != state || (!object.empty() && change.object != object) || change.holds != wanted) continue;
        const int by = there_->entry_at(change.at, state);
        if (by >= 0) return Taken{shop_.pattern->plan.cards.at(at(by)), by};
    }
    return std::nullopt;
}

std::optional<text::Node> Shelf::pattern_value(int card, const std::string& key) const
{
    const int twin = twin_of_.at(at(card));
    if (twin < 0) return std::nullopt;
    const text::Node there = job::card_node(shop_.pattern->plan.cards.at(at(twin)));
    const text::Node here = job::card_node(this->card(card));
    const text::Node* value = value_in(there, key);
    const text::Node* mine = value_in(here, key);
    if (value == nullptr || (mine != nullptr && is_same(*value, *mine))) return std::nullopt;
    return *value;
}

std::vector<text::Node> Shelf::pattern_values(const std::string& step, const std::string& key) const
{
    std::vector<text::Node> of_step, of_others;
    if (!shop_.pattern) return of_step;
    for (const job::Card& card : shop_.pattern->plan.cards) {
        const text::Node node = job::card_node(card);
        if (const text::Node* value = value_in(node, key)) (std::visit([&](const auto& s) { return s.name == step; }, card.step) ? of_step : of_others).push_back(*value);
    }
    of_step.insert(of_step.end(), of_others.begin(), of_others.end());
    return of_step;
}

std::vector<std::pair<std::string, text::Node>> Shelf::settings_of_twin(int card) const
{
    std::vector<std::pair<std::string, text::Node>> values;
    const int twin = twin_of_.at(at(card));
    if (twin < 0) return values;
    const text::Node there = job::card_node(shop_.pattern->plan.cards.at(at(twin)));
    const text::Node here = job::card_node(this->card(card));
    for (const text::Entry& entry : std::get<text::Table>(there.value).entries) {
        if (entry.key == "do" || entry.key == "by" || entry.key == "label" || entry.key == "bag") continue;
        const text::Node* mine = value_in(here, entry.key);
        if (mine == nullptr || !is_same(*mine, entry.value)) values.emplace_back(entry.key, entry.value);
    }
    return values;
}

std::optional<text::Node> Shelf::fitting_people(int card, job::Role role) const
{
    if (std::optional<text::Node> by = pattern_value(card, "by")) return by;
    for (const job::Person& person : shop_.scenario.crew)
        if (person.role <= role) return text::list_node({text::leaf_node(person.id.name)});
    return std::nullopt;
}

Shelf::Place Shelf::place_for(const Taken& taken, int before, int after) const
{
    int start = after + 1;
    for (int there = taken.twin - 1; there >= 0; --there)
        if (const int mine = twin_here(there); mine > after && mine < before) {
            start = mine + 1;
            break;
        }
    Place place;
    const auto try_at = [&](int here) {
        const std::optional<text::Sentence> refusal = shop_.why_not(here, taken.card);
        if (!refusal) place.at = here;
        else if (place.why_not.empty()) place.why_not = text::say_with("it cannot be carried out there: {}", refusal->said());
        return !refusal;
    };
    for (int here = start; here <= before; ++here)
        if (try_at(here)) return place;
    for (int here = start - 1; here > after; --here)
        if (try_at(here)) return place;
    return place;
}

std::optional<int> Shelf::earlier_place(int card, int before) const
{
    for (int here = before; here >= 0; --here)
        if (!shop_.why_not(here, this->card(card))) return here;
    return std::nullopt;
}

std::vector<PlanEdit> Shelf::staging_for(const job::Card& card, int place) const { return staging(shop_.plan, supplies_of(card), place); }

std::vector<PlanEdit> Shelf::staging_for(const std::vector<std::pair<std::string, text::Node>>& values, int place) const
{
    std::vector<std::string> names;
    for (const auto& [key, value] : values)
        if (const auto* name = std::get_if<std::string>(&value.value))
            if (job::find_by_id(shop_.scenario.supplies, job::SupplyId{*name}) != nullptr) names.push_back(*name);
    return staging(shop_.plan, names, place);
}

}
