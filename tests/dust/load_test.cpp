#include "dust/load.hpp"

#include <catch2/catch.hpp>

using namespace flapdoor;
using namespace flapdoor::dust;

TEST_CASE("a load is all of its classes, free and bound")
{
    Load load;
    CHECK(total(load).is_zero());
    std::int64_t next = 1;
    for (const SizeClass k : all_classes()) {
        load.free[k] = {{next}, {0}};
        load.bound[k] = {{100 * next}, {next}};
        next *= 2;
    }
    CHECK(total(load) == Amount{{1023 * 101}, {1023}});
}

TEST_CASE("chips are no dust, whether they lie free or stick")
{
    Load load;
    load.free[SizeClass::um_160] = {{5}, {1}};
    load.free[SizeClass::chips] = {{700}, {70}};
    load.bound[SizeClass::chips] = {{30}, {3}};
    CHECK(dust_only(load) == Amount{{5}, {1}});
    CHECK(total(load) == Amount{{735}, {74}});
}
