#include "dust/draws_ahead.hpp"

#if defined(__x86_64__)
#include <immintrin.h>
#endif

namespace flapdoor::dust {

void draw_ahead_plainly(const Luck& luck, std::uint64_t who, std::uint32_t first, DrawsAhead& draws)
{
    for (std::size_t i = 0; i < DrawsAhead::count; ++i) {
        const Draw draw = luck.draw(who, first + static_cast<std::uint32_t>(i));
        for (std::size_t w = 0; w < draw.size(); ++w) draws.words[w][i] = draw[w];
    }
}

#if defined(__x86_64__)

namespace {

/// Whole numbers only: no rounding that a compiler or a processor could do in another way.
struct Products {
    __m256i high, low;
};

__attribute__((target("avx2"))) inline Products multiply(__m256i lanes, __m256i by)
{
    const __m256i even = _mm256_mul_epu32(lanes, by);
    const __m256i odd = _mm256_mul_epu32(_mm256_srli_epi64(lanes, 32), by);
    return {_mm256_blend_epi32(_mm256_srli_epi64(even, 32), odd, 0xAA), _mm256_blend_epi32(even, _mm256_slli_epi64(odd, 32), 0xAA)};
}

__attribute__((target("avx2"))) inline __m256i in_all_lanes(std::uint32_t word) { return _mm256_set1_epi32(static_cast<int>(word)); }

__attribute__((target("avx2"))) inline void store(std::array<std::uint32_t, DrawsAhead::count>& to, __m256i lanes)
{
    _mm256_storeu_si256(reinterpret_cast<__m256i*>(to.data()), lanes);
}

/// philox() of core/philox.hpp, eight counters side by side.
__attribute__((target("avx2"))) void draw_eight_wide(const Luck& luck, std::uint64_t who, std::uint32_t first, DrawsAhead& draws)
{
    auto key_0 = static_cast<std::uint32_t>(luck.seed);
    auto key_1 = static_cast<std::uint32_t>(luck.seed >> 32);
    __m256i a = in_all_lanes(static_cast<std::uint32_t>(who));
    __m256i b = in_all_lanes(static_cast<std::uint32_t>(who >> 32));
    __m256i c = _mm256_add_epi32(in_all_lanes(first), _mm256_setr_epi32(0, 1, 2, 3, 4, 5, 6, 7));
    __m256i d = in_all_lanes(static_cast<std::uint32_t>(luck.stream));
    for (int round = 0; round < 10; ++round) {
        const Products of_a = multiply(a, in_all_lanes(0xD2511F53U));
        const Products of_c = multiply(c, in_all_lanes(0xCD9E8D57U));
        a = _mm256_xor_si256(_mm256_xor_si256(of_c.high, b), in_all_lanes(key_0));
        b = of_c.low;
        c = _mm256_xor_si256(_mm256_xor_si256(of_a.high, d), in_all_lanes(key_1));
        d = of_a.low;
        key_0 += 0x9E3779B9U;
        key_1 += 0xBB67AE85U;
    }
    store(draws.words[0], a);
    store(draws.words[1], b);
    store(draws.words[2], c);
    store(draws.words[3], d);
}

}

void draw_ahead(const Luck& luck, std::uint64_t who, std::uint32_t first, DrawsAhead& draws)
{
    if (__builtin_cpu_supports("avx2")) draw_eight_wide(luck, who, first, draws);
    else draw_ahead_plainly(luck, who, first, draws);
}

#else

void draw_ahead(const Luck& luck, std::uint64_t who, std::uint32_t first, DrawsAhead& draws) { draw_ahead_plainly(luck, who, first, draws); }

#endif

}
