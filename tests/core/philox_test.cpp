#include "core/philox.hpp"

#include <catch2/catch.hpp>

#include <array>
#include <set>

using namespace flapdoor;

// Known answers for Philox4x32 with 10 rounds, published with the Random123 library of Salmon, Moraes, Dror & Shaw 2011,
// "Parallel random numbers: as easy as 1, 2, 3" (SC11), in its file of known-answer vectors. The third takes digits of pi.
static_assert(philox({0, 0}, {0, 0, 0, 0}) == Draw{0x6627e8d5, 0xe169c58d, 0xbc57ac4c, 0x9b00dbd8});
static_assert(philox({0xffffffff, 0xffffffff}, {0xffffffff, 0xffffffff, 0xffffffff, 0xffffffff})
              == Draw{0x408f276d, 0x41c83b0e, 0xa20bc7c6, 0x6d5451fd});
static_assert(philox({0xa4093822, 0x299f31d0}, {0x243f6a88, 0x85a308d3, 0x13198a2e, 0x03707344})
              == Draw{0xd16cfe09, 0x94fdcceb, 0x5001e420, 0x24126ea1});

static_assert(unit(0) == 0.0 && unit(0xffffffff) < 1.0 && unit(0x80000000) == 0.5);

TEST_CASE("Philox gives the published answers when it is run, not only when it is compiled")
{
    std::array<std::uint32_t, 2> key{0xa4093822, 0x299f31d0};
    Draw counter{0x243f6a88, 0x85a308d3, 0x13198a2e, 0x03707344};
    CHECK(philox(key, counter) == Draw{0xd16cfe09, 0x94fdcceb, 0x5001e420, 0x24126ea1});
}

TEST_CASE("seed, stream, who and when each make another draw")
{
    std::set<Draw> seen;
    for (const std::uint64_t seed : {0ULL, 1ULL, 1ULL << 32})
        for (const Stream stream : {Stream::transport, Stream::emission, Stream::parameter})
            for (const std::uint64_t who : {0ULL, 1ULL, 1ULL << 32})
                for (const std::uint32_t when : {0U, 1U, 0xffffffffU}) seen.insert(Luck{seed, stream}.draw(who, when));
    CHECK(seen.size() == 3 * 3 * 3 * 3);
}

TEST_CASE("a draw does not depend on the draws before it")
{
    const Luck luck{42, Stream::walking};
    const Draw alone = luck.draw(7, 1000);
    for (std::uint32_t when = 0; when < 1000; ++when) (void)luck.draw(7, when);
    CHECK(luck.draw(7, 1000) == alone);
}

TEST_CASE("uniform numbers are in [0, 1), even, and of full length")
{
    const Luck luck{42, Stream::cleaning};
    constexpr int draws = 100'000;
    double sum = 0.0;
    double squares = 0.0;
    bool is_in_range = true;
    bool has_low_bits = false;
    for (int i = 0; i < draws; ++i) {
        const double u = luck.uniform(static_cast<std::uint64_t>(i), 3);
        is_in_range = is_in_range && u >= 0.0 && u < 1.0;
        sum += u;
        squares += u * u;
        has_low_bits = has_low_bits || u * 0x1.0p32 != static_cast<double>(static_cast<std::uint32_t>(u * 0x1.0p32));
    }
    CHECK(is_in_range);
    CHECK(has_low_bits);
    // Four standard errors of the mean and of the mean square of uniform numbers.
    CHECK(sum / draws == Approx(0.5).margin(4.0 * 0.2887 / 316.2));
    CHECK(squares / draws == Approx(1.0 / 3.0).margin(4.0 * 0.2981 / 316.2));
}
