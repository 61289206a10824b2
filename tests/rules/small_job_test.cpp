#include "small_job.hpp"

#include <catch2/catch.hpp>

using namespace flapdoor;
using namespace flapdoor::rules;

TEST_CASE("the small job's log runs without a gap and tells when the containment was whole")
{
    const job::RunLog log = good_job().log();
    for (std::size_t i = 1; i < log.entries.size(); ++i) CHECK(log.entries[i].start == log.entries[i - 1].end);
    const auto start_of = [&](std::string_view label) {
        for (const job::LogEntry& entry : log.entries)
            if (entry.label == label) return entry.start;
        return Time{};
    };
    CHECK_FALSE(job::holds(log, "containment-whole", "", start_of("flap")));
    CHECK(job::holds(log, "containment-whole", "", start_of("scrape")));
    CHECK_FALSE(job::holds(log, "containment-whole", "", start_of("bag-sheet")));
}
