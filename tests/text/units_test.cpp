#include "text/units.hpp"

#include "core/insist.hpp"
#include "text/unit_table.hpp"

#include <catch2/catch.hpp>
#include <rapidcheck.h>

#include <bit>
#include <cmath>
#include <limits>
#include <set>
#include <string>

using namespace flapdoor;
using text::canonical_text;
using text::Kind;
using text::parse_quantity;

namespace {

template <class Q>
Q parsed(std::string_view text)
{
    const Result<Q> quantity = parse_quantity<Q>(text);
    INFO("text: " << text << (quantity ? "" : ": " + describe(quantity.error().front())));
    REQUIRE(quantity);
    return *quantity;
}

template <class Q>
std::string refused(std::string_view text)
{
    const Result<Q> quantity = parse_quantity<Q>(text);
    return quantity ? "read" : describe(quantity.error().front());
}

}

TEST_CASE("a text and the literal of the same unit give the same bits")
{
    CHECK(parsed<Length>("6 ft") == Length{6 * 0.3048});
    CHECK(parsed<Length>("5.5 in") == 5.5_in);
    CHECK(parsed<Length>("0.1 m") == 0.1_m);
    CHECK(parsed<Length>("35 um") == 35.0_um);
    CHECK(parsed<Length>("12.5 cm") == 12.5_cm);
    CHECK(parsed<Length>("0.7 mm") == 0.7_mm);
    CHECK(parsed<Length>("6 ft 3 in") == 6.0_ft + 3.0_in);
    CHECK(parsed<Area>("12 sq ft") == 12.0_ft2);
    CHECK(parsed<Area>("12 ft2") == 12.0_ft2);
    CHECK(parsed<Volume>("2.5 L") == 2.5_L);
    CHECK(parsed<Time>("30 min") == 30.0_min);
    CHECK(parsed<Time>("1 h 20 min") == 80.0_min);
    CHECK(parsed<Time>("1 h 20 min 5 s") == 4805.0_s);
    CHECK(parsed<AirFlow>("170 m3/h") == 170.0_m3ph);
    CHECK(parsed<Speed>("0.3 m/s") == 0.3_mps);
    CHECK(parsed<Pressure>("5 Pa") == 5.0_Pa);
    CHECK(parsed<Pressure>("-5 Pa") == -5.0_Pa);
    CHECK(parsed<Loading>("1.2 mg/cm2") == 1.2_mgpcm2);
    CHECK(parsed<Loading>("40 ug/ft2") == 40.0_ugpft2);
    CHECK(parsed<Loading>("0.7 g/m2") == 0.7_gpm2);
    CHECK(parsed<Mass>("0.25 kg") == 0.25_kg);
    CHECK(parsed<Density>("2000 kg/m3") == 2000.0_kgpm3);
    CHECK(parsed<Diffusivity>("0.01 m2/s") == 0.01_m2ps);
    CHECK(parsed<Temperature>("20 C") == celsius(20));
    CHECK(parsed<Temperature>("1100 F") == fahrenheit(1100));
    CHECK(parsed<Temperature>("-10 F") == fahrenheit(-10));
    CHECK(parsed<Temperature>("300 K") == Temperature{300});
    CHECK(parsed<Rate>("0.5 /h") == Rate{0.5 / 3600});
}

TEST_CASE("units have the size their definitions give them")
{
    CHECK(parsed<AirFlow>("100 cfm").si == Approx(100 * 0.028316846592 / 60).epsilon(1e-12));
    CHECK(parsed<Volume>("1 gal").si == Approx(231 * 0.0254 * 0.0254 * 0.0254).epsilon(1e-12));   // 231 cubic inches, NIST Handbook 44, appendix C
    CHECK(parsed<Mass>("1 lb").si == Approx(0.45359237).epsilon(1e-12));                          // NIST Handbook 44, appendix C
    CHECK(parsed<Mass>("16 oz") == parsed<Mass>("1 lb"));
    CHECK(parsed<Pressure>("1 psi").si == Approx(0.45359237 * 9.80665 / (0.0254 * 0.0254)).epsilon(1e-12));
    CHECK(parsed<Speed>("1 mph").si == Approx(0.44704).epsilon(1e-12));
    CHECK(parsed<Loading>("1 g/ft2").si == Approx(parsed<Loading>("1000000 ug/ft2").si).epsilon(1e-12));
    CHECK(parsed<Loading>("1 ug/cm2").si == Approx(parsed<Loading>("10000 ug/m2").si).epsilon(1e-12));
}

