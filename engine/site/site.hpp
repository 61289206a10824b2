#pragma once

#include "dust/cloud.hpp"
#include "dust/deposition.hpp"
#include "dust/ledger.hpp"
#include "dust/run_parameters.hpp"
#include "job/run_log.hpp"
#include "job/scenario.hpp"
#include "mechanics/flap_book.hpp"
#include "plan/raster.hpp"
#include "site/air_paths.hpp"
#include "site/body.hpp"
#include "site/card_luck.hpp"
#include "site/opening.hpp"
#include "site/room_air.hpp"
#include "site/surface.hpp"
#include "site/verification.hpp"

#include <functional>
#include <string>
#include <vector>

namespace flapdoor::dust {
class FlightLog;
}

namespace flapdoor::site {

/// The surface that lies open to the air at one raster cell.
struct Spot {
    std::size_t surface = 0;
    std::size_t patch = 0;
};

/// A body of air with its floor plan.
struct Zone {
    job::Zone plan;
    plan::Raster raster;
    std::vector<bool> is_blocked;       ///< [cell] nobody can stand there
    std::vector<Spot> top;              ///< [cell] what falling dust meets
    dust::AccountId air_account = 0;
    PerClassAmount air;                 ///< well-mixed part; the work room's young clouds are parcels besides
    PerClassAmount falling;             ///< left the mixed air, not yet shared out among the cells; at most a minute's worth, or a wisp
    PerClassAmount reaching_walls;      ///< the same for the walls
    Volume volume{};
};

/// Where the sheeting on the floor is in its life.
enum class SheetState { none, laid, folded, bagged };

/// Everything about the job at one moment. Only the functions of this room change it, and only `drill` calls them.
struct Site {
    job::Scenario scenario;
    std::uint64_t seed = 1;
    dust::RunParameters uncertain;      ///< what nobody knows well enough to fix, as this run takes it; the medians unless `drill` drew them
    double detail = 1.0;                ///< share of the usual number of parcels, above 0 to 1: studies of many runs take fewer
    unsigned threads = 1;

    Time now{};                         ///< time of day
    dust::Ledger ledger;
    std::vector<Zone> zones;
    std::size_t work_room = 0;
    std::vector<OpeningState> openings;
    std::vector<Surface> surfaces;
    std::vector<Worker> crew;
    std::vector<Bag> bags;

    dust::PerClass<dust::DepositionSpeeds> deposition;  ///< of each class at room temperature
    dust::Cloud cloud;                  ///< young dust in the work room's air
    dust::CloudRoom cloud_room;         ///< what stands where, and where air is drawn out; follows the surfaces and flows
    Body outdoors, duct, filter, vacuum, cloths, mop_water, tools, tack_pad, store;   ///< store: waste made safe
    dust::AccountId paint = 0;
    dust::AccountId there_before = 0;   ///< where the old dust in the house came from
    CardLuck luck;                      ///< numbers parcels and draws

    AirPaths air;                       ///< flows in force; see refresh_air
    RoomAir room_air;                   ///< what those flows make of the air in the work room
    bool is_air_stale = true;
    bool is_hvac_running = false;
    mechanics::FlapBook flaps;          ///< how flap doors hung here swing and lean: worked out once each

    std::vector<std::size_t> sheeting;  ///< surfaces that are floor sheeting, in the order laid
    SheetState sheet = SheetState::none;
    bool is_sheet_taped = false;
    bool is_sheet_porous = false;       ///< a cloth instead of plastic
    Body bundle;                        ///< what the folded sheeting holds until it is bagged
    bool has_tack_pad = false;
    bool is_tack_pad_outside = true;
    bool is_checked = false;
    bool has_begun = false;             ///< paint was disturbed
    std::vector<job::SupplyId> staged;
    std::vector<std::string> disturbed; ///< components worked on so far
    Time first_dust{}, last_dust{};
    Verification verification;

    job::RunLog log;
    std::vector<job::Measure> measured; ///< by the card in progress
    std::uint64_t parcel_steps = 0;
    std::function<void(const Site&)> watcher;   ///< called after every tick; sees, never touches
    dust::FlightLog* notes = nullptr;           ///< where flights are noted, if anywhere
    const dust::FlightLog* known = nullptr;     ///< flights of another run with the same seed, which are not carried again

    Zone& room() { return zones[work_room]; }
    const Zone& room() const { return zones[work_room]; }
};

/// Puts the scenario's place together: zones, surfaces with their old dust, crew, accounts. The scenario has passed its
/// checks.
/// @param uncertain  what this run takes for what nobody knows; the medians when nothing is drawn
Site build(const job::Scenario& scenario, std::uint64_t seed, const dust::RunParameters& uncertain = {});

/// Works out again which surface is on top at each cell. Call after sheeting, covers or objects come or go.
void refresh_tops(Site& site);

/// Sums what is really held everywhere, account by account, and insists that the ledger says the same and closes.
void audit(const Site& site);

/// Hash of everything that a later step can depend on.
std::uint64_t fingerprint(const Site& site);

// Looking things up; ids were checked when the plan was read, so a miss is a bug of ours.
OpeningState& opening(Site& site, const job::OpeningId& id);
const OpeningState& opening(const Site& site, const job::OpeningId& id);
Worker& worker(Site& site, const job::PersonId& id);
const Worker& worker(const Site& site, const job::PersonId& id);
Bag* find_bag(Site& site, const job::BagId& id);
const Bag* find_bag(const Site& site, const job::BagId& id);
const job::Supply* find_supply(const Site& site, const job::SupplyId& id);

/// The floor of a zone; one patch for each raster cell, in cell order.
std::size_t floor_of(const Site& site, std::size_t zone);

/// The floor at a raster cell, whatever stands or lies on it: the fitted carpet where there is one.
Spot floor_at(const Site& site, std::size_t zone, std::size_t cell);

/// Lead (chips apart) on the floor of a zone, as a loading; without a carpet that lies on part of it.
Loading floor_loading(const Site& site, std::size_t zone);

/// The top of an object, by the object's title.
Surface* find_top(Site& site, const std::string& title);
const Surface* find_top(const Site& site, const std::string& title);

/// The sheeting over an object, by the object's title; null when none lies there.
Surface* find_cover(Site& site, const std::string& title);
const Surface* find_cover(const Site& site, const std::string& title);
std::string cover_name(const std::string& title);

/// Notes a measure of the card in progress.
void measure(Site& site, std::string name, std::string object, job::MeasureKind kind, double value);

/// Notes that a state begins or ends to hold; nothing when it is so already.
void set_state(Site& site, const std::string& state, const std::string& object, bool holds);

/// The inside of the work area is where people work once it has an entrance: the opening that leads from the work room
/// to a passage.
const OpeningState& entrance(const Site& site);

}
