#include "debrief/study.hpp"

#include "debrief/plan_bands.hpp"
#include "debrief/uncertainty.hpp"
#include "small_study.hpp"

#include <cmath>
#include <stdexcept>

using namespace flapdoor;
using namespace flapdoor::debrief;

namespace {

std::size_t column_of(const Study& study, Measured what, std::size_t which = 0)
{
    for (std::size_t c = 0; c < study.basis.columns.size(); ++c)
        if (study.basis.columns[c].what == what && study.basis.columns[c].which == which) return c;
    FAIL("no such column");
    return 0;
}

}

TEST_CASE("a study is the same for every number of threads and every order of its seeds")
{
    const auto plans = small_study::both();
    const Study alone = small_study::made(plans, 6);
    CHECK(alone.rows.size() == 12);
    CHECK(small_study::made(plans, 6, 3) == alone);
    CHECK(carry_on(plans, begin_study(plans, "1.2.3"), {{6, 3, 5, 1, 4, 2, 3}, 2}) == alone);
    CHECK(alone.rows[0].hash != alone.rows[2].hash);
}

TEST_CASE("a study that was stopped and carried on is that made in one go")
{
    const auto plans = small_study::both();
    const Study whole = small_study::made(plans, 5);
    StudyOrder order{small_study::seeds(5), 2};
    std::size_t done = 0, left = 0;
    order.after_run = [&](const Study& so_far, std::size_t todo) { done = so_far.rows.size(), left = todo; };
    order.should_stop = [&] { return done >= 3; };
    const Study part = carry_on(plans, begin_study(plans, "1.2.3"), order);
    CHECK(part.rows.size() >= 3);
    CHECK(part.rows.size() < 10);
    CHECK(part.rows.size() + left == 10);
    order.should_stop = {};
    CHECK(carry_on(plans, part, order) == whole);
    CHECK(left == 0);
    // What is there is not run again.
    done = 0;
    CHECK(carry_on(plans, whole, order) == whole);
    CHECK(done == 0);
}

TEST_CASE("parts pooled are the whole, in any order, and what does not fit is told and changes nothing")
{
    const auto plans = small_study::both();
    const Study whole = small_study::made(plans, 5);
    const auto part = [&](std::size_t number) { return carry_on(plans, begin_study(plans, "1.2.3"), {part_of(small_study::seeds(5), number, 3), 1}); };
    Study pooled = part(3);
    CHECK_FALSE(pool(pooled, part(1)));
    CHECK_FALSE(pool(pooled, part(2)));
    CHECK(pooled == whole);
    CHECK_FALSE(pool(pooled, whole));
    CHECK(pooled == whole);

    Study other = whole;
    other.rows[3].values[0] = 1e9;
    CHECK(pool(pooled, other) == "other results for seed 2 of plan careless");
    other = whole;
    other.basis.program = "1.2.4";
    CHECK(pool(pooled, other) == "another version of the program, 1.2.3 and 1.2.4");
    const auto foreign = small_study::made({small_study::inputs(small_job::careful, "careful", "Another job"), small_study::inputs(small_job::careless, "careless", "Another job")}, 1);
    CHECK(pool(pooled, foreign)->find("another scenario") == 0);
    CHECK(pooled == whole);
}

TEST_CASE("every seed is in exactly one part")
{
    std::vector<std::uint64_t> all;
    for (std::size_t part = 1; part <= 4; ++part)
        for (const std::uint64_t seed : part_of(small_study::seeds(10), part, 4)) all.push_back(seed);
    std::sort(all.begin(), all.end());
    CHECK(all == small_study::seeds(10));
    CHECK(part_of({1}, 2, 2).empty());
    CHECK_THROWS_AS(part_of({1}, 3, 2), BrokenPromise);
}

TEST_CASE("a failing run ends a study instead of the program")
{
    const auto plans = small_study::both();
    StudyOrder order{small_study::seeds(3), 2};
    order.after_run = [](const Study&, std::size_t) { throw std::runtime_error("the disk is full"); };
    CHECK_THROWS_WITH(carry_on(plans, begin_study(plans, "1.2.3"), order), "the disk is full");
}