TEST_CASE("numbers are read as people write them")
{
    CHECK(parsed<Length>("5 1/2 in") == 5.5_in);
    CHECK(parsed<Length>("3/8 in") == 0.375_in);
    CHECK(parsed<Length>("6' 3\"") == 6.0_ft + 3.0_in);
    CHECK(parsed<Length>("6'3\"") == 6.0_ft + 3.0_in);
    CHECK(parsed<Length>("6 ft 3 1/2 in") == 6.0_ft + 3.5_in);
    CHECK(parsed<Length>("6ft 3in") == 6.0_ft + 3.0_in);
    CHECK(parsed<Length>("  6   ft  ") == 6.0_ft);
    CHECK(parsed<Length>("-2 ft 6 in") == -2.0_ft - 6.0_in);
    CHECK(parsed<Length>("1e-3 m") == Length{1e-3});
    CHECK(parsed<Length>(".5 m") == 0.5_m);
    CHECK(parsed<Length>("10 µm") == 10.0_um);
    CHECK(parsed<Area>("2 m²") == 2.0_m2);
    CHECK(parsed<Area>("2 m^2") == 2.0_m2);
    CHECK(parsed<Loading>("40 µg/ft²") == 40.0_ugpft2);
    CHECK(parsed<Temperature>("20 °C") == celsius(20));
    CHECK(parsed<Time>("08:05") == 485.0_min);
    CHECK(parsed<Time>("8:05") == 485.0_min);
    CHECK(parsed<Time>("23:59:59") == 86399.0_s);
}

TEST_CASE("what is no quantity of the kind is refused in plain words")
{
    CHECK(refused<Length>("0.5") == R"(expected a length such as "0.5 in", found "0.5" (no unit))");
    CHECK(refused<Length>("5 Pa") == R"(expected a length such as "0.5 in", found "5 Pa" (a pressure))");
    CHECK(refused<Length>("12 ft2") == R"(expected a length such as "0.5 in", found "12 ft2" (an area))");
    CHECK(refused<Length>("5 fot") == R"(expected a length such as "0.5 in", found "5 fot" (unknown unit "fot"; nearest known is "ft"))");
    CHECK(refused<Length>("5 parsecs") == R"(expected a length such as "0.5 in", found "5 parsecs" (unknown unit "parsecs"))");
    CHECK(refused<Length>("wide") == R"(expected a length such as "0.5 in", found "wide")");
    CHECK(refused<Length>("") == R"(expected a length such as "0.5 in", found "")");
    CHECK(refused<Length>("0,5 m") == R"(expected a length such as "0.5 in", found "0,5 m" (write a decimal point, not a comma))");
    CHECK(refused<Length>("nan m") == R"(expected a length such as "0.5 in", found "nan m")");
    CHECK(refused<Length>("inf ft") == R"(expected a length such as "0.5 in", found "inf ft")");
    CHECK(refused<Length>("1e999 m") == R"(expected a length such as "0.5 in", found "1e999 m")");
    CHECK(refused<Length>("2000 m") == R"(expected a length such as "0.5 in", found "2000 m" (too large, the most is 1000 m))");
    CHECK(refused<Length>("3 in 6 ft") == R"(expected a length such as "0.5 in", found "3 in 6 ft" (units that do not follow each other))");
    CHECK(refused<Length>("1 m 2 m") == R"(expected a length such as "0.5 in", found "1 m 2 m" (units that do not follow each other))");
    CHECK(refused<Length>("6 ft -3 in") == R"(expected a length such as "0.5 in", found "6 ft -3 in" (something behind the unit))");
    CHECK(refused<Length>("6 ft wide") == R"(expected a length such as "0.5 in", found "6 ft wide" (something behind the unit))");
    CHECK(refused<Length>("3/0 in") == R"(expected a length such as "0.5 in", found "3/0 in" (unknown unit "/0"))");
    CHECK(refused<Length>(std::string(200, '9')).ends_with("...\" (too long)"));
    CHECK(refused<Time>("24:00") == R"(expected a time such as "1 h 20 min", found "24:00" (unknown unit ":00"))");
    CHECK(refused<Time>("6 ft") == R"(expected a time such as "1 h 20 min", found "6 ft" (a length))");
    CHECK(refused<AirFlow>("170") == R"(expected an air flow such as "100 cfm", found "170" (no unit))");
    CHECK(refused<Temperature>("20 ft") == R"(expected a temperature such as "68 F", found "20 ft" (a length))");
    CHECK(refused<Loading>("40 ug") == R"(expected a loading such as "40 ug/ft2", found "40 ug" (a mass))");

    const Result<Length> placed = parse_quantity<Length>("7", Place{"hall.toml", 14, 12});
    REQUIRE_FALSE(placed);
    CHECK(describe(placed.error().front()) == R"(hall.toml:14:12: expected a length such as "0.5 in", found "7" (no unit))");
}

