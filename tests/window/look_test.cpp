#include "look.hpp"
#include "played_run.hpp"

#include "window/run/waiting_screen.hpp"
#include "window/show.hpp"

#include <catch2/catch.hpp>

#include <filesystem>

using namespace flapdoor;
using namespace flapdoor::window;

TEST_CASE("setting up looks as it did")
{
    PlayedRun run;
    run.go_to(9.6);
    compare(run.stage.ui->picture_of_frame(), "setting-up");
}

TEST_CASE("sanding with the register open looks as it did")
{
    PlayedRun run;
    run.go_to(9.9);
    run.show(Page::dust);
    compare(run.stage.ui->picture_of_frame(), "sanding");
}

TEST_CASE("the comparison notices a wrong label and forgives a shade")
{
    PlayedRun run;
    run.go_to(9.6);
    const Picture before = run.stage.ui->picture_of_frame();
    Picture shaded = before;
    for (Color& c : shaded.pixels) c.r = static_cast<std::uint8_t>(c.r > 3 ? c.r - 3 : c.r);
    CHECK(differing(before, shaded) == 0.0);
    run.show(Page::marks);
    CHECK(differing(before, run.stage.ui->picture_of_frame()) > most_differing);
}

TEST_CASE("while the run is worked out, the place as found and the number of cards are shown")
{
    const debrief::Inputs inputs = inputs_of_the_house("careless.toml");
    ScreenState state;
    Rehearsal stage([&](Ui& ui) { waiting_screen(ui, inputs, 1, 0.7, state); });
    stage.input.size = {1280.0F, 800.0F};
    stage.frame();
    REQUIRE(stage.ui->find("waiting/words") != nullptr);
    CHECK(stage.ui->find("waiting/words")->label == "Carrying the plan out: 45 cards");
    CHECK(stage.ui->find("result")->label == "being worked out");
    CHECK(stage.ui->cut_words().empty());
    stage.press(Key::q);
    CHECK(state.wants_to_quit);
}

TEST_CASE("a picture of a run is painted without a display")
{
    const auto file = std::filesystem::temp_directory_path() / "flapdoor-picture-run-test.png";
    REQUIRE(picture_run(inputs_of_the_house("careless.toml"), 1, Time{14.5 * 3600.0}, {file, 800, 600}) == 0);
    const Picture picture = load(file);
    CHECK(picture.width == 800);
    CHECK(picture.height == 600);
    CHECK(picture_run(inputs_of_the_house("careless.toml"), 1, Time{14.5 * 3600.0}, {"/nowhere/at/all.png", 800, 600}) == 3);
    std::filesystem::remove(file);
}
