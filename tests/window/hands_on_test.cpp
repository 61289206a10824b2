// Closing a bag and hanging a flap door by hand: by mouse, by keyboard alone, and how it looks.
#include "look.hpp"
#include "rehearsal.hpp"

#include "window/hands_on/bag_close_up.hpp"
#include "window/hands_on/flap_close_up.hpp"

#include "text/language.hpp"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace flapdoor;
using namespace flapdoor::window;

namespace {

job::Opening doorway()
{
    job::Opening opening;
    opening.id = {"door"};
    opening.title = "Bedroom door";
    opening.width = 32.0_in;
    opening.height = 80.0_in;
    return opening;
}

/// A close-up with the whole screen to itself.
template <class CloseUp>
struct Played {
    CloseUp close_up;
    CloseUpEnd end = CloseUpEnd::goes_on;
    Rehearsal stage;

    template <class... Arguments>
    explicit Played(float scale, Point size, Arguments&&... arguments)
        : close_up(std::forward<Arguments>(arguments)...), stage([this](Ui& ui) { play(ui); }, scale)
    {
        stage.input.size = size;
        settle();
    }
    void play(Ui& ui)
    {
        CloseUpEnd now = CloseUpEnd::goes_on;
        if constexpr (requires { close_up.view(); }) now = close_up.play(ui, ui.screen().inset(ui.px(12.0F)), true);
        else now = close_up.play(ui, ui.screen().inset(ui.px(12.0F)));
        if (now != CloseUpEnd::goes_on) end = now;
    }
    void settle()
    {
        for (int i = 0; i < 4; ++i) {
            stage.frame();
            if constexpr (requires { close_up.view(); }) close_up.view().films().wait();
        }
        stage.frame();
    }
    void make(const std::string& move)
    {
        INFO(move);
        REQUIRE(stage.ui->find("move/" + move) != nullptr);
        bring("move/" + move);
        stage.click("move/" + move);
        settle();
    }
    /// Walks the keyboard there, so that a list that scrolls shows it.
    void bring(const std::string& name)
    {
        stage.ui->focus_on(name);
        stage.frame();
        stage.frame();
    }
    void press_key_on(const std::string& name, Key key)
    {
        bring(name);
        stage.press(key);
        settle();
    }
    bool shows_fault(const std::string& what) const
    {
        const auto& spots = stage.ui->spots();
        return std::any_of(spots.begin(), spots.end(), [&](const Spot& s) { return s.name.rfind("fault/", 0) == 0 && s.name.find(what) != std::string::npos; });
    }
};

using PlayedBag = Played<BagCloseUp>;
using PlayedFlap = Played<FlapCloseUp>;

job::CloseBag bag_card()
{
    job::CloseBag card;
    card.bag = {"bag-1"};
    return card;
}

job::HangFlap flap_card()
{
    job::HangFlap card;
    card.opening = {"door"};
    card.sheeting = {"poly"};
    return card;
}

constexpr Point desk{1280.0F, 800.0F};

}

TEST_CASE("a bag closed by mouse as taught gives the card of a gooseneck and the card to vacuum it")
{
    PlayedBag bag(1.0F, desk, bag_card(), 0.5, true);
    for (const char* move : {"press-gently", "twist", "fold", "tape", "loop", "vacuum-outside"}) bag.make(move);
    bag.bring("close-up/look-over");
    bag.stage.click("close-up/look-over");
    bag.settle();
    CHECK_FALSE(bag.shows_fault(""));
    bag.bring("close-up/use");
    bag.stage.click("close-up/use");
    CHECK(bag.end == CloseUpEnd::taken);
    const job::CloseBag card = bag.close_up.card();
    CHECK(card.bag.name == "bag-1");
    CHECK(card.closure == job::Closure::gooseneck);
    CHECK(card.press == job::Press::gently);
    CHECK((card.is_folded && card.has_loop));
    CHECK(bag.close_up.vacuums_outside());
    CHECK_FALSE(bag.close_up.vacuums_too_early());
}

TEST_CASE("a wrong order shows at once, and the last move can be taken back, by keyboard alone")
{
    PlayedBag bag(1.0F, desk, bag_card(), 0.5, true);
    bag.press_key_on("move/twist", Key::enter);
    CHECK_FALSE(bag.shows_fault(""));
    bag.press_key_on("move/press-gently", Key::space);
    CHECK(bag.shows_fault("after the neck was twisted"));
    bag.stage.press(Key::backspace);
    bag.settle();
    CHECK_FALSE(bag.shows_fault(""));
    CHECK(bag.close_up.in_hand().moves == std::vector<site::BagMove>{site::BagMove::twist});
    bag.press_key_on("close-up/leave", Key::enter);
    CHECK(bag.end == CloseUpEnd::left);
}

TEST_CASE("what was left out shows when the bag is looked over")
{
    PlayedBag bag(1.0F, desk, bag_card(), 0.5, true);
    bag.make("tape");
    CHECK_FALSE(bag.shows_fault("without a twist"));
    bag.press_key_on("close-up/look-over", Key::enter);
    CHECK(bag.shows_fault("without a twist"));
    CHECK(bag.shows_fault("air was left in"));
}