TEST_CASE("every kind has an example that reads, a limit that writes and no spelling twice")
{
    for (int k = 0; k <= static_cast<int>(Kind::dust_mass); ++k) {
        const auto kind = static_cast<Kind>(k);
        INFO(text::noun(kind));
        CHECK(text::parse_si(text::example(kind), kind).has_value());
        CHECK(text::largest(kind) > 0);
        const std::string most = canonical_text(text::largest(kind), kind);
        CHECK(text::parse_si(most, kind) == text::largest(kind));
        const auto all = text::spellings(kind);
        CHECK(std::set<std::string_view>(all.begin(), all.end()).size() == all.size());
    }
}

TEST_CASE("canonical text is the one a person would have written")
{
    CHECK(canonical_text(6.0_ft) == "6 ft");
    CHECK(canonical_text(0.5_in) == "0.5 in");
    CHECK(canonical_text(4.0_in) == "4 in");
    CHECK(canonical_text(0.17_ft) == "0.17 ft");
    CHECK(canonical_text(6.0_ft + 3.5_in) == "6 ft 3.5 in");
    CHECK(canonical_text(2.0_m) == "2 m");
    CHECK(canonical_text(10.0_um) == "10 um");
    CHECK(canonical_text(Length{}) == "0 ft");
    CHECK(canonical_text(-3.0_ft) == "-3 ft");
    CHECK(canonical_text(30.0_min) == "30 min");
    CHECK(canonical_text(8.0_h) == "8 h");
    CHECK(canonical_text(45.0_s) == "45 s");
    CHECK(canonical_text(170.0_m3ph) == "170 m3/h");
    CHECK(canonical_text(40.0_ugpft2) == "40 ug/ft2");
    CHECK(canonical_text(1.2_mgpcm2) == "1.2 mg/cm2");
    CHECK(canonical_text(celsius(20)) == "68 F");
    CHECK(canonical_text(fahrenheit(1100)) == "1100 F");
    CHECK(canonical_text(120.0_ft2) == "120 ft2");
    CHECK(canonical_text(5.0_Pa) == "5 Pa");
    CHECK(canonical_text(2000.0_kgpm3) == "2000 kg/m3");
    CHECK(canonical_text(0.5) == "0.5");
    CHECK(canonical_text(3.0) == "3.0");
    CHECK(canonical_text(1e300) == "1e+300");
}

TEST_CASE("any quantity written in canonical text reads back bit for bit", "[property]")
{
    CHECK(rc::check([](double share, std::uint8_t scale) {
        const auto kind = static_cast<Kind>(*rc::gen::inRange(0, static_cast<int>(Kind::dust_mass)));
        RC_PRE(std::isfinite(share));
        const double si = std::fmod(share, 1.0) * text::largest(kind) * std::ldexp(1.0, -(scale % 50));
        const Result<double> back = text::parse_si(canonical_text(si, kind), kind);
        RC_ASSERT(back.has_value());
        RC_ASSERT(*back == si);
    }));
    CHECK(rc::check([] {
        const double number = *rc::gen::inRange(-9999, 9999) / 100.0;
        const Length length = Length{number * 0.0254};
        RC_ASSERT(parse_quantity<Length>(canonical_text(length)) == length);
        RC_ASSERT(canonical_text(length).size() <= 10);
    }));
    CHECK(rc::check([](const std::string& bytes) {
        const Result<Length> length = parse_quantity<Length>(bytes);
        RC_ASSERT((length.has_value() || length.error().size() == 1));
    }));
}

TEST_CASE("dust is counted: canonical text and back is exact for every count")
{
    CHECK(canonical_text(Picograms{1500}) == "1500 pg");
    CHECK(canonical_text(Picograms{40'000'000}) == "40 ug");
    CHECK(canonical_text(Picograms{0}) == "0 ug");
    CHECK(text::parse_picograms("40 ug") == Picograms{40'000'000});
    CHECK(text::parse_picograms("1.5 mg") == Picograms{1'500'000'000});
    CHECK(text::parse_picograms("9007199254740993 pg") == Picograms{9'007'199'254'740'993});
    CHECK_FALSE(text::parse_picograms("-1 ug").has_value());
    CHECK_FALSE(text::parse_picograms("40 ug/ft2").has_value());
    CHECK_FALSE(text::parse_picograms("9223372036854775807 pg").has_value());
    CHECK(rc::check([] {
        const Picograms amount{*rc::gen::inRange<std::int64_t>(0, 1'000'000'000'000'000'000)};
        RC_ASSERT(text::parse_picograms(canonical_text(amount)) == amount);
    }));
}

TEST_CASE("a quantity that is no number cannot be written")
{
    CHECK_THROWS_AS(canonical_text(Length{std::numeric_limits<double>::quiet_NaN()}), BrokenPromise);
    CHECK_THROWS_AS(canonical_text(Length{1e6}), BrokenPromise);
}
