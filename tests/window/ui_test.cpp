#include "rehearsal.hpp"

#include "window/stage/bridge.hpp"
#include "window/widgets/button.hpp"
#include "window/widgets/field.hpp"
#include "window/widgets/panel.hpp"
#include "window/widgets/slider.hpp"
#include "window/widgets/toggle.hpp"
#include "window/widgets/words.hpp"

#include "core/insist.hpp"

#include <SFML/Window/Event.hpp>
#include <catch2/catch.hpp>

#include <algorithm>
#include <vector>

using namespace flapdoor;
using namespace flapdoor::window;

namespace {

/// A screen with one of each, and what was done on it.
struct Sample {
    int checks = 0;
    bool is_shown = false;
    double speed = 4.0;
    std::string note;
    bool is_spanish = false;
    bool has_undo = true;

    void operator()(Ui& ui)
    {
        panel(ui, "side", {{20.0F, 20.0F}, {420.0F, 560.0F}}, {.title = is_spanish ? "Plan de trabajo" : "Work plan"}, [&] {
            if (button(ui, "check", is_spanish ? "Comprobar el orden" : "Check my order", {.emphasis = Emphasis::primary})) ++checks;
            button(ui, "never", "Not now", {.is_enabled = false, .hint = "Nothing to do yet"});
            toggle(ui, "shown", is_spanish ? "Mostrar el polvo" : "Show dust", is_shown);
            slider(ui, "speed", "Speed", speed, {.least = 1.0, .most = 16.0, .step = 1.0});
            text_field(ui, "note", "Note", note);
            if (has_undo) button(ui, "undo", "Undo");
            button(ui, "last", "Last");
        });
    }
};

const std::vector<std::string> sample_stops{"check", "shown", "speed", "note", "undo", "last"};

}

TEST_CASE("a button is pressed by the mouse, and only when it is let go over it")
{
    Sample sample;
    Rehearsal r([&](Ui& ui) { sample(ui); });
    r.click("check");
    CHECK(sample.checks == 1);
    r.point_at(r.ui->find("check")->box.center());
    r.hold();
    r.point_at({700.0F, 500.0F});
    r.let_go();
    CHECK(sample.checks == 1);
}

TEST_CASE("a click that is faster than a frame still presses")
{
    Sample sample;
    Rehearsal r([&](Ui& ui) { sample(ui); });
    const Point at = r.ui->find("check")->box.center();
    Bridge bridge(r.input.size);
    sf::Event event{};
    event.type = sf::Event::MouseMoved;
    event.mouseMove.x = static_cast<int>(at.x);
    event.mouseMove.y = static_cast<int>(at.y);
    bridge.feed(event);
    for (const auto type : {sf::Event::MouseButtonPressed, sf::Event::MouseButtonReleased}) {
        sf::Event click{};
        click.type = type;
        click.mouseButton.button = sf::Mouse::Left;
        click.mouseButton.x = static_cast<int>(at.x);
        click.mouseButton.y = static_cast<int>(at.y);
        bridge.feed(click);
    }
    for (int i = 0; i < 3; ++i) {
        r.input = bridge.next_frame(1.0F / 60.0F);
        r.frame();
    }
    CHECK(sample.checks == 1);
}

TEST_CASE("a disabled button is neither pressed nor reached")
{
    Sample sample;
    Rehearsal r([&](Ui& ui) { sample(ui); });
    r.click("never");
    CHECK_FALSE(r.ui->find("never")->is_enabled);
    CHECK(r.ui->focused().empty());
    CHECK(r.ui->tab_order() == sample_stops);
}

TEST_CASE("the Tab key walks every control in order and round, both ways, and presses none")
{
    Sample sample;
    Rehearsal r([&](Ui& ui) { sample(ui); });
    for (const std::string& name : sample_stops) {
        r.press(Key::tab);
        CHECK(r.ui->focused() == name);
        CHECK(r.ui->find(name)->has_focus);
    }
    r.press(Key::tab);
    CHECK(r.ui->focused() == "check");
    r.press(Key::tab, {.shift = true});
    CHECK(r.ui->focused() == "last");
    CHECK(sample.checks == 0);
    CHECK_FALSE(sample.is_shown);
    CHECK(sample.speed == 4.0);
}

