#pragma once

#include "job/steps/admit_occupants.hpp"
#include "job/steps/bag_debris.hpp"
#include "job/steps/bag_sheeting.hpp"
#include "job/steps/carry_out.hpp"
#include "job/steps/check_containment.hpp"
#include "job/steps/clean_beyond.hpp"
#include "job/steps/clean_off.hpp"
#include "job/steps/clean_tools.hpp"
#include "job/steps/close_bag.hpp"
#include "job/steps/close_door.hpp"
#include "job/steps/close_register.hpp"
#include "job/steps/close_window.hpp"
#include "job/steps/cover_door.hpp"
#include "job/steps/cover_object.hpp"
#include "job/steps/cover_register.hpp"
#include "job/steps/declare_paint.hpp"
#include "job/steps/disturb_paint.hpp"
#include "job/steps/dry_wipe.hpp"
#include "job/steps/enter_work_area.hpp"
#include "job/steps/fetch_item.hpp"
#include "job/steps/fit_window.hpp"
#include "job/steps/fold_sheeting.hpp"
#include "job/steps/give_pamphlet.hpp"
#include "job/steps/hand_over_report.hpp"
#include "job/steps/hang_flap.hpp"
#include "job/steps/inspect.hpp"
#include "job/steps/lay_floor_sheet.hpp"
#include "job/steps/lay_runner.hpp"
#include "job/steps/lay_tack_pad.hpp"
#include "job/steps/leave_site.hpp"
#include "job/steps/leave_work_area.hpp"
#include "job/steps/mist_sheeting.hpp"
#include "job/steps/mop_floor.hpp"
#include "job/steps/move_out.hpp"
#include "job/steps/open_window.hpp"
#include "job/steps/post_signs.hpp"
#include "job/steps/put_on_gear.hpp"
#include "job/steps/re_clean.hpp"
#include "job/steps/repaint.hpp"
#include "job/steps/repair_containment.hpp"
#include "job/steps/return_to_site.hpp"
#include "job/steps/stage_tools.hpp"
#include "job/steps/store_waste.hpp"
#include "job/steps/sweep_floor.hpp"
#include "job/steps/switch_hvac_off.hpp"
#include "job/steps/switch_hvac_on.hpp"
#include "job/steps/take_down_covers.hpp"
#include "job/steps/take_down_flap.hpp"
#include "job/steps/take_down_signs.hpp"
#include "job/steps/take_off_gear.hpp"
#include "job/steps/tape_seam.hpp"
#include "job/steps/train_worker.hpp"
#include "job/steps/vacuum_bag.hpp"
#include "job/steps/vacuum_carpet.hpp"
#include "job/steps/vacuum_sheeting.hpp"
#include "job/steps/vacuum_surfaces.hpp"
#include "job/steps/vacuum_walls.hpp"
#include "job/steps/wait.hpp"
#include "job/steps/wipe_counter.hpp"
#include "job/steps/wipe_floor.hpp"
#include "job/steps/wipe_sill.hpp"
#include "job/steps/wipe_surfaces.hpp"
#include "job/steps/wipe_walls.hpp"
#include "job/steps/wrap_debris.hpp"
#include "job/steps/write_record.hpp"

#include <variant>

namespace flapdoor::job {

/// Every kind of step card. A new kind is a header in job/steps, an effect in site/steps and one line here.
using Step = std::variant<
    GivePamphlet,
    DeclarePaint,
    TrainWorker,
    StageTools,
    PostSigns,
    MoveOut,
    CoverObject,
    SwitchHvacOff,
    CloseWindow,
    OpenWindow,
    CloseRegister,
    CoverRegister,
    CloseDoor,
    CoverDoor,
    TapeSeam,
    LayFloorSheet,
    LayRunner,
    HangFlap,
    LayTackPad,
    CheckContainment,
    PutOnGear,
    TakeOffGear,
    DisturbPaint,
    FitWindow,
    CleanOff,
    LeaveWorkArea,
    EnterWorkArea,
    FetchItem,
    LeaveSite,
    ReturnToSite,
    RepairContainment,
    WrapDebris,
    BagDebris,
    CloseBag,
    VacuumBag,
    CarryOut,
    StoreWaste,
    CleanTools,
    VacuumWalls,
    WipeWalls,
    VacuumSheeting,
    MistSheeting,
    FoldSheeting,
    BagSheeting,
    VacuumSurfaces,
    WipeSurfaces,
    VacuumCarpet,
    MopFloor,
    SweepFloor,
    CleanBeyond,
    Inspect,
    WipeSill,
    WipeCounter,
    WipeFloor,
    ReClean,
    Wait,
    DryWipe,
    TakeDownFlap,
    TakeDownCovers,
    TakeDownSigns,
    SwitchHvacOn,
    Repaint,
    WriteRecord,
    HandOverReport,
    AdmitOccupants>;

}
