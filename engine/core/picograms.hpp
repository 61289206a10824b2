#pragma once

#include "core/quantity.hpp"

#include <cstdint>

namespace flapdoor::inline core {

/// Mass of dust or of lead, counted. Integers make the ledger close exactly: 1 pg to 9.2e6 g.
struct Picograms {
    std::int64_t count = 0;

    friend constexpr auto operator<=>(Picograms, Picograms) = default;
    friend constexpr Picograms operator+(Picograms a, Picograms b) { return {a.count + b.count}; }
    friend constexpr Picograms operator-(Picograms a, Picograms b) { return {a.count - b.count}; }
    friend constexpr Picograms operator-(Picograms a) { return {-a.count}; }
    constexpr Picograms& operator+=(Picograms b) { return count += b.count, *this; }
    constexpr Picograms& operator-=(Picograms b) { return count -= b.count, *this; }
};

inline constexpr double picograms_per_kilogram = 1e15;

constexpr Mass mass(Picograms amount) { return {static_cast<double>(amount.count) / picograms_per_kilogram}; }

/// Nearest whole picogram, at least zero.
constexpr Picograms picograms(Mass amount)
{
    const double count = amount.si * picograms_per_kilogram + 0.5;
    return {count > 0.0 ? static_cast<std::int64_t>(count) : 0};
}

/// The whole picograms nearest to `share` of an amount: never negative, never more than there is.
/// @param share  clamped to 0..1
constexpr Picograms part(Picograms of, double share)
{
    if (!(share > 0.0)) return {};
    if (share >= 1.0) return of;
    const auto count = static_cast<std::int64_t>(static_cast<double>(of.count) * share + 0.5);
    return {count < of.count ? count : of.count};
}

/// Dust and the lead that rides in it. Booked apart, moved together.
struct Amount {
    Picograms dust;
    Picograms lead;

    friend constexpr bool operator==(Amount, Amount) = default;
    friend constexpr Amount operator+(Amount a, Amount b) { return {a.dust + b.dust, a.lead + b.lead}; }
    friend constexpr Amount operator-(Amount a, Amount b) { return {a.dust - b.dust, a.lead - b.lead}; }
    constexpr Amount& operator+=(Amount b) { return dust += b.dust, lead += b.lead, *this; }
    constexpr Amount& operator-=(Amount b) { return dust -= b.dust, lead -= b.lead, *this; }
    constexpr bool is_zero() const { return dust.count == 0 && lead.count == 0; }
};

constexpr Amount part(Amount of, double share) { return {part(of.dust, share), part(of.lead, share)}; }

}
