#pragma once

#include "debrief/repair/repair.hpp"
#include "rules/evidence.hpp"

#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace flapdoor::debrief {

/// Cards at hand for a repair: those of the plan and those of the pattern, and which of them are about the same.
class Shelf {
public:
    explicit Shelf(const RepairShop& shop);

    /// A card of the pattern.
    struct Taken {
        job::Card card;
        int twin = -1;      ///< its number there
    };

    struct Place {
        std::optional<int> at;
        std::string why_not;
    };

    int end() const { return static_cast<int>(shop_.plan.cards.size()); }

    // ---- what happened here
    bool is_spoken_of(int card, const rules::Spot& spot, const std::string& object) const;
    int last_of(const rules::Spot& spot, const std::string& object) const;
    /// The last card of that kind before another one, about that bag where the object is one; -1 when there is none.
    int last_before(const std::string& step, int card, const std::string& object) const;
    /// The last card before another one that a spot would speak of but for its settings, and that the pattern has with others; -1 when there is
    /// none.
    int set_otherwise(const rules::Spot& spot, const std::string& object, int before) const;
    /// The card by which a state became so at that time; -1 when no card did.
    int changed_by(const std::string& state, const std::string& object, bool holds, Time at) const;
    /// The first card not before `from` that makes a state hold (or not); -1 when none does.
    int first_to_bring_about(const std::string& state, const std::string& object, bool wanted, int from) const;
    /// Does the state follow from what a check finds, so that no card alone brings it about?
    bool hangs_on_a_result(const std::string& state) const;

    // ---- what the pattern has
    int twin_here(int card_there) const;
    std::optional<Taken> from_pattern(const rules::Spot& spot, const std::string& object) const;
    /// A card of that kind, set to serve for a card of this plan: about that bag, by those people.
    std::optional<Taken> from_pattern_for(const std::string& step, int served, const std::string& object) const;
    std::optional<Taken> bringer_of_pattern(const std::string& state, const std::string& object, bool wanted) const;
    /// The value of a key of the card's twin; nothing without a twin or where it is the same.
    std::optional<text::Node> pattern_value(int card, const std::string& key) const;
    /// Values of that key that any card of the pattern has, cards of the same kind first.
    std::vector<text::Node> pattern_values(const std::string& step, const std::string& key) const;
    /// All settings in which the twin differs; not its people, label or bag.
    std::vector<std::pair<std::string, text::Node>> settings_of_twin(int card) const;
    std::optional<text::Node> fitting_people(int card, job::Role role) const;

    // ---- where things can go
    /// Between two cards, where the pattern has it among the cards that both have, else as near as it can be carried out.
    Place place_for(const Taken& taken, int before, int after) const;
    /// The latest place at or before `before` at which the card could be carried out; nothing when there is none.
    std::optional<int> earlier_place(int card, int before) const;
    /// Supplies that a card needs and nobody brought inside are brought: edits of the card that brings things, where it comes before
    /// the place at which they are needed.
    std::vector<PlanEdit> staging_for(const job::Card& card, int place) const;
    std::vector<PlanEdit> staging_for(const std::vector<std::pair<std::string, text::Node>>& values, int place) const;

    const RepairShop& shop() const { return shop_; }
    const job::Card& card(int index) const { return shop_.plan.cards.at(static_cast<std::size_t>(index)); }
    const job::LogEntry& entry(int index) const { return shop_.log.entries.at(static_cast<std::size_t>(index)); }

private:
    int changer_at(Time when, const std::string& state) const;

    const RepairShop& shop_;
    rules::Evidence here_;
    std::optional<rules::Evidence> there_;
    std::vector<int> twin_of_;          ///< [card here] card there
    std::vector<int> twin_here_;        ///< [card there] card here
};

}
