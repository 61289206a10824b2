#include "played_run.hpp"
#include "speaking.hpp"

#include "text/language.hpp"

#include <catch2/catch.hpp>

#include <algorithm>
#include <set>

using namespace flapdoor;
using namespace flapdoor::window;

namespace {

/// In none of the lists that scroll.
bool is_fixed(const Spot& spot) { return spot.role != Role::card && spot.role != Role::row; }

/// Of the plan itself: names and figures may lie on it.
bool is_drawn(const Spot& spot) { return spot.role == Role::drawing || spot.name.rfind("plan/wall/", 0) == 0 || spot.name.rfind("plan/beam", 0) == 0; }

std::vector<Spot> fixed_controls(const PlayedRun& run)
{
    std::vector<Spot> controls;
    for (const Spot& spot : run.stage.ui->spots())
        if (is_fixed(spot) && spot.role != Role::panel && !is_drawn(spot)) controls.push_back(spot);
    return controls;
}

std::set<std::string> shown_faults(const PlayedRun& run)
{
    std::set<std::string> faults;
    for (const Spot& spot : run.stage.ui->spots())
        if (spot.role == Role::row && spot.name.rfind("fault-", 0) == 0) faults.insert(spot.name);
    return faults;
}

}

TEST_CASE("Space and the button play and pause, and the clock runs as fast as chosen")
{
    PlayedRun run;
    const double start = run.hour();
    run.stage.press(Key::space);
    REQUIRE(run.screen.playback().is_playing());
    run.stage.input.seconds = 0.25F;
    const Time before = run.screen.playback().now();
    for (int i = 0; i < 4; ++i) run.stage.frame();
    CHECK((run.screen.playback().now() - before).si == Approx(120.0));
    run.stage.press(Key::s);
    CHECK(run.screen.playback().speed() == 2);
    run.stage.click("play");
    CHECK_FALSE(run.screen.playback().is_playing());
    CHECK(run.hour() > start);
    const double paused = run.hour();
    run.settle();
    CHECK(run.hour() == paused);
}

TEST_CASE("playing stops at the end, and the next Space begins again")
{
    PlayedRun run;
    run.screen.playback().go_to(run.screen.story().end - 1.0_s);
    run.stage.press(Key::space);
    run.stage.input.seconds = 0.2F;
    run.settle();
    CHECK_FALSE(run.screen.playback().is_playing());
    CHECK(run.screen.playback().is_at_end());
    run.stage.press(Key::space);
    CHECK(run.screen.playback().is_playing());
    CHECK(run.screen.playback().now() < run.screen.story().start + 5.0_min);
}

TEST_CASE("arrows, Home, End and a drag on the day move through the run")
{
    PlayedRun run;
    run.go_to(10.0);
    run.stage.press(Key::right);
    CHECK(run.hour() == Approx(10.0 + 30.0 / 3600.0));
    run.stage.press(Key::left, {.shift = true});
    CHECK(run.hour() == Approx(10.0 - 270.0 / 3600.0));
    run.stage.press(Key::end);
    CHECK(run.screen.playback().is_at_end());
    run.stage.press(Key::home);
    CHECK(run.screen.playback().now() == run.screen.story().start);
    const Box day = run.find("day")->box;
    run.stage.click(Point{day.center().x, day.low.y + 18.0F});
    const Story& story = run.screen.story();
    CHECK(run.screen.playback().now().si == Approx((story.start.si + story.end.si) * 0.5).epsilon(0.01));
}

TEST_CASE("Page Down and Page Up go from card to card, F from fault to fault")
{
    PlayedRun run;
    const auto& cards = run.screen.story().log.entries;
    run.screen.playback().go_to(cards[10].start);
    run.stage.press(Key::page_down);
    CHECK(run.screen.playback().now() == cards[11].start);
    run.stage.press(Key::page_up);
    run.stage.press(Key::page_up);
    CHECK(run.screen.playback().now() == cards[9].start);

    run.stage.press(Key::home);
    run.stage.press(Key::f);
    const Time first = run.screen.story().happenings.front().at;
    CHECK(run.screen.playback().now() == first);
    run.stage.press(Key::f);
    CHECK(run.screen.playback().now() > first);
    run.stage.press(Key::f, {.shift = true});
    CHECK(run.screen.playback().now() == first);
}

TEST_CASE("a fault shows when it happens and not before")
{
    PlayedRun run;
    run.show(Page::faults);
    const Story& story = run.screen.story();
    REQUIRE(story.happenings.size() > 10);
    for (const std::size_t i : {std::size_t{0}, story.happenings.size() / 2, story.happenings.size() - 1}) {
        const Happening& happening = story.happenings[i];
        const std::string name = "fault-" + std::to_string(story.report.faults[happening.fault].number);
        const Time first = story.first_time(happening.fault);
        run.screen.playback().go_to(first - 1.0_s);
        run.settle();
        CHECK(shown_faults(run).count(name) == 0);
        CHECK(shown_faults(run).size() == story.broken_by(run.screen.playback().now()));
        run.screen.playback().go_to(first);
        run.settle();
        CHECK(shown_faults(run).count(name) == 1);
    }
    run.screen.playback().go_to(story.end);
    run.settle();
    CHECK(shown_faults(run).size() == story.report.faults.size());
}

TEST_CASE("the scrubber tells a coming fault's time but not its name")
{
    PlayedRun run;
    const Box day = run.find("day")->box;
    const Story& story = run.screen.story();
    const double share = (story.happenings.back().at - story.start) / story.length();
    run.stage.point_at({day.low.x + 9.0F + (day.width() - 18.0F) * static_cast<float>(share), day.low.y + 18.0F});
    run.stage.input.seconds = 0.2F;
    run.settle();
    CHECK(story.broken_by(run.screen.playback().now()) == 0);
    CHECK(run.find("label/0 faults so far") != nullptr);
}

