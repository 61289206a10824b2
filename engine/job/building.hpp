#pragma once

#include "core/fields.hpp"
#include "core/quantity.hpp"
#include "job/ids.hpp"

#include <string>
#include <vector>

namespace flapdoor::job {

enum class Language { english, spanish };
enum class HousingKind { dwelling, child_occupied_facility, other };
enum class FloorKind { smooth, linoleum, wood, cracked, carpet };
enum class ZoneRole { work_room, passage, room, closet };
enum class WallSide { south, east, north, west };
enum class OpeningKindOf { door, window, supply, return_air, exhaust };

/// A hole in the wall that a duct ends in: it is closed and covered. An exhaust (range hood, bath fan) leads outdoors,
/// the others to the air handling.
constexpr bool is_register(OpeningKindOf kind) { return kind == OpeningKindOf::supply || kind == OpeningKindOf::return_air || kind == OpeningKindOf::exhaust; }

/// Whose house it is and when it was built: decides whether the rule applies.
struct Building {
    std::string title;
    int built = 0;
    HousingKind housing = HousingKind::dwelling;
    bool has_young_child = false;
    Language occupants_read = Language::english;

    static void fields(auto& self, auto&& visit)
    {
        visit("title", self.title, required, About{"what people call the building"});
        visit("built", self.built, required, Range{1600, 2100}, About{"year it was built"});
        visit("housing", self.housing, About{"who uses it"});
        visit("has-young-child", self.has_young_child, About{"a child under six lives there or visits regularly"});
        visit("occupants-read", self.occupants_read, About{"the language they read best"});
    }
};

/// A body of air with a rectangular floor. Plan coordinates run east (x) and north (y) from any fixed corner.
struct Zone {
    ZoneId id;
    std::string title;
    ZoneRole role = ZoneRole::room;
    Length west{}, south{};
    Length width{};     ///< west to east
    Length depth{};     ///< south to north
    Length ceiling = 8.0_ft;
    FloorKind floor = FloorKind::wood;
    Loading dust_before = 0.3_gpm2;     ///< on its floor and on what stands there, before the job
    Loading lead_before = 5.0_ugpft2;   ///< in that dust

    static void fields(auto& self, auto&& visit)
    {
        visit("id", self.id, required);
        visit("title", self.title, required);
        visit("role", self.role, required, About{"exactly one zone is the work room"});
        visit("west", self.west, Range{-300.0_ft, 300.0_ft}, About{"x of its west wall"});
        visit("south", self.south, Range{-300.0_ft, 300.0_ft}, About{"y of its south wall"});
        visit("width", self.width, required, Range{1.0_ft, 60.0_ft}, About{"west to east"});
        visit("depth", self.depth, required, Range{1.0_ft, 60.0_ft}, About{"south to north"});
        visit("ceiling", self.ceiling, Range{6.0_ft, 20.0_ft}, About{"height of the ceiling"});
        visit("floor", self.floor, About{"decides how dust sits and how it cleans"});
        visit("dust-before", self.dust_before, Range{0.0_gpm2, 50.0_gpm2}, About{"old dust on its floor and furniture"});
        visit("lead-before", self.lead_before, Range{0.0_ugpft2, 10000.0_ugpft2}, About{"lead in the old dust"});
    }
};

/// Fitted carpet on part of a zone's floor. What it leaves bare is a hard floor of its own.
struct Carpet {
    CarpetId id;
    std::string title;
    ZoneId zone;
    Length west{}, south{}, width{}, depth{};

