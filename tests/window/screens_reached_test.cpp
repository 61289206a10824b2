// What is reached from the first screen besides the drill room: a class, a quiz, and the debrief with its what-ifs.
#include "played_shell.hpp"

#include "quiz/sitting.hpp"
#include "window/quiz/paper_shelf.hpp"

#include <catch2/catch.hpp>

#include <fstream>

using namespace flapdoor;
using namespace flapdoor::window;
namespace fs = std::filesystem;

namespace {

/// The window on its first screen, the small drill and the shipped papers in its folder.
struct Reached {
    TestPlaces folder;
    PlayedShell played;

    explicit Reached(const std::string& name) : folder(name), played(folder.places)
    {
        fs::create_directory_symlink(FLAPDOOR_SOURCE_DIR "/scenarios/papers", folder.root / "scenarios/papers");
        fs::create_directory_symlink(FLAPDOOR_SOURCE_DIR "/scenarios/banks", folder.root / "scenarios/banks");
        fs::create_directory_symlink(FLAPDOOR_SOURCE_DIR "/scenarios/back-bedroom", folder.root / "scenarios/back-bedroom"); // questions stand on it
        played.go_to(start_screen(played.shell));
    }
    const Spot* find(const std::string& name) { return played.find(name); }
    bool waits_for(const std::string& name)
    {
        return played.wait_until([&] { return find(name) != nullptr; });
    }
};

std::string answer_option(const PlayedShell& played)
{
    for (const Spot& spot : played.stage.ui->spots())
        if (spot.role == Role::choice && spot.name.rfind("answer/", 0) == 0) return spot.name;
    return {};
}

}

TEST_CASE("a class is taught from the first screen by mouse: crew, freeze, votes, reveal, debrief")
{
    Reached reached("class-mouse");
    PlayedShell& played = reached.played;
    REQUIRE(played.click("drill/one-window", "drills"));
    REQUIRE(played.click("mode/class", "choices"));
    REQUIRE(played.click("begin", "choices"));
    CHECK(played.stage.ui->text_scale() == 1.5F); // for the wall
    REQUIRE(played.click("crew/0", "class-crew"));
    REQUIRE(played.click("begin", "class-crew"));
    REQUIRE(reached.waits_for("ask-where"));
    REQUIRE(played.click("ask-where", "class-ask"));
    REQUIRE(reached.waits_for("reveal"));
    played.stage.press(Key::digit_1);
    REQUIRE(played.press_on("reveal"));
    REQUIRE(played.press_on("play-on"));
    played.stage.press(Key::space); // stop again
    played.stage.ui->focus_on("class-day");
    played.settle();
    played.stage.press(Key::end);
    played.settle();
    REQUIRE(played.click("class-debrief", "class-ask"));
    REQUIRE(reached.waits_for("result"));
    CHECK(played.stage.ui->text_scale() == 1.0F);
    CHECK(reached.find("mode/compare") != nullptr); // beside the careful run
}

TEST_CASE("a class is taught by keyboard alone")
{
    Reached reached("class-keys");
    PlayedShell& played = reached.played;
    REQUIRE(played.press_on("drill/one-window"));
    REQUIRE(played.press_on("mode/class", Key::space));
    REQUIRE(played.press_on("begin"));
    REQUIRE(played.press_on("crew/0", Key::space));
    REQUIRE(played.press_on("begin"));
    REQUIRE(reached.waits_for("ask-next"));
    played.stage.press(Key::n);
    REQUIRE(reached.waits_for("reveal")); // the careful run is carried out meanwhile
    played.stage.press(Key::digit_1);
    played.stage.press(Key::r);
    played.settle();
    CHECK(reached.find("play-on") != nullptr);
    played.stage.press(Key::space);
    played.settle();
    played.stage.press(Key::n);
    REQUIRE(reached.waits_for("reveal"));
    played.stage.press(Key::escape); // only the question goes
    played.settle();
    REQUIRE(reached.find("ask-next") != nullptr);
    played.stage.press(Key::escape); // to the choice of the crew
    played.settle();
    CHECK(reached.find("crew/0") != nullptr);
    played.stage.press(Key::escape);
    played.settle();
    CHECK(reached.find("drill/one-window") != nullptr);
    CHECK(played.stage.ui->text_scale() == 1.0F);
}

