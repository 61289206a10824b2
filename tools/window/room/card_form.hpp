#pragma once

#include "window/room/proposal.hpp"
#include "window/stage/ui.hpp"

#include <map>

namespace flapdoor::window {

/// A card that is being filled in, with what can be chosen for each of its things.
struct Draft {
    job::Card card;
    std::vector<CardField> fields;
    std::map<std::string, std::vector<Candidate>> choices; ///< by the field's key
    std::optional<text::Sentence> why_not;                 ///< the card as it stands; nothing when it can be carried out
};

/// The draft with its choices worked out for the site as it is; call again whenever either changed.
Draft drafted(const site::Site& site, job::Card card);

/// The fields of a draft as widgets, who does it first. True when something changed: the draft is then to be worked out again.
bool card_form(Ui& ui, const job::Scenario& scenario, Draft& draft);

/// Values that a slider of a quantity steps through, rising, from least to most, `value` among them.
std::vector<double> steps_of(const CardField& field);

}
