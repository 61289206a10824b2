#include "dust/size_class.hpp"

#include <catch2/catch.hpp>

#include <cmath>

using namespace flapdoor;
using namespace flapdoor::dust;

TEST_CASE("size classes follow on one another without gaps")
{
    for (std::size_t i = 0; i + 1 < class_count; ++i) CHECK(upper_edge(all_classes()[i]) == lower_edge(all_classes()[i + 1]));
    CHECK(lower_edge(SizeClass::chips) == largest_dust);
}

TEST_CASE("a class is typified by the geometric mean of its edges")
{
    for (const SizeClass size : all_classes())
        CHECK(typical_diameter(size).si == Approx(std::sqrt(lower_edge(size).si * upper_edge(size).si)).epsilon(1e-4));
}

TEST_CASE("every diameter has its class, lower edge included")
{
    for (const SizeClass size : all_classes()) {
        CHECK(class_of(lower_edge(size)) == size);
        CHECK(class_of(typical_diameter(size)) == size);
        CHECK(class_of(upper_edge(size) * 0.9999) == size);
    }
    CHECK(class_of(0.1_um) == SizeClass::um_0_5);
    CHECK(class_of(9.0_mm) == SizeClass::chips);
}

TEST_CASE("a class can be written and read back")
{
    for (const SizeClass size : all_classes()) CHECK(from_word<SizeClass>(word_of(size)) == size);
    CHECK_FALSE(from_word<SizeClass>("10-20"));
}
