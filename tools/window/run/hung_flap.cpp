#include "window/run/hung_flap.hpp"

#include "window/run/logged_step.hpp"

#include "job/steps/hang_flap.hpp"
#include "job/steps/take_down_flap.hpp"
#include "job/steps/tape_seam.hpp"
#include "site/opening.hpp"

namespace flapdoor::window {

std::optional<mechanics::FlapDoor> hung_flap(const Story& story, Time now)
{
    std::optional<job::HangFlap> hung;
    for (const job::LogEntry& entry : story.log.entries) {
        if (entry.end > now || entry.outcome != job::Outcome::done) continue;
        if (const auto hang = logged_step<job::HangFlap>(entry)) hung = *hang;
        if (const auto down = logged_step<job::TakeDownFlap>(entry); down && hung && hung->opening == down->opening) hung.reset();
        if (const auto seam = logged_step<job::TapeSeam>(entry); seam && hung && hung->opening == seam->opening) hung->is_taped = true;
    }
    if (!hung) return std::nullopt;
    const job::Opening* doorway = find_by_id(story.inputs.scenario.openings, hung->opening);
    if (doorway == nullptr) return std::nullopt;
    return site::hung_door(site::flap_of(*hung), *doorway);
}

}
