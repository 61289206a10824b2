// No word is cut off and no two controls lie on each other, on every screen, at every text size, in both languages.
#include "played_run.hpp"
#include "played_shell.hpp"
#include "speaking.hpp"

#include "quiz/bank.hpp"
#include "quiz/sitting.hpp"

#include <catch2/catch.hpp>

#include <functional>

using namespace flapdoor;
using namespace flapdoor::window;

namespace {

struct Named {
    const char* name;
    std::function<std::unique_ptr<Screen>(Shell&, const Sitting&)> make;
};

quiz::Paper paper_of(const char* id)
{
    static const quiz::Bank bank = quiz::load_bank(FLAPDOOR_SOURCE_DIR "/scenarios/banks/sample.toml", quiz::scenarios_in(FLAPDOOR_SOURCE_DIR "/scenarios")).value();
    return {"by-hand", {"By hand", {}, {}, {}}, 1, quiz::Feedback::at_once, {}, {{std::string("sample/") + id, 1, *quiz::find_question(bank, id)}}};
}

std::unique_ptr<Screen> sitting_of(Shell& shell, const char* id)
{
    quiz::Paper paper = paper_of(id);
    quiz::SittingResult sitting = quiz::begin_sitting(paper, "p", "2026-11-29T10:00:00Z");
    return sitting_screen(shell, std::move(paper), std::move(sitting), std::filesystem::temp_directory_path() / "flapdoor-fit-own/sitting.toml");
}

std::unique_ptr<Screen> close_up_of(Shell& shell, const Sitting& sitting)
{
    auto room = std::make_unique<RoomScreen>(shell, sitting, sitting.drill->careful.scenario);
    job::HangFlap flap;
    flap.opening = {"door"};
    flap.sheeting = {"poly"};
    room->take_up({flap, {sitting.drill->careful.scenario.crew.front().id}, {}});
    room->take_by_hand();
    return room;
}

const std::vector<Named>& screens()
{
    static const std::vector<Named> all{
        {"start", [](Shell& shell, const Sitting&) { return start_screen(shell); }},
        {"brief", [](Shell& shell, const Sitting& sitting) { return brief_screen(shell, sitting); }},
        {"room", [](Shell& shell, const Sitting& sitting) { return room_screen(shell, sitting, sitting.drill->careful.scenario); }},
        {"order", [](Shell& shell, const Sitting& sitting) { return order_screen(shell, sitting); }},
        {"spot", [](Shell& shell, const Sitting& sitting) { return spot_screen(shell, sitting); }},
        {"class", [](Shell& shell, const Sitting& sitting) { return class_screen(shell, sitting); }},
        {"quiz", [](Shell& shell, const Sitting&) { return quiz_start_screen(shell); }},
        {"sitting, a choice", [](Shell& shell, const Sitting&) { return sitting_of(shell, "barred-always"); }},
        {"sitting, cards", [](Shell& shell, const Sitting&) { return sitting_of(shell, "sheeting-up"); }},
        {"sitting, a figure", [](Shell& shell, const Sitting&) { return sitting_of(shell, "largest-single-surface"); }},
        {"sitting, the plan", [](Shell& shell, const Sitting&) { return sitting_of(shell, "flap-door-place"); }},
        {"close-up of the flap door", [](Shell& shell, const Sitting& sitting) { return close_up_of(shell, sitting); }},
        {"debrief", [](Shell& shell, const Sitting& sitting) { return debrief_screen(shell, careless_story(), sitting.drill->careful); }},
    };
    return all;
}

std::string joined(const std::vector<std::string>& words)
{
    std::string all;
    for (const std::string& word : words) all += '"' + word + "\" ";
    return all;
}

bool is_control(const Spot& spot) { return spot.role == Role::button || spot.role == Role::toggle || spot.role == Role::choice || spot.role == Role::slider; }

}

TEST_CASE("every screen shows its words whole at every text size in both languages")
{
    const Places places{FLAPDOOR_SOURCE_DIR "/scenarios", std::filesystem::temp_directory_path() / "flapdoor-fit-own", "federal"};
    const auto drill = read_drills(places.scenarios, places.book).find("back-bedroom");
    REQUIRE(drill);
    for (const text::Language language : {text::Language::english, text::Language::spanish}) {
        const Speaking speaking(language);
        for (const float scale : {1.0F, 1.5F, 2.0F})
            for (const Point size : {Point{1440.0F, 900.0F}, Point{1024.0F, 700.0F}})
                for (const Named& screen : screens()) {
                    PlayedShell played(places, scale, size);
                    played.go_to(screen.make(played.shell, {drill, Mode::step_by_step, 1, {}}));
                    INFO(screen.name << " at " << scale << ", " << size.x << " x " << size.y << ", " << text::code_of(language));
                    INFO(joined(played.stage.ui->cut_words()));
                    CHECK(played.stage.ui->cut_words().empty());
                    for (const Spot& spot : played.stage.ui->spots()) {
                        if (!is_control(spot)) continue;
                        INFO(spot.name);
                        CHECK(spot.box.low.x >= 0.0F);
                        CHECK(spot.box.high.x <= size.x + 0.5F);
                    }
                }
    }
}

TEST_CASE("every card of the deck can be taken up, and its form shows its words whole")
{
    const Places places{FLAPDOOR_SOURCE_DIR "/scenarios", std::filesystem::temp_directory_path() / "flapdoor-fit-own", "federal"};
    const auto drill = read_drills(places.scenarios, places.book).find("back-bedroom");
    REQUIRE(drill);
    PlayedShell played(places, 1.5F);
    played.go_to(room_screen(played.shell, {drill, Mode::step_by_step, 1, {}}, drill->careful.scenario));
    for (const StepKind& kind : step_kinds()) {
        INFO(kind.name);
        played.room()->take_up(proposed(played.room()->attempt().site(), kind, {job::PersonId{"rosa"}}));
        played.settle();
        INFO(joined(played.stage.ui->cut_words()));
        CHECK(played.stage.ui->cut_words().empty());
        CHECK(played.find("do-it") != nullptr);
    }
}

TEST_CASE("every sheet of the debrief shows its words whole at every text size in both languages, what-ifs among them")
{
    const Places places{FLAPDOOR_SOURCE_DIR "/scenarios", std::filesystem::temp_directory_path() / "flapdoor-fit-own", "federal"};
    const auto drill = read_drills(places.scenarios, places.book).find("back-bedroom");
    REQUIRE(drill);
    for (const text::Language language : {text::Language::english, text::Language::spanish}) {
        const Speaking speaking(language);
        RunScreen screen(careless_story());
        screen.offer_reference(drill->careful);
        screen.what_ifs().start(careless_story()->inputs, drill->careful.plan, careless_story()->report);
        screen.what_ifs().wait();
        for (const float scale : {1.0F, 1.5F, 2.0F})
            for (const Point size : {Point{1440.0F, 900.0F}, Point{1024.0F, 700.0F}}) {
                Rehearsal stage([&](Ui& ui) { screen.play(ui); }, scale);
                stage.input.size = size;
                for (const Page page : {Page::faults, Page::marks, Page::dust, Page::what_if}) {
                    screen.state().page = page;
                    for (int i = 0; i < 3; ++i) stage.frame();
                    INFO(static_cast<int>(page) << " at " << scale << ", " << size.x << " x " << size.y << ", " << text::code_of(language));
                    INFO(joined(stage.ui->cut_words()));
                    CHECK(stage.ui->cut_words().empty());
                    for (const Spot& spot : stage.ui->spots())
                        if (is_control(spot)) CHECK(spot.box.high.x <= size.x + 0.5F);
                }
            }
    }
}
