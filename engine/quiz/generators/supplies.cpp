#include "quiz/making/generator.hpp"

#include <algorithm>

namespace flapdoor::quiz {
namespace {

using job::SupplyKindOf;

/// What a truck needs for a hard-floored room, and what looks as if it would do.
const std::vector<SupplyKindOf> needed{SupplyKindOf::sheeting, SupplyKindOf::tape, SupplyKindOf::hepa_vacuum, SupplyKindOf::bag, SupplyKindOf::mister,
                                       SupplyKindOf::cloth, SupplyKindOf::dry_cloth, SupplyKindOf::sign, SupplyKindOf::card, SupplyKindOf::handle};
const std::vector<SupplyKindOf> stand_ins{SupplyKindOf::drop_cloth, SupplyKindOf::masking_tape, SupplyKindOf::shop_vacuum, SupplyKindOf::trash_bag,
                                          SupplyKindOf::rag, SupplyKindOf::broom, SupplyKindOf::doormat, SupplyKindOf::dust_mask};

bool is_in(const std::vector<SupplyKindOf>& kinds, SupplyKindOf kind) { return std::find(kinds.begin(), kinds.end(), kind) != kinds.end(); }

/// A drill's supplies with some left behind: which ones are missing?
std::optional<Made> missing_supplies(const Setting& setting)
{
    Dice dice = setting.dice("missing-supplies");
    std::vector<const job::Supply*> good, bad;
    std::vector<SupplyKindOf> kinds;        // one of a kind, so that nothing stands in for what is missing
    for (const job::Supply& supply : setting.scenario.supplies) {
        if (is_in(kinds, supply.kind)) continue;
        kinds.push_back(supply.kind);
        if (is_in(needed, supply.kind)) good.push_back(&supply);
        if (is_in(stand_ins, supply.kind)) bad.push_back(&supply);
    }
    if (good.size() < 5 || bad.size() < 1) return std::nullopt;
    dice.shuffle(good);
    dice.shuffle(bad);
    MadeChoice choice;
    const auto offer = [&](const job::Supply& supply, bool is_right, std::string_view mistake) {
        choice.options.push_back({supply.id.name, phrase(supply.title), is_right, std::string(mistake)});
    };
    const int missing = dice.between(1, 2);
    for (int i = 0; i < missing; ++i) offer(*good[static_cast<std::size_t>(i)], true, "stand-in-will-do");
    for (std::size_t i = static_cast<std::size_t>(missing); i < static_cast<std::size_t>(missing) + 2; ++i) offer(*good[i], false, "on-the-truck-already");
    offer(*bad.back(), false, "household-tool");
    // What is on the truck, in the order of the scenario: the other good ones and the stand-ins that are not offered.
    Phrase list;
    int n = 0;
    for (const job::Supply& supply : setting.scenario.supplies) {
        const bool is_left_behind = std::any_of(good.begin(), good.begin() + missing, [&](const job::Supply* s) { return s->id == supply.id; });
        const bool is_listed = (std::find(good.begin(), good.end(), &supply) != good.end() && !is_left_behind) ||
                               (std::find(bad.begin(), bad.end(), &supply) != bad.end() && &supply != bad.back());
        if (!is_listed) continue;
        const std::string blank = "supply-" + std::to_string(++n);
        list.en += (list.en.empty() ? "{" : ", {") + blank + "}";
        list.blanks[blank] = phrase(supply.title);
    }
    list.es = list.en;
    return Made{{{"list", std::move(list)}}, std::move(choice)};
}

}

std::vector<Generator> supply_generators() { return {{"missing-supplies", {"list"}, {"stand-in-will-do", "on-the-truck-already", "household-tool"}, missing_supplies}}; }

}
