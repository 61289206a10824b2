// Whole screens against pictures in look/. After a change of look or model that is meant: run with FLAPDOOR_APPROVE=1, look at
// the new pictures, and commit them with the change.
#include "played_run.hpp"

#include "window/run/waiting_screen.hpp"
#include "window/show_run.hpp"

#include <SFML/Graphics/Image.hpp>
#include <catch2/catch.hpp>

#include <cstdlib>
#include <filesystem>

using namespace flapdoor;
using namespace flapdoor::window;

namespace {

constexpr int fuzz = 5;                  // of 255, 2 %: other versions of the font library set edges a little differently
constexpr double most_differing = 0.005; // of the pixels

Picture load(const std::filesystem::path& file)
{
    sf::Image image;
    REQUIRE(image.loadFromFile(file.string()));
    Picture picture(static_cast<int>(image.getSize().x), static_cast<int>(image.getSize().y));
    const sf::Uint8* bytes = image.getPixelsPtr();
    for (std::size_t i = 0; i < picture.pixels.size(); ++i)
        picture.pixels[i] = {bytes[4 * i], bytes[4 * i + 1], bytes[4 * i + 2], bytes[4 * i + 3]};
    return picture;
}

double differing(const Picture& a, const Picture& b)
{
    if (a.width != b.width || a.height != b.height) return 1.0;
    std::size_t count = 0;
    const auto is_off = [](int x, int y) { return std::abs(x - y) > fuzz; };
    for (std::size_t i = 0; i < a.pixels.size(); ++i) {
        const Color p = a.pixels[i];
        const Color q = b.pixels[i];
        if (is_off(p.r, q.r) || is_off(p.g, q.g) || is_off(p.b, q.b)) ++count;
    }
    return static_cast<double>(count) / static_cast<double>(a.pixels.size());
}

void compare(const Picture& now, const std::string& name)
{
    const std::filesystem::path file = std::filesystem::path(FLAPDOOR_SOURCE_DIR) / "tests/window/look" / (name + ".png");
    if (std::getenv("FLAPDOOR_APPROVE") != nullptr) {
        REQUIRE(save_png(now, file));
        return;
    }
    const double share = differing(now, load(file));
    if (share > most_differing) {
        const auto beside = std::filesystem::temp_directory_path() / (name + "-now.png");
        REQUIRE(save_png(now, beside));
        UNSCOPED_INFO("the screen as it is now: " << beside.string());
    }
    CHECK(share <= most_differing);
}

}

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
    REQUIRE(picture_run(inputs_of_the_house("careless.toml"), 1, Time{14.5 * 3600.0}, file, 800, 600) == 0);
    const Picture picture = load(file);
    CHECK(picture.width == 800);
    CHECK(picture.height == 600);
    CHECK(picture_run(inputs_of_the_house("careless.toml"), 1, Time{14.5 * 3600.0}, "/nowhere/at/all.png", 800, 600) == 3);
    std::filesystem::remove(file);
}
