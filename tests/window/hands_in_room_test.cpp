// In the drill room: a card's parameters set on the plan, and cards done move by move in a close-up.
#include "played_shell.hpp"

#include <catch2/catch.hpp>

using namespace flapdoor;
using namespace flapdoor::window;

namespace {

/// A room of the small drill with a card of that kind in hand.
struct Hands {
    TestPlaces folder;
    PlayedShell played;

    explicit Hands(const std::string& name, const char* kind = nullptr) : folder(name), played(folder.places)
    {
        const auto drill = read_drills(folder.places.scenarios, folder.places.book).find("one-window");
        played.go_to(room_screen(played.shell, {drill, Mode::step_by_step, 1, {}}, drill->careful.scenario));
        REQUIRE(played.wait_for_room());
        if (kind != nullptr) take(kind);
    }
    void take(const char* kind)
    {
        for (const StepKind& k : step_kinds())
            if (k.name == kind) played.room()->take_up(proposed(room().attempt().site(), k, {job::PersonId{"ana"}}));
        played.settle();
        REQUIRE(room().draft() != nullptr);
    }
    RoomScreen& room() { return *played.room(); }
    template <class Step> const Step& card() { return std::get<Step>(room().draft()->card.step); }
    const Spot* find(const std::string& name) { return played.find(name); }
};

}

TEST_CASE("the sheeting's edge is dragged on the room's plan and says its reach in feet")
{
    Hands hands("plan-drag", "lay-floor-sheet");
    const Spot* grip = hands.find("plan/reach/casing");
    REQUIRE(grip != nullptr);
    const double before = hands.card<job::LayFloorSheet>().reach.si;
    const Point from = grip->box.center();
    hands.played.stage.point_at(from);
    hands.played.stage.hold();
    for (int i = 1; i <= 10; ++i) hands.played.stage.point_at(from + Point{-10.0F * static_cast<float>(i), 0.0F}); // toward the window in the west wall
    hands.played.stage.let_go();
    hands.played.settle();
    const double after = hands.card<job::LayFloorSheet>().reach.si;
    CHECK(after < before);
    CHECK(hands.find("plan/reach/casing")->value.find(" ft") != std::string::npos);
    // The form tells the same.
    const CardField* reach = nullptr;
    for (const CardField& field : hands.room().draft()->fields)
        if (field.key == "reach") reach = &field;
    REQUIRE(reach != nullptr);
    CHECK(reach->value == after);
}

TEST_CASE("by keyboard the edge is moved on the plan and Enter carries the card out")
{
    Hands hands("plan-keys", "lay-floor-sheet");
    if (hands.room().draft()->why_not) { // material is for the crew to choose
        REQUIRE(hands.played.press_on("field/sheeting/poly", Key::space));
    }
    const double before = hands.card<job::LayFloorSheet>().reach.si;
    REQUIRE(hands.played.walk_to("plan/reach/casing"));
    hands.played.stage.press(Key::left);
    hands.played.settle();
    CHECK(hands.card<job::LayFloorSheet>().reach.si == Approx(before - (0.5_ft).si));
    hands.played.stage.press(Key::enter);
    REQUIRE(hands.played.wait_until([&] { return hands.room().attempt().cards().size() == 1 && !hands.room().attempt().is_busy(); }));
    CHECK(std::get<job::LayFloorSheet>(hands.room().attempt().cards().front().step).reach.si == Approx(before - (0.5_ft).si));
}

TEST_CASE("the opening of a card is clicked on the room's plan")
{
    Hands hands("plan-click", "tape-seam");
    REQUIRE(hands.find("plan/opening/0/door") != nullptr);
    hands.played.stage.click("plan/opening/0/door");
    hands.played.settle();
    CHECK(hands.card<job::TapeSeam>().opening.name == "door");
    hands.played.stage.click("plan/opening/0/window");
    hands.played.settle();
    CHECK(hands.card<job::TapeSeam>().opening.name == "window");
}

