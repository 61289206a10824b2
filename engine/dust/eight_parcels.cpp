#include "dust/eight_parcels.hpp"

#include "core/insist.hpp"
#include "dust/one_parcel.hpp"

#include <array>
#include <limits>

#if defined(__x86_64__)
#include <immintrin.h>
#endif

namespace flapdoor::dust {

#if defined(__x86_64__)

// AVX2 without fused multiply-add, whatever the rest is compiled for: each operation below rounds as its plain twin in
// one_parcel.cpp does. Functions instead of lambdas, because a lambda does not inherit the target.
#define FLAPDOOR_EIGHT __attribute__((target("avx2"), always_inline)) inline

namespace {

constexpr std::size_t eight = 8;

template <class T> using Lanes = std::array<T, eight>;

/// Eight parcels as plain numbers: where lanes are loaded, looked at one by one, and put back.
struct alignas(32) Eight {
    Lanes<float> x{}, y{}, z{}, floor{}, spread{}, fall{}, stick{};
    Lanes<std::int32_t> column{}, row{}, first{}, left{};   ///< left: steps still to make
    Lanes<std::uint32_t> number_low{}, number_high{}, step{};
    Lanes<std::uint32_t> started{};                         ///< step at the start of the spell
    Lanes<std::size_t> index{};                             ///< in the cloud
    Lanes<SizeClass> size{};
    unsigned busy = 0;                                      ///< one bit a lane
};

struct Work {
    Cloud& cloud;
    const StepTable& table;
    std::uint64_t seed;
    std::size_t next, end;
    std::uint64_t made = 0;
};

Parcel parcel_in(const Eight& e, std::size_t lane)
{
    Parcel p;
    p.x = e.x[lane];
    p.y = e.y[lane];
    p.z = e.z[lane];
    p.floor = e.floor[lane];
    p.column = e.column[lane];
    p.row = e.row[lane];
    p.number = static_cast<std::uint64_t>(e.number_high[lane]) << 32 | e.number_low[lane];
    p.step = e.step[lane];
    p.size = e.size[lane];
    return p;
}

void put_into(Eight& e, std::size_t lane, const Parcel& p)
{
    e.x[lane] = p.x;
    e.y[lane] = p.y;
    e.z[lane] = p.z;
    e.floor[lane] = p.floor;
    e.column[lane] = p.column;
    e.row[lane] = p.row;
    e.step[lane] = p.step;
}

/// The next airborne parcel into a lane, or none: the lane then goes on with what it holds, and nobody looks.
void refill(Eight& e, std::size_t lane, Work& work)
{
    e.busy &= ~(1U << lane);
    e.left[lane] = std::numeric_limits<std::int32_t>::max();
    for (; work.next < work.end; ++work.next) {
        const std::size_t i = work.next;
        if (work.cloud.fate[i] != Fate::airborne || work.table.motions[work.cloud.size[i]].steps == 0) continue;
        const Parcel p = parcel_of(work.cloud, i, work.table);
        const Motion& m = work.table.motions[p.size];
        put_into(e, lane, p);
        e.number_low[lane] = static_cast<std::uint32_t>(p.number);
        e.number_high[lane] = static_cast<std::uint32_t>(p.number >> 32);
        e.started[lane] = p.step;
        e.size[lane] = p.size;
        e.first[lane] = static_cast<std::int32_t>(work.table.first[p.size]);
        e.spread[lane] = m.spread;
        e.fall[lane] = m.fall;
        e.stick[lane] = m.wall_stick;
        e.left[lane] = m.steps;
        e.index[lane] = i;
        e.busy |= 1U << lane;
        ++work.next;
        return;
    }
}

void finish(Eight& e, std::size_t lane, Fate fate, Work& work)
{
    work.made += e.step[lane] - e.started[lane];
    put_back(work.cloud, e.index[lane], parcel_in(e, lane), fate, work.table);
    refill(e, lane, work);
}

/// What a step of all lanes left to be done lane by lane: one bit a lane each.
struct Rare {
    unsigned hard = 0;      ///< not moved yet: needs a step of its own
    unsigned touching = 0;  ///< met a wall, which may keep it: where it is after the step, but not settled
    unsigned left = 0, landed = 0;
};

float unit_float(std::uint32_t word) { return static_cast<float>(word >> 8) * 0x1.0p-24F; }

FLAPDOOR_EIGHT __m256 all(float value) { return _mm256_set1_ps(value); }
FLAPDOOR_EIGHT __m256i all(std::uint32_t value) { return _mm256_set1_epi32(static_cast<int>(value)); }
FLAPDOOR_EIGHT __m256 load(const Lanes<float>& from) { return _mm256_load_ps(from.data()); }
template <class T> FLAPDOOR_EIGHT __m256i load(const Lanes<T>& from) { return _mm256_load_si256(reinterpret_cast<const __m256i*>(from.data())); }
FLAPDOOR_EIGHT void store(Lanes<float>& to, __m256 lanes) { _mm256_store_ps(to.data(), lanes); }
template <class T> FLAPDOOR_EIGHT void store(Lanes<T>& to, __m256i lanes) { _mm256_store_si256(reinterpret_cast<__m256i*>(to.data()), lanes); }
FLAPDOOR_EIGHT unsigned bits(__m256 mask) { return static_cast<unsigned>(_mm256_movemask_ps(mask)); }
FLAPDOOR_EIGHT __m256 less(__m256 a, __m256 b) { return _mm256_cmp_ps(a, b, _CMP_LT_OQ); }

struct Words {
    __m256i a, b, c, d;
};

struct Products {
    __m256i high, low;
};

FLAPDOOR_EIGHT Products multiply(__m256i lanes, __m256i by)
{
    const __m256i even = _mm256_mul_epu32(lanes, by);
    const __m256i odd = _mm256_mul_epu32(_mm256_srli_epi64(lanes, 32), by);
    return {_mm256_blend_epi32(_mm256_srli_epi64(even, 32), odd, 0xAA), _mm256_blend_epi32(even, _mm256_slli_epi64(odd, 32), 0xAA)};
}

/// philox() of core/philox.hpp, eight counters side by side: whole numbers, no rounding.
FLAPDOOR_EIGHT Words draw(const Eight& e, __m256i step, std::uint64_t seed)
{
    auto key_0 = static_cast<std::uint32_t>(seed);
    auto key_1 = static_cast<std::uint32_t>(seed >> 32);
    Words w{load(e.number_low), load(e.number_high), step, all(static_cast<std::uint32_t>(Stream::transport))};
    for (int round = 0; round < 10; ++round) {
        const Products of_a = multiply(w.a, all(0xD2511F53U));
        const Products of_c = multiply(w.c, all(0xCD9E8D57U));
        w.a = _mm256_xor_si256(_mm256_xor_si256(of_c.high, w.b), all(key_0));
        w.b = of_c.low;
        w.c = _mm256_xor_si256(_mm256_xor_si256(of_a.high, w.d), all(key_1));
        w.d = of_a.low;
        key_0 += 0x9E3779B9U;
        key_1 += 0xBB67AE85U;
    }
    return w;
}

FLAPDOOR_EIGHT __m256 bell(__m256i word)
{
    const __m256i evens = all(0x00FF00FFU);
    const __m256i pairs = _mm256_add_epi32(_mm256_and_si256(word, evens), _mm256_and_si256(_mm256_srli_epi32(word, 8), evens));
    const __m256i sum = _mm256_add_epi32(_mm256_and_si256(pairs, all(0xFFFFU)), _mm256_srli_epi32(pairs, 16));
    return _mm256_mul_ps(_mm256_cvtepi32_ps(_mm256_sub_epi32(sum, all(510U))), all(1.0F / 147.80054F));
}

struct Mirrored {
    __m256 at, touched;
};

FLAPDOOR_EIGHT Mirrored mirror(__m256 at, __m256 low, __m256 high)
{
    const __m256 below = less(at, low);
    const __m256 above = less(high, at);
    __m256 turned = _mm256_blendv_ps(_mm256_sub_ps(high, _mm256_sub_ps(at, high)), _mm256_add_ps(low, _mm256_sub_ps(low, at)), below);
    turned = _mm256_max_ps(_mm256_min_ps(high, turned), low);   // in this order of operands these are std::min and std::max
    const __m256 touched = _mm256_or_ps(below, above);
    return {_mm256_blendv_ps(at, turned, touched), touched};
}

FLAPDOOR_EIGHT __m256i cell_of(__m256 at, float cells_per_meter, int cells)
{
    return _mm256_min_epi32(_mm256_cvttps_epi32(_mm256_mul_ps(at, all(cells_per_meter))), _mm256_set1_epi32(cells - 1));
}

/// One entry of each lane's cell.
template <int Entry> FLAPDOOR_EIGHT __m256 of_cell(const StepTable& table, __m256i cell)
{
    constexpr int words_each = static_cast<int>(sizeof(CellStep) / sizeof(float));
    static_assert(words_each == 8 && Entry < words_each);
    return _mm256_i32gather_ps(reinterpret_cast<const float*>(table.cells.data()) + Entry, _mm256_slli_epi32(cell, 3), 4);
}

/// Moves lanes sideways; see shift() in one_parcel.cpp. `hard` takes the lanes that would cross more than one cell.
struct Shifted {
    __m256 at, floor, touched, hard;
    __m256i cell;   // along the axis
};

FLAPDOOR_EIGHT Shifted shift(const StepTable& table, __m256 at, __m256i cell, __m256i whole_cell, __m256 by, float length, float cells_per_meter, int cells, int stride,
                             __m256 floor, __m256 z)
{
    const Mirrored to = mirror(_mm256_add_ps(at, by), _mm256_setzero_ps(), all(length));
    const __m256i end = cell_of(to.at, cells_per_meter, cells);
    const __m256i away = _mm256_sub_epi32(end, cell);
    const __m256 side = of_cell<4>(table, _mm256_add_epi32(whole_cell, _mm256_mullo_epi32(away, _mm256_set1_epi32(stride))));
    const __m256 stopped = _mm256_and_ps(less(floor, side), _mm256_cmp_ps(z, side, _CMP_LE_OQ));
    const __m256 hard = _mm256_castsi256_ps(_mm256_cmpgt_epi32(_mm256_abs_epi32(away), _mm256_set1_epi32(1)));
    return {_mm256_blendv_ps(to.at, at, stopped), _mm256_blendv_ps(side, floor, stopped), _mm256_andnot_ps(stopped, to.touched), hard,
            _mm256_blendv_epi8(end, cell, _mm256_castps_si256(stopped))};
}

FLAPDOOR_EIGHT __m256i whole(__m256i row, __m256i column, __m256i first, int columns)
{
    return _mm256_add_epi32(_mm256_add_epi32(_mm256_mullo_epi32(row, _mm256_set1_epi32(columns)), column), first);
}

/// The lanes between two rare events, in registers.
struct Moving {
    __m256 x, y, z, floor;
    __m256i column, row, step, left;
};

FLAPDOOR_EIGHT Moving taken(const Eight& e)
{
    return {load(e.x), load(e.y), load(e.z), load(e.floor), load(e.column), load(e.row), load(e.step), load(e.left)};
}

FLAPDOOR_EIGHT void given_back(Eight& e, const Moving& m)
{
    store(e.x, m.x);
    store(e.y, m.y);
    store(e.z, m.z);
    store(e.floor, m.floor);
    store(e.column, m.column);
    store(e.row, m.row);
    store(e.step, m.step);
    store(e.left, m.left);
}

/// take_step() for eight. Lanes in `hard` stay where they were; the others are moved, and settled unless they touch a wall.
template <bool is_still> FLAPDOOR_EIGHT Rare step_all(Moving& m, const Eight& e, const StepTable& table, std::uint64_t seed)
{
    const Words words = draw(e, m.step, seed);
    const __m256i first = load(e.first);
    const __m256 spread = load(e.spread);
    __m256 hard = _mm256_setzero_ps();
    __m256 x = m.x;
    __m256 y = m.y;
    __m256i cell = whole(m.row, m.column, first, table.columns);
    if constexpr (!is_still) {
        x = _mm256_add_ps(x, _mm256_add_ps(of_cell<0>(table, cell), _mm256_mul_ps(of_cell<1>(table, cell), x)));
        y = _mm256_add_ps(y, _mm256_add_ps(of_cell<2>(table, cell), _mm256_mul_ps(of_cell<3>(table, cell), y)));
        x = _mm256_max_ps(_mm256_min_ps(all(table.width), x), _mm256_setzero_ps());
        y = _mm256_max_ps(_mm256_min_ps(all(table.depth), y), _mm256_setzero_ps());
        const __m256i stays = _mm256_and_si256(_mm256_cmpeq_epi32(cell_of(x, table.columns_per_meter, table.columns), m.column),
                                               _mm256_cmpeq_epi32(cell_of(y, table.rows_per_meter, table.rows), m.row));
        hard = _mm256_castsi256_ps(_mm256_xor_si256(stays, _mm256_set1_epi32(-1)));
    }
    const Shifted east = shift(table, x, m.column, cell, _mm256_mul_ps(spread, bell(words.a)), table.width, table.columns_per_meter, table.columns, 1, m.floor, m.z);
    // A lane that is hard already goes on along the row it was in: whatever it reads there is in the table.
    hard = _mm256_or_ps(hard, east.hard);
    const __m256i column = _mm256_blendv_epi8(east.cell, m.column, _mm256_castps_si256(hard));
    cell = whole(m.row, column, first, table.columns);
    const Shifted north = shift(table, y, m.row, cell, _mm256_mul_ps(spread, bell(words.b)), table.depth, table.rows_per_meter, table.rows, table.columns, east.floor, m.z);
    hard = _mm256_or_ps(hard, north.hard);
    const __m256i hard_bits = _mm256_castps_si256(hard);
    const __m256i row = _mm256_blendv_epi8(north.cell, m.row, hard_bits);
    const __m256 z = mirror(_mm256_add_ps(m.z, _mm256_mul_ps(spread, bell(words.c))), north.floor, all(table.ceiling)).at;

    Rare rare;
    rare.hard = bits(hard);
    rare.touching = bits(_mm256_and_ps(_mm256_or_ps(east.touched, north.touched), less(_mm256_setzero_ps(), load(e.stick)))) & ~rare.hard;
    const __m256 luck = _mm256_mul_ps(_mm256_cvtepi32_ps(_mm256_srli_epi32(words.d, 8)), all(0x1.0p-24F));
    __m256 leaves = less(luck, all(table.most_leaving));
    if (bits(leaves) != 0) leaves = less(luck, of_cell<5>(table, whole(row, column, first, table.columns)));
    rare.left = bits(leaves) & ~rare.hard;
    const __m256 settled = _mm256_sub_ps(z, load(e.fall));
    const __m256 landed = less(settled, north.floor);
    rare.landed = bits(landed) & ~rare.hard;
    // What may not settle, because the wall keeps it or an opening takes it first, is told apart lane by lane: it must not have
    // settled yet.
    const unsigned waiting = rare.touching | rare.left;
    const __m256 at_rest = _mm256_blendv_ps(settled, north.floor, landed);
    __m256 height = at_rest;
    if (waiting != 0) {
        const __m256i lane_bits = _mm256_setr_epi32(1, 2, 4, 8, 16, 32, 64, 128);
        const __m256i waits = _mm256_cmpeq_epi32(_mm256_and_si256(all(waiting), lane_bits), lane_bits);
        height = _mm256_blendv_ps(at_rest, z, _mm256_castsi256_ps(waits));
    }
    m.x = _mm256_blendv_ps(east.at, m.x, hard);
    m.y = _mm256_blendv_ps(north.at, m.y, hard);
    m.z = _mm256_blendv_ps(height, m.z, hard);
    m.floor = _mm256_blendv_ps(north.floor, m.floor, hard);
    m.column = _mm256_blendv_epi8(column, m.column, hard_bits);
    m.row = row;
    m.step = _mm256_sub_epi32(m.step, _mm256_xor_si256(hard_bits, _mm256_set1_epi32(-1)));   // one more where moved
    m.left = _mm256_sub_epi32(m.left, all(1U));
    return rare;
}

/// The rest of a step of one lane. @return  its fate after it
Fate settle(Eight& e, std::size_t lane, const Rare& rare, Work& work)
{
    const unsigned bit = 1U << lane;
    if ((rare.hard & bit) != 0) {
        Parcel p = parcel_in(e, lane);
        const Fate fate = take_step(p, work.table, work.seed);
        put_into(e, lane, p);
        return fate;
    }
    if ((rare.touching & bit) != 0) {
        const std::uint64_t number = static_cast<std::uint64_t>(e.number_high[lane]) << 32 | e.number_low[lane];
        if (unit_float(Luck{work.seed, Stream::boundary}.draw(number, e.step[lane] - 1)[0]) < e.stick[lane]) return Fate::on_wall;
    }
    if ((rare.left & bit) != 0) return Fate::left;
    if ((rare.touching & bit) != 0) {   // it has not settled yet
        e.z[lane] -= e.fall[lane];
        if (e.z[lane] < e.floor[lane]) {
            e.z[lane] = e.floor[lane];
            return Fate::landed;
        }
        return Fate::airborne;
    }
    return (rare.landed & bit) != 0 ? Fate::landed : Fate::airborne;
}

template <bool is_still> __attribute__((target("avx2"))) void carry(Eight& e, Work& work)
{
    while (e.busy != 0) {
        Moving moving = taken(e);
        Rare rare;
        unsigned events = 0;
        do {
            rare = step_all<is_still>(moving, e, work.table, work.seed);
            const auto at_end = bits(_mm256_castsi256_ps(_mm256_cmpgt_epi32(all(1U), moving.left)));
            events = (rare.hard | rare.touching | rare.left | rare.landed | at_end) & e.busy;
        } while (events == 0);
        given_back(e, moving);
        for (std::size_t lane = 0; lane < eight; ++lane) {
            if ((events >> lane & 1U) == 0) continue;
            const Fate fate = settle(e, lane, rare, work);
            if (fate != Fate::airborne || e.left[lane] == 0) finish(e, lane, fate, work);
        }
    }
}

}

bool can_carry_eight() { return __builtin_cpu_supports("avx2"); }

std::uint64_t carry_eight(Cloud& cloud, const StepTable& table, std::uint64_t seed, std::size_t begin, std::size_t end)
{
    insist(can_carry_eight(), "the processor has what it is asked for");
    Work work{cloud, table, seed, begin, end};
    Eight e;
    for (std::size_t lane = 0; lane < eight; ++lane) refill(e, lane, work);
    if (table.is_still) carry<true>(e, work);
    else carry<false>(e, work);
    return work.made;
}

#undef FLAPDOOR_EIGHT

#else

bool can_carry_eight() { return false; }

std::uint64_t carry_eight(Cloud&, const StepTable&, std::uint64_t, std::size_t, std::size_t)
{
    insist(false, "the processor has what it is asked for");
    return 0;
}

#endif

}
