#pragma once

#include "core/hash.hpp"
#include "core/insist.hpp"
#include "debrief/report.hpp"
#include "job/files.hpp"
#include "rules/marking_sheet.hpp"

#include <catch2/catch.hpp>

#include <string>

/// One room, one window, one worker and a book of a few rules: all that a debrief needs, carried out in a moment.
namespace flapdoor::debrief::small_job {

inline const std::string hostile = "<script>alert('1')</script>&\"";

inline std::string toml_quoted(const std::string& text)
{
    std::string out = "\"";
    for (const char c : text) (c == '"' || c == '\\') ? out += '\\', out += c : out += c;
    return out + "\"";
}

inline std::string scenario_text(const std::string& title)
{
    return "format = 1\nid = \"small\"\ntitle = " + toml_quoted(title) + "\njob = " + toml_quoted(title + " work") + R"(
[building]
title = "Small house"
built = 1930
[air-handling]
is-running = true
return-flow = "100 m3/h"
supply-flow = "100 m3/h"
house-flow = "800 m3/h"
[[zone]]
id = "room"
title = "Room"
role = "work-room"
width = "8 ft"
depth = "7 ft"
[[zone]]
id = "hall"
title = )" + toml_quoted(title + " hall") + R"(
role = "passage"
west = "8 ft"
width = "4 ft"
depth = "7 ft"
[[zone]]
id = "far"
title = "Far room"
role = "room"
west = "12 ft"
width = "16 ft"
depth = "7 ft"
[[opening]]
id = "window"
title = "Window"
kind = "window"
zone = "room"
wall = "west"
from = "2 ft"
width = "3 ft"
height = "4 ft"
above-floor = "3 ft"
is-open = true
[[opening]]
id = "door"
title = "Door"
kind = "door"
zone = "room"
leads-to = "hall"
wall = "east"
from = "2 ft"
width = "2 ft 8 in"
height = "6 ft 8 in"
is-open = true
[[opening]]
id = "arch"
title = "Arch"
kind = "door"
zone = "hall"
leads-to = "far"
wall = "east"
from = "2 ft"
width = "3 ft"
height = "7 ft"
is-open = true
[[opening]]
id = "return"
title = "Return"
kind = "return"
zone = "room"
wall = "north"
from = "2 ft"
width = "1 ft"
height = "8 in"
above-floor = "6 in"
is-open = true
[[object]]
id = "chest"
title = "Chest"
zone = "room"
west = "4 ft"
south = "4 ft"
width = "3 ft"
depth = "2 ft"
height = "3 ft"
[[sill]]
id = "sill"
title = "Sill"
window = "window"
[[component]]
id = "casing"
title = "Casing"
kind = "trim"
zone = "room"
opening = "window"
area = "6 ft2"
lead = "3 mg/cm2"
[[person]]
id = "ann"
title = "Ann, renovator"
role = "certified-renovator"
[[supply]]
id = "poly"
title = "Sheeting"
kind = "sheeting"
is-staged = true
[[supply]]
id = "tape"
title = "Tape"
kind = "tape"
is-staged = true
[[supply]]
id = "vacuum"
title = "HEPA vacuum"
kind = "hepa-vacuum"
is-staged = true
[[supply]]
id = "scraper"
title = "Scraper"
kind = "scraper"
is-staged = true
)";
}

inline std::string plan_text(const std::string& title, const std::string& cards)
{
    return "format = 1\nscenario = \"small\"\ntitle = " + toml_quoted(title) + "\ncard = [\n" + cards + "]\n";
}

inline const std::string signs = R"({ do = "post-signs", by = ["ann"], at = "door" },)" "\n";
inline const std::string shut = R"({ do = "close-window", by = ["ann"], opening = "window" },)" "\n";
inline const std::string scrape = R"({ do = "disturb-paint", by = ["ann"], component = "casing", technique = "hand-scrape", time = "4 min" },)" "\n";
inline const std::string vacuum = R"({ do = "vacuum-surfaces", by = ["ann"], target = "everything", vacuum = "vacuum" },)" "\n";
inline const std::string inspect = R"({ do = "inspect", by = ["ann"], light = "flashlight" },)" "\n";

inline const std::string careful = signs + shut + scrape + vacuum + inspect;
inline const std::string careless = scrape + signs + vacuum + inspect;

inline std::string book_text(const std::string& title)
{
    return "format = 1\nid = \"tiny\"\ntitle = " + toml_quoted(title) + R"(
edition = "made up for a test, 2024"
[[rule]]
id = "signs-first"
says = "signs are up before the work <begins>"
cite = "Test 1 & 2"
reason = "People keep out & stay well."
harm = "Dust on soles."
class = "must"
weight = 3
critical = true
when = { before = ["post-signs", "first-dust"] }
[[rule]]
id = "window-shut"
says = "the window is shut before the work begins"
reason = "Wind blows."
class = "should"
weight = 2
when = { before = ["close-window", "first-dust"] }
[[rule]]
id = "no-broom"
says = "nobody sweeps dry"
cite = "Test 3"
reason = "Brooms throw dust."
class = "must"
weight = 3
when = { never = "sweep-floor" }
[[rule]]
id = "air-off"
says = "the air handling is off while paint is worked on"
reason = "Air carries dust."
class = "practice"
weight = 1
when = { while = { state = "hvac-running", is = false, from = "first-dust", to = "last-dust" } }
[[rule]]
id = "train"
says = "a record is written"
reason = "It shows how the job was done."
class = "practice"
weight = 0
when = { at_least = { done = "write-record" } }
)";
}

struct Made {
    job::Scenario scenario;
    drill::Run run;
    rules::MarkingSheet sheet;
    drill::Film film;
    Report report;
};

inline Made make(const std::string& cards, const std::string& title = "A small job", std::uint64_t seed = 1)
{
    const auto told = [](const auto& result) {
        if (!result)
            for (const Problem& problem : result.error()) UNSCOPED_INFO(describe(problem));
        return result.has_value();
    };
    const auto scenario = job::read_scenario(scenario_text(title), "scenario.toml");
    REQUIRE(told(scenario));
    const auto plan = job::read_plan(plan_text(title + " plan", cards), "plan.toml", *scenario);
    REQUIRE(told(plan));
    const auto book = rules::read_rule_book(book_text(title + " book"), "book.toml");
    REQUIRE(told(book));

    drill::Camera camera;
    drill::RunOptions options;
    options.seed = seed;
    options.watcher = [&](const site::Site& site) { camera.watch(site); };
    options.after_card = [&](const site::Site& site) { camera.end_card(site); };
    drill::Run run = drill::carry_out(*scenario, *plan, options);
    rules::MarkingSheet sheet = rules::marking_sheet(*book, *scenario, run.site.log);
    drill::Film film = camera.take_film();
    Report report = make_report(*scenario, run, sheet, outcome(run), film);
    return {*scenario, std::move(run), std::move(sheet), std::move(film), std::move(report)};
}

inline std::size_t count(const std::string& text, const std::string& what)
{
    std::size_t found = 0;
    for (std::size_t at = text.find(what); at != std::string::npos; at = text.find(what, at + what.size())) ++found;
    return found;
}

}
