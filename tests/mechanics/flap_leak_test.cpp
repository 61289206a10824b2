#include "mechanics/flap_book.hpp"
#include "mechanics/flap_leak.hpp"

#include <catch2/catch.hpp>

using namespace flapdoor;
using namespace flapdoor::mechanics;

TEST_CASE("air toward the room pushes a flap off its slit, air out of the room presses it shut")
{
    const FlapDoor door;
    const std::vector<Lean> known = leans(door);
    const double slit_at_rest = (door.slit_length * slit_gap).si;
    CHECK(leak_area(door, known, Pressure{-3.0}).si == Approx(0.3 * slit_at_rest).epsilon(0.02));
    CHECK(leak_area(door, known, {}).si == Approx(0.3 * slit_at_rest).epsilon(0.02));
    Area before = leak_area(door, known, {});
    for (const Pressure pressure : {0.1_Pa, 0.3_Pa, 1.0_Pa, 3.0_Pa}) {
        const Area now = leak_area(door, known, pressure);
        CHECK(now > before);
        before = now;
    }
    CHECK(before.si < 0.03);    // the slit gapes no further than its taut sheet lets it
}

TEST_CASE("slit and second sheet in a row pass less than either, and share out the pressure")
{
    // Holes that do not change with pressure: 1/A^2 = 1/a^2 + 1/b^2.
    FlapDoor door;
    const std::vector<Lean> fixed{{Pressure{}, 0.0, 0.03_m2, 0.04_m2}, {4.0_Pa, 0.0, 0.03_m2, 0.04_m2}};
    CHECK(leak_area(door, fixed, 2.0_Pa).si == Approx(0.024).epsilon(1e-6));
    door.sheets = 1;
    CHECK(leak_area(door, fixed, 2.0_Pa).si == Approx(0.03));
    CHECK(leak_area(door, fixed, Pressure{-2.0}).si == Approx(0.03));
}

TEST_CASE("what is hung badly leaks more under the same pressure")
{
    const FlapDoor good;
    const double sealed = leak_area(good, leans(good), Pressure{-0.5}).si;
    const double pushed = leak_area(good, leans(good), 0.5_Pa).si;
    const auto worse = [](auto change, Pressure pressure) {
        FlapDoor door;
        change(door);
        return leak_area(door, leans(door), pressure).si;
    };
    CHECK(worse([](FlapDoor& d) { d.dowel = {}; }, Pressure{-0.5}) > 3.0 * sealed);
    CHECK(worse([](FlapDoor& d) { d.sheets = 1; }, Pressure{-0.5}) > 10.0 * sealed);
    CHECK(worse([](FlapDoor& d) { d.hem_height = 0.61_m; }, Pressure{-0.5}) > 3.0 * sealed);
    CHECK(worse([](FlapDoor& d) { d.is_taped = false; }, 0.5_Pa) > 10.0 * pushed);
    CHECK(worse([](FlapDoor& d) { d.sheets = 1; }, 0.5_Pa) > pushed);
}

TEST_CASE("a book works each door out once, and a copy knows what it knew")
{
    FlapBook book;
    const FlapDoor door;
    FlapDoor other;
    other.dowel = {};
    const OpenFor open_for = book.swing(door, Heading::into_room).open_for;
    CHECK(book.worked_out() == 1);
    CHECK(book.swing(door, Heading::into_room).open_for == open_for);
    CHECK(book.leans(door).size() == leans(door).size());
    CHECK(book.worked_out() == 2);
    FlapBook copy = book;
    CHECK(copy.leans(door).size() == book.leans(door).size());
    copy.leans(other);
    CHECK(copy.worked_out() == 3);
    CHECK(book.worked_out() == 2);
}