TEST_CASE("the card under way is marked, and pressing a card goes to its start")
{
    PlayedRun run;
    const auto& cards = run.screen.story().log.entries;
    run.screen.playback().go_to(cards[14].start + 1.0_min);
    run.settle();
    REQUIRE(run.find("card-15") != nullptr);
    CHECK(run.find("card-15")->is_on);
    CHECK_FALSE(run.find("card-14")->is_on);
    const Box card = run.find("card-15")->box;
    const Box sheet = run.find("steps")->box;
    CHECK(card.low.y >= sheet.low.y);
    CHECK(card.low.y < sheet.high.y);
    run.stage.click("card-14");
    CHECK(run.screen.playback().now() == cards[13].start);
}

TEST_CASE("1, 2 and 3 and the title block choose how to look at the dust")
{
    PlayedRun run;
    run.stage.press(Key::digit_2);
    CHECK(run.screen.state().view == ViewKind::seen);
    CHECK(run.find("view/seen")->is_on);
    run.stage.press(Key::digit_3);
    CHECK(run.screen.state().view == ViewKind::airborne);
    run.stage.click("view/there");
    CHECK(run.screen.state().view == ViewKind::there);
}

TEST_CASE("the plan comes closer by keys and wheel, is dragged, and 0 fits it again")
{
    PlayedRun run;
    const auto scale = [&] { return run.screen.state().plan_view->pixels_per_meter(); };
    const double fitted = scale();
    run.stage.press(Key::plus);
    CHECK(scale() > fitted * 1.2);
    const Point middle = run.find("plan-drawing")->box.center();
    run.stage.point_at(middle);
    const PaperPoint under = run.screen.state().plan_view->paper(middle);
    run.stage.input.wheel = 2.0F;
    run.stage.frame();
    CHECK(scale() > fitted * 1.5);
    CHECK(distance(run.screen.state().plan_view->paper(middle), under) < 0.01);
    run.stage.hold();
    run.stage.point_at(middle + Point{60.0F, -30.0F});
    run.stage.let_go();
    CHECK(distance(run.screen.state().plan_view->paper(middle + Point{60.0F, -30.0F}), under) < 0.01);
    run.stage.press(Key::digit_0);
    const double whole = scale();
    run.stage.press(Key::digit_0);
    CHECK(scale() == Approx(fitted));
    CHECK(whole < fitted);
}

TEST_CASE("help takes all keys while it is there; Escape closes it first, the window next")
{
    PlayedRun run;
    run.stage.input.typed = U"?";
    run.stage.frame();
    run.stage.frame();
    REQUIRE(run.screen.state().shows_help);
    run.stage.press(Key::f);
    CHECK(run.screen.playback().now() == run.screen.story().start);
    run.stage.press(Key::escape);
    CHECK_FALSE(run.screen.state().shows_help);
    CHECK_FALSE(run.screen.wants_to_quit());
    run.stage.press(Key::escape);
    CHECK(run.screen.wants_to_quit());
}

TEST_CASE("Tab reaches every control of every part of the screen")
{
    PlayedRun run;
    const std::vector<std::string> order = run.stage.ui->tab_order();
    for (const char* name : {"text-larger", "keep-still", "help", "plan-drawing", "view/there", "view/air", "zoom-in", "fit", "sheet/steps",
                             "sheet/dust", "card-1", "card-45", "to-start", "play", "card-after", "fault-after", "speed/600", "day"})
        CHECK(std::count(order.begin(), order.end(), name) == 1);
}

TEST_CASE("all labels fit, and no control stands outside the window or on another, in both languages at every size and text scale")
{
    const auto language = GENERATE(text::Language::english, text::Language::spanish);
    const Speaking speaking(language);
    for (const Point size : {Point{1024.0F, 700.0F}, Point{1440.0F, 900.0F}, Point{1920.0F, 1080.0F}})
        for (const float scale : {1.0F, 1.5F, 2.0F}) {
            PlayedRun run(scale, size);
            run.go_to(12.4);
            for (const Page page : {Page::plan, Page::section, Page::steps, Page::faults, Page::marks, Page::dust, Page::what_if}) {
                run.show(page);
                CAPTURE(text::code_of(language), size.x, scale, static_cast<int>(page));
                for (const std::string& cut : run.stage.ui->cut_words()) UNSCOPED_INFO("cut: " << cut);
                CHECK(run.stage.ui->cut_words().empty());
                const std::vector<Spot> controls = fixed_controls(run);
                for (std::size_t i = 0; i < controls.size(); ++i) {
                    CAPTURE(controls[i].name);
                    CHECK(run.stage.ui->screen().contains(controls[i].box));
                    for (std::size_t k = i + 1; k < controls.size(); ++k) {
                        CAPTURE(controls[k].name);
                        CHECK_FALSE(controls[i].box.inset(0.5F).overlaps(controls[k].box));
                    }
                }
            }
        }
}

TEST_CASE("who asks for little motion gets people who stand where they were last seen")
{
    const auto story = careless_story();
    bool has_walked = false;
    for (std::size_t f = 0; f + 1 < story->film.frames.size(); ++f) {
        const Time half = (story->film.frames[f].at + story->film.frames[f + 1].at) * 0.5;
        const Moment still = moment_of(*story, half, false);
        const Moment shot = moment_of(*story, story->film.frames[f].at, false);
        if (still.frame != shot.frame) continue;
        for (std::size_t p = 0; p < still.crew.size(); ++p) CHECK(still.crew[p].at == shot.crew[p].at);
        has_walked = has_walked || !(moment_of(*story, half, true).crew[1].at == still.crew[1].at);
    }
    CHECK(has_walked);
}
