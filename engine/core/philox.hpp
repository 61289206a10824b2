#pragma once

#include <array>
#include <cstddef>
#include <cstdint>

namespace flapdoor::inline core {

/// What a random draw is for. A stream keeps its draws apart from every other stream's, so that a change in one place
/// of the model does not shift the luck of another.
enum class Stream : std::uint32_t { transport, emission, boundary, walking, cleaning, handling, inspection, wipe, parameter };
inline constexpr std::size_t stream_count = 9;

/// Philox4x32 with 10 rounds (Salmon, Moraes, Dror, Shaw 2011, "Parallel random numbers: as easy as 1, 2, 3").
/// Counter based: the draw is a pure function of key and counter, so order and thread count do not matter.
using Draw = std::array<std::uint32_t, 4>;

constexpr Draw philox(std::array<std::uint32_t, 2> key, Draw counter)
{
    for (int round = 0; round < 10; ++round) {
        const std::uint64_t a = 0xD2511F53ULL * counter[0];
        const std::uint64_t b = 0xCD9E8D57ULL * counter[2];
        counter = {static_cast<std::uint32_t>(b >> 32) ^ counter[1] ^ key[0], static_cast<std::uint32_t>(b),
                   static_cast<std::uint32_t>(a >> 32) ^ counter[3] ^ key[1], static_cast<std::uint32_t>(a)};
        key[0] += 0x9E3779B9U;
        key[1] += 0xBB67AE85U;
    }
    return counter;
}

/// The draws of one (seed, stream): `draw(who, when)` is the same four words wherever and whenever it is asked.
struct Luck {
    std::uint64_t seed = 0;
    Stream stream = Stream::transport;

    constexpr Draw draw(std::uint64_t who, std::uint32_t when) const
    {
        return philox({static_cast<std::uint32_t>(seed), static_cast<std::uint32_t>(seed >> 32)},
                      {static_cast<std::uint32_t>(who), static_cast<std::uint32_t>(who >> 32), when, static_cast<std::uint32_t>(stream)});
    }

    /// Uniform in [0, 1), 53 bits.
    constexpr double uniform(std::uint64_t who, std::uint32_t when) const
    {
        const Draw d = draw(who, when);
        return static_cast<double>(((static_cast<std::uint64_t>(d[0]) << 32) | d[1]) >> 11) * 0x1.0p-53;
    }
};

/// [0, 1) from one word.
constexpr double unit(std::uint32_t word) { return static_cast<double>(word) * 0x1.0p-32; }

}
