// Work beside the window: whoever lets it go never waits for it, and what it was making goes with it.
#include "played_run.hpp"
#include "played_shell.hpp"

#include "window/debrief/what_if_job.hpp"
#include "window/shell/beside.hpp"
#include "window/shell/side_job.hpp"

#include <catch2/catch.hpp>

#include <atomic>
#include <chrono>
#include <filesystem>
#include <future>
#include <stdexcept>

using namespace flapdoor;
using namespace flapdoor::window;

namespace {

double seconds_of(const auto& work)
{
    const auto before = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - before).count();
}

template <class T>
std::optional<T> waited_for(Beside<T>& work)
{
    std::optional<T> result;
    while (!(result = work.take())) std::this_thread::sleep_for(std::chrono::milliseconds(1));
    return result;
}

}

TEST_CASE("letting go of work that blocks returns at once, and the work is told")
{
    std::promise<void> gate;
    const std::shared_future<void> opened = gate.get_future().share();
    const auto was_told = std::make_shared<std::atomic<bool>>(false);
    const auto is_begun = std::make_shared<std::atomic<bool>>(false);
    auto work = std::make_unique<Beside<int>>([=](const std::atomic<bool>& is_let_go) {
        *is_begun = true;
        opened.wait(); // until the test says so: longer than anybody would wait
        *was_told = is_let_go.load();
        return 1;
    });
    while (!*is_begun) std::this_thread::sleep_for(std::chrono::milliseconds(1));
    CHECK_FALSE(work->take());
    CHECK_FALSE(work->is_over());
    const double seconds = seconds_of([&] { work.reset(); });
    CHECK_FALSE(*was_told); // it still stands at the gate
    CHECK(seconds < 1.0);
    gate.set_value();
    wait_for_those_left();
    CHECK(*was_told);
}

TEST_CASE("what came of it is given once, and what it threw is thrown again")
{
    Beside<int> work([](const std::atomic<bool>&) { return 7; });
    CHECK(waited_for(work) == 7);
    CHECK_FALSE(work.take());
    Beside<int> broken([](const std::atomic<bool>&) -> int { throw std::runtime_error("a promise of ours"); });
    while (!broken.is_over()) std::this_thread::sleep_for(std::chrono::milliseconds(1));
    CHECK_THROWS_WITH(broken.take(), "a promise of ours");
    Beside<int> gone([](const std::atomic<bool>&) -> int { throw LetGo{}; });
    while (!gone.is_over()) std::this_thread::sleep_for(std::chrono::milliseconds(1));
    CHECK_FALSE(gone.take());
}

TEST_CASE("a run and its what-ifs are let go within a frame, and both end by themselves")
{
    const debrief::Inputs inputs = inputs_of_the_house("careless.toml");
    auto job = std::make_unique<SideJob>(inputs, 1);
    while (job->cards_done() < 14) std::this_thread::sleep_for(std::chrono::milliseconds(1)); // into the sanding, the longest card
    CHECK(seconds_of([&] { job.reset(); }) < 0.25);
    auto what_ifs = std::make_unique<WhatIfJob>();
    what_ifs->start(inputs, {}, careless_story()->report);
    std::this_thread::sleep_for(std::chrono::milliseconds(50));
    CHECK(what_ifs->is_under_way());
    CHECK(seconds_of([&] { what_ifs->stop(); }) < 0.25);
    CHECK_FALSE(what_ifs->is_under_way());
    CHECK(what_ifs->report() == nullptr); // nothing half worked out
    what_ifs->start(inputs, {}, careless_story()->report);
    CHECK(seconds_of([&] { what_ifs.reset(); }) < 0.25);
    wait_for_those_left();
}

TEST_CASE("a class goes back while its run is carried out, without a frame that waits and without a file")
{
    TestPlaces folder("class-back");
    PlayedShell played(folder.places);
    const auto drill = read_drills(folder.places.scenarios, folder.places.book).find("one-window");
    REQUIRE(drill);
    played.go_to(class_screen(played.shell, {drill, Mode::for_a_class, 1, {}}));
    REQUIRE(played.press_on("begin"));
    REQUIRE(played.find("waiting/words") != nullptr);
    CHECK(seconds_of([&] { played.stage.press(Key::escape); }) < 1.0);
    played.settle();
    CHECK(played.find("crew/0") != nullptr);
    CHECK_FALSE(std::filesystem::exists(folder.places.own));
}
