#pragma once

#include "job/step.hpp"
#include "site/site.hpp"
#include "text/language.hpp"
#include "text/sentence.hpp"

#include <optional>
#include <string>
#include <vector>

namespace flapdoor::site {

using text::sentence;
using text::to_say;

/// Who carries a card out.
using Team = std::vector<job::PersonId>;

/// Why a card cannot be carried out now; nothing when it can. A rule broken is no refusal: the card is carried out and
/// the marking tells.
using Refusal = std::optional<text::Sentence>;

/// What came of a card that was carried out.
struct Done {
    bool was_needed = true;
    text::Sentence why = {};    ///< why it was not; or what befell who did it
};

// The effect of each step card, one file each in site/steps. A step kind without its two functions does not link.
Refusal why_not(const Site&, const job::AdmitOccupants&, const Team&);
Done carry_out(Site&, const job::AdmitOccupants&, const Team&);
Refusal why_not(const Site&, const job::BagDebris&, const Team&);
Done carry_out(Site&, const job::BagDebris&, const Team&);
Refusal why_not(const Site&, const job::BagSheeting&, const Team&);
Done carry_out(Site&, const job::BagSheeting&, const Team&);
Refusal why_not(const Site&, const job::CarryOut&, const Team&);
Done carry_out(Site&, const job::CarryOut&, const Team&);
Refusal why_not(const Site&, const job::CheckContainment&, const Team&);
Done carry_out(Site&, const job::CheckContainment&, const Team&);
Refusal why_not(const Site&, const job::CleanBeyond&, const Team&);
Done carry_out(Site&, const job::CleanBeyond&, const Team&);
Refusal why_not(const Site&, const job::CleanOff&, const Team&);
Done carry_out(Site&, const job::CleanOff&, const Team&);
Refusal why_not(const Site&, const job::CleanTools&, const Team&);
Done carry_out(Site&, const job::CleanTools&, const Team&);
Refusal why_not(const Site&, const job::CloseBag&, const Team&);
Done carry_out(Site&, const job::CloseBag&, const Team&);
Refusal why_not(const Site&, const job::CloseDoor&, const Team&);
Done carry_out(Site&, const job::CloseDoor&, const Team&);
Refusal why_not(const Site&, const job::CloseRegister&, const Team&);
Done carry_out(Site&, const job::CloseRegister&, const Team&);
Refusal why_not(const Site&, const job::CloseWindow&, const Team&);
Done carry_out(Site&, const job::CloseWindow&, const Team&);
Refusal why_not(const Site&, const job::CoverDoor&, const Team&);
Done carry_out(Site&, const job::CoverDoor&, const Team&);
Refusal why_not(const Site&, const job::CoverObject&, const Team&);
Done carry_out(Site&, const job::CoverObject&, const Team&);
Refusal why_not(const Site&, const job::CoverRegister&, const Team&);
Done carry_out(Site&, const job::CoverRegister&, const Team&);
Refusal why_not(const Site&, const job::DeclarePaint&, const Team&);
Done carry_out(Site&, const job::DeclarePaint&, const Team&);
Refusal why_not(const Site&, const job::DisturbPaint&, const Team&);
Done carry_out(Site&, const job::DisturbPaint&, const Team&);
Refusal why_not(const Site&, const job::DryWipe&, const Team&);
Done carry_out(Site&, const job::DryWipe&, const Team&);
Refusal why_not(const Site&, const job::EnterWorkArea&, const Team&);
Done carry_out(Site&, const job::EnterWorkArea&, const Team&);
Refusal why_not(const Site&, const job::FetchItem&, const Team&);
Done carry_out(Site&, const job::FetchItem&, const Team&);
Refusal why_not(const Site&, const job::FitWindow&, const Team&);
Done carry_out(Site&, const job::FitWindow&, const Team&);
Refusal why_not(const Site&, const job::FoldSheeting&, const Team&);
Done carry_out(Site&, const job::FoldSheeting&, const Team&);
Refusal why_not(const Site&, const job::GivePamphlet&, const Team&);
Done carry_out(Site&, const job::GivePamphlet&, const Team&);
Refusal why_not(const Site&, const job::HandOverReport&, const Team&);
Done carry_out(Site&, const job::HandOverReport&, const Team&);
Refusal why_not(const Site&, const job::HangFlap&, const Team&);
Done carry_out(Site&, const job::HangFlap&, const Team&);
Refusal why_not(const Site&, const job::Inspect&, const Team&);
Done carry_out(Site&, const job::Inspect&, const Team&);
Refusal why_not(const Site&, const job::LayFloorSheet&, const Team&);
Done carry_out(Site&, const job::LayFloorSheet&, const Team&);
Refusal why_not(const Site&, const job::LayRunner&, const Team&);
Done carry_out(Site&, const job::LayRunner&, const Team&);
Refusal why_not(const Site&, const job::LayTackPad&, const Team&);
Done carry_out(Site&, const job::LayTackPad&, const Team&);
Refusal why_not(const Site&, const job::LeaveSite&, const Team&);
Done carry_out(Site&, const job::LeaveSite&, const Team&);
Refusal why_not(const Site&, const job::LeaveWorkArea&, const Team&);
Done carry_out(Site&, const job::LeaveWorkArea&, const Team&);
Refusal why_not(const Site&, const job::MistSheeting&, const Team&);
Done carry_out(Site&, const job::MistSheeting&, const Team&);
Refusal why_not(const Site&, const job::MopFloor&, const Team&);
Done carry_out(Site&, const job::MopFloor&, const Team&);
Refusal why_not(const Site&, const job::MoveOut&, const Team&);
Done carry_out(Site&, const job::MoveOut&, const Team&);
Refusal why_not(const Site&, const job::OpenWindow&, const Team&);
Done carry_out(Site&, const job::OpenWindow&, const Team&);
Refusal why_not(const Site&, const job::PostSigns&, const Team&);
Done carry_out(Site&, const job::PostSigns&, const Team&);
Refusal why_not(const Site&, const job::PutOnGear&, const Team&);
Done carry_out(Site&, const job::PutOnGear&, const Team&);
Refusal why_not(const Site&, const job::ReClean&, const Team&);
Done carry_out(Site&, const job::ReClean&, const Team&);
Refusal why_not(const Site&, const job::Repaint&, const Team&);
Done carry_out(Site&, const job::Repaint&, const Team&);
Refusal why_not(const Site&, const job::RepairContainment&, const Team&);
Done carry_out(Site&, const job::RepairContainment&, const Team&);
Refusal why_not(const Site&, const job::ReturnToSite&, const Team&);
Done carry_out(Site&, const job::ReturnToSite&, const Team&);
Refusal why_not(const Site&, const job::StageTools&, const Team&);
Done carry_out(Site&, const job::StageTools&, const Team&);
Refusal why_not(const Site&, const job::StoreWaste&, const Team&);
Done carry_out(Site&, const job::StoreWaste&, const Team&);
Refusal why_not(const Site&, const job::SweepFloor&, const Team&);
Done carry_out(Site&, const job::SweepFloor&, const Team&);
Refusal why_not(const Site&, const job::SwitchHvacOff&, const Team&);
Done carry_out(Site&, const job::SwitchHvacOff&, const Team&);
Refusal why_not(const Site&, const job::SwitchHvacOn&, const Team&);
Done carry_out(Site&, const job::SwitchHvacOn&, const Team&);
Refusal why_not(const Site&, const job::TakeDownCovers&, const Team&);
Done carry_out(Site&, const job::TakeDownCovers&, const Team&);
Refusal why_not(const Site&, const job::TakeDownFlap&, const Team&);
Done carry_out(Site&, const job::TakeDownFlap&, const Team&);
Refusal why_not(const Site&, const job::TakeDownSigns&, const Team&);
Done carry_out(Site&, const job::TakeDownSigns&, const Team&);
Refusal why_not(const Site&, const job::TakeOffGear&, const Team&);
Done carry_out(Site&, const job::TakeOffGear&, const Team&);
Refusal why_not(const Site&, const job::TapeSeam&, const Team&);
Done carry_out(Site&, const job::TapeSeam&, const Team&);
Refusal why_not(const Site&, const job::TrainWorker&, const Team&);
Done carry_out(Site&, const job::TrainWorker&, const Team&);
Refusal why_not(const Site&, const job::VacuumBag&, const Team&);
Done carry_out(Site&, const job::VacuumBag&, const Team&);
Refusal why_not(const Site&, const job::VacuumCarpet&, const Team&);
Done carry_out(Site&, const job::VacuumCarpet&, const Team&);
Refusal why_not(const Site&, const job::VacuumSheeting&, const Team&);
Done carry_out(Site&, const job::VacuumSheeting&, const Team&);
Refusal why_not(const Site&, const job::VacuumSurfaces&, const Team&);
Done carry_out(Site&, const job::VacuumSurfaces&, const Team&);
Refusal why_not(const Site&, const job::VacuumWalls&, const Team&);
Done carry_out(Site&, const job::VacuumWalls&, const Team&);
Refusal why_not(const Site&, const job::Wait&, const Team&);
Done carry_out(Site&, const job::Wait&, const Team&);
Refusal why_not(const Site&, const job::WipeCounter&, const Team&);
Done carry_out(Site&, const job::WipeCounter&, const Team&);
Refusal why_not(const Site&, const job::WipeFloor&, const Team&);
Done carry_out(Site&, const job::WipeFloor&, const Team&);
Refusal why_not(const Site&, const job::WipeSill&, const Team&);
Done carry_out(Site&, const job::WipeSill&, const Team&);
Refusal why_not(const Site&, const job::WipeSurfaces&, const Team&);
Done carry_out(Site&, const job::WipeSurfaces&, const Team&);
Refusal why_not(const Site&, const job::WipeWalls&, const Team&);
Done carry_out(Site&, const job::WipeWalls&, const Team&);
Refusal why_not(const Site&, const job::WrapDebris&, const Team&);
Done carry_out(Site&, const job::WrapDebris&, const Team&);
Refusal why_not(const Site&, const job::WriteRecord&, const Team&);
Done carry_out(Site&, const job::WriteRecord&, const Team&);

}
