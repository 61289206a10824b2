#include "rehearsal.hpp"

#include "window/drawing/board.hpp"
#include "window/drawing/cloud.hpp"
#include "window/drawing/containment.hpp"
#include "window/drawing/dimension.hpp"
#include "window/drawing/elevation.hpp"
#include "window/drawing/fixtures.hpp"
#include "window/drawing/heat_map.hpp"
#include "window/drawing/legend.hpp"
#include "window/drawing/people.hpp"
#include "window/drawing/walls.hpp"

#include "core/insist.hpp"

#include <catch2/catch.hpp>
#include <rapidcheck.h>

#include <numeric>

using namespace flapdoor;
using namespace flapdoor::window;

namespace {

/// Black to white, so that a share can be read back from a pixel.
Color gray(double share)
{
    const auto v = static_cast<std::uint8_t>(share * 255.0 + 0.5);
    return {v, v, v, 255};
}

/// Two rooms of four by four cells, a wall of one cell between them.
HeatGrid two_rooms()
{
    HeatGrid grid{.columns = 9, .rows = 4, .low = {1.0, 2.0}, .cell = 0.5};
    for (int row = 0; row < 4; ++row)
        for (int column = 0; column < 9; ++column) {
            grid.room.push_back(column < 4 ? 1 : column == 4 ? 0 : 2);
            grid.loading.push_back(column < 4 ? 5000.0F : 0.0F);
        }
    return grid;
}

}

TEST_CASE("a view puts places where it takes them from", "[property]")
{
    rc::check([] {
        const auto n = [](int low, int high) { return static_cast<double>(*rc::gen::inRange(low, high)) / 16.0; };
        PaperView view = PaperView::fit({{-1.0, -2.0}, {9.0, 6.0}}, {{10.0F, 20.0F}, {910.0F, 620.0F}}, 12.0F);
        view.zoom(0.25 + n(0, 64), {static_cast<float>(n(0, 9000)), static_cast<float>(n(0, 6000))});
        view.pan({static_cast<float>(n(-800, 800)), static_cast<float>(n(-800, 800))});
        const PaperPoint p{n(-100, 100), n(-100, 100)};
        const PaperPoint back = view.paper(view.at(p));
        RC_ASSERT(distance(p, back) < 0.02);
    });
}

TEST_CASE("a fitted drawing is whole, north is up, and zooming keeps what is under the pointer")
{
    const Box window{{10.0F, 20.0F}, {910.0F, 620.0F}};
    const PaperBox drawing{{0.0, 0.0}, {10.0, 4.0}};
    PaperView view = PaperView::fit(drawing, window, 16.0F);
    CHECK(window.inset(15.0F).contains(view.at(drawing)));
    CHECK(view.at(PaperPoint{0.0, 4.0}).y < view.at(PaperPoint{0.0, 0.0}).y);
    const Point pointer{300.0F, 200.0F};
    const PaperPoint before = view.paper(pointer);
    view.zoom(1.7, pointer);
    CHECK(distance(before, view.paper(pointer)) < 1e-6);
    view.zoom(1e9, pointer);
    CHECK(view.pixels_per_meter() == 1200.0);
}

TEST_CASE("no dust shows through a wall")
{
    const Picture p = heat_picture(two_rooms(), {1.0, 10000.0}, gray, 4);
    REQUIRE(p.width == 36);
    REQUIRE(p.height == 16);
    for (int row = 0; row < p.height; ++row) {
        for (int column = 16; column < p.width; ++column) CHECK(p.at(column, row).a == 0);    // wall and clean room
        for (int column = 0; column < 16; ++column) CHECK(p.at(column, row) == p.at(0, row)); // dusty to its very edge
    }
    CHECK(p.at(0, 0).a > 200);
}

TEST_CASE("the heat map is smooth within a room and has north at the top")
{
    HeatGrid grid = two_rooms();
    for (int row = 0; row < 4; ++row)
        for (int column = 0; column < 4; ++column)
            grid.loading[static_cast<std::size_t>(row * 9 + column)] = static_cast<float>(std::pow(10.0, row + 0.5));
    const Picture p = heat_picture(grid, {1.0, 10000.0}, gray, 8);
    for (int row = 1; row < p.height; ++row) {
        CHECK(p.at(8, row).r <= p.at(8, row - 1).r);      // row 0 of the grid is in the south
        CHECK(p.at(8, row - 1).r - p.at(8, row).r <= 12); // no step of a whole cell (64)
    }
    CHECK(p.at(8, 0).r > p.at(8, 31).r + 100);
}

TEST_CASE("the scale is logarithmic, ends where it says, and turns back")
{
    const HeatScale scale{1.0, 10000.0};
    CHECK(scale.share(0.0) == 0.0);
    CHECK(scale.share(1.0) == 0.0);
    CHECK(scale.share(100.0) == Approx(0.5));
    CHECK(scale.share(10000.0) == 1.0);
    CHECK(scale.share(1e9) == 1.0);
    CHECK(scale.loading(scale.share(37.0)) == Approx(37.0));
}

