// On the whole screen of the drill room, by mouse and apart from that by keyboard: the sheeting's edge is dragged, the cleaning way is
// drawn or taken as suggested, the bag is filled, and the card says so.
#include "played_shell.hpp"

#include "site/bagging.hpp"

#include "text/show.hpp"

#include <catch2/catch.hpp>

using namespace flapdoor;
using namespace flapdoor::window;

namespace {

/// The bedroom's drill room with a card in hand.
struct Floor {
    Places places{FLAPDOOR_SOURCE_DIR "/scenarios", {}, "federal"};
    std::shared_ptr<const Drill> drill;
    PlayedShell played;

    Floor(const std::string& name, const char* kind, float scale = 1.0F)
        : places{FLAPDOOR_SOURCE_DIR "/scenarios", std::filesystem::temp_directory_path() / ("flapdoor-" + name), "federal"},
          drill(read_drills(places.scenarios, places.book).find("back-bedroom")), played(places, scale, {1440.0F, 900.0F})
    {
        std::filesystem::remove_all(places.own);
        played.go_to(room_screen(played.shell, {drill, Mode::step_by_step, 1, {}}, drill->careful.scenario));
        REQUIRE(played.wait_for_room());
        for (const StepKind& k : step_kinds())
            if (k.name == kind) played.room()->take_up(proposed(played.room()->attempt().site(), k, {job::PersonId{"rosa"}}));
        played.settle();
        REQUIRE(played.room()->draft() != nullptr);
    }
    ~Floor() { std::filesystem::remove_all(places.own); }
    Floor(const Floor&) = delete;
    Floor& operator=(const Floor&) = delete;

    template <class Step>
    const Step& card() { return std::get<Step>(played.room()->draft()->card.step); }
    Box box_of(const std::string& name)
    {
        const Spot* spot = played.find(name);
        REQUIRE(spot != nullptr);
        return spot->box;
    }
    void drag(const std::vector<Point>& way)
    {
        played.stage.point_at(way.front());
        played.stage.hold();
        for (std::size_t i = 1; i < way.size(); ++i)
            for (int step = 1; step <= 10; ++step) played.stage.point_at(way[i - 1] + (way[i] - way[i - 1]) * (static_cast<float>(step) / 10.0F));
        played.stage.let_go();
        played.settle();
    }
    /// What the card's form shows for a field.
    double on_form(const std::string& key)
    {
        for (const CardField& field : played.room()->draft()->fields)
            if (field.key == key) return field.value;
        FAIL("the form has no " << key);
        return 0.0;
    }
};

}

TEST_CASE("on the room's screen the cleaning way is drawn with the mouse")
{
    Floor room("draw-way", "mop-floor");
    CHECK(room.card<job::MopFloor>().route.empty());
    const Box floor = room.box_of("plan/route");
    const Point a = floor.low + Point{floor.width() * 0.3F, floor.height() * 0.25F};
    const Point b = a + Point{floor.width() * 0.5F, 0.0F};
    room.drag({a, b, b + Point{0.0F, floor.height() * 0.2F}});
    const job::Route drawn = room.card<job::MopFloor>().route;
    REQUIRE(drawn.size() >= 5);
    CHECK(drawn.back().east > drawn.front().east);
    CHECK(drawn.back().north < drawn.front().north); // the screen's y runs down, the plan's north up
    // Drawn at the pointer: the first point lies where the button went down.
    const auto& zone = room.drill->careful.scenario.zones.front();
    const double share = (drawn.front().east - zone.west) / zone.width;
    CHECK(share == Approx(0.3).margin(0.03));
    CHECK(std::stoi(room.played.find("plan/route")->value) > 0);
    // Another stroke is another way, and Wipe it away is none.
    room.drag({b, a});
    CHECK(room.card<job::MopFloor>().route.front().east > room.card<job::MopFloor>().route.back().east);
    room.played.stage.click("plan/route/clear");
    room.played.settle();
    CHECK(room.card<job::MopFloor>().route.empty());
}

TEST_CASE("on the room's screen the suggested way is taken with a click")
{
    Floor room("suggested-way", "vacuum-surfaces");
    if (room.played.find("plan/route/suggest") == nullptr) { // what is vacuumed is for the crew to choose
        REQUIRE(room.played.click("field/target/floor", "draft"));
    }
    room.played.stage.click("plan/route/suggest");
    room.played.settle();
    const job::Route strips = room.card<job::VacuumSurfaces>().route;
    CHECK(strips == suggested_route({room.drill->careful.scenario, room.played.room()->attempt().film().frames.back().is_object_there}));
    CHECK(std::stoi(room.played.find("plan/route")->value) >= 90);
}

