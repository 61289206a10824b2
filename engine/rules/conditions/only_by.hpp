#pragma once

#include "job/contents.hpp"
#include "rules/judgement.hpp"
#include "rules/spot.hpp"

namespace flapdoor::rules {

class Evidence;

/// `only_by = { cards = a, role = "certified-renovator" }`: everybody who carries out such a card has that role or a higher
/// one. An untrained person counts as trained once the certified renovator has trained them (a `train-worker` card that
/// ended earlier).
struct OnlyBy {
    static constexpr std::string_view name = "only_by";

    Spot cards;
    job::Role role = job::Role::trained_worker;

    static void fields(auto& self, auto&& visit)
    {
        visit("cards", self.cards, required);
        visit("role", self.role, required, About{"least role of everybody who takes part"});
    }
};

Judgement judge(const OnlyBy& condition, const Evidence& evidence, const std::string& self);

}