    static void fields(auto& self, auto&& visit)
    {
        visit("id", self.id, required);
        visit("title", self.title, required);
        visit("zone", self.zone, required, About{"on whose floor it lies"});
        visit("west", self.west, required, Range{-300.0_ft, 300.0_ft}, About{"x of its west edge"});
        visit("south", self.south, required, Range{-300.0_ft, 300.0_ft}, About{"y of its south edge"});
        visit("width", self.width, required, Range{1.0_ft, 60.0_ft}, About{"west to east"});
        visit("depth", self.depth, required, Range{1.0_ft, 60.0_ft}, About{"south to north"});
    }
};

/// A door, window or register in a wall of a zone.
struct Opening {
    OpeningId id;
    std::string title;
    OpeningKindOf kind = OpeningKindOf::door;
    ZoneId zone;        ///< the zone whose wall it is in
    ZoneId leads_to;    ///< doors only: the zone beyond; empty for windows and registers
    WallSide wall = WallSide::south;
    Length from{};      ///< along the wall, from its west or south end to the opening's near edge
    Length width{};
    Length height{};
    Length above_floor{};
    Length undercut = 0.5_in;   ///< doors: gap under the leaf
    bool is_open = false;       ///< as found before the work
    AirFlow fan_flow{};         ///< exhausts: what a fan of its own draws off to the outdoors while it stands open; 0: none runs

    static void fields(auto& self, auto&& visit)
    {
        visit("id", self.id, required);
        visit("title", self.title, required);
        visit("kind", self.kind, required);
        visit("zone", self.zone, required, About{"the zone whose wall it is in"});
        visit("leads-to", self.leads_to, About{"doors: the zone on the other side"});
        visit("wall", self.wall, required);
        visit("from", self.from, required, Range{0.0_ft, 60.0_ft}, About{"along the wall from its west or south end"});
        visit("width", self.width, required, Range{2.0_in, 30.0_ft});
        visit("height", self.height, required, Range{2.0_in, 20.0_ft});
        visit("above-floor", self.above_floor, Range{0.0_ft, 20.0_ft}, About{"height of its lower edge"});
        visit("undercut", self.undercut, Range{0.0_in, 3.0_in}, About{"doors: gap under the leaf"});
        visit("is-open", self.is_open, About{"as found before the work"});
        visit("fan-flow", self.fan_flow, Range{0.0_m3ph, 5000.0_m3ph}, About{"exhausts: air that a fan of its own draws off to the outdoors while it is open"});
    }
};

/// Forced air: what the blower moves when it runs and what its filter holds back.
struct AirHandling {
    bool is_running = false;
    AirFlow return_flow{};      ///< drawn through the work room's return
    AirFlow supply_flow{};      ///< blown through the work room's supply
    AirFlow house_flow{};       ///< through all the rest of the house
    int filter_merv = 8;
    Length duct_floor = 6.0_m;  ///< length of horizontal return duct, 0.2 m wide, on which coarse dust settles

    static void fields(auto& self, auto&& visit)
    {
        visit("is-running", self.is_running, About{"as found before the work"});
        visit("return-flow", self.return_flow, Range{0.0_m3ph, 2000.0_m3ph});
        visit("supply-flow", self.supply_flow, Range{0.0_m3ph, 2000.0_m3ph});
        visit("house-flow", self.house_flow, Range{0.0_m3ph, 20000.0_m3ph});
        visit("filter-merv", self.filter_merv, Range{1, 16});
        visit("duct-floor", self.duct_floor, Range{0.0_m, 100.0_m});
    }
};

}

namespace flapdoor::inline core {
template <> struct Words<job::HousingKind> { static constexpr std::array<std::string_view, 3> words{"dwelling", "child-occupied-facility", "other"}; };
template <> struct Words<job::Language> { static constexpr std::array<std::string_view, 2> words{"english", "spanish"}; };
template <> struct Words<job::FloorKind> { static constexpr std::array<std::string_view, 5> words{"smooth", "linoleum", "wood", "cracked", "carpet"}; };
template <> struct Words<job::ZoneRole> { static constexpr std::array<std::string_view, 4> words{"work-room", "passage", "room", "closet"}; };
template <> struct Words<job::WallSide> { static constexpr std::array<std::string_view, 4> words{"south", "east", "north", "west"}; };
template <> struct Words<job::OpeningKindOf> { static constexpr std::array<std::string_view, 5> words{"door", "window", "supply", "return", "exhaust"}; };
}
