#include "core/quantity.hpp"

#include "core/picograms.hpp"

#include <catch2/catch.hpp>

#include <concepts>
#include <type_traits>

using namespace flapdoor;

namespace {

template <class A, class B>
concept Addable = requires(A a, B b) { a + b; };
template <class A, class B>
concept Subtractable = requires(A a, B b) { a - b; };
template <class A, class B>
concept Comparable = requires(A a, B b) { a < b; };
template <class A, class B>
concept EqualityComparable = requires(A a, B b) { a == b; };
template <class A, class B>
concept Assignable = requires(A a, B b) { a = b; };
template <class A, class B>
concept AddAssignable = requires(A a, B b) { a += b; };
template <class A, class B>
concept Multipliable = requires(A a, B b) { a * b; };

// What must compile: the checks below would also hold for types that can do nothing.
static_assert(Addable<Length, Length> && Comparable<Time, Time> && Assignable<Speed&, Speed> && AddAssignable<Area&, Area>);
static_assert(Addable<Picograms, Picograms> && Comparable<Picograms, Picograms> && Addable<Amount, Amount>);

// What must not: kinds do not mix, and a bare number has no kind.
static_assert(!Addable<Length, Area>);
static_assert(!Addable<Length, Time>);
static_assert(!Addable<Length, double> && !Addable<double, Length>);
static_assert(!Subtractable<Speed, AirFlow>);
static_assert(!Comparable<Length, Area> && !Comparable<Length, double>);
static_assert(!EqualityComparable<Length, Time> && !EqualityComparable<Length, double>);
static_assert(!Assignable<Length&, Area> && !Assignable<Length&, double>);
static_assert(!AddAssignable<Length&, Area> && !AddAssignable<Length&, double>);
static_assert(!std::convertible_to<double, Length> && !std::convertible_to<Length, double>);
static_assert(!std::convertible_to<Length, Area> && !std::constructible_from<Length, Area>);

// A temperature is no quantity: kelvins are neither added nor scaled by accident.
static_assert(!Addable<Temperature, Temperature> && !Multipliable<Temperature, double> && !Multipliable<Temperature, Length>);

// Mass of dust is counted: never scaled, never mixed with a weighed mass or a bare number.
static_assert(!Addable<Picograms, Mass> && !Addable<Mass, Picograms>);
static_assert(!Addable<Picograms, int> && !Addable<Picograms, double>);
static_assert(!Multipliable<Picograms, double> && !Multipliable<Picograms, int> && !Multipliable<double, Picograms>);
static_assert(!Assignable<Picograms&, double> && !Assignable<Picograms&, std::int64_t> && !AddAssignable<Picograms&, std::int64_t>);
static_assert(!std::convertible_to<Picograms, std::int64_t> && !std::convertible_to<std::int64_t, Picograms>);
static_assert(!Addable<Amount, Picograms> && !Addable<Picograms, Amount> && !std::convertible_to<Picograms, Amount>);
static_assert(!Comparable<Amount, Amount>);   // more dust with less lead is neither more nor less

// Products and quotients get the kind of the product.
static_assert(std::same_as<decltype(Length{} * Length{}), Area>);
static_assert(std::same_as<decltype(Area{} * Length{}), Volume>);
static_assert(std::same_as<decltype(Area{} * Speed{}), AirFlow>);
static_assert(std::same_as<decltype(Length{} / Time{}), Speed>);
static_assert(std::same_as<decltype(1.0 / Time{}), Rate>);
static_assert(std::same_as<decltype(Length{} / Length{}), double>);
static_assert(std::same_as<decltype(Rate{} * Time{}), double>);
static_assert(std::same_as<decltype(Loading{} * Area{}), Mass>);
static_assert(std::same_as<decltype(Density{} * Volume{}), Mass>);
static_assert(std::same_as<decltype(Density{} * Speed{} * Speed{}), Pressure>);
static_assert(std::same_as<decltype(Pressure{} * Time{}), Viscosity>);
static_assert(std::same_as<decltype(Viscosity{} / Density{}), Diffusivity>);

}

TEST_CASE("a literal means its unit")
{
    CHECK((1.0_ft).si == 0.3048);
    CHECK((12.0_in).si == Approx((1.0_ft).si));
    CHECK((100.0_cm).si == Approx(1.0));
    CHECK((1e6_um).si == Approx((1000.0_mm).si));
    CHECK((1.0_ft2).si == Approx(0.09290304));
    CHECK((1000.0_L).si == Approx((1.0_m3).si));
    CHECK((2.0_h).si == (120.0_min).si);
    CHECK((3600.0_m3ph).si == 1.0);
    CHECK((1000.0_g).si == Approx((1.0_kg).si));
    CHECK((1000.0_gpm2).si == Approx(1.0));
    // 1 mg/cm2 is 10 g/m2; 40 CFR 745.227(e)(8)(viii)(A) gives floor loadings in micrograms a square foot.
    CHECK((1.0_mgpcm2).si == Approx((10.0_gpm2).si));
    CHECK((1.0_ugpft2 * 1.0_ft2).si == Approx(1e-9));
    CHECK(fahrenheit(32.0).kelvin == Approx(celsius(0.0).kelvin));
    CHECK(fahrenheit(212.0).kelvin == Approx(373.15));
}

TEST_CASE("arithmetic of one kind is the arithmetic of its numbers")
{
    Length way = 2.0_m;
    way += 0.5_m;
    way -= 1.0_m;
    CHECK(way.si == 1.5);
    CHECK((-way).si == -1.5);
    CHECK((way * 2.0).si == 3.0);
    CHECK((2.0 * way).si == 3.0);
    CHECK((way / 2.0).si == 0.75);
    CHECK(1.0_m < 1.1_m);
    CHECK(6.0_m2 / 2.0_m == 3.0_m);
    CHECK(6.0_m / 2.0_m == 3.0);
}
