#include "shipped.hpp"

#include "core/philox.hpp"

#include <algorithm>
#include <array>
#include <filesystem>
#include <string>
#include <vector>

namespace flapdoor::job {

namespace {

/// A whole job in few lines.
const std::string small = R"(format = 1
id = "small"
title = "Small job"
job = "One window."
light = 1.0
building = { title = "House", built = 1950 }
zone = [
  { id = "room", title = "Room", role = "work-room", width = "12 ft", depth = "10 ft", ceiling = "8 ft" },
  { id = "hall", title = "Hall", role = "passage", west = "12 ft", width = "4 ft", depth = "10 ft" },
  { id = "attic", title = "Attic", role = "room", west = "20 ft", width = "9 ft", depth = "10 ft" },
]
opening = [
  { id = "door", title = "Door", kind = "door", zone = "room", leads-to = "hall", wall = "east", from = "3 ft", width = "3 ft", height = "7 ft" },
  { id = "window", title = "Window", kind = "window", zone = "room", wall = "west", from = "2 ft", width = "3 ft", height = "4 ft", above-floor = "3 ft" },
  { id = "hatch", title = "Hatch", kind = "window", zone = "hall", wall = "east", from = "2 ft", width = "3 ft", height = "3 ft" },
]
object = [
  { id = "table", title = "Table", zone = "room", west = "6 ft", south = "6 ft", width = "3 ft", depth = "2 ft", height = "2 ft 6 in" },
  { id = "chair", title = "Chair", zone = "room", west = "4 ft", south = "4 ft", width = "1 ft", depth = "1 ft", height = "3 ft" },
]
sill = [
  { id = "sill", title = "Sill", window = "window" },
]
counter = [
  { id = "counter", title = "Counter", zone = "room", west = "0 ft", south = "8 ft", width = "6 ft", depth = "2 ft" },
]
component = [
  { id = "casing", title = "Casing", kind = "trim", zone = "room", opening = "window", area = "9 ft2", lead = "2 mg/cm2" },
  { id = "board", title = "Baseboard", kind = "trim", zone = "room", wall = "north", from = "1 ft", width = "8 ft", area = "5 ft2", lead = "1 mg/cm2" },
]
person = [
  { id = "ana", title = "Ana", role = "certified-renovator" },
  { id = "ben", title = "Ben", role = "trained-worker" },
]
supply = [
  { id = "poly", title = "Sheeting", kind = "sheeting" },
  { id = "tape", title = "Tape", kind = "tape" },
]
carpet = [
  { id = "rug", title = "Rug", zone = "room", west = "6 ft", south = "1 ft", width = "4 ft", depth = "3 ft" },
  { id = "mat", title = "Mat", zone = "room", west = "1 ft", south = "1 ft", width = "4 ft", depth = "3 ft" },
]
)";

/// One slip in the small job and what must be told about it.
struct Slip {
    std::string piece, instead;
    std::string where;      ///< a piece of the changed text; the `^` stands where the problem is
    std::string problem;    ///< expected and found
};

void check_slip(const Slip& slip)
{
    const std::string text = with(small, slip.piece, slip.instead);
    INFO(slip.piece << "  ->  " << slip.instead);
    const Problems problems = wrong(read_scenario(text, "small.toml"));
    INFO(told(problems));
    CHECK(problems.size() == 1);
    const Place place = place_in(text, slip.where, "small.toml");
    CHECK(problems.front().where == place);
    CHECK("expected " + problems.front().expected + ", found " + problems.front().found == slip.problem);
}

}

TEST_CASE("every shipped scenario and every plan beside it reads without a problem")
{
    int plans = 0;
    for (const auto& folder : std::filesystem::directory_iterator(FLAPDOOR_SOURCE_DIR "/scenarios")) {
        const std::filesystem::path file = folder.path() / "scenario.toml";
        if (!std::filesystem::exists(file)) continue;
        const Scenario scenario = sound(read_scenario(sound(text::read_file(file.string())), file.string()));
        CHECK(scenario.id == folder.path().filename().string());
        for (const auto& plan : std::filesystem::directory_iterator(folder.path())) {
            if (plan.path().filename() == "scenario.toml" || plan.path().extension() != ".toml") continue;
            CHECK_FALSE(sound(read_plan(sound(text::read_file(plan.path().string())), plan.path().string(), scenario)).cards.empty());
            ++plans;
        }
    }
    CHECK(plans >= 6);
}

