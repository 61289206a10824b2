#include "job/run_log.hpp"

#include <catch2/catch.hpp>

namespace flapdoor::job {

namespace {

RunLog two_doors()
{
    RunLog log;
    log.states = {{8.0_h, "flap-hung", "door", true}, {9.0_h, "flap-hung", "arch", true}, {10.0_h, "flap-hung", "door", false}, {10.0_h, "passed", "", true}};
    return log;
}

}

TEST_CASE("a state holds from its change on, the very moment included, until it ends")
{
    const RunLog log = two_doors();
    CHECK_FALSE(holds(log, "flap-hung", "door", 7.9_h));
    CHECK(holds(log, "flap-hung", "door", 8.0_h));
    CHECK(holds(log, "flap-hung", "door", 9.9_h));
    CHECK_FALSE(holds(log, "flap-hung", "door", 10.0_h));
    CHECK(holds(log, "passed", "", 12.0_h));
}

TEST_CASE("a state of one thing says nothing about another, nor of a thing about no thing")
{
    const RunLog log = two_doors();
    CHECK(holds(log, "flap-hung", "arch", 11.0_h));
    CHECK_FALSE(holds(log, "flap-hung", "", 9.0_h));
    CHECK_FALSE(holds(log, "window-closed", "door", 9.0_h));
    CHECK_FALSE(holds(RunLog{}, "flap-hung", "door", 9.0_h));
}

TEST_CASE("of two changes at one moment the later written one counts")
{
    RunLog log;
    log.states = {{8.0_h, "passed", "", true}, {8.0_h, "passed", "", false}};
    CHECK_FALSE(holds(log, "passed", "", 8.0_h));
}

TEST_CASE("a measure is found by name and object, and by name alone when no object is asked for")
{
    LogEntry entry;
    entry.measured = {{"reach", "casing-1", MeasureKind::length, 1.0}, {"reach", "casing-2", MeasureKind::length, 2.0}, {"sections", "", MeasureKind::number, 4.0}};
    REQUIRE(find_measure(entry, "reach", "casing-2") != nullptr);
    CHECK(find_measure(entry, "reach", "casing-2")->value == 2.0);
    CHECK(find_measure(entry, "reach")->value == 1.0);
    CHECK(find_measure(entry, "sections")->value == 4.0);
    CHECK(find_measure(entry, "reach", "casing-3") == nullptr);
    CHECK(find_measure(entry, "fill") == nullptr);
}

TEST_CASE("a parameter the card does not have is empty text")
{
    LogEntry entry;
    entry.with = {{"reach", "6 ft"}, {"layers", "1"}};
    CHECK(parameter(entry, "layers") == "1");
    CHECK(parameter(entry, "reach") == "6 ft");
    CHECK(parameter(entry, "tape").empty());
}

}
