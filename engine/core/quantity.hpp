#pragma once

#include <cmath>
#include <compare>

namespace flapdoor::inline core {

/// A number that knows its kind: meters^M, seconds^S, newtons^N, held in SI. Lengths add to lengths only; products get
/// the product's kind. A kilogram is a N s2/m, so a density is Quantity<-4, 2, 1>.
template <int Meters, int Seconds = 0, int Newtons = 0>
struct Quantity {
    double si = 0.0;

    friend constexpr auto operator<=>(Quantity, Quantity) = default;
    friend constexpr Quantity operator+(Quantity a, Quantity b) { return {a.si + b.si}; }
    friend constexpr Quantity operator-(Quantity a, Quantity b) { return {a.si - b.si}; }
    friend constexpr Quantity operator-(Quantity a) { return {-a.si}; }
    friend constexpr Quantity operator*(Quantity a, double k) { return {a.si * k}; }
    friend constexpr Quantity operator*(double k, Quantity a) { return {k * a.si}; }
    friend constexpr Quantity operator/(Quantity a, double k) { return {a.si / k}; }
    constexpr Quantity& operator+=(Quantity b) { return si += b.si, *this; }
    constexpr Quantity& operator-=(Quantity b) { return si -= b.si, *this; }
};

template <int M1, int S1, int N1, int M2, int S2, int N2>
constexpr auto operator*(Quantity<M1, S1, N1> a, Quantity<M2, S2, N2> b)
{
    if constexpr (M1 + M2 == 0 && S1 + S2 == 0 && N1 + N2 == 0) return a.si * b.si;
    else return Quantity<M1 + M2, S1 + S2, N1 + N2>{a.si * b.si};
}

template <int M1, int S1, int N1, int M2, int S2, int N2>
constexpr auto operator/(Quantity<M1, S1, N1> a, Quantity<M2, S2, N2> b)
{
    if constexpr (M1 == M2 && S1 == S2 && N1 == N2) return a.si / b.si;
    else return Quantity<M1 - M2, S1 - S2, N1 - N2>{a.si / b.si};
}

template <int M, int S, int N>
constexpr auto operator/(double k, Quantity<M, S, N> a) { return Quantity<-M, -S, -N>{k / a.si}; }

using Length = Quantity<1>;
using Area = Quantity<2>;
using Volume = Quantity<3>;
using Time = Quantity<0, 1>;
using Rate = Quantity<0, -1>;
using Speed = Quantity<1, -1>;
using Diffusivity = Quantity<2, -1>;
using AirFlow = Quantity<3, -1>;
using Pressure = Quantity<-2, 0, 1>;
using Viscosity = Quantity<-2, 1, 1>;   ///< Pa s
using Mass = Quantity<-1, 2, 1>;        ///< kg, for things that are not dust (dust is Picograms)
using Density = Quantity<-4, 2, 1>;     ///< kg/m3
using Loading = Quantity<-3, 2, 1>;     ///< kg/m2, mass lying on an area

/// Absolute temperature. Not a Quantity: it is never multiplied into one without its gas constant.
struct Temperature {
    double kelvin = 293.15;
    friend constexpr auto operator<=>(Temperature, Temperature) = default;
};

inline constexpr double meters_per_foot = 0.3048;   // exact by definition

inline namespace literals {
constexpr Length operator""_m(long double v) { return {static_cast<double>(v)}; }
constexpr Length operator""_cm(long double v) { return {static_cast<double>(v) * 0.01}; }
constexpr Length operator""_mm(long double v) { return {static_cast<double>(v) * 1e-3}; }
constexpr Length operator""_um(long double v) { return {static_cast<double>(v) * 1e-6}; }
constexpr Length operator""_ft(long double v) { return {static_cast<double>(v) * meters_per_foot}; }
constexpr Length operator""_in(long double v) { return {static_cast<double>(v) * 0.0254}; }
constexpr Area operator""_m2(long double v) { return {static_cast<double>(v)}; }
constexpr Area operator""_ft2(long double v) { return {static_cast<double>(v) * (meters_per_foot * meters_per_foot)}; }
constexpr Volume operator""_m3(long double v) { return {static_cast<double>(v)}; }
constexpr Volume operator""_L(long double v) { return {static_cast<double>(v) * 1e-3}; }
constexpr Time operator""_s(long double v) { return {static_cast<double>(v)}; }
constexpr Time operator""_min(long double v) { return {static_cast<double>(v) * 60.0}; }
constexpr Time operator""_h(long double v) { return {static_cast<double>(v) * 3600.0}; }
constexpr Speed operator""_mps(long double v) { return {static_cast<double>(v)}; }
constexpr Diffusivity operator""_m2ps(long double v) { return {static_cast<double>(v)}; }
constexpr AirFlow operator""_m3ph(long double v) { return {static_cast<double>(v) / 3600.0}; }
constexpr Pressure operator""_Pa(long double v) { return {static_cast<double>(v)}; }
constexpr Mass operator""_kg(long double v) { return {static_cast<double>(v)}; }
constexpr Mass operator""_g(long double v) { return {static_cast<double>(v) * 1e-3}; }
constexpr Density operator""_kgpm3(long double v) { return {static_cast<double>(v)}; }
constexpr Loading operator""_gpm2(long double v) { return {static_cast<double>(v) * 1e-3}; }
constexpr Loading operator""_mgpcm2(long double v) { return {static_cast<double>(v) * 1e-2}; }
constexpr Loading operator""_ugpft2(long double v) { return {static_cast<double>(v) * 1e-9 / (meters_per_foot * meters_per_foot)}; }
}

constexpr Temperature celsius(double degrees) { return {degrees + 273.15}; }
constexpr Temperature fahrenheit(double degrees) { return {(degrees - 32.0) / 1.8 + 273.15}; }

}