TEST_CASE("the small job of these tests is sound, and its fields arrive")
{
    const Scenario scenario = sound(read_scenario(small, "small.toml"));
    CHECK(scenario.zones.size() == 3);
    CHECK(scenario.openings[0].leads_to == ZoneId{"hall"});
    CHECK(scenario.objects[0].height == 2.5_ft);
    CHECK(scenario.counters[0].height == 3.0_ft);   // a default
    CHECK(scenario.components[0].lead == 2.0_mgpcm2);
    CHECK(scenario.crew[1].role == Role::trained_worker);
    CHECK(scenario.start == 8.0_h);
}

TEST_CASE("each slip in a scenario is told with its line and column")
{
    const std::array slips{
        // What stands where
        Slip{R"(wall = "east", from = "3 ft")", R"(wall = "east", from = "8 ft")", R"(from = ^"8 ft")",
             "expected an opening inside its wall, which is 10 ft long, found one that ends at 11 ft"},
        Slip{R"(height = "4 ft", above-floor = "3 ft")", R"(height = "6 ft", above-floor = "3 ft")", R"(height = ^"6 ft")",
             "expected an opening below the ceiling at 8 ft, found one that ends at 9 ft"},
        Slip{R"(west = "12 ft")", R"(west = "11 ft")", R"({ id = ^"hall")", "expected zones that do not overlap, found `hall` over `room`"},
        Slip{R"(west = "6 ft", south = "6 ft")", R"(west = "10 ft", south = "6 ft")", R"(west = ^"10 ft")",
             "expected a place inside `room`, found one that reaches beyond its walls"},
        Slip{R"(height = "2 ft 6 in")", R"(height = "9 ft")", R"(height = ^"9 ft")", "expected at most the ceiling, 8 ft, found 9 ft"},
        Slip{R"(south = "8 ft", width = "6 ft")", R"(south = "8 ft", width = "13 ft")", R"(west = ^"0 ft", south = "8 ft")",
             "expected a place inside `room`, found one that reaches beyond its walls"},
        Slip{R"(from = "1 ft", width = "8 ft")", R"(from = "5 ft", width = "8 ft")", R"(from = ^"5 ft")",
             "expected a stretch of its wall, which is 12 ft long, found one that ends at 13 ft"},
        // What is named
        Slip{R"(kind = "window", zone = "room")", R"(kind = "window", zone = "rom")", R"(zone = ^"rom")", "expected the id of a zone, perhaps `room`, found `rom`"},
        Slip{R"(leads-to = "hall")", R"(leads-to = "hal")", R"(leads-to = ^"hal")", "expected the id of a zone, perhaps `hall`, found `hal`"},
        Slip{R"(title = "Chair", zone = "room")", R"(title = "Chair", zone = "kitchen")", R"(zone = ^"kitchen")", "expected the id of a zone, found `kitchen`"},
        Slip{R"(window = "window")", R"(window = "door")", R"(window = ^"door")", "expected the id of a window, found `door`"},
        Slip{R"(opening = "window")", R"(opening = "windows")", R"(opening = ^"windows")", "expected the id of an opening, found `windows`"},
        Slip{R"(kind = "window", zone)", R"(kind = "window", leads-to = "hall", zone)", R"(kind = "window", leads-to = ^"hall")",
             "expected no leads-to: only doors lead to a zone, found `hall`"},
        // What lies behind an opening, and beside it
        Slip{R"(role = "passage", west = "12 ft", width = "4 ft", depth = "10 ft")", R"(role = "passage", west = "12 ft", width = "4 ft", depth = "5 ft")", R"(leads-to = ^"hall")",
             "expected a zone that lies behind the whole door, found `hall`, which does not"},
        Slip{R"(zone = "room", wall = "west", from = "2 ft")", R"(zone = "room", wall = "east", from = "7 ft")", R"(wall = ^"east", from = "7 ft")",
             "expected a window in an outer wall, found one with `hall` behind it"},
        Slip{R"(zone = "hall", wall = "east", from = "2 ft")", R"(zone = "room", wall = "west", above-floor = "2 ft", from = "4 ft")", R"(from = ^"4 ft")",
             "expected a piece of wall that no other opening takes up, found `hatch` over `window`"},
        // Carpets
        Slip{R"(west = "6 ft", south = "1 ft", width = "4 ft")", R"(west = "10 ft", south = "1 ft", width = "4 ft")", R"(west = ^"10 ft")",
             "expected a place inside `room`, found one that reaches beyond its walls"},
        Slip{R"(title = "Mat", zone = "room", west = "1 ft")", R"(title = "Mat", zone = "room", west = "3 ft")", R"(id = ^"mat")", "expected carpets that do not overlap, found `mat` over `rug`"},
        Slip{R"(title = "Mat", zone = "room")", R"(title = "Mat", zone = "moon")", R"(zone = ^"moon")", "expected the id of a zone, found `moon`"},
        Slip{R"(id = "mat")", R"(id = "rug")", R"({ id = ^"rug", title = "Mat")", "expected an id that no other carpet has, found `rug` a second time"},
        // Ids, and titles of things that the screens tell apart by them
        Slip{R"(id = "attic")", R"(id = "room")", R"({ id = ^"room", title = "Attic")", "expected an id that no other zone has, found `room` a second time"},
        Slip{R"(id = "hatch")", R"(id = "door")", R"({ id = ^"door", title = "Hatch")", "expected an id that no other opening has, found `door` a second time"},
        Slip{R"(id = "chair")", R"(id = "table")", R"({ id = ^"table", title = "Chair")", "expected an id that no other object has, found `table` a second time"},
        Slip{R"(id = "board")", R"(id = "casing")", R"({ id = ^"casing", title = "Baseboard")", "expected an id that no other component has, found `casing` a second time"},
        Slip{R"(id = "ben")", R"(id = "ana")", R"({ id = ^"ana", title = "Ben")", "expected an id that no other person has, found `ana` a second time"},
        Slip{R"(id = "tape")", R"(id = "poly")", R"({ id = ^"poly", title = "Tape")", "expected an id that no other supply has, found `poly` a second time"},
        Slip{R"(title = "Chair")", R"(title = "Table")", R"(id = "chair", title = ^"Table")", "expected a title that no other object has, found `Table` a second time"},
        // Sizes nobody can mean, and what is no size
        Slip{R"(width = "12 ft")", R"(width = "1e9 m")", R"(width = ^"1e9 m")",
             R"(expected `width` to be a length such as "0.5 in", found "1e9 m" (too large, the most is 1000 m))"},
        Slip{R"(width = "12 ft")", R"(width = "100 m")", R"(width = ^"100 m")", R"(expected `width` to be a length from 1 ft to 60 ft, found "100 m")"},
        Slip{R"(width = "12 ft")", R"(width = "-12 ft")", R"(width = ^"-12 ft")", R"(expected `width` to be a length from 1 ft to 60 ft, found "-12 ft")"},
        Slip{R"(width = "12 ft")", R"(width = "nan ft")", R"(width = ^"nan ft")", R"(expected `width` to be a length such as "0.5 in", found "nan ft")"},
        Slip{R"(width = "12 ft")", R"(width = 12)", R"(width = ^12)", R"(expected `width` to be a length such as "0.5 in", found 12 (no unit and no quotes))"},
        Slip{R"(width = "12 ft")", R"(width = "12")", R"(width = ^"12")", R"(expected `width` to be a length such as "0.5 in", found "12" (no unit))"},
        Slip{R"(width = "12 ft")", R"(width = "12 min")", R"(width = ^"12 min")", R"(expected `width` to be a length such as "0.5 in", found "12 min" (a time))"},
        Slip{"light = 1.0", "light = nan", "light = ^nan", "expected `light` to be a number from 0.05 to 4, found nan"},
        Slip{"light = 1.0", "light = -inf", "light = ^-inf", "expected `light` to be a number from 0.05 to 4, found -inf"},
        Slip{"built = 1950", "built = 1950.5", "built = ^1950.5", "expected `built` to be a whole number from 1600 to 2100, found 1950.5"},
        Slip{"built = 1950", "built = 99999999999999999", "built = ^99999999999999999", "expected `built` to be a whole number from 1600 to 2100, found 99999999999999999"},
        // Words and keys
        Slip{R"(title = "Room", role = "work-room")", R"(title = "Room", role = "work-rom")", R"(role = ^"work-rom")",
             R"(expected `role` to be "work-room", "passage", "room" or "closet"; the nearest is "work-room", found "work-rom")"},
        Slip{R"(title = "Room", role)", R"(title = "Room", widht = "3 ft", role)", R"(^widht)", R"(expected a known key, the nearest is "width", found unknown key "widht")"},
        Slip{"light = 1.0", "lihgt = 1.0", "^lihgt", R"(expected a known key, the nearest is "light", found unknown key "lihgt")"},
        Slip{R"(, lead = "1 mg/cm2")", "", R"(^{ id = "board")", "expected the key `lead`, found a table without it"},
        Slip{"format = 1", "format = 2", "format = ^2", "expected `format` to be a whole number from 1 to 1, found 2"},
        Slip{R"(id = "small")", R"(id = "")", R"(id = ^"")", R"(expected `id` to be text in quotes, found "")"},
    };
    for (const Slip& slip : slips) check_slip(slip);
}

