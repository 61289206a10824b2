#pragma once

#include "window/room/proposal.hpp"
#include "window/stage/ui.hpp"

namespace flapdoor::window {

/// A kind of card as the deck shows it.
struct DeckCard {
    const StepKind* kind = nullptr;
    std::optional<text::Sentence> why_none; ///< why no card of it can be carried out now
};

/// All kinds of cards with what stands in the way of each, for the site as it is.
std::vector<DeckCard> deck_of(const site::Site& site, const std::vector<job::PersonId>& by);

/// The deck: a line to filter by, then the cards by phase. @return the kind that was picked
/// @param filter  what is typed; kept by the caller
const StepKind* deck(Ui& ui, const std::vector<DeckCard>& cards, std::string& filter);

}