TEST_CASE("Enter and Space press what the keyboard is on")
{
    Sample sample;
    Rehearsal r([&](Ui& ui) { sample(ui); });
    r.press(Key::tab);
    r.press(Key::enter);
    r.press(Key::space);
    CHECK(sample.checks == 2);
    r.press(Key::tab);
    r.press(Key::space);
    CHECK(sample.is_shown);
    CHECK(r.ui->find("shown")->is_on);
}

TEST_CASE("after a click, Space belongs to the screen again")
{
    Sample sample;
    int plays = 0;
    Rehearsal r([&](Ui& ui) {
        sample(ui);
        if (ui.shortcut(Key::space)) ++plays;
    });
    r.click("check");
    r.press(Key::space);
    CHECK(sample.checks == 1);
    CHECK(plays == 1);
    r.press(Key::tab); // from the clicked control on, to the next
    CHECK(r.ui->focused() == "shown");
    r.press(Key::space);
    CHECK(plays == 1);
    CHECK(sample.is_shown);
}

TEST_CASE("a slider follows arrow keys, Home, End and the mouse, in whole steps")
{
    Sample sample;
    Rehearsal r([&](Ui& ui) { sample(ui); });
    for (int i = 0; i < 3; ++i) r.press(Key::tab);
    r.press(Key::right);
    CHECK(sample.speed == 5.0);
    r.press(Key::left);
    r.press(Key::left);
    CHECK(sample.speed == 3.0);
    r.press(Key::end);
    CHECK(sample.speed == 16.0);
    r.press(Key::page_down);
    CHECK(sample.speed == 6.0);
    r.press(Key::home);
    CHECK(sample.speed == 1.0);
    CHECK(r.ui->find("speed")->value == "1");

    const Box box = r.ui->find("speed")->box;
    r.point_at({box.low.x + 10.0F, box.high.y - 13.0F});
    r.hold();
    r.point_at({box.center().x, box.high.y + 200.0F});
    CHECK(sample.speed == Approx(8.5).margin(0.5));
    CHECK(sample.speed == std::round(sample.speed));
    r.point_at({box.high.x + 90.0F, 0.0F});
    CHECK(sample.speed == 16.0);
    r.let_go();
}

TEST_CASE("a field takes accented text, and Tab carries on from it")
{
    Sample sample;
    Rehearsal r([&](Ui& ui) { sample(ui); });
    for (int i = 0; i < 4; ++i) r.press(Key::tab);
    r.frame();
    CHECK(r.ui->is_writing());
    r.input.typed = U"se\u00F1al";
    r.frame();
    r.frame();
    CHECK(sample.note == "se\xC3\xB1"
                         "al");
    r.press(Key::tab);
    r.frame();
    CHECK_FALSE(r.ui->is_writing());
    CHECK(r.ui->focused() == "undo");
    r.input.typed = U"x";
    r.frame();
    CHECK(sample.note == "se\xC3\xB1"
                         "al");
}

TEST_CASE("shortcuts keep still while somebody writes")
{
    Sample sample;
    int shortcuts = 0;
    Rehearsal r([&](Ui& ui) {
        sample(ui);
        if (ui.shortcut(Key::p)) ++shortcuts;
    });
    r.press(Key::p);
    CHECK(shortcuts == 1);
    r.click("note");
    r.frame();
    r.press(Key::p);
    CHECK(shortcuts == 1);
}

TEST_CASE("names, not words, carry the focus through a change of language")
{
    Sample sample;
    Rehearsal r([&](Ui& ui) { sample(ui); });
    r.press(Key::tab);
    CHECK(r.ui->find("check")->label == "Check my order");
    sample.is_spanish = true;
    r.frame();
    CHECK(r.ui->find("check")->label == "Comprobar el orden");
    CHECK(r.ui->find("check")->has_focus);
    r.press(Key::enter);
    CHECK(sample.checks == 1);
    CHECK(r.ui->tab_order() == sample_stops);
}

TEST_CASE("when the focused control goes away, Tab goes on from its place")
{
    Sample sample;
    Rehearsal r([&](Ui& ui) { sample(ui); });
    for (int i = 0; i < 5; ++i) r.press(Key::tab);
    CHECK(r.ui->focused() == "undo");
    sample.has_undo = false;
    r.frame();
    r.press(Key::tab);
    CHECK(r.ui->focused() == "last");
}