TEST_CASE("the program's ramp gets darker all the way, so that it reads in gray")
{
    for (int i = 1; i <= 100; ++i) CHECK(luminance(dust_ramp(i / 100.0)) < luminance(dust_ramp((i - 1) / 100.0)));
}

TEST_CASE("the read-out is the cell's own loading, and nothing in a wall or outside")
{
    const HeatGrid grid = two_rooms();
    CHECK(loading_at(grid, {1.1, 2.1}) == 5000.0);
    CHECK(loading_at(grid, {4.0, 3.0}) == 0.0);
    CHECK_FALSE(loading_at(grid, {3.2, 3.0}).has_value());
    CHECK_FALSE(loading_at(grid, {0.9, 3.0}).has_value());
    CHECK_FALSE(loading_at(grid, {1.1, 99.0}).has_value());
}

TEST_CASE("a grid that lacks cells breaks the promise")
{
    HeatGrid grid = two_rooms();
    grid.room.pop_back();
    CHECK_THROWS_AS(heat_picture(grid, {}, gray, 2), BrokenPromise);
}

TEST_CASE("loadings are told to two digits")
{
    CHECK(loading_text(0.0) == "0");
    CHECK(loading_text(0.4) == "< 1");
    CHECK(loading_text(12.4) == "12");
    CHECK(loading_text(3449.0) == "3400");
}

TEST_CASE("a cloud shows every parcel in its part, darker where they pile up, and none elsewhere")
{
    const PaperBox part{{0.0, 0.0}, {4.0, 2.0}};
    const std::vector<PaperPoint> parcels{{1.0, 1.5}, {3.0, 0.5}, {3.0, 0.5}, {3.0, 0.5}, {-1.0, 1.0}, {1.0, 9.0}};
    const Picture p = cloud_picture(parcels, part, 40, 20, color(0x223344));
    const auto alpha_near = [&](int column, int row) {
        int sum = 0;
        for (int r = row - 2; r <= row + 2; ++r)
            for (int c = column - 2; c <= column + 2; ++c) sum += p.at(c, r).a;
        return sum;
    };
    const int all = std::accumulate(p.pixels.begin(), p.pixels.end(), 0, [](int sum, Color c) { return sum + c.a; });
    CHECK(alpha_near(10, 5) > 60);
    CHECK(alpha_near(30, 15) > 2 * alpha_near(10, 5));
    CHECK(alpha_near(10, 5) + alpha_near(30, 15) == all);
    CHECK_THROWS_AS(cloud_picture(parcels, part, 0, 20, color(0)), BrokenPromise);
}

TEST_CASE("a cloud at the very edges of its part stays in the picture")
{
    const PaperBox part{{0.0, 0.0}, {1.0, 1.0}};
    const std::vector<PaperPoint> corners{{0.0, 0.0}, {0.0, 1.0}, {0.9999999, 0.0000001}, {1.0, 1.0}, {std::nan(""), 0.5}};
    CHECK(cloud_picture(corners, part, 5, 5, color(0)).pixels.size() == 25);
}

TEST_CASE("feet are written as on a drawing")
{
    CHECK(feet_text(0.3048 * 6.0) == "6'");
    CHECK(feet_text(0.3048 * 12.5) == "12' 6\"");
    CHECK(feet_text(0.0254 * 7.0) == "7\"");
    CHECK(feet_text(0.3048 * 11.999) == "12'");
}

TEST_CASE("a hatch stays within its polygon")
{
    Rehearsal r([](Ui& ui) {
        Board board{ui.canvas(), PaperView::fit({{0.0, 0.0}, {8.0, 6.0}}, ui.screen(), 0.0F), ui};
        const std::vector<PaperPoint> l_shape{{1.0, 1.0}, {5.0, 1.0}, {5.0, 3.0}, {3.0, 3.0}, {3.0, 5.0}, {1.0, 5.0}};
        draw_hatch(board, l_shape, 6.0F, color(0), 1.0F);
    });
    const Picture p = r.ui->picture_of_frame();
    int inside = 0;
    for (int y = 0; y < 600; ++y)
        for (int x = 0; x < 800; ++x) {
            if (p.at(x, y) == drafting_theme().paper) continue;
            const double px = x / 100.0;
            const double py = 6.0 - y / 100.0;
            const bool is_in = px > 0.98 && py > 0.98 && ((px < 5.02 && py < 3.02) || (px < 3.02 && py < 5.02));
            REQUIRE(is_in);
            ++inside;
        }
    CHECK(inside > 10000);
}

