#include "small_study.hpp"

#include "debrief/trace.hpp"

using namespace flapdoor;
using namespace flapdoor::debrief;

namespace {

const std::string twice = small_job::scrape + small_job::signs + small_job::scrape + small_job::vacuum + R"({ do = "leave-work-area", by = ["ann"], opening = "door" },)" "\n";

Amount sum_of(const std::vector<SourceLine>& lines, Amount SourceLine::*part)
{
    Amount sum;
    for (const SourceLine& line : lines) sum += line.*part;
    return sum;
}

}

TEST_CASE("what is traced adds up to the books, to the last picogram")
{
    for (const std::string& cards : {small_job::careful, small_job::careless, twice}) {
        const Job job = carry_through(small_study::inputs(cards, "plan"), 3, false);
        const dust::Ledger& ledger = job.run.site.ledger;
        REQUIRE(job.trace.is_kept());
        CHECK(sum_of(job.trace.sources, &SourceLine::released) == ledger.released());
        CHECK(sum_of(job.trace.sources, &SourceLine::outside) == ledger.on(dust::Side::outside));
        CHECK(sum_of(job.trace.sources, &SourceLine::inside) == ledger.on(dust::Side::inside));
        CHECK(sum_of(job.trace.sources, &SourceLine::contained) == ledger.on(dust::Side::contained));
        for (std::size_t p = 0; p < dust::pathway_count; ++p) {
            Amount crossed;
            for (const TraceLine& line : job.trace.crossings)
                if (line.pathway == static_cast<dust::Pathway>(p)) crossed += line.amount;
            CHECK(crossed == dust::total(ledger.crossed(static_cast<dust::Pathway>(p))));
        }
        CHECK(ledger.on(dust::Side::outside).lead.count > 0);
    }
}

TEST_CASE("each card that works on paint is a source, and dust crosses in the step in which it crosses")
{
    const Job job = carry_through(small_study::inputs(twice, "plan"), 3, false);
    REQUIRE(job.trace.sources.size() == 2);
    CHECK(job.trace.sources[0].source == 0);
    CHECK(job.trace.sources[1].source == 2);
    for (const TraceLine& line : job.trace.crossings) {
        CHECK(line.step >= line.source);    // nothing leaves before it is let loose
        CHECK(job.run.site.log.entries.at(static_cast<std::size_t>(line.source)).step == "disturb-paint");
        if (line.pathway == dust::Pathway::shoes) CHECK(job.run.site.log.entries.at(static_cast<std::size_t>(line.step)).step == "leave-work-area");
    }
    const std::vector<WayOfSource> ways = ways_of_sources(job.trace);
    double all = 0.0;
    for (const WayOfSource& way : ways) all += way.share;
    CHECK(all == Approx(1.0));
}

TEST_CASE("a run that was not traced has no trace")
{
    const Inputs inputs = small_study::inputs(small_job::careful, "plan");
    CHECK_FALSE(trace_of(drill::carry_out(inputs.scenario, inputs.plan, {}).site).is_kept());
}