TEST_CASE("a job needs exactly one work room and a way from it to a passage")
{
    const Place second{"small.toml", 10, 43};
    const Problems two = wrong(read_scenario(with(small, R"(role = "room")", R"(role = "work-room")"), "small.toml"));
    CHECK(told(two) == describe({second, "exactly one zone with role = \"work-room\"", "2 of them"}) + "\n");

    const std::string no_way = ": expected a door between the work room and a zone with role = \"passage\", found none\n";
    const Problems none = wrong(read_scenario(with(small, R"(role = "work-room")", R"(role = "room")"), "small.toml"));
    CHECK(told(none) == "small.toml:8:41: expected exactly one zone with role = \"work-room\", found 0 of them\nsmall.toml:13:41" + no_way);

    const std::string register_for_door = with(small, R"(kind = "door", zone = "room", leads-to = "hall")", R"(kind = "supply", zone = "room")");
    CHECK(told(wrong(read_scenario(register_for_door, "small.toml"))) == "small.toml:13:41" + no_way);
}

TEST_CASE("a door must say where it leads, and not back to its own zone")
{
    const std::string nowhere = with(small, R"(, leads-to = "hall")", "");
    CHECK(told(wrong(read_scenario(nowhere, "small.toml"))).find("small.toml:13:3: expected the zone that a door leads to, found none") == 0);
    const std::string back = with(small, R"(leads-to = "hall")", R"(leads-to = "room")");
    CHECK(told(wrong(read_scenario(back, "small.toml"))).find("expected a zone other than the door's own, found `room`") != std::string::npos);
}

