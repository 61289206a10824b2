// A whole drill through the window without a display: by mouse alone, by keyboard alone, and broken off and gone on with.
#include "played_shell.hpp"

#include "debrief/main_job.hpp"
#include "text/input_file.hpp"

#include <catch2/catch.hpp>

#include <fstream>

using namespace flapdoor;
using namespace flapdoor::window;
namespace fs = std::filesystem;

namespace {

Sitting sitting(const Places& places, Mode mode = Mode::step_by_step) { return {read_drills(places.scenarios, places.book).find("one-window"), mode, 1, "Ana"}; }

std::vector<fs::path> kept_runs(const Places& places)
{
    std::vector<fs::path> runs;
    std::error_code none;
    for (const auto& entry : fs::directory_iterator(places.own / "runs", none)) runs.push_back(entry.path());
    return runs;
}

/// What came of it is a run file that the command can check.
void check_kept_run(const Places& places, std::size_t cards)
{
    const auto runs = kept_runs(places);
    REQUIRE(runs.size() == 1);
    const auto file = drill::load_run(runs.front().string());
    REQUIRE(file);
    CHECK(file->hashes.size() == cards);
    const auto check = debrief::check(*file);
    REQUIRE(check);
    CHECK(check->is_same());
}

/// The careful cards straight into the room, without the deck.
void play_card(PlayedShell& played, const job::Card& card)
{
    played.room()->take_up(card);
    REQUIRE_FALSE(played.room()->draft()->why_not.has_value());
    played.room()->do_it();
    REQUIRE(played.wait_for_room());
}

}

TEST_CASE("a whole drill is played by mouse alone")
{
    const TestPlaces folder("mouse-drill");
    PlayedShell played(folder.places);
    played.go_to(start_screen(played.shell));
    REQUIRE(played.click("drill/one-window", "drills"));
    REQUIRE(played.click("mode/step", "choices"));
    REQUIRE(played.click("begin", "choices"));
    for (const char* thing : {"take/poly", "take/tape", "take/signs", "take/scraper"}) REQUIRE(played.click(thing, "supplies"));
    CHECK(played.find("taken")->label == "4 things taken along");
    REQUIRE(played.click("begin", "begin-row"));
    REQUIRE(played.wait_for_room());

    REQUIRE(played.click("deck/give-pamphlet", "deck"));
    REQUIRE(played.click("do-it", "draft-foot"));
    REQUIRE(played.wait_for_room());
    CHECK(played.room()->attempt().cards().size() == 1);

    REQUIRE(played.click("deck/lay-floor-sheet", "deck"));
    CHECK(played.find("field/sheeting/drop-cloth") == nullptr); // it was left behind
    REQUIRE(played.click("do-it", "draft-foot"));
    REQUIRE(played.wait_for_room());
    REQUIRE(played.room()->attempt().cards().size() == 2);

    REQUIRE(played.click("deck/disturb-paint", "deck"));
    REQUIRE(played.click("field/technique/hand-scrape", "draft"));
    REQUIRE(played.click("do-it", "draft-foot"));
    REQUIRE(played.wait_for_room());
    REQUIRE(played.find("fault") != nullptr); // no signs, no flap door, the air handling runs
    REQUIRE(played.click("fault/on", "fault-slip"));
    CHECK(played.find("fault") == nullptr);

    REQUIRE(played.click("take-back", "room-foot"));
    REQUIRE(played.wait_until([&] { return !played.room()->attempt().is_busy(); }));
    CHECK(played.room()->attempt().cards().size() == 2);
    REQUIRE(played.click("do-it", "draft-foot")); // what was taken back is in hand again
    REQUIRE(played.wait_for_room());

    REQUIRE(played.click("finish", "room-foot"));
    REQUIRE(played.click("finish/yes", "finish-sheet"));
    REQUIRE(played.wait_until([&] { return played.room() == nullptr && played.find("result") != nullptr; }));
    CHECK(played.find("result")->label == "not passed");
    CHECK_FALSE(fs::exists(unfinished_file(folder.places, "one-window")));
    check_kept_run(folder.places, 3);
    // What each mistake did, although most supplies that would mend them were left behind.
    REQUIRE(played.find("mode/compare") != nullptr);
    played.stage.click("sheet/what-if");
    played.settle();
    REQUIRE(played.click("what-if/ask", "what-ifs"));
    REQUIRE(played.wait_until([&] { return played.find("what-if-1") != nullptr; }));
}

