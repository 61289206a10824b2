// Switching the language in the window tells everything on it again: no sentence of the other language stays, on any screen.
#include "drawn_language.hpp"
#include "played_run.hpp"
#include "played_shell.hpp"

#include "quiz/bank.hpp"
#include "quiz/making/posing.hpp"
#include "quiz/sitting.hpp"
#include "window/class_room/class_room.hpp"
#include "window/run/waiting_screen.hpp"

#include <catch2/catch.hpp>

#include <functional>

using namespace flapdoor;
using namespace flapdoor::window;

namespace {

const TwoLanguages& catalog()
{
    static const TwoLanguages both;
    return both;
}

std::string strangers_on(Ui& ui)
{
    const std::size_t spoken = text::spoken() == text::Language::english ? 0 : 1;
    std::set<std::string> found;
    for (const std::string& drawn : ui.drawn_words())
        if (const std::string stranger = catalog().stranger_in(drawn, spoken); !stranger.empty()) found.insert('"' + drawn + "\" has \"" + stranger + "\"");
    std::string all;
    for (const std::string& one : found) all += one + "\n";
    return all;
}

/// Begins in one language, switches to the other and back, and looks at every text that is drawn.
void look_in_both(Rehearsal& stage, const std::function<void()>& settle)
{
    stage.ui->keep_drawn_words();
    settle();
    CHECK(stage.ui->drawn_words().size() > 10); // so that nothing passes because nothing is heard
    for (int i = 0; i < 2; ++i) {
        stage.press(Key::l, {.control = true});
        settle();
        INFO((text::spoken() == text::Language::english ? "English" : "Spanish"));
        CHECK(strangers_on(*stage.ui) == "");
    }
}

struct BackToEnglish {
    BackToEnglish() { text::speak(text::Language::english, FLAPDOOR_CATALOGS); }
    ~BackToEnglish() { text::speak(text::Language::english); }
};

struct Switched {
    Places places{FLAPDOOR_SOURCE_DIR "/scenarios", std::filesystem::temp_directory_path() / "flapdoor-language-own", "federal", "2026-11-29"};
    std::shared_ptr<const Drill> drill = read_drills(places.scenarios, places.book).find("back-bedroom");
    PlayedShell played{places, 1.0F, {1440.0F, 1400.0F}}; // tall: what would have to be scrolled to is drawn too

    void look_at(std::unique_ptr<Screen> screen)
    {
        played.go_to(std::move(screen));
        look();
    }
    void look()
    {
        look_in_both(played.stage, [&] { played.settle(); });
    }
    Sitting sitting(Mode mode) const { return {drill, mode, 1, {}}; }
};

std::unique_ptr<Screen> sitting_of(Shell& shell, const char* id, quiz::Feedback feedback = quiz::Feedback::at_once)
{
    static quiz::Workshop workshop(FLAPDOOR_SOURCE_DIR "/scenarios");
    static const quiz::Bank bank = quiz::load_bank(FLAPDOOR_SOURCE_DIR "/scenarios/banks/sample.toml", workshop.find()).value();
    quiz::Paper paper{"by-hand", {"By hand", "A mano", {}, {}}, 1, feedback, {}, {}};
    paper.items.push_back({std::string("sample/") + id, 1, quiz::pose(*quiz::find_question(bank, id), workshop, {"back-bedroom"}, 1).value()});
    quiz::SittingResult sitting = quiz::begin_sitting(paper, "p", "2026-11-29T10:00:00Z");
    return sitting_screen(shell, std::move(paper), std::move(sitting), std::filesystem::temp_directory_path() / "flapdoor-language-own/sitting.toml");
}

}

TEST_CASE("the check of drawn words sees what stayed English, and forgives names and figures")
{
    CHECK(catalog().size() > 1000);
    CHECK(catalog().stranger_in("Bedroom door", 1) == "Bedroom door");
    CHECK_FALSE(catalog().stranger_in("Rosa, 09:59 to 10:02 \xC2\xB7 Bedroom door", 1).empty());
    CHECK_FALSE(catalog().stranger_in("Card 3 of 45", 1).empty());
    CHECK(catalog().stranger_in("Tarjeta 3 de 45", 1).empty());
    CHECK_FALSE(catalog().stranger_in("Tarjeta 3 de 45", 0).empty());
    CHECK(catalog().stranger_in("Rosa", 1).empty());
    CHECK(catalog().stranger_in("40 CFR 745.85(a)(2)(i)(C)", 1).empty());
    CHECK(catalog().stranger_in("10 ft", 1).empty());
}