TEST_CASE("an opening may be flush with a corner, above another one, or in a wall that is a foot thick")
{
    const auto problems_with = [](std::string_view piece, std::string_view instead) {
        const Result<Scenario> scenario = read_scenario(with(small, piece, instead), "small.toml");
        return scenario ? std::string() : told(scenario.error());
    };
    const std::string hatch = R"(zone = "hall", wall = "east", from = "2 ft", width = "3 ft", height = "3 ft")";
    CHECK(problems_with(hatch, R"(zone = "room", wall = "west", from = "2 ft", width = "3 ft", height = "1 ft", above-floor = "7 ft")").empty());
    CHECK(problems_with(hatch, R"(zone = "room", wall = "south", from = "0 ft", width = "3 ft", height = "3 ft")").empty());
    const std::string hall = R"(west = "12 ft", width = "4 ft", depth = "10 ft")";
    CHECK(problems_with(hall, R"(west = "13 ft", width = "4 ft", depth = "10 ft")").empty());
    CHECK(problems_with(hall, R"(west = "13 ft 6 in", width = "4 ft", depth = "10 ft")").find("expected a zone that lies behind the whole door, found `hall`") != std::string::npos);
    CHECK(problems_with(R"(leads-to = "hall")", R"(leads-to = "attic")").find("expected a zone that lies behind the whole door, found `attic`") != std::string::npos);
}

TEST_CASE("a carpet on a carpeted floor is told")
{
    const std::string text = with(small, R"(depth = "10 ft", ceiling = "8 ft")", R"(depth = "10 ft", ceiling = "8 ft", floor = "carpet")");
    const Problems problems = wrong(read_scenario(text, "small.toml"));
    REQUIRE(problems.size() == 2);
    CHECK(problems.front().expected == "a zone whose floor is not carpet already");
}

TEST_CASE("a duct to the outdoors is a register, and nothing else is")
{
    const Scenario scenario = sound(read_scenario(with(small, R"(id = "hatch", title = "Hatch", kind = "window")", R"(id = "hatch", title = "Hood", kind = "exhaust")"), "small.toml"));
    CHECK(is_register(scenario.openings[2].kind));
    CHECK_FALSE(is_register(scenario.openings[1].kind));
    CHECK_FALSE(is_register(scenario.openings[0].kind));
}

