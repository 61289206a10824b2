#include "window/run/hung_flap.hpp"

#include "site/opening.hpp"

namespace flapdoor::window {

namespace {

/// The card of the plan that an entry carried out, when it is of that kind.
template <class Step>
const Step* step_of(const Story& story, const job::LogEntry& entry)
{
    const auto card = static_cast<std::size_t>(entry.card);
    return card < story.inputs.plan.cards.size() ? std::get_if<Step>(&story.inputs.plan.cards[card].step) : nullptr;
}

}

std::optional<mechanics::FlapDoor> hung_flap(const Story& story, Time now)
{
    std::optional<job::HangFlap> hung;
    for (const job::LogEntry& entry : story.log.entries) {
        if (entry.end > now || entry.outcome != job::Outcome::done) continue;
        if (const auto* hang = step_of<job::HangFlap>(story, entry)) hung = *hang;
        if (const auto* down = step_of<job::TakeDownFlap>(story, entry); down != nullptr && hung && hung->opening == down->opening) hung.reset();
        if (const auto* seam = step_of<job::TapeSeam>(story, entry); seam != nullptr && hung && hung->opening == seam->opening) hung->is_taped = true;
    }
    if (!hung) return std::nullopt;
    const job::Opening* doorway = find_by_id(story.inputs.scenario.openings, hung->opening);
    if (doorway == nullptr) return std::nullopt;
    return site::hung_door(site::flap_of(*hung), *doorway);
}

}