TEST_CASE("a whole drill is played by keyboard alone")
{
    const TestPlaces folder("keyboard-drill");
    PlayedShell played(folder.places);
    played.go_to(start_screen(played.shell));
    REQUIRE(played.press_on("drill/one-window"));
    REQUIRE(played.press_on("mode/marked", Key::space));
    REQUIRE(played.press_on("begin"));
    for (const char* thing : {"take/poly", "take/tape", "take/signs", "take/scraper"}) REQUIRE(played.press_on(thing, Key::space));
    REQUIRE(played.press_on("begin"));
    REQUIRE(played.wait_for_room());

    const auto carry_out = [&](const std::string& kind) {
        REQUIRE(played.press_on("deck/" + kind));
        REQUIRE(played.room()->draft() != nullptr);
        played.stage.press(Key::enter, {.control = true});
        REQUIRE(played.wait_for_room());
    };
    carry_out("give-pamphlet");
    played.stage.input.typed = U"/";
    played.settle();
    CHECK(played.stage.ui->focused() == "filter");
    played.stage.input.typed = U"sheeting lay";
    played.settle();
    played.stage.press(Key::escape);
    CHECK(played.find("deck/lay-floor-sheet") != nullptr);
    CHECK(played.find("deck/give-pamphlet") == nullptr);
    carry_out("lay-floor-sheet");
    REQUIRE(played.walk_to("filter"));
    for (int i = 0; i < 20; ++i) played.stage.press(Key::backspace);
    played.stage.press(Key::escape);
    REQUIRE(played.find("deck/disturb-paint") != nullptr);
    carry_out("disturb-paint");
    CHECK(played.find("fault") == nullptr); // marked: silent
    CHECK(played.find("take-back") == nullptr);
    CHECK(played.room()->attempt().cards().size() == 3);

    REQUIRE(played.press_on("finish"));
    REQUIRE(played.press_on("finish/yes"));
    REQUIRE(played.wait_until([&] { return played.room() == nullptr && played.find("result") != nullptr; }));
    CHECK(played.find("result")->label == "not passed");
    check_kept_run(folder.places, 3);
}

TEST_CASE("a drill broken off in the middle of a card goes on to the same end as one that was not")
{
    const TestPlaces folder("broken-off");
    const Sitting who = sitting(folder.places);
    const std::vector<job::Card>& cards = who.drill->careful.plan.cards;
    drill::RunOptions options;
    options.seed = who.seed;
    const drill::Run whole = drill::carry_out(who.drill->careful.scenario, who.drill->careful.plan, options);
    {
        PlayedShell played(folder.places);
        played.go_to(room_screen(played.shell, who, who.drill->careful.scenario));
        REQUIRE(played.wait_for_room());
        for (std::size_t i = 0; i < 5; ++i) play_card(played, cards[i]);
        REQUIRE(played.wait_until([&] { return fs::exists(unfinished_file(folder.places, "one-window")); }));
        played.room()->take_up(cards[5]);
        played.room()->do_it(); // the window goes with this card in play
    }
    PlayedShell played(folder.places);
    played.go_to(start_screen(played.shell));
    REQUIRE(played.find("left-0") != nullptr);
    REQUIRE(played.click("go-on-0", "drills"));
    REQUIRE(played.wait_for_room());
    REQUIRE(played.room()->attempt().cards().size() == 5);
    for (std::size_t i = 5; i < cards.size(); ++i) play_card(played, cards[i]);
    CHECK(played.room()->attempt().hashes() == whole.hashes);
}