TEST_CASE("the fill line of the bag is dragged, moved by arrows, and fixed once the closing began")
{
    PlayedBag bag(1.0F, desk, bag_card(), 0.5, true);
    const Box grip = bag.stage.ui->find("bag/fill")->box;
    bag.stage.point_at(grip.center());
    bag.stage.hold();
    bag.stage.point_at(grip.center() - Point{0.0F, 120.0F});
    bag.stage.let_go();
    CHECK(bag.close_up.fill() > 0.6);
    const double dragged = bag.close_up.fill();
    bag.press_key_on("bag/fill", Key::down);
    CHECK(bag.close_up.fill() == Approx(dragged - 0.05));
    bag.make("twist");
    CHECK(bag.stage.ui->find("bag/fill") == nullptr);
}

TEST_CASE("a flap door hung as taught is the careful card; the dowel's height is dragged on the drawing")
{
    PlayedFlap flap(1.0F, desk, doorway(), flap_card());
    for (const char* move : {"fold-slack", "tape-first", "cut-slit", "hang-second", "put-in-dowel"}) flap.make(move);
    flap.press_key_on("close-up/look-over", Key::enter);
    CHECK_FALSE(flap.shows_fault(""));
    const Box hem = flap.stage.ui->find("flap/hem")->box;
    flap.stage.point_at(hem.center());
    flap.stage.hold();
    flap.stage.point_at(hem.center() - Point{0.0F, 90.0F});
    flap.stage.let_go();
    flap.settle();
    CHECK(flap.close_up.in_hand().gap > 10.0_in);
    CHECK(flap.shows_fault("high above the floor"));
    const Length dragged = flap.close_up.in_hand().gap;
    flap.press_key_on("flap/hem", Key::down);
    CHECK(flap.close_up.in_hand().gap.si == Approx((dragged - 1.0_in).si));
    const job::HangFlap card = flap.close_up.card();
    CHECK(card.opening.name == "door");
    CHECK((card.sheets == 2 && card.is_taped && card.has_folds && card.has_dowel));
    CHECK_FALSE(card.is_slit_through);
}

TEST_CASE("the slit cut last goes through both sheets, and slack folded in too late tears the tape, as the section shows")
{
    PlayedFlap flap(1.0F, desk, doorway(), flap_card());
    for (const char* move : {"tape-first", "fold-slack", "hang-second", "cut-slit"}) flap.make(move);
    CHECK(flap.shows_fault("after the second sheet"));
    CHECK(flap.shows_fault("after the sheet was taped"));
    CHECK(flap.close_up.card().is_slit_through);
    const auto* study = flap.close_up.view().films().find(site::hung_door(site::flap_of(flap.close_up.card()), doorway()), mechanics::Heading::into_room);
    REQUIRE(study != nullptr);
    CHECK(study->film.swing.has_torn_loose);
}

TEST_CASE("close-ups cut no words in English and Spanish at 100, 150 and 200 %")
{
    for (const text::Language language : {text::Language::english, text::Language::spanish}) {
        text::speak(language, FLAPDOOR_CATALOGS);
        for (const float scale : {1.0F, 1.5F, 2.0F}) {
            INFO("scale " << scale << ", " << text::code_of(language));
            PlayedBag bag(scale, desk, bag_card(), 0.5, true);
            for (const char* move : {"twist", "press-gently", "tape"}) bag.make(move);
            bag.press_key_on("close-up/look-over", Key::enter);
            CHECK(bag.stage.ui->cut_words() == std::vector<std::string>{});
            PlayedFlap flap(scale, desk, doorway(), flap_card());
            for (const char* move : {"hang-second", "cut-slit"}) flap.make(move);
            flap.press_key_on("close-up/look-over", Key::enter);
            CHECK(flap.stage.ui->cut_words() == std::vector<std::string>{});
        }
    }
    text::speak(text::Language::english);
}

TEST_CASE("the close-ups look as they did")
{
    for (const text::Language language : {text::Language::english, text::Language::spanish}) {
        text::speak(language, FLAPDOOR_CATALOGS);
        const std::string code(text::code_of(language));
        PlayedBag bag(1.0F, desk, bag_card(), 0.5, true);
        for (const char* move : {"press-gently", "twist", "fold", "tape", "loop"}) bag.make(move);
        bag.settle();
        compare(bag.stage.ui->picture_of_frame(), "bag-close-up-" + code);
        PlayedFlap flap(1.0F, desk, doorway(), flap_card());
        for (const char* move : {"fold-slack", "tape-first", "cut-slit", "hang-second", "put-in-dowel"}) flap.make(move);
        flap.close_up.view().go_to(1.2_s);
        flap.settle();
        compare(flap.stage.ui->picture_of_frame(), "flap-close-up-" + code);
    }
    text::speak(text::Language::english);
}
