#pragma once

#include "core/picograms.hpp"
#include "core/quantity.hpp"
#include "core/result.hpp"

#include <optional>
#include <span>
#include <string>
#include <string_view>

/// Numbers with units as people write them, and back without loss. How they are shown to people is in show.hpp.
namespace flapdoor::text {

/// The kinds of quantity that can stand in a file.
enum class Kind {
    length, area, volume, time, rate, speed, diffusivity, air_flow, pressure, viscosity, mass, density, loading, temperature, dust_mass
};

template <class Q>
struct KindOf;
template <> struct KindOf<Length> { static constexpr Kind kind = Kind::length; };
template <> struct KindOf<Area> { static constexpr Kind kind = Kind::area; };
template <> struct KindOf<Volume> { static constexpr Kind kind = Kind::volume; };
template <> struct KindOf<Time> { static constexpr Kind kind = Kind::time; };
template <> struct KindOf<Rate> { static constexpr Kind kind = Kind::rate; };
template <> struct KindOf<Speed> { static constexpr Kind kind = Kind::speed; };
template <> struct KindOf<Diffusivity> { static constexpr Kind kind = Kind::diffusivity; };
template <> struct KindOf<AirFlow> { static constexpr Kind kind = Kind::air_flow; };
template <> struct KindOf<Pressure> { static constexpr Kind kind = Kind::pressure; };
template <> struct KindOf<Viscosity> { static constexpr Kind kind = Kind::viscosity; };
template <> struct KindOf<Mass> { static constexpr Kind kind = Kind::mass; };
template <> struct KindOf<Density> { static constexpr Kind kind = Kind::density; };
template <> struct KindOf<Loading> { static constexpr Kind kind = Kind::loading; };
template <> struct KindOf<Temperature> { static constexpr Kind kind = Kind::temperature; };

/// A quantity that is held in a double; Picograms, which are counted, have their own functions below.
template <class Q>
concept Measured = requires { KindOf<Q>::kind; };

constexpr double si_of(Temperature t) { return t.kelvin; }
template <int M, int S, int N>
constexpr double si_of(Quantity<M, S, N> q) { return q.si; }

std::string_view noun(Kind kind);       ///< "length"
std::string_view example(Kind kind);    ///< "0.5 in"
std::string expectation(Kind kind);     ///< `a length such as "0.5 in"`

/// SI value of a text such as `6 ft 3 in`, `5 1/2 in`, `170 m3/h`, `20 C`, `08:05` (a time). The number comes first and
/// needs its unit; feet and inches, and hours, minutes and seconds, may stand together, the larger first.
/// Refuses what is not a number, has no unit, has one of another kind, or is too large to be meant (a length over 1 km).
Result<double> parse_si(std::string_view text, Kind kind, const Place& where = {});

/// The shortest text with a unit that parse_si turns back into exactly this value; insists on a finite one.
std::string canonical_text(double si, Kind kind);

template <Measured Q>
Result<Q> parse_quantity(std::string_view text, const Place& where = {})
{
    return parse_si(text, KindOf<Q>::kind, where).map([](double si) { return Q{si}; });
}

template <Measured Q>
std::string canonical_text(Q quantity)
{
    return canonical_text(si_of(quantity), KindOf<Q>::kind);
}

/// `40 ug` counted: 0 to 1e6 g.
Result<Picograms> parse_picograms(std::string_view text, const Place& where = {});
std::string canonical_text(Picograms amount);

/// Shortest text of a plain number that reads back as the same bits; always with a point, an exponent or `nan`, `inf`.
std::string canonical_text(double number);

}