TEST_CASE("a flap door is hung move by move by keyboard alone, and its card carried out")
{
    Hands hands("flap-by-hand", "hang-flap");
    REQUIRE(hands.played.press_on("by-hand"));
    REQUIRE(hands.find("flap-moves") != nullptr);
    CHECK(hands.find("do-it") == nullptr); // nothing else is on
    for (const char* move : {"tape-first", "cut-slit", "hang-second", "put-in-dowel"}) REQUIRE(hands.played.press_on(std::string("move/") + move));
    REQUIRE(hands.played.press_on("close-up/look-over"));
    REQUIRE(hands.played.press_on("close-up/use"));
    REQUIRE(hands.find("do-it") != nullptr);
    CHECK(hands.card<job::HangFlap>().opening.name == "door");
    CHECK_FALSE(hands.card<job::HangFlap>().has_folds); // the slack was not folded in
    CHECK(hands.card<job::HangFlap>().has_dowel);
    if (hands.room().draft()->why_not) REQUIRE(hands.played.press_on("field/sheeting/poly", Key::space));
    hands.played.stage.press(Key::enter, {.control = true});
    REQUIRE(hands.played.wait_until([&] { return hands.room().attempt().cards().size() == 1 && !hands.room().attempt().is_busy(); }));
    CHECK_FALSE(std::get<job::HangFlap>(hands.room().attempt().cards().front().step).has_folds);
}

TEST_CASE("Escape leaves a close-up and the card as it was")
{
    Hands hands("flap-left", "hang-flap");
    const job::HangFlap before = hands.card<job::HangFlap>();
    REQUIRE(hands.played.click("by-hand", "draft"));
    REQUIRE(hands.find("flap-moves") != nullptr);
    hands.played.stage.press(Key::escape);
    hands.played.settle();
    REQUIRE(hands.find("do-it") != nullptr);
    CHECK(hands.card<job::HangFlap>().has_folds == before.has_folds);
    CHECK(hands.card<job::HangFlap>().sheets == before.sheets);
}

TEST_CASE("closing a bag move by move brings the vacuuming of its outside into hand next, or before")
{
    for (const bool is_too_early : {false, true}) {
        const Places places{FLAPDOOR_SOURCE_DIR "/scenarios", std::filesystem::temp_directory_path() / "flapdoor-bag-by-hand", "federal"};
        const auto drill = read_drills(places.scenarios, places.book).find("back-bedroom");
        REQUIRE(drill);
        PlayedShell played(places);
        const std::vector<job::PersonId> team{drill->careful.scenario.crew.front().id};
        played.go_to(room_screen(played.shell, {drill, Mode::step_by_step, 1, {}}, drill->careful.scenario));
        REQUIRE(played.wait_for_room());
        const auto carry_out = [&] {
            REQUIRE_FALSE(played.room()->draft()->why_not.has_value());
            played.room()->do_it();
            REQUIRE(played.wait_until([&] { return !played.room()->attempt().is_busy(); }));
            played.settle();
        };
        job::BagDebris fill;
        fill.bag = {"bag-1"};
        fill.kind = {"heavy-bags"};
        played.room()->take_up({fill, team, {}});
        played.settle();
        carry_out();
        job::CloseBag close;
        close.bag = {"bag-1"};
        played.room()->take_up({close, team, {}});
        played.settle();
        REQUIRE(played.press_on("by-hand"));
        if (is_too_early) REQUIRE(played.press_on("move/vacuum-outside"));
        for (const char* move : {"press-gently", "twist", "fold", "tape", "loop"}) REQUIRE(played.press_on(std::string("move/") + move));
        if (!is_too_early) REQUIRE(played.press_on("move/vacuum-outside"));
        REQUIRE(played.press_on("close-up/look-over"));
        REQUIRE(played.press_on("close-up/use"));
        const auto in_hand = [&] { return played.room()->draft() != nullptr ? std::string(step_kinds()[played.room()->draft()->card.step.index()].name) : std::string("none"); };
        const auto choose_vacuum = [&] {
            auto& vacuum = std::get<job::VacuumBag>(played.room()->draft()->card.step);
            CHECK(vacuum.bag.name == "bag-1");
            if (vacuum.vacuum.name.empty()) REQUIRE(played.press_on("field/vacuum/hepa-vacuum", Key::space));
        };
        CHECK(in_hand() == (is_too_early ? "vacuum-bag" : "close-bag"));
        if (is_too_early) choose_vacuum();
        carry_out();
        CHECK(in_hand() == (is_too_early ? "close-bag" : "vacuum-bag"));
        if (!is_too_early) choose_vacuum();
        carry_out();
        CHECK(in_hand() == "none");
        CHECK(played.room()->attempt().cards().size() == 3);
        const site::Bag* bag = site::find_bag(played.room()->attempt().site(), {"bag-1"});
        REQUIRE(bag != nullptr);
        CHECK(bag->is_gooseneck);
        std::filesystem::remove_all(places.own);
    }
}
