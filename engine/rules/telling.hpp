#pragma once

#include "rules/evidence.hpp"
#include "rules/judgement.hpp"

#include <string>

/// Words for what conditions find.
namespace flapdoor::rules {

/// `card 9 (Work on the paint)`; `the start` when no card was being carried out.
std::string card_text(const Evidence& evidence, int entry);

/// What a spot names, for a sentence: `"Post warning signs"`, `"Vacuum the walls" or "Wipe the walls"`.
std::string spot_title(const Spot& spot);

/// `the signs were not up`.
std::string state_text(const std::string& state, bool held);

/// ` (north register)` for the thing a rule is about, or nothing.
std::string thing_text(const Evidence& evidence, const std::string& self);

/// The missing card's key: the same for the same card in every rule.
std::string missing_key(const Spot& spot, const std::string& self);

}
