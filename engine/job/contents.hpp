#pragma once

#include "core/fields.hpp"
#include "core/quantity.hpp"
#include "job/building.hpp"
#include "job/ids.hpp"

#include <string>

namespace flapdoor::job {

/// A thing that stands on the floor: takes dust on its top, stops people and parcels.
struct Object {
    ObjectId id;
    std::string title;
    ZoneId zone;
    Length west{}, south{}, width{}, depth{}, height{};
    bool can_move = true;
    bool is_soft = false;   ///< upholstery and cloth: never wiped

    static void fields(auto& self, auto&& visit)
    {
        visit("id", self.id, required);
        visit("title", self.title, required);
        visit("zone", self.zone, required);
        visit("west", self.west, required, Range{-300.0_ft, 300.0_ft});
        visit("south", self.south, required, Range{-300.0_ft, 300.0_ft});
        visit("width", self.width, required, Range{1.0_in, 30.0_ft});
        visit("depth", self.depth, required, Range{1.0_in, 30.0_ft});
        visit("height", self.height, required, Range{1.0_in, 20.0_ft});
        visit("can-move", self.can_move);
        visit("is-soft", self.is_soft, About{"upholstery or cloth: vacuumed, never wiped"});
    }
};

/// A window's inside ledge.
struct Sill {
    SillId id;
    std::string title;
    OpeningId window;
    Length depth = 4.0_in;
    Loading dust_before = 1.0_gpm2;     ///< old dust on it before the job
    Loading lead_before = 50.0_ugpft2;  ///< in that dust

    static void fields(auto& self, auto&& visit)
    {
        visit("id", self.id, required);
        visit("title", self.title, required);
        visit("window", self.window, required);
        visit("depth", self.depth, Range{1.0_in, 24.0_in}, About{"how far it reaches into the room"});
        visit("dust-before", self.dust_before, Range{0.0_gpm2, 50.0_gpm2}, About{"old dust on it"});
        visit("lead-before", self.lead_before, Range{0.0_ugpft2, 100000.0_ugpft2}, About{"lead in the old dust"});
    }
};

struct Counter {
    CounterId id;
    std::string title;
    ZoneId zone;
    Length west{}, south{}, width{}, depth{}, height = 3.0_ft;

    static void fields(auto& self, auto&& visit)
    {
        visit("id", self.id, required);
        visit("title", self.title, required);
        visit("zone", self.zone, required);
        visit("west", self.west, required, Range{-300.0_ft, 300.0_ft});
        visit("south", self.south, required, Range{-300.0_ft, 300.0_ft});
        visit("width", self.width, required, Range{3.0_in, 60.0_ft});
        visit("depth", self.depth, required, Range{3.0_in, 10.0_ft});
        visit("height", self.height, Range{1.0_ft, 6.0_ft});
    }
};

enum class ComponentKindOf { window, trim, wall, ceiling, door };

/// A painted part to be worked on. Its paint film and the lead in it decide what the dust carries.
struct Component {
    ComponentId id;
    std::string title;
    ComponentKindOf kind = ComponentKindOf::trim;
    ZoneId zone;
    OpeningId opening;          ///< windows and their trim: the opening they belong to; places the work
    WallSide wall = WallSide::south;
    Length from{}, width{};     ///< along the wall, when no opening is named
    Length height = 4.0_ft;     ///< height at which the work is done
    Area area{};                ///< painted area that is worked on
    Loading lead{};             ///< lead per painted area
    Length film = 0.5_mm;       ///< thickness of all paint layers together

    static void fields(auto& self, auto&& visit)
    {
        visit("id", self.id, required);
        visit("title", self.title, required);
        visit("kind", self.kind, required);
        visit("zone", self.zone, required);
        visit("opening", self.opening);
        visit("wall", self.wall);
        visit("from", self.from, Range{0.0_ft, 60.0_ft});
        visit("width", self.width, Range{0.0_ft, 60.0_ft});
        visit("height", self.height, Range{0.0_ft, 20.0_ft}, About{"height at which the work is done"});
        visit("area", self.area, required, Range{0.1_ft2, 2000.0_ft2}, About{"painted area that is worked on"});
        visit("lead", self.lead, required, Range{0.0_mgpcm2, 50.0_mgpcm2}, About{"lead per painted area"});
        visit("film", self.film, Range{0.05_mm, 5.0_mm}, About{"thickness of all paint layers together"});
    }
};

enum class Role { certified_renovator, trained_worker, untrained };

struct Person {
    PersonId id;
    std::string title;      ///< how the screens call this member of the crew
    Role role = Role::trained_worker;

    static void fields(auto& self, auto&& visit)
    {
        visit("id", self.id, required);
        visit("title", self.title, required);
        visit("role", self.role, required);
    }
};

enum class SupplyKindOf {
    sheeting, drop_cloth, tape, masking_tape, hepa_vacuum, shop_vacuum, bag, trash_bag, mister, cloth, dry_cloth, rag,
    mop_two_bucket, mop_one_bucket, mopping_system, broom, tack_pad, doormat, dowel, sign, flashlight, card, handle,
    respirator, dust_mask, coverall, shoe_covers, gloves, scraper, pry_bar, sander, shrouded_sander, heat_gun, torch, saw, knife
};

/// One thing on the supply list, right or wrong for the job: the trainee chooses.
struct Supply {
    SupplyId id;
    std::string title;
    SupplyKindOf kind = SupplyKindOf::sheeting;
    int count = 1;
    bool is_staged = false;     ///< already inside the work area at the start
    bool has_leak = false;      ///< vacuums: some of the dust gets past the filter

    static void fields(auto& self, auto&& visit)
    {
        visit("id", self.id, required);
        visit("title", self.title, required);
        visit("kind", self.kind, required);
        visit("count", self.count, Range{1, 10000});
        visit("is-staged", self.is_staged);
        visit("has-leak", self.has_leak, About{"vacuums: dust gets past the filter or its gasket"});
    }
};

}

namespace flapdoor::inline core {
template <> struct Words<job::ComponentKindOf> { static constexpr std::array<std::string_view, 5> words{"window", "trim", "wall", "ceiling", "door"}; };
template <> struct Words<job::Role> { static constexpr std::array<std::string_view, 3> words{"certified-renovator", "trained-worker", "untrained"}; };
template <> struct Words<job::SupplyKindOf> {
    static constexpr std::array<std::string_view, 36> words{
        "sheeting", "drop-cloth", "tape", "masking-tape", "hepa-vacuum", "shop-vacuum", "bag", "trash-bag", "mister", "cloth", "dry-cloth", "rag",
        "mop-two-bucket", "mop-one-bucket", "mopping-system", "broom", "tack-pad", "doormat", "dowel", "sign", "flashlight", "card", "handle",
        "respirator", "dust-mask", "coverall", "shoe-covers", "gloves", "scraper", "pry-bar", "sander", "shrouded-sander", "heat-gun", "torch", "saw", "knife"};
};
}