TEST_CASE("start, brief, order, spot and the choices of class and quiz are told again in the other language")
{
    const BackToEnglish back;
    Switched window;
    REQUIRE(window.drill);
    SECTION("start") { window.look_at(start_screen(window.played.shell)); }
    SECTION("brief") { window.look_at(brief_screen(window.played.shell, window.sitting(Mode::step_by_step))); }
    SECTION("order") { window.look_at(order_screen(window.played.shell, window.sitting(Mode::order_first))); }
    SECTION("class") { window.look_at(class_screen(window.played.shell, window.sitting(Mode::for_a_class))); }
    SECTION("quiz")
    {
        window.played.go_to(quiz_start_screen(window.played.shell, "Ana"));
        REQUIRE(window.played.wait_until([&] { return !window.played.shell.is_moving(); }));
        window.look();
    }
    SECTION("spot")
    {
        window.played.go_to(spot_screen(window.played.shell, window.sitting(Mode::spot_the_fault)));
        REQUIRE(window.played.wait_until([&] { return window.played.find("score") != nullptr; }));
        for (int i = 0; i < 230; ++i) window.played.stage.press(Key::right);
        window.played.stage.press(Key::f);
        window.look();
        REQUIRE(window.played.press_on("score"));
        window.look();
    }
}

TEST_CASE("an order that was watched is told again in the other language")
{
    const BackToEnglish back;
    TestPlaces folder("language-order");
    PlayedShell played(folder.places, 1.0F, {1440.0F, 1400.0F});
    const auto drill = read_drills(folder.places.scenarios, folder.places.book).find("one-window");
    REQUIRE(drill);
    played.go_to(order_screen(played.shell, {drill, Mode::order_first, 1, {}}));
    REQUIRE(played.press_on("watch"));
    REQUIRE(played.wait_until([&] { return played.find("to-debrief") != nullptr; }));
    look_in_both(played.stage, [&] { played.settle(); });
}

TEST_CASE("the drill room is told again in the other language, with a card done and one in hand")
{
    const BackToEnglish back;
    Switched window;
    REQUIRE(window.drill);
    window.played.go_to(room_screen(window.played.shell, window.sitting(Mode::step_by_step), window.drill->careful.scenario));
    REQUIRE(window.played.wait_for_room());
    job::LayFloorSheet sheet;
    sheet.sheeting = {"poly"};
    sheet.reach = 6.0_ft;
    window.played.room()->take_up({sheet, {job::PersonId{"rosa"}, job::PersonId{"lee"}}, {}});
    window.played.settle();
    window.look();
    REQUIRE(window.played.press_on("do-it"));
    REQUIRE(window.played.wait_for_room());
    window.look();
}

TEST_CASE("every page of a debrief is told again in the other language, what-ifs among them")
{
    const BackToEnglish back;
    PlayedRun run(1.0F, {1440.0F, 1400.0F});
    const debrief::Inputs careful = inputs_of_the_house("good.toml");
    run.screen.offer_reference(careful);
    run.screen.what_ifs().start(run.screen.story().inputs, careful.plan, run.screen.story().report);
    run.screen.what_ifs().wait();
    run.go_to(10.0);
    for (const Page page : {Page::plan, Page::faults, Page::marks, Page::dust, Page::what_if}) {
        run.show(page);
        INFO("page " << static_cast<int>(page));
        look_in_both(run.stage, [&] { run.settle(); });
    }
}

TEST_CASE("the place that is shown while a run is carried out is told again in the other language")
{
    const BackToEnglish back;
    const debrief::Inputs inputs = inputs_of_the_house("careless.toml");
    ScreenState state;
    Rehearsal stage([&](Ui& ui) { waiting_screen(ui, inputs, 1, 0.7, state); });
    stage.input.size = {1280.0F, 800.0F};
    look_in_both(stage, [&] { stage.frame(), stage.frame(); });
}

TEST_CASE("a question to a class is told again in the other language, its votes with it")
{
    const BackToEnglish back;
    static const auto story = std::make_shared<const Story>(tell(inputs_of_the_house("careless.toml"), debrief::carry_through(inputs_of_the_house("careless.toml"), 1, true)));
    ClassRoom room(story, inputs_of_the_house("good.toml"), 1);
    room.careful().wait();
    Settings settings;
    Rehearsal stage([&](Ui& ui) {
        if (ui.shortcut(Key::l, {.control = true})) change_language();
        room.play(ui, ui.screen(), true);
    });
    stage.input.size = {1440.0F, 1400.0F};
    const auto settle = [&] { for (int i = 0; i < 3; ++i) stage.frame(); };
    room.playback().go_to(Time{9.9 * 3600.0});
    look_in_both(stage, settle);
    for (const Key ask : {Key::n, Key::w}) {
        stage.press(ask);
        settle();
        REQUIRE(room.question());
        stage.press(Key::digit_2);
        look_in_both(stage, settle);
        CHECK(room.question()->answers[1].votes == 1);
        stage.press(Key::r);
        look_in_both(stage, settle);
        room.drop_question();
    }
}

TEST_CASE("a question of each kind and its feedback are told again in the other language")
{
    const BackToEnglish back;
    Switched window;
    for (const char* id : {"barred-always", "flap-door-place", "largest-single-surface", "sheeting-up", "first-fault", "main-way-out"}) {
        INFO(id);
        window.look_at(sitting_of(window.played.shell, id));
        window.played.stage.press(Key::b);
        REQUIRE(window.played.press_on(window.played.find("give")->is_enabled ? "give" : "leave-out"));
        window.look();
    }
}
