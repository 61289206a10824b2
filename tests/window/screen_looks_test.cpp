// The screens of the shell against pictures, in both languages.
#include "look.hpp"
#include "played_run.hpp"
#include "played_shell.hpp"
#include "speaking.hpp"

#include "quiz/bank.hpp"
#include "quiz/making/posing.hpp"
#include "quiz/sitting.hpp"

#include <catch2/catch.hpp>

using namespace flapdoor;
using namespace flapdoor::window;

namespace {

/// A shell over the shipped drills whose own folder is empty.
struct Shown {
    Places places{FLAPDOOR_SOURCE_DIR "/scenarios", "/nowhere/of/its/own", "federal"};
    std::shared_ptr<const Drill> drill = read_drills(places.scenarios, places.book).find("back-bedroom");
    PlayedShell played{places, 1.0F, {1280.0F, 800.0F}};

    explicit Shown(std::unique_ptr<Screen> (*make)(Shell&, const Sitting&))
    {
        REQUIRE(drill);
        played.go_to(make(played.shell, {drill, Mode::step_by_step, 1, {}}));
    }
    void compare_as(const std::string& name) { compare(played.stage.ui->picture_of_frame(), name + "-" + std::string(text::code_of(text::spoken()))); }
};

/// Questions about runs carry them out first.
std::unique_ptr<Screen> practice(Shell& shell, const char* id)
{
    static quiz::Workshop workshop(FLAPDOOR_SOURCE_DIR "/scenarios");
    static const quiz::Bank bank = quiz::load_bank(FLAPDOOR_SOURCE_DIR "/scenarios/banks/sample.toml", workshop.find()).value();
    quiz::Paper paper{"by-hand", {"Short paper", "Prueba breve", {}, {}}, 1, quiz::Feedback::at_once, {}, {}};
    paper.items.push_back({std::string("sample/") + id, 1, quiz::pose(*quiz::find_question(bank, id), workshop, {"back-bedroom"}, 1).value()});
    quiz::SittingResult sitting = quiz::begin_sitting(paper, "p", "2026-11-29T10:00:00Z");
    return sitting_screen(shell, std::move(paper), std::move(sitting), std::filesystem::temp_directory_path() / "flapdoor-look-sitting.toml");
}

}

TEST_CASE("start, brief, order and the choices of class and quiz look as they did")
{
    for (const text::Language language : {text::Language::english, text::Language::spanish}) {
        const Speaking speaking(language);
        Shown([](Shell& shell, const Sitting&) { return start_screen(shell); }).compare_as("start");
        Shown([](Shell& shell, const Sitting& sitting) { return brief_screen(shell, sitting); }).compare_as("brief");
        Shown([](Shell& shell, const Sitting& sitting) { return order_screen(shell, sitting); }).compare_as("order");
        Shown([](Shell& shell, const Sitting& sitting) { return class_screen(shell, sitting); }).compare_as("class-crew");
    }
}

TEST_CASE("the drill room with a card in hand looks as it did")
{
    for (const text::Language language : {text::Language::english, text::Language::spanish}) {
        const Speaking speaking(language);
        Shown shown([](Shell& shell, const Sitting& sitting) { return room_screen(shell, sitting, sitting.drill->careful.scenario); });
        REQUIRE(shown.played.wait_for_room());
        job::LayFloorSheet sheet;
        sheet.sheeting = {"poly"};
        sheet.reach = 6.0_ft;
        shown.played.room()->take_up({sheet, {job::PersonId{"rosa"}, job::PersonId{"lee"}}, {}});
        shown.played.settle();
        shown.compare_as("room");
    }
}

TEST_CASE("spotting faults looks as it did")
{
    for (const text::Language language : {text::Language::english, text::Language::spanish}) {
        const Speaking speaking(language);
        Shown shown([](Shell& shell, const Sitting& sitting) { return spot_screen(shell, sitting); });
        REQUIRE(shown.played.wait_until([&] { return shown.played.find("score") != nullptr; }));
        for (int i = 0; i < 230; ++i) shown.played.stage.press(Key::right);
        shown.played.stage.press(Key::f);
        shown.played.stage.press(Key::home);
        shown.played.settle();
        shown.compare_as("spot");
    }
}

TEST_CASE("a question that was answered looks as it did")
{
    for (const text::Language language : {text::Language::english, text::Language::spanish}) {
        const Speaking speaking(language);
        Shown shown([](Shell& shell, const Sitting&) { return practice(shell, "flap-door-place"); });
        shown.played.stage.press(Key::b);
        shown.played.stage.press(Key::enter);
        shown.played.settle();
        shown.compare_as("quiz");
    }
}

TEST_CASE("a prediction that was made and a fault that was looked for look as they did")
{
    for (const text::Language language : {text::Language::english, text::Language::spanish}) {
        const Speaking speaking(language);
        Shown predicted([](Shell& shell, const Sitting&) { return practice(shell, "main-way-out"); });
        predicted.played.stage.press(Key::a);
        predicted.played.stage.press(Key::enter);
        predicted.played.settle();
        predicted.compare_as("quiz-predict");
        Shown looked_for([](Shell& shell, const Sitting&) { return practice(shell, "first-fault"); });
        looked_for.played.stage.press(Key::d);
        looked_for.played.stage.press(Key::enter);
        looked_for.played.settle();
        looked_for.compare_as("quiz-fault");
    }
}

TEST_CASE("the what-ifs of a debrief look as they did")
{
    const debrief::Inputs careful = inputs_of_the_house("good.toml");
    for (const text::Language language : {text::Language::english, text::Language::spanish}) {
        const Speaking speaking(language);
        PlayedRun run;
        run.screen.offer_reference(careful);
        run.screen.what_ifs().start(run.screen.story().inputs, careful.plan, run.screen.story().report);
        run.screen.what_ifs().wait();
        run.go_to(10.0);
        run.show(Page::what_if);
        compare(run.stage.ui->picture_of_frame(), "what-if-" + std::string(text::code_of(language)));
    }
}
