#pragma once

#include "core/philox.hpp"
#include "job/scenario.hpp"
#include "job/work_plan.hpp"
#include "text/field_types.hpp"

#include <algorithm>
#include <array>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

/// Cards with valid parameters, drawn at random: every kind of step, every field inside its range, every id one of the
/// scenario. Nothing says that such a card makes sense.
namespace flapdoor::job {

/// A row of draws that belongs to a seed.
class Dice {
public:
    explicit Dice(std::uint64_t seed) : luck_{seed, Stream::parameter} {}

    double unit() { return luck_.uniform(count_++, 0); }
    bool flag() { return unit() < 0.5; }
    /// 0 to count - 1.
    std::size_t below(std::size_t count) { return std::min(count - 1, static_cast<std::size_t>(unit() * static_cast<double>(count))); }
    double between(double least, double most) { return std::clamp(least + unit() * (most - least), least, most); }

private:
    Luck luck_;
    std::uint64_t count_ = 0;
};

/// The visitor that fills the fields of a step.
class RandomFields {
public:
    RandomFields(Dice& dice, const Scenario& scenario) : dice_(dice), scenario_(scenario) {}

    template <class Field, class... Given>
    void operator()(std::string_view, Field& field, const Given&... given)
    {
        const auto tags = text::gather<Field>(given...);
        if (!tags.is_required && dice_.unit() < 0.3) return;   // a default, too
        fill(field, tags);
    }

private:
    template <class List>
    void pick(const List& things, auto& id)
    {
        if (!things.empty()) id = things[dice_.below(things.size())].id;
    }

    template <class T>
    void fill(T& field, const auto& tags)
    {
        if constexpr (std::same_as<T, bool>) field = dice_.flag();
        else if constexpr (Worded<T>) field = static_cast<T>(dice_.below(Words<T>::words.size()));
        else if constexpr (text::WholeNumber<T>) field = tags.range->least + static_cast<T>(dice_.below(static_cast<std::size_t>(tags.range->most - tags.range->least) + 1));
        else if constexpr (std::same_as<T, double>) field = dice_.between(tags.range->least, tags.range->most);
        else if constexpr (text::Measured<T>) field = T{dice_.between(text::si_of(tags.range->least), text::si_of(tags.range->most))};
        else if constexpr (std::same_as<T, OpeningId>) pick(scenario_.openings, field);
        else if constexpr (std::same_as<T, ZoneId>) pick(scenario_.zones, field);
        else if constexpr (std::same_as<T, ObjectId>) pick(scenario_.objects, field);
        else if constexpr (std::same_as<T, SillId>) pick(scenario_.sills, field);
        else if constexpr (std::same_as<T, CounterId>) pick(scenario_.counters, field);
        else if constexpr (std::same_as<T, ComponentId>) pick(scenario_.components, field);
        else if constexpr (std::same_as<T, PersonId>) pick(scenario_.crew, field);
        else if constexpr (std::same_as<T, SupplyId>) pick(scenario_.supplies, field);
        else if constexpr (std::same_as<T, BagId>) field.name = std::array{"bag-1", "bag-2", "bundle"}[dice_.below(3)];
        else if constexpr (std::same_as<T, std::vector<SupplyId>>) {
            field.clear();
            for (std::size_t n = 1 + dice_.below(4); n > 0; --n) pick(scenario_.supplies, field.emplace_back());
        }
        else if constexpr (std::same_as<T, std::vector<Waypoint>>) {
            field.clear();
            for (std::size_t n = dice_.below(4); n > 0; --n) Waypoint::fields(field.emplace_back(), *this);
        }
        else static_assert(text::is_id<T>, "a new type of field needs its line here");
    }

    Dice& dice_;
    const Scenario& scenario_;
};

inline constexpr std::size_t step_kinds = text::NamesOf<Step>::names.size();

/// A card of a kind, by its place in the list of kinds.
inline Card random_card(Dice& dice, const Scenario& scenario, std::size_t kind)
{
    Card card;
    text::choose(card.step, kind);
    std::visit([&](auto& step) { std::decay_t<decltype(step)>::fields(step, RandomFields(dice, scenario)); }, card.step);
    const std::size_t first = dice.below(scenario.crew.size());
    card.by.push_back(scenario.crew[first].id);
    for (std::size_t i = 0; i < scenario.crew.size(); ++i)
        if (i != first && dice.unit() < 0.3) card.by.push_back(scenario.crew[i].id);
    return card;
}

inline Card random_card(Dice& dice, const Scenario& scenario) { return random_card(dice, scenario, dice.below(step_kinds)); }

}
