#pragma once

#include "window/room/card_fields.hpp"

#include "site/site.hpp"

#include <optional>
#include <string>
#include <vector>

namespace flapdoor::window {

/// A thing that can be chosen for a field.
struct Candidate {
    std::string id;
    std::string title;
    std::optional<text::Sentence> why_not;  ///< why the card cannot be carried out with it; nothing when it can
};

/// What can be chosen for a thing of the card, the rest of it as it is. Supplies that can never serve there are left out.
std::vector<Candidate> candidates(const site::Site& site, const job::Card& card, const CardField& field);

/// A card of that kind for these people: things that can be worked on are filled in, tools and materials are left to choose
/// when there is more than one that serves.
job::Card proposed(const site::Site& site, const StepKind& kind, const std::vector<job::PersonId>& by);

/// Whether some card of that kind could be carried out now, and why not.
std::optional<text::Sentence> why_none(const site::Site& site, const StepKind& kind, const std::vector<job::PersonId>& by);

/// The first field that must be chosen and is not, or null.
const CardField* unchosen(const std::vector<CardField>& fields);

}