TEST_CASE("every drawing primitive puts something on the sheet, at every zoom", "[primitives]")
{
    using Draw = std::function<void(Board&)>;
    const std::vector<PaperPoint> line{{2.0, 2.0}, {4.0, 3.0}};
    const std::vector<PaperPoint> square{{2.0, 2.0}, {4.0, 2.0}, {4.0, 4.0}, {2.0, 4.0}};
    const PaperBox box{{2.0, 2.0}, {4.0, 3.0}};
    const PlanOpening opening{{2.0, 3.0}, {3.0, 3.0}, 0.12};
    const std::vector<HungSheet> sheets{{line, true, true}};
    const std::vector<WallBand> bands{{0.0, 2.0, color(0x884422), "40"}};
    std::vector<std::pair<std::string, Draw>> all{
        {"floor", [&](Board& b) { draw_floor(b, square); }},
        {"walls",
         [&](Board& b) {
             draw_walls(b, std::vector<PlanWall>{{line[0], line[1], 0.1}});
         }},
        {"door", [&](Board& b) { draw_door(b, opening, {}); }},
        {"window", [&](Board& b) { draw_window(b, opening, {.is_open = true, .sill_depth = 0.1}); }},
        {"room name",
         [&](Board& b) {
             draw_room_name(b, {3.0, 3.0}, "Hall");
         }},
        {"register", [&](Board& b) { draw_register(b, box, RegisterKind::extract, true); }},
        {"radiator", [&](Board& b) { draw_radiator(b, box); }},
        {"sheeting", [&](Board& b) { draw_sheeting(b, square); }},
        {"tape", [&](Board& b) { draw_tape(b, line[0], line[1]); }},
        {"flap door", [&](Board& b) { draw_flap_door(b, line[0], line[1]); }},
        {"place for a flap door", [&](Board& b) { draw_flap_door(b, line[0], line[1], {.is_hung = false}); }},
        {"tack pad", [&](Board& b) { draw_tack_pad(b, box, 1.0); }},
        {"sign",
         [&](Board& b) {
             draw_sign(b, {3.0, 3.0});
         }},
        {"barrier", [&](Board& b) { draw_barrier(b, line); }},
        {"work area", [&](Board& b) { draw_work_area(b, square, "Work area"); }},
        {"dimension", [&](Board& b) { draw_dimension(b, line[0], line[1], -0.3); }},
        {"scale bar",
         [&](Board& b) {
             draw_scale_bar(b, {300.0F, 300.0F}, 200.0F);
         }},
        {"section frame", [&](Board& b) { draw_section_frame(b, 1.0, 5.0, 2.4); }},
        {"section wall", [&](Board& b) { draw_section_wall(b, 3.0, 0.1, 2.4, 2.0); }},
        {"wall bands", [&](Board& b) { draw_wall_bands(b, 1.0, 5.0, bands); }},
        {"window face", [&](Board& b) { draw_window_face(b, box, true); }},
        {"door face", [&](Board& b) { draw_door_face(b, box); }},
        {"flap section", [&](Board& b) { draw_flap_section(b, sheets); }},
        {"height scale", [&](Board& b) { draw_height_scale(b, 3.0, 2.4); }},
    };
    for (const BagState state : {BagState::open, BagState::gooseneck, BagState::taped})
        all.emplace_back("bag", [state](Board& b) { draw_bag(b, {3.0, 3.0}, state); });
    for (const Outfit outfit : {Outfit::own_clothes, Outfit::suit, Outfit::suit_and_respirator}) {
        all.emplace_back("person", [outfit](Board& b) { draw_person(b, {3.0, 3.0}, 0.7, outfit, "AM", true); });
        all.emplace_back("person in section", [outfit](Board& b) { draw_person_in_section(b, 3.0, 1.7, true, outfit); });
    }
    for (int kind = 0; kind <= static_cast<int>(FurnitureKind::counter); ++kind)
        all.emplace_back("furniture",
                         [kind, box](Board& b) { draw_furniture(b, box, static_cast<FurnitureKind>(kind), "Thing", kind % 2 == 0, kind); });

    const double zoom = GENERATE(0.4, 1.0, 2.0);
    for (const auto& entry : all) {
        const std::string& name = entry.first;
        const Draw& draw = entry.second; // clang 14 lets no lambda take a structured binding
        INFO(name << " at zoom " << zoom);
        Rehearsal r([&](Ui& ui) {
            Board board{ui.canvas(), PaperView::fit({{0.0, 0.0}, {6.0, 5.0}}, ui.screen(), 0.0F), ui};
            board.view.zoom(zoom, board.at(PaperPoint{3.0, 2.6}));
            draw(board);
        });
        const Picture p = r.ui->picture_of_frame();
        const auto changed = std::count_if(p.pixels.begin(), p.pixels.end(), [](Color c) { return !(c == drafting_theme().paper); });
        CHECK(changed > 30);
    }
}
