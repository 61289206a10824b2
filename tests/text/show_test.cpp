#include "text/show.hpp"

#include <catch2/catch.hpp>

#include <limits>

using namespace flapdoor;
using text::show;
using text::show_short;

TEST_CASE("lengths are shown in feet and inches with meters behind")
{
    CHECK(show(6.0_ft + 3.0_in) == "6 ft 3 in (1.91 m)");
    CHECK(show(6.0_ft) == "6 ft (1.83 m)");
    CHECK(show(5.5_in) == "5.5 in (14 cm)");
    CHECK(show(0.5_in) == "0.5 in (1.27 cm)");
    CHECK(show(11.97_in) == "1 ft (30.4 cm)");
    CHECK(show(35.0_um) == "35 um");
    CHECK(show(0.5_mm) == "0.5 mm");
    CHECK(show(25.46_ft) == "25 ft 6 in (7.76 m)");
    CHECK(show(-2.5_ft) == "-2 ft 6 in (-76.2 cm)");
    CHECK(show(Length{}) == "0 in (0 mm)");
    CHECK(show_short(6.25_ft) == "6 ft 3 in");
    CHECK(show_short(3.0_mm) == "0.1 in");
}

TEST_CASE("areas, volumes, flows and speeds are shown in both systems")
{
    CHECK(show(12.0_ft2) == "12 ft2 (1.11 m2)");
    CHECK(show_short(120.0_ft2) == "120 ft2");
    CHECK(show(0.01_ft2) == "1.44 in2 (9.29 cm2)");
    CHECK(show(850.0_m3 * meters_per_foot * meters_per_foot * meters_per_foot) == "850 ft3 (24.1 m3)");
    CHECK(show(7.57_L) == "2 gal (7.57 L)");
    CHECK(show(170.0_m3ph) == "100 cfm (170 m3/h)");
    CHECK(show_short(170.0_m3ph) == "100 cfm");
    CHECK(show(0.3_mps) == "59.1 ft/min (0.3 m/s)");
    CHECK(show(0.005_mps) == "0.984 ft/min (5 mm/s)");
    CHECK(show(5.0_Pa) == "5 Pa");
    CHECK(show(101325.0_Pa) == "101.3 kPa");
    CHECK(show(celsius(20)) == "68 F (20 C)");
    CHECK(show_short(fahrenheit(1100)) == "1100 F");
    CHECK(show(0.25_kg) == "0.551 lb (250 g)");
    CHECK(show(2.0_g) == "0.0705 oz (2 g)");
    CHECK(show(0.5_g) == "500 mg");
    CHECK(show(2000.0_kgpm3) == "2000 kg/m3");
    CHECK(show(Density{3e-8}) == "30 ug/m3");
    CHECK(show(Rate{0.5 / 3600}) == "0.5 /h");
}

TEST_CASE("times are shown in the two units that matter")
{
    CHECK(show(80.0_min) == "1 h 20 min");
    CHECK(show(2.0_h) == "2 h");
    CHECK(show(20.0_min) == "20 min");
    CHECK(show(150.0_s) == "2 min 30 s");
    CHECK(show(4.5_s) == "4.5 s");
    CHECK(show(35.0_s) == "35 s");
    CHECK(show(51.0_h) == "2 d 3 h");
    CHECK(show(59.6_s) == "1 min");
    CHECK(show(-20.0_min) == "-20 min");
    CHECK(text::show_clock(8.0_h + 5.0_min) == "08:05");
    CHECK(text::show_clock(8.0_h + 5.0_min + 59.9_s) == "08:05");
    CHECK(text::show_clock(25.0_h) == "01:00");
    CHECK(text::show_clock(-1.0_min) == "23:59");
}

TEST_CASE("loadings have two significant digits, masses the unit that leaves one to three")
{
    CHECK(show(40.0_ugpft2) == "40 ug/ft2 (430 ug/m2)");
    CHECK(show_short(40.4_ugpft2) == "40 ug/ft2");
    CHECK(show_short(3.14159_ugpft2) == "3.1 ug/ft2");
    CHECK(show_short(12345.0_ugpft2) == "12000 ug/ft2");
    CHECK(show_short(1.2_mgpcm2) == "1.1 g/ft2");
    CHECK(show(Picograms{12'345'678}) == "12.3 ug");
    CHECK(show(Picograms{999'999}) == "1 ug");
    CHECK(show(Picograms{500}) == "500 pg");
    CHECK(show(Picograms{2'500'000'000'000}) == "2.5 g");
    CHECK(show(Picograms{-1'500}) == "-1.5 ng");
    CHECK(show(Picograms{}) == "0 ug");
}

TEST_CASE("shares and plain numbers are rounded, never in exponents")
{
    CHECK(text::show_percent(0.123) == "12 %");
    CHECK(text::show_percent(0.031) == "3.1 %");
    CHECK(text::show_percent(0.0) == "0 %");
    CHECK(text::show_percent(1.0) == "100 %");
    CHECK(text::show_percent(0.0004) == "< 0.1 %");
    CHECK(text::show_number(1234.0, 2) == "1200");
    CHECK(text::show_number(0.00012345) == "0.000123");
    CHECK(text::show_number(99.99) == "100");
    CHECK(text::show_number(1e9) == "1000000000");
    CHECK(text::show_number(-0.5) == "-0.5");
    CHECK(text::show_number(std::numeric_limits<double>::quiet_NaN()) == "nan");
}