TEST_CASE("a scenario full of mistakes is told two hundred of them")
{
    std::string zones;
    for (int i = 0; i < 4000; ++i) zones += R"(  { id = "room", title = "Room", role = "room", width = "12 ft", depth = "10 ft" },)" "\n";
    CHECK(wrong(read_scenario(with(small, "]\nopening = [", zones + "]\nopening = ["), "small.toml")).size() == 200);
}

TEST_CASE("all slips of a scenario are told at once, in the order of the file")
{
    std::string text = with(small, R"(wall = "east", from = "3 ft")", R"(wall = "east", from = "8 ft")");
    text = with(text, R"(kind = "window", zone = "room")", R"(kind = "window", zone = "rom")");
    text = with(text, R"(id = "chair")", R"(id = "table")");
    text = with(text, R"(south = "8 ft", width = "6 ft")", R"(south = "9 ft", width = "6 ft")");
    text = with(text, R"(id = "ben")", R"(id = "ana")");
    const Problems problems = wrong(read_scenario(text, "small.toml"));
    INFO(told(problems));
    REQUIRE(problems.size() == 5);
    const std::vector<int> lines{problems[0].where.line, problems[1].where.line, problems[2].where.line, problems[3].where.line, problems[4].where.line};
    CHECK(lines == std::vector<int>{13, 14, 19, 25, 33});
}

TEST_CASE("slips of writing are told before those of meaning, all of a kind at once")
{
    std::string text = with(small, "light = 1.0", "light = nan");
    text = with(text, R"(width = "12 ft")", R"(width = 12)");
    text = with(text, R"(, lead = "1 mg/cm2")", "");
    CHECK(wrong(read_scenario(text, "small.toml")).size() == 3);
}

TEST_CASE("a file that breaks off anywhere is told or read, never worse")
{
    const std::string whole = shipped_text("scenario");
    int readable = 0;
    for (std::size_t length = 0; length < whole.size(); length += 23) {
        const Result<Scenario> scenario = read_scenario(whole.substr(0, length), "short.toml");
        if (scenario) {
            ++readable;     // whole tables at the end may be missing: the last supplies
            CHECK(scenario->supplies.size() < 26);
            continue;
        }
        for (const Problem& problem : scenario.error()) {
            CHECK(problem.where.file == "short.toml");
            CHECK(problem.where.line >= 1);
            CHECK_FALSE(problem.expected.empty());
            CHECK_FALSE(problem.found.empty());
        }
    }
    CHECK(readable > 0);
    CHECK(readable < 100);
}

TEST_CASE("an empty file is told every key it lacks")
{
    const Problems problems = wrong(read_scenario("", "empty.toml"));
    for (const char* key : {"format", "id", "title", "job", "building", "zone", "component", "person"})
        CHECK(std::any_of(problems.begin(), problems.end(), [&](const Problem& p) { return p.expected == "the key `" + std::string(key) + "`"; }));
    CHECK(problems.size() == 8);
}

TEST_CASE("bytes that are no text are told in plain words")
{
    const Luck luck{7, Stream::parameter};
    for (std::uint32_t trial = 0; trial < 200; ++trial) {
        std::string bytes(1 + trial * 3, '\0');
        for (std::size_t i = 0; i < bytes.size(); ++i) bytes[i] = static_cast<char>(luck.draw(i, trial)[0] & 0xFFU);
        const Problems problems = wrong(read_scenario(bytes, "noise.toml"));
        CHECK(problems.front().where.file == "noise.toml");
        CHECK_FALSE(problems.front().expected.empty());
    }
    // A byte of a shipped file changed: read or told, and never a scenario that names what is not there.
    const std::string whole = shipped_text("scenario");
    for (std::uint32_t trial = 0; trial < 300; ++trial) {
        std::string bytes = whole;
        const Draw draw = luck.draw(trial, 1);
        bytes[draw[0] % bytes.size()] = static_cast<char>(draw[1] & 0xFFU);
        const Result<Scenario> scenario = read_scenario(bytes, "changed.toml");
        if (!scenario) CHECK_FALSE(scenario.error().empty());
        else
            for (const Opening& o : scenario->openings) CHECK(find_by_id(scenario->zones, o.zone) != nullptr);
    }
}

}
