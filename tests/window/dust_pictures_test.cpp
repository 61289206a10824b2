#include "played_run.hpp"

#include "dust/visibility.hpp"
#include "window/run/layout.hpp"
#include "window/run/plan_part.hpp"
#include "window/run/reading.hpp"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace flapdoor;
using namespace flapdoor::window;

namespace {

long grains_in(const Picture& picture)
{
    return std::count_if(picture.pixels.begin(), picture.pixels.end(), [](Color c) { return c.a > 0; });
}

}

TEST_CASE("what an eye would not notice leaves no grain, and more dust leaves more")
{
    const auto story = careless_story();
    const std::size_t room = story->film.work_room;
    drill::Frame frame = story->film.frames.front();
    std::fill(frame.is_sheeted.begin(), frame.is_sheeted.end(), std::uint8_t{0});
    const auto with = [&](double coverage) {
        std::fill(frame.seen[room].begin(), frame.seen[room].end(), static_cast<float>(coverage));
        return grains_in(grain_picture(*story, frame, room, color(0x000000), 4));
    };
    const double least = least_seen(*story, frame, room, 0);
    CHECK(least == Approx(dust::just_seen)); // a wooden floor is the darkest ground there is
    CHECK(with(least * 0.99) == 0);
    const long few = with(least * 1.01);
    const long many = with(least * 30.0);
    CHECK(few > 0);
    CHECK(many > 3 * few);
}

TEST_CASE("plastic hides twice the dust that a dark floor shows")
{
    const auto story = careless_story();
    drill::Frame frame = story->film.frames.front();
    frame.is_sheeted.assign(frame.is_sheeted.size(), 0);
    const double bare = least_seen(*story, frame, story->film.work_room, 0);
    frame.is_sheeted[0] = 1;
    CHECK(least_seen(*story, frame, story->film.work_room, 0) == Approx(2.0 * bare));
}

TEST_CASE("a reading tells the loading of the very cell under the pointer")
{
    const auto story = careless_story();
    const Moment moment = moment_of(*story, Time{10.0 * 3600.0}, false);
    for (std::size_t zone = 0; zone < story->film.zones.size(); ++zone) {
        const plan::Raster& raster = story->film.rasters[zone];
        for (const std::size_t cell : {std::size_t{0}, raster.size() / 2, raster.size() - 1}) {
            const auto reading = reading_at(*story, moment, paper(raster.center(cell)));
            REQUIRE(reading);
            CHECK(reading->zone == zone);
            CHECK(reading->loading == Approx(static_cast<double>(moment.now->lead[zone][cell])));
        }
    }
    CHECK_FALSE(reading_at(*story, moment, {-5.0, -5.0}));
}

TEST_CASE("the first view shows the near part whole, at the largest scale that does")
{
    const auto inputs = inputs_of_the_house("good.toml");
    const PaperBox near = near_part(inputs.scenario);
    const PaperBox whole = whole_plan(inputs.scenario);
    for (const Box window :
         {Box{{0.0F, 0.0F}, {900.0F, 500.0F}}, Box{{50.0F, 20.0F}, {400.0F, 700.0F}}, Box{{0.0F, 0.0F}, {2000.0F, 300.0F}}}) {
        const PaperView view = comfortable_view(near, whole, window, 10.0F);
        const Box shown = view.at(near);
        CHECK(window.inset(9.0F).contains(shown));
        CHECK((shown.width() > window.width() - 25.0F || shown.height() > window.height() - 25.0F));
    }
}

TEST_CASE("parts of the screen never overlap, and small screens give each a page of its own")
{
    for (float width = 1024.0F; width <= 1920.0F; width += 64.0F)
        for (float height = 700.0F; height <= 1080.0F; height += 38.0F)
            for (const float scale : {1.0F, 1.25F, 1.5F, 1.75F, 2.0F}) {
                const Box screen{{0.0F, 0.0F}, {width, height}};
                const Layout l = lay_out(screen, scale);
                CAPTURE(width, height, scale);
                for (const Box& part : {l.header, l.plan, l.tabs, l.sheet, l.time}) {
                    CHECK(screen.contains(part));
                    CHECK(part.height() >= 38.0F * scale);
                }
                CHECK_FALSE(l.header.overlaps(l.plan));
                CHECK_FALSE(l.tabs.overlaps(l.sheet));
                CHECK_FALSE(l.sheet.overlaps(l.time));
                CHECK_FALSE(l.plan.overlaps(l.time));
                if (l.is_wide) CHECK_FALSE(l.plan.overlaps(l.sheet));
                if (l.is_tall) CHECK_FALSE(l.section.overlaps(l.plan));
            }
}
