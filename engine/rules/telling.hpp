#pragma once

#include "rules/evidence.hpp"
#include "rules/judgement.hpp"

#include <string>

/// Words for what conditions find.
namespace flapdoor::rules {

/// `card 9 (Work on the paint)`; `the start` when no card was being carried out.
text::Sentence card_text(const Evidence& evidence, int entry);

/// A title in quotation marks, and two with an "or" between them (or the second alone).
text::Sentence quoted(const text::Sentence& words);
text::Sentence listed(text::Sentence before, text::Sentence last);

/// The same with a comma.
text::Sentence joined(text::Sentence before, text::Sentence next);

/// What a spot names, for a sentence: `"Post warning signs"`, `"Vacuum the walls" or "Wipe the walls"`.
text::Sentence spot_title(const Spot& spot);

/// `the signs were not up`.
text::Sentence state_text(const std::string& state, bool held);

/// ` (north register)` for the thing a rule is about, or nothing.
text::Sentence thing_text(const Evidence& evidence, const std::string& self);

/// Where something is written, in the language spoken: "40 CFR 745.85(a)(3); common practice, no source", its parts one by one.
std::string cited(const std::string& cite);

/// The missing card's key: the same for the same card in every rule.
std::string missing_key(const Spot& spot, const std::string& self);

}
