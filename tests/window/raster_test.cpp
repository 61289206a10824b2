#include "rehearsal.hpp"

#include "window/stage/triangles.hpp"

#include <catch2/catch.hpp>
#include <rapidcheck.h>

#include <cmath>
#include <filesystem>

using namespace flapdoor::window;

namespace {

const Color teal = color(0x007788);

Picture drawing_of(const std::function<void(Ui&)>& draw) { return Rehearsal(draw).ui->picture_of_frame(); }

}

TEST_CASE("a filled box is painted to its edges and no further")
{
    const Picture p = drawing_of([](Ui& ui) { ui.canvas().fill_box({{100.0F, 50.0F}, {200.0F, 90.0F}}, teal); });
    const Color paper = drafting_theme().paper;
    CHECK(p.width == 800);
    CHECK(p.height == 600);
    CHECK(p.at(150, 70) == teal);
    CHECK(p.at(100, 50) == teal);
    CHECK(p.at(199, 89) == teal);
    CHECK(p.at(98, 70) == paper);
    CHECK(p.at(202, 70) == paper);
    CHECK(p.at(150, 92) == paper);
}

TEST_CASE("half-clear color lets the ground through, also where two triangles meet")
{
    const Picture p = drawing_of([](Ui& ui) { ui.canvas().fill_box({{100.0F, 50.0F}, {200.0F, 150.0F}}, faded(teal, 0.5)); });
    const Color expected = laid_over(faded(teal, 0.5), drafting_theme().paper);
    for (int i = 105; i < 195; ++i) {
        const Color seen = p.at(i, i - 50); // the diagonal that the two triangles share
        CHECK(std::abs(seen.r - expected.r) <= 1);
        CHECK(std::abs(seen.b - expected.b) <= 1);
    }
}

TEST_CASE("nothing is painted outside a clip, and the clip ends with its guard")
{
    const Picture p = drawing_of([](Ui& ui) {
        Canvas canvas = ui.canvas();
        {
            const auto clip = canvas.clipped_to({{100.0F, 100.0F}, {150.0F, 150.0F}});
            canvas.fill_box({{50.0F, 50.0F}, {300.0F, 300.0F}}, teal);
        }
        canvas.fill_box({{400.0F, 400.0F}, {420.0F, 420.0F}}, teal);
    });
    CHECK(p.at(125, 125) == teal);
    CHECK(p.at(160, 125) == drafting_theme().paper);
    CHECK(p.at(90, 90) == drafting_theme().paper);
    CHECK(p.at(410, 410) == teal);
}

TEST_CASE("a room with corners that turn inwards is filled, its notch is not")
{
    const Picture p = drawing_of([](Ui& ui) {
        const std::vector<Point> l_shape{{100, 100}, {300, 100}, {300, 200}, {200, 200}, {200, 300}, {100, 300}};
        ui.canvas().fill(l_shape, teal);
    });
    CHECK(p.at(150, 250) == teal);
    CHECK(p.at(250, 150) == teal);
    CHECK(p.at(250, 250) == drafting_theme().paper);
}

TEST_CASE("a picture from the shelf is shown, and a replaced one replaces it")
{
    PictureId id{};
    Rehearsal r([&](Ui& ui) {
        if (id == PictureId{}) id = ui.pictures().add(Picture(4, 4, teal));
        ui.canvas().picture(id, {{10.0F, 10.0F}, {50.0F, 50.0F}});
    });
    CHECK(r.ui->picture_of_frame().at(30, 30) == teal);
    const auto before = r.ui->pictures().find(id)->revision;
    r.ui->pictures().replace(id, Picture(4, 4, color(0xAA0000)));
    CHECK(r.ui->pictures().find(id)->revision > before);
    r.frame();
    CHECK(r.ui->picture_of_frame().at(30, 30) == color(0xAA0000));
}

TEST_CASE("text puts ink on the paper within its measure")
{
    const Picture p = drawing_of([](Ui& ui) { ui.canvas().text({100.0F, 100.0F}, "Register", TextStyle::title, ui.theme().ink); });
    Rehearsal r([](Ui&) {});
    r.ui->begin_frame(r.input);
    const Point size = r.ui->canvas().measure("Register", TextStyle::title);
    r.ui->end_frame();
    int inked = 0;
    for (int y = 0; y < p.height; ++y)
        for (int x = 0; x < p.width; ++x) {
            if (p.at(x, y) == drafting_theme().paper) continue;
            ++inked;
            const Box box = box_at({98.0F, 98.0F}, size + Point{4.0F, 4.0F});
            REQUIRE(box.contains(Point{static_cast<float>(x), static_cast<float>(y)}));
        }
    CHECK(inked > 300);
}

TEST_CASE("long text in a box is cut with an ellipsis, between characters")
{
    const Picture p = drawing_of([](Ui& ui) {
        ui.canvas().text_in({{100.0F, 100.0F}, {160.0F, 130.0F}}, "Se\u00F1alizaci\u00F3n en la puerta", TextStyle::body, ui.theme().ink);
    });
    for (int y = 0; y < p.height; ++y)
        for (int x = 162; x < p.width; ++x) REQUIRE(p.at(x, y) == drafting_theme().paper);
}

TEST_CASE("a frame saves as a PNG, and a place that cannot be written is a problem")
{
    const auto file = std::filesystem::temp_directory_path() / "flapdoor-raster-test.png";
    REQUIRE(save_png(Picture(8, 8, teal), file));
    CHECK(std::filesystem::file_size(file) > 60);
    std::filesystem::remove(file);
    const auto failed = save_png(Picture(8, 8, teal), "/nowhere/at/all.png");
    REQUIRE_FALSE(failed);
    CHECK(failed.error()[0].where.file == "/nowhere/at/all.png");
}

TEST_CASE("triangles cover a star-shaped polygon exactly, whichever way it runs", "[property]")
{
    rc::check([] {
        const auto reach =
            *rc::gen::container<std::vector<int>>(static_cast<std::size_t>(*rc::gen::inRange(3, 24)), rc::gen::inRange(5, 100));
        const bool is_reversed = *rc::gen::arbitrary<bool>();
        std::vector<Point> polygon;
        for (std::size_t i = 0; i < reach.size(); ++i) {
            const double angle = 6.283185307179586 * static_cast<double>(i) / static_cast<double>(reach.size());
            polygon.push_back({static_cast<float>(reach[i] * std::cos(angle)), static_cast<float>(reach[i] * std::sin(angle))});
        }
        if (is_reversed) polygon = {polygon.rbegin(), polygon.rend()};
        double sum = 0.0;
        for (const auto& [a, b, c] : triangles(polygon))
            sum += std::abs(signed_area(std::vector<Point>{polygon[a], polygon[b], polygon[c]}));
        RC_ASSERT(std::abs(sum - std::abs(signed_area(polygon))) <= 1e-3 * (1.0 + sum));
    });
}

TEST_CASE("a polygon that crosses itself neither hangs nor crashes")
{
    const std::vector<Point> bow{{0, 0}, {10, 10}, {10, 0}, {0, 10}};
    CHECK(triangles(bow).size() <= 2);
    CHECK(triangles(std::vector<Point>{{0, 0}, {1, 1}}).empty());
}
