#include "small_study.hpp"

#include "debrief/side_by_side.hpp"
#include "debrief/side_page.hpp"

using namespace flapdoor;
using namespace flapdoor::debrief;

TEST_CASE("two runs stand on one time line, each at its last picture not after the time")
{
    const auto careful = small_job::make(small_job::careful);
    const auto careless = small_job::make(small_job::careless);
    const SideBySide both = side_by_side(careful.film, careless.film, 7);
    REQUIRE(both.moments.size() == 7);
    CHECK(both.moments.front().at == both.from);
    CHECK(both.moments.back().at == both.to);
    CHECK(both.to == std::max(careful.film.frames.back().at, careless.film.frames.back().at));
    for (const SideMoment& moment : both.moments)
        for (std::size_t side = 0; side < 2; ++side) {
            const drill::Film& film = side == 0 ? careful.film : careless.film;
            CHECK((moment.frames[side]->at <= moment.at || moment.frames[side] == &film.frames.front()));
            CHECK(moment.has_ended[side] == (film.frames.back().at < moment.at));
            for (const drill::Frame& frame : film.frames)
                if (frame.at <= moment.at) CHECK(frame.at <= moment.frames[side]->at);
        }
    CHECK(both.moments.back().has_ended[0] != both.moments.back().has_ended[1]);
}

TEST_CASE("the page of two runs shows both at the same times")
{
    const auto careful = small_job::make(small_job::careful);
    const auto careless = small_job::make(small_job::careless);
    const std::string html = side_page(careful.report, careful.film, careless.report, careless.film);
    CHECK(small_job::count(html, "<h1>") == 1);
    CHECK(small_job::count(html, "run-line-a") >= 1);
    CHECK(small_job::count(html, "run-line-b") >= 1);
    CHECK(small_job::count(html, "the job is over") >= 1);
    const std::size_t maps = small_job::count(html, "<div class=\"maps\">");
    CHECK(maps >= 2);
    CHECK(small_job::count(html, "<figcaption>A, ") == maps);
    CHECK(small_job::count(html, "<figcaption>B, ") == maps);
}
