#include "quiz/qti/figure_units.hpp"

#include "quiz/kinds/number.hpp"

#include <catch2/catch.hpp>

namespace flapdoor::quiz {

TEST_CASE("the unit of a figure is what follows its last number")
{
    const auto unit = [](const std::string& text) { return unit_of(*figure_from(text, {})); };
    CHECK(unit("6 ft") == "ft");
    CHECK(unit("6 ft 3 in") == "in");
    CHECK(unit("30 ug/m3") == "ug/m3");
    CHECK(unit("40 ft2") == "ft2");
    CHECK(unit("169 sq ft") == "sq ft");
    CHECK(unit("6.4 %") == "%");
    CHECK(unit("-4 F") == "F");
    CHECK(unit("5").empty());
}

TEST_CASE("a figure is counted in its unit, and a tolerance has no zero of its own")
{
    CHECK(number_text(*figure_from("6 ft", {}), "ft") == "6");
    CHECK(number_text(*figure_from("6 ft 3 in", {}), "in") == "75");
    CHECK(number_text(*figure_from("6 ft 3 in", {}), "ft") == "6.25");
    CHECK(number_text(*figure_from("30 ug/m3", {}), "ug/m3") == "30");
    CHECK(number_text(*figure_from("1100 F", {}), "F") == "1100");
    CHECK(width_in(10.0, "F") == Approx(18.0));
    CHECK(width_in(0.3048, "in") == Approx(12.0));
    CHECK(figure_from("1.5E2", "ft")->text == "150 ft");
    CHECK_FALSE(figure_from("six", "ft"));
    CHECK_FALSE(figure_from("1e", "ft"));
}

}