TEST_CASE("a study refuses inputs that it was not begun with")
{
    const auto plans = small_study::both();
    CHECK_THROWS_AS(carry_on({plans[1], plans[0]}, begin_study(plans, "1.2.3"), {{1}, 1}), BrokenPromise);
    CHECK_THROWS_AS(begin_study({plans[0], small_study::inputs(small_job::careful, "careful", "Another job")}, "1.2.3"), BrokenPromise);
    CHECK_THROWS_AS(begin_study({}, "1.2.3"), BrokenPromise);
    CHECK_THROWS_AS(begin_study(plans, "1.2.3", 0.0), BrokenPromise);
}

TEST_CASE("plans of one name are told apart")
{
    const auto careful = small_study::inputs(small_job::careful, "plan"), careless = small_study::inputs(small_job::careless, "plan");
    const Study study = begin_study({careful, careless}, "1.2.3");
    CHECK(study.basis.plans[0].name == "plan");
    CHECK(study.basis.plans[1].name == "plan-2");
}

TEST_CASE("a row of a study is what the run came to")
{
    const auto plans = small_study::both();
    const Study study = carry_on(plans, begin_study(plans, "1.2.3", 1.0), {{3}, 1});
    const Job job = carry_through(plans[1], 3, false);
    const StudyRow& row = study.rows[1];
    REQUIRE(row.plan == 1);
    CHECK(row.hash == job.run.hashes.back().hash);
    const auto value = [&](Measured what, std::size_t which = 0) { return row.values[column_of(study, what, which)].value(); };
    CHECK(value(Measured::outside) == Approx(static_cast<double>(job.outcome.outside.lead.count) * 1e-6).epsilon(1e-5));
    CHECK(value(Measured::took) == Approx(job.outcome.took / 60.0_s));
    CHECK(value(Measured::points_lost) == static_cast<double>(job.sheet.lost.count) / 4.0);
    CHECK(value(Measured::is_passed) == 0.0);
    for (const SurfaceLine& line : job.outcome.surfaces)
        for (std::size_t c = 0; c < study.basis.columns.size(); ++c)
            if (study.basis.columns[c].what < Measured::left_sheeting && study.basis.columns[c].which == line.surface)
                CHECK(row.values[c].value() == Approx(line.lead / 1.0_ugpft2).epsilon(1e-5));
    for (const PathwayLine& line : job.outcome.pathways)
        CHECK(value(Measured::way_out, static_cast<std::size_t>(line.pathway)) == Approx(static_cast<double>(line.amount.lead.count) * 1e-6).epsilon(1e-5).margin(1e-9));
    const dust::RunParameters drawn = dust::draw_parameters(3);
    for (std::size_t i = 0; i < uncertainties.size(); ++i) CHECK(value(Measured::parameter, i) == Approx(drawn.*uncertainties[i].member).epsilon(1e-5));
    CHECK(value(Measured::exposure) == Approx(job.outcome.breathed[0].lead.si * 1e9).epsilon(1e-5).margin(1e-12));
}

TEST_CASE("the bands of a plan are those of its rows")
{
    const auto plans = small_study::both();
    const Study study = small_study::made(plans, 12);
    const PlanBands bands = bands_of(study, 1);
    CHECK(bands.runs == 12);
    CHECK(bands.passed == 0);
    std::vector<double> outside;
    const std::size_t column = column_of(study, Measured::outside);
    for (const StudyRow& row : study.rows)
        if (row.plan == 1) outside.push_back(*row.values[column]);
    REQUIRE(bands.find(Measured::outside));
    CHECK(*bands.find(Measured::outside) == band_of(outside));
    CHECK(bands.find(Measured::outside)->low < bands.find(Measured::outside)->high);
    for (const auto& [of, band] : bands.columns) {
        INFO(head_of(of));
        CHECK(band.low <= band.median);
        CHECK(band.median <= band.high);
    }
    int rank = 0;
    for (const PathwayBand& pathway : bands.pathways) {
        CHECK(pathway.share.low >= 0.0);
        CHECK(pathway.share.high <= 1.0);
        if (pathway.rank > 0) CHECK(pathway.rank == ++rank);
        if (pathway.pathway == dust::Pathway::bag || pathway.pathway == dust::Pathway::sheeting_removal) CHECK(pathway.rank == 0);
    }
    CHECK(rank >= 1);
    REQUIRE(bands.on_outside.size() >= 2);
    for (std::size_t i = 1; i < bands.on_outside.size(); ++i) CHECK(std::abs(bands.on_outside[i].correlation) <= std::abs(bands.on_outside[i - 1].correlation));
    CHECK_THROWS_AS(bands_of(study, 2), BrokenPromise);
}