TEST_CASE("on the room's screen the way is set and taken by keyboard alone")
{
    Floor room("way-by-keys", "mop-floor");
    REQUIRE(room.played.walk_to("plan/route"));
    room.played.stage.press(Key::space);
    for (int i = 0; i < 3; ++i) room.played.stage.press(Key::right);
    room.played.stage.press(Key::space);
    room.played.stage.press(Key::up);
    room.played.stage.press(Key::space);
    room.played.settle();
    const job::Route set = room.card<job::MopFloor>().route;
    REQUIRE(set.size() == 3);
    CHECK((set[1].east - set[0].east).si == Approx((1.5_ft).si));
    CHECK((set[2].north - set[1].north).si == Approx((0.5_ft).si));
    CHECK_FALSE(room.played.room()->playback().is_playing()); // Space was the pen's
    room.played.stage.press(Key::backspace);
    CHECK(room.card<job::MopFloor>().route.size() == 2);
    REQUIRE(room.played.press_on("plan/route/suggest"));
    CHECK(room.card<job::MopFloor>().route.size() > 6);
    REQUIRE(room.played.press_on("plan/route/clear"));
    CHECK(room.card<job::MopFloor>().route.empty());
}

TEST_CASE("on the room's screen the bag is filled with the mouse, and carried out so")
{
    Floor room("fill-bag", "bag-debris");
    const double before = room.card<job::BagDebris>().fill;
    const Box grip = room.box_of("plan/fill");
    room.drag({grip.center(), grip.center() + Point{0.0F, 40.0F}});
    const double less = room.card<job::BagDebris>().fill;
    CHECK(less < before);
    CHECK(room.on_form("fill") == Approx(less));
    CHECK(room.played.find("plan/fill")->value == text::show_percent(less));
    room.drag({room.box_of("plan/fill").center(), room.box_of("plan/fill").center() - Point{0.0F, 60.0F}});
    CHECK(room.card<job::BagDebris>().fill > less);
}

TEST_CASE("on the room's screen the bag is filled by keyboard alone, and Enter carries the card out")
{
    Floor room("fill-by-keys", "bag-debris");
    REQUIRE(room.played.walk_to("plan/fill"));
    const double before = room.card<job::BagDebris>().fill;
    room.played.stage.press(Key::down);
    room.played.stage.press(Key::down);
    room.played.settle();
    const double fill = room.card<job::BagDebris>().fill;
    CHECK(fill == Approx(before - 0.10));
    CHECK(room.on_form("fill") == Approx(fill));
    auto& card = std::get<job::BagDebris>(room.played.room()->draft()->card.step);
    card.bag = {"bag-1"};
    if (card.kind.name.empty()) card.kind = {"heavy-bags"};
    room.played.room()->take_up(room.played.room()->draft()->card);
    room.played.settle();
    REQUIRE_FALSE(room.played.room()->draft()->why_not.has_value());
    REQUIRE(room.played.walk_to("plan/fill"));
    room.played.stage.press(Key::enter);
    REQUIRE(room.played.wait_until([&] { return room.played.room()->attempt().cards().size() == 1 && !room.played.room()->attempt().is_busy(); }));
    CHECK(std::get<job::BagDebris>(room.played.room()->attempt().cards().front().step).fill == Approx(fill));
    const site::Bag* bag = site::find_bag(room.played.room()->attempt().site(), {"bag-1"});
    REQUIRE(bag != nullptr);
    CHECK(bag->fill == Approx(fill).margin(0.02));
}

TEST_CASE("on the room's screen the sheeting's edge follows the mouse to the half foot, at large letters too")
{
    for (const float scale : {1.0F, 1.5F}) {
        Floor room("edge", "lay-floor-sheet", scale);
        if (room.played.find("plan/reach/casing-1") == nullptr) room.played.stage.click("sheet/plan"); // a small screen has the plan on a page
        room.played.settle();
        const Box grip = room.box_of("plan/reach/casing-1");
        const double before = room.card<job::LayFloorSheet>().reach.si;
        room.drag({grip.center(), grip.center() - Point{30.0F, 0.0F}}); // toward the window in the west wall
        const double after = room.card<job::LayFloorSheet>().reach.si;
        CHECK(after < before);
        CHECK(std::abs(after / (0.5_ft).si - std::round(after / (0.5_ft).si)) < 1e-6);
        CHECK(room.on_form("reach") == Approx(after));
        CHECK(room.played.find("plan/reach/casing-1")->value.find(text::show_short(Length{after})) != std::string::npos);
        CHECK(room.played.find("plan-drawing") != nullptr);
    }
}

TEST_CASE("a wall under what is set on the plan does not take the click from it")
{
    Floor room("tool-on-wall", "tape-seam");
    REQUIRE(room.played.find("plan/opening/0/door") != nullptr);
    room.played.stage.click("plan/opening/0/door");
    room.played.settle();
    CHECK(room.card<job::TapeSeam>().opening.name == "door");
    CHECK(room.played.find("strip/section")->is_on); // the east wall lies there and was not chosen
}
