#include "rehearsal.hpp"

#include "window/widgets/card.hpp"
#include "window/widgets/choice.hpp"
#include "window/widgets/list.hpp"
#include "window/widgets/panel.hpp"
#include "window/widgets/scrubber.hpp"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace flapdoor::window;

namespace {

/// A work plan whose cards really move.
struct Plan {
    std::vector<CardFace> cards{{.name = "a", .number = 1, .title = "Cover the register"},
                                {.name = "b", .number = 2, .title = "Lay sheeting"},
                                {.name = "c", .number = 3, .title = "Hang the flap"},
                                {.name = "d", .number = 4, .title = "Mist and scrape"}};
    CardDrag drag;

    std::string order() const
    {
        std::string names;
        for (const CardFace& face : cards) names += face.name;
        return names;
    }
    void operator()(Ui& ui)
    {
        panel(ui, "plan", {{20.0F, 20.0F}, {420.0F, 580.0F}}, {}, [&] {
            const auto event = card_list(ui, cards, drag);
            if (!event) return;
            if (event->kind == CardListEvent::Kind::chosen)
                for (std::size_t i = 0; i < cards.size(); ++i) cards[i].is_chosen = i == event->from;
            if (event->kind == CardListEvent::Kind::moved) {
                const CardFace face = cards[event->from];
                cards.erase(cards.begin() + static_cast<std::ptrdiff_t>(event->from));
                cards.insert(cards.begin() + static_cast<std::ptrdiff_t>(event->to), face);
            }
        });
    }
};

}

TEST_CASE("a card moves by Alt and arrow keys, keeps the keyboard, and stops at the ends")
{
    Plan plan;
    Rehearsal r([&](Ui& ui) { plan(ui); });
    r.press(Key::tab);
    r.press(Key::down, {.alt = true});
    CHECK(plan.order() == "bacd");
    CHECK(r.ui->focused() == "a");
    r.press(Key::down, {.alt = true});
    r.press(Key::down, {.alt = true});
    r.press(Key::down, {.alt = true});
    CHECK(plan.order() == "bcda");
    r.press(Key::up, {.alt = true});
    CHECK(plan.order() == "bcad");
}

TEST_CASE("a card moves by dragging, to the gap that is nearest")
{
    Plan plan;
    Rehearsal r([&](Ui& ui) { plan(ui); });
    r.point_at(r.ui->find("a")->box.center());
    r.hold();
    r.point_at(r.ui->find("c")->box.center() + Point{0.0F, 10.0F});
    CHECK(plan.order() == "abcd");
    r.let_go();
    CHECK(plan.order() == "bcad");
    r.point_at(r.ui->find("d")->box.center());
    r.hold();
    r.point_at({100.0F, 0.0F});
    r.let_go();
    CHECK(plan.order() == "dbca");
}

TEST_CASE("a small slip of the mouse moves no card")
{
    Plan plan;
    Rehearsal r([&](Ui& ui) { plan(ui); });
    r.point_at(r.ui->find("b")->box.center());
    r.hold();
    r.point_at(r.ui->find("b")->box.center() + Point{3.0F, 5.0F});
    r.let_go();
    CHECK(plan.order() == "abcd");
    CHECK(plan.cards[1].is_chosen);
}

TEST_CASE("every drag has a press that does the same") // WCAG 2.2, 2.5.7
{
    Plan plan;
    Rehearsal r([&](Ui& ui) { plan(ui); });
    r.click("b");
    r.frame();
    r.click("b/up");
    CHECK(plan.order() == "bacd");
    CHECK(plan.cards[0].is_chosen);
    r.frame();
    CHECK_FALSE(r.ui->find("b/up")->is_enabled);
    r.click("b/down");
    r.frame();
    r.click("b/down");
    CHECK(plan.order() == "acbd");
}

TEST_CASE("choices walk by arrow keys and answers are chosen by Space")
{
    std::size_t view = 0;
    std::optional<std::size_t> answer;
    std::vector<bool> ticks(3, false);
    const std::vector<Option> options{
        {.name = "one", .label = "One"}, {.name = "two", .label = "Two"}, {.name = "three", .label = "Three"}};
    Rehearsal r([&](Ui& ui) {
        choice_row(ui, "views", options, view);
        choose_one(ui, "answer", options, answer);
        choose_several(ui, "ticks", options, ticks);
    });
    r.press(Key::tab);
    r.press(Key::right);
    r.press(Key::right);
    r.press(Key::right);
    CHECK(view == 2);
    CHECK(r.ui->focused() == "views/three");
    r.press(Key::left);
    CHECK(view == 1);
    r.click("answer/two");
    CHECK(answer == 1U);
    r.click("ticks/one");
    r.click("ticks/three");
    CHECK(ticks == std::vector<bool>{true, false, true});
    r.click("ticks/one");
    CHECK(ticks == std::vector<bool>{false, false, true});
    CHECK(r.ui->find("ticks/three")->is_on);
}

TEST_CASE("rows walk by arrow keys and are pressed by Enter")
{
    std::optional<std::size_t> pressed;
    const std::vector<Row> rows{{.name = "hall", .title = "Hall"}, {.name = "bath", .title = "Bathroom"}};
    Rehearsal r([&](Ui& ui) {
        if (const auto row = list(ui, "drills", rows)) pressed = row;
    });
    r.press(Key::tab);
    r.press(Key::down);
    CHECK(r.ui->focused() == "drills/bath");
    r.press(Key::down);
    CHECK(r.ui->focused() == "drills/bath");
    r.press(Key::enter);
    CHECK(pressed == 1U);
}

TEST_CASE("the scrubber jumps from mark to mark, steps, and follows the mouse")
{
    double seconds = 0.0;
    const std::vector<ScrubberMark> marks{{100.0, false, "covered"}, {250.0, true, "sanded with the register open"}};
    Rehearsal r([&](Ui& ui) { scrubber(ui, "time", seconds, {.end = 600.0, .step = 10.0, .marks = marks, .label = "Time"}); });
    r.press(Key::tab);
    r.press(Key::page_up);
    CHECK(seconds == 100.0);
    r.press(Key::page_up);
    CHECK(seconds == 250.0);
    r.press(Key::right);
    CHECK(seconds == 260.0);
    r.press(Key::page_up);
    CHECK(seconds == 600.0);
    r.press(Key::page_down);
    CHECK(seconds == 250.0);
    r.press(Key::home);
    CHECK(seconds == 0.0);
    CHECK(r.ui->find("time")->value == "0:00");
    r.click(r.ui->find("time")->box.center());
    CHECK(seconds == Approx(300.0).margin(1.0));
}

TEST_CASE("clock text reads as a clock")
{
    CHECK(clock_text(0.0) == "0:00");
    CHECK(clock_text(59.99) == "0:59");
    CHECK(clock_text(3599.0) == "59:59");
    CHECK(clock_text(3661.0) == "1:01:01");
    CHECK(clock_text(-4.0) == "0:00");
}