TEST_CASE("a damaged file of a drill that was left is told, kept, and stops nothing")
{
    const TestPlaces folder("damaged");
    fs::create_directories(folder.places.own / "unfinished");
    const fs::path file = folder.places.own / "unfinished/some-drill.toml";
    std::ofstream(file) << "format = 1\ndrill = \"one-win";
    PlayedShell played(folder.places);
    played.go_to(start_screen(played.shell));
    REQUIRE(played.find("left-0") != nullptr);
    CHECK(played.find("left-0")->label.find("some-drill.toml") != std::string::npos);
    CHECK(played.find("go-on-0") == nullptr);
    CHECK(played.find("drill/one-window") != nullptr);
    CHECK(text::read_file(file.string()).value() == "format = 1\ndrill = \"one-win");
}

TEST_CASE("cards are put in order by keyboard, carried out, and the nearest order is shown")
{
    const TestPlaces folder("order");
    PlayedShell played(folder.places);
    played.go_to(order_screen(played.shell, sitting(folder.places, Mode::order_first)));
    std::vector<std::string> before;
    const auto order = [&] {
        std::vector<std::string> names;
        for (const Spot& spot : played.stage.ui->spots())
            if (spot.role == Role::card) names.push_back(spot.name);
        return names;
    };
    before = order();
    REQUIRE(before.size() == 6); // the cards of setting up
    REQUIRE(played.press_on(before[0])); // picked up
    played.stage.press(Key::down);
    played.settle();
    CHECK(order()[1] == before[0]);
    CHECK(order()[0] == before[1]);
    played.stage.press(Key::enter); // put down
    played.stage.press(Key::down);
    played.settle();
    CHECK(order()[1] == before[0]); // walked, not moved
    REQUIRE(played.press_on("watch"));
    REQUIRE(played.wait_until([&] { return played.find("to-debrief") != nullptr; }));
    REQUIRE(played.press_on("to-debrief"));
    REQUIRE(played.wait_until([&] { return played.find("result") != nullptr; }));
}

TEST_CASE("moments are marked while a hurried crew works, and scored with reasons at the end")
{
    const TestPlaces folder("spot");
    PlayedShell played(folder.places);
    played.go_to(spot_screen(played.shell, sitting(folder.places, Mode::spot_the_fault)));
    REQUIRE(played.wait_until([&] { return played.find("mark") != nullptr; }));
    CHECK(played.find("fault-after") == nullptr); // nothing speaks of faults yet
    played.stage.press(Key::f); // at the start: nothing has happened yet but what comes in this card counts
    for (int i = 0; i < 40; ++i) played.stage.press(Key::right);
    played.stage.press(Key::f);
    CHECK(played.find("mark-1") != nullptr);
    REQUIRE(played.press_on("score"));
    REQUIRE(played.find("to-debrief") != nullptr);
    std::size_t sightings = 0;
    for (const Spot& spot : played.stage.ui->spots())
        if (spot.name.rfind("sighting-", 0) == 0) ++sightings;
    CHECK(sightings > 3);
    CHECK(played.find("result")->label.find("of " + std::to_string(sightings)) != std::string::npos);
}

TEST_CASE("the shell changes language, text size and motion on every screen")
{
    const TestPlaces folder("settings");
    PlayedShell played(folder.places);
    played.go_to(start_screen(played.shell));
    played.stage.press(Key::l, {.control = true});
    CHECK(text::spoken() == text::Language::spanish);
    played.stage.click("language");
    CHECK(text::spoken() == text::Language::english);
    played.stage.press(Key::p, {.control = true});
    played.settle();
    CHECK(played.stage.ui->text_scale() == 1.5F);
    played.stage.press(Key::p, {.control = true});
    played.settle();
    CHECK(played.stage.ui->text_scale() == 1.0F);
    played.stage.press(Key::m);
    CHECK(played.shell.settings().keeps_still);
    played.stage.input.typed = U"?";
    played.settle();
    REQUIRE(played.find("help-sheet") != nullptr);
    played.stage.press(Key::escape);
    played.settle();
    CHECK(played.find("help-sheet") == nullptr);
    CHECK_FALSE(played.shell.wants_to_quit());
}