TEST_CASE("two widgets of one name break the promise")
{
    Rehearsal r([](Ui&) {});
    r.ui->begin_frame(r.input);
    button(*r.ui, "same", "One");
    CHECK_THROWS_AS(button(*r.ui, "same", "Two"), BrokenPromise);
}

TEST_CASE("a dialog takes all input until Escape, and gives it back")
{
    Sample sample;
    bool is_open = false;
    int accepted = 0;
    Rehearsal r([&](Ui& ui) {
        sample(ui);
        if (is_open)
            is_open = dialog(ui, "sure", "Start again?", {400.0F, 240.0F}, [&] {
                if (button(ui, "yes", "Start again", {.emphasis = Emphasis::primary})) ++accepted;
            });
    });
    r.press(Key::tab);
    is_open = true;
    r.frame();
    r.frame();
    CHECK(r.ui->tab_order() == std::vector<std::string>{"sure/close", "yes"});
    r.click("check");
    r.press(Key::enter); // closes: the keyboard went to the first control of the dialog
    CHECK(sample.checks == 0);
    CHECK_FALSE(is_open);
    r.frame();
    CHECK(r.ui->focused() == "check"); // and back where it was

    is_open = true;
    r.frame();
    r.frame();
    r.click("yes");
    CHECK(accepted == 1);
    r.press(Key::escape);
    CHECK_FALSE(is_open);
    r.frame();
    r.click("check");
    CHECK(sample.checks == 1);
    CHECK(r.ui->tab_order() == sample_stops);
}

TEST_CASE("the keyboard scrolls what it reaches into view")
{
    Rehearsal r([&](Ui& ui) {
        panel(ui, "tall", {{0.0F, 0.0F}, {300.0F, 200.0F}}, {}, [&] {
            for (int i = 0; i < 20; ++i) button(ui, "button " + std::to_string(i), "Press");
        });
    });
    const Box view{{0.0F, 0.0F}, {300.0F, 200.0F}};
    CHECK_FALSE(view.contains(r.ui->find("button 14")->box));
    for (int i = 0; i <= 14; ++i) r.press(Key::tab);
    r.frame();
    CHECK(r.ui->focused() == "button 14");
    CHECK(view.contains(r.ui->find("button 14")->box));
}

TEST_CASE("targets are large enough, at every text size, and stay in the panel", "[scale]")
{
    const float scale = GENERATE(1.0F, 1.25F, 1.5F, 2.0F);
    Sample sample;
    Rehearsal r([&](Ui& ui) { sample(ui); });
    r.ui->set_text_scale(scale);
    r.frame();
    r.frame();
    CHECK(r.ui->text_scale() == scale);
    for (const Spot& spot : r.ui->spots()) {
        if (spot.role == Role::panel) continue;
        INFO(spot.name << " at " << scale);
        CHECK(spot.box.height() >= 24.0F * scale); // WCAG 2.2, 2.5.8
        CHECK(spot.box.width() >= 24.0F * scale);
        CHECK(spot.box.high.x <= 420.0F);
    }
}

TEST_CASE("a hint comes when the pointer rests and when the keyboard is there")
{
    Rehearsal r([&](Ui& ui) { button(ui, "play", "Play", {.hint = "Space"}); });
    const auto drawn = [&] { return r.ui->picture_of_frame(); };
    const Picture still = drawn();
    r.point_at(r.ui->find("play")->box.center());
    for (int i = 0; i < 40; ++i) r.frame();
    const auto dark = [&](const Picture& p) { return std::count(p.pixels.begin(), p.pixels.end(), r.ui->theme().ink); };
    CHECK(dark(drawn()) > dark(still) + 300);
    r.point_at({700.0F, 500.0F});
    r.frame();
    CHECK(dark(drawn()) <= dark(still) + 5);
    r.press(Key::tab);
    CHECK(dark(drawn()) > dark(still) + 300);
}

TEST_CASE("what is copied comes back from the clipboard that was given")
{
    Sample sample;
    sample.note = "sign posted";
    std::string board;
    Rehearsal r([&](Ui& ui) { sample(ui); });
    r.ui->use_clipboard([&] { return board; }, [&](const std::string& text) { board = text; });
    r.click("note");
    r.frame();
    r.press(Key::a, {.control = true});
    r.press(Key::c, {.control = true});
    CHECK(board == "sign posted");
}
