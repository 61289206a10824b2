#include "moving_air.hpp"

#include "dust/flight_log.hpp"

#include <catch2/catch.hpp>

using namespace flapdoor;
using namespace flapdoor::dust;

namespace {

struct Room {
    CloudRoom room = still_room(4.0_m, 3.0_m, 2.4_m, 0.1_m);
    StepTable table;

    explicit Room(double strength)
    {
        stir(room, strength);
        table = step_table(room, alike(motion(10.0_s, Diffusivity{0.01}, 0.1_m, 2.4_m, Speed{0.003}, Speed{1e-5}, 0.5_s, wind(room))));
    }
};

bool is_same(const Cloud& a, const Cloud& b) { return fingerprint(a) == fingerprint(b) && a.age == b.age; }

/// Three spells of a cloud, noted.
FlightLog noted(const Room& in, Cloud cloud)
{
    FlightLog log;
    for (int spell = 0; spell < 3; ++spell) {
        const Cloud before = cloud;
        advance(cloud, in.table, 5);
        log.note(fingerprint(in.table), before, cloud);
        cloud.sweep();
    }
    return log;
}

void drop(Cloud& cloud, std::size_t every)
{
    for (std::size_t i = 0; i < cloud.count(); i += every) cloud.fate[i] = Fate::left;
    cloud.sweep();
}

}

TEST_CASE("parcels looked up are where they would be had they been carried", "[determinism]")
{
    const Room in(0.02);
    const Cloud start = scattered(in.room, 3000, 9);
    const FlightLog log = noted(in, start);
    struct Change {
        const char* what;
        void (*make)(Cloud&);
        double most_carried;    // of all parcel-steps
    };
    for (const Change& change : {Change{"nothing", [](Cloud&) {}, 0.0},
                                 Change{"some are gone", [](Cloud& c) { drop(c, 3); }, 0.0},
                                 Change{"the youngest are gone", [](Cloud& c) { for (std::size_t i = c.count() - 5; i < c.count(); ++i) c.fate[i] = Fate::left; c.sweep(); }, 0.0},
                                 Change{"some stand elsewhere", [](Cloud& c) { for (std::size_t i = 0; i < c.count(); i += 7) c.x[i] *= 0.5F; }, 0.2},
                                 Change{"others among them", [](Cloud& c) { for (std::size_t i = 0; i < c.count(); i += 7) c.number[i] += 1'000'000; }, 0.2},
                                 Change{"some are of another size", [](Cloud& c) { for (std::size_t i = 0; i < c.count(); i += 9) c.size[i] = SizeClass::um_20; }, 0.2},
                                 Change{"some carry more", [](Cloud& c) { for (std::size_t i = 0; i < c.count(); i += 2) c.amount[i].dust.count = 77; }, 0.0}}) {
        INFO(change.what);
        Cloud looked_up = start;
        change.make(looked_up);
        Cloud carried = looked_up;
        std::uint64_t made = 0, all = 0;
        for (int spell = 0; spell < 3; ++spell) {
            made += advance_known(looked_up, in.table, fingerprint(in.table), 5, 2, log);
            all += advance(carried, in.table, 5);
            REQUIRE(is_same(looked_up, carried));
            looked_up.sweep();
            carried.sweep();
        }
        CHECK(static_cast<double>(made) <= change.most_carried * static_cast<double>(all));
    }
}

TEST_CASE("through other air every parcel is carried", "[determinism]")
{
    const Room in(0.02), other(0.03);
    REQUIRE(fingerprint(in.table) != fingerprint(other.table));
    const Cloud start = scattered(in.room, 500, 9);
    const FlightLog log = noted(in, start);
    Cloud looked_up = start, carried = start;
    const std::uint64_t made = advance_known(looked_up, other.table, fingerprint(other.table), 5, 1, log);
    CHECK(made == advance(carried, other.table, 5));
    CHECK(is_same(looked_up, carried));
}

TEST_CASE("a log takes about fifty bytes a parcel and spell")
{
    const Room in(0.02);
    const Cloud start = scattered(in.room, 2000, 9);
    const std::size_t bytes = noted(in, start).bytes();
    CHECK(bytes > 3 * 1000 * 40);
    CHECK(bytes < 3 * 2000 * 60);
}