TEST_CASE("a quiz is begun from the first screen, left, and gone on with; its answers are kept")
{
    Reached reached("quiz-keys");
    PlayedShell& played = reached.played;
    REQUIRE(played.press_on("questions"));
    REQUIRE(played.press_on("paper/short", Key::space));
    REQUIRE(played.press_on("manner/practice", Key::space));
    CHECK(reached.find("seed")->value == "1");
    REQUIRE(played.press_on("begin"));
    REQUIRE(reached.waits_for("question-1"));
    REQUIRE(played.press_on("leave-out"));
    REQUIRE(reached.waits_for("go-on"));
    played.stage.press(Key::enter);
    REQUIRE(reached.waits_for("question-2"));
    const fs::path kept = sitting_file(reached.folder.places, "short", 1, quiz::Feedback::at_once);
    const auto sitting = quiz::load_sitting(kept.string());
    REQUIRE(sitting);
    CHECK(sitting->answers.size() == 1);
    played.stage.press(Key::escape);
    played.settle();
    REQUIRE(reached.find("paper/short") != nullptr);
    REQUIRE(played.press_on("paper/short", Key::space));
    REQUIRE(played.press_on("manner/practice", Key::space));
    CHECK(reached.find("seed")->value == "2"); // another paper than the one begun
    REQUIRE(played.press_on("go-on-0"));
    REQUIRE(reached.waits_for("question-2"));
    CHECK(reached.find("result")->label.rfind("2 / 10", 0) == 0);
}

TEST_CASE("by mouse a sitting is answered to its end, with its clock, and told then")
{
    Reached reached("quiz-mouse");
    PlayedShell& played = reached.played;
    REQUIRE(played.click("questions", "choices"));
    REQUIRE(played.click("paper/short", "quiz-start"));
    REQUIRE(played.click("manner/sitting", "quiz-start"));
    REQUIRE(played.click("begin", "quiz-start"));
    REQUIRE(reached.waits_for("question-1"));
    CHECK(reached.find("result")->label.find("20 min left") != std::string::npos);
    for (int i = 1; i <= 10; ++i) {
        const std::string panel = "question-" + std::to_string(i);
        REQUIRE(reached.waits_for(panel));
        const std::string option = answer_option(played);
        if (!option.empty()) REQUIRE(played.click(option, panel));
        const Spot* give = reached.find("give");
        REQUIRE(give != nullptr);
        played.stage.click(give->is_enabled ? "give" : "leave-out");
        played.settle();
    }
    REQUIRE(reached.find("results") != nullptr);
    const auto sitting = quiz::load_sitting(sitting_file(reached.folder.places, "short", 1, quiz::Feedback::after).string());
    REQUIRE(sitting);
    CHECK(sitting->is_finished);
    CHECK(sitting->answers.size() == 10);
    CHECK(left_sittings(reached.folder.places).empty());
}

TEST_CASE("answers that were damaged are told and kept, and stop nothing")
{
    Reached reached("quiz-damaged");
    fs::create_directories(reached.folder.places.own / "sittings");
    std::ofstream(reached.folder.places.own / "sittings/short-1-practice.toml") << "format = 1\nblueprint = \"sho";
    reached.played.go_to(quiz_start_screen(reached.played.shell));
    CHECK(reached.find("paper/short") != nullptr);
    CHECK(reached.find("go-on-0") == nullptr);
    CHECK(left_sittings(reached.folder.places).size() == 1);
    reached.played.stage.ui->focus_on("seed");
    reached.played.settle();
    reached.played.stage.input.typed = U"x";
    reached.played.settle();
    reached.played.stage.press(Key::escape);
    reached.played.settle();
}

TEST_CASE("the debrief works out beside the window what each mistake did, and a row leads to its fault")
{
    Reached reached("what-if");
    PlayedShell& played = reached.played;
    const auto drill = read_drills(reached.folder.places.scenarios, reached.folder.places.book).find("one-window");
    REQUIRE(drill);
    const debrief::Inputs& careful = drill->careful;
    auto hurried = debrief::read_inputs(careful.scenario_text.name, drill->faulty.front().string(), {careful.book_text.name});
    REQUIRE(hurried);
    played.go_to(watch_screen(played.shell, *hurried, 1, careful));
    REQUIRE(reached.waits_for("sheet/what-if"));
    REQUIRE(played.press_on("sheet/what-if"));
    REQUIRE(played.press_on("what-if/ask"));
    CHECK(reached.find("what-if/stop") != nullptr);
    REQUIRE(reached.waits_for("what-if-1"));
    CHECK_FALSE(reached.find("what-if-1")->value.empty());
    CHECK(played.stage.ui->cut_words() == std::vector<std::string>{});
    REQUIRE(played.press_on("what-if-1"));
    CHECK(reached.find("sheet/faults")->is_on);
    REQUIRE(reached.find("mode/compare") != nullptr);
    played.stage.press(Key::c);
    REQUIRE(reached.waits_for("compare"));
}
