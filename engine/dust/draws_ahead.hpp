#pragma once

#include "core/philox.hpp"

#include <array>
#include <cstddef>
#include <cstdint>

namespace flapdoor::dust {

/// The draws of one "who" for eight steps in a row, made together because that is faster: `words[w][i]` is word w of
/// `luck.draw(who, first + i)`, bit for bit.
struct DrawsAhead {
    static constexpr std::size_t count = 8;
    alignas(32) std::array<std::array<std::uint32_t, count>, 4> words;
};

/// By the widest way that this processor has.
void draw_ahead(const Luck& luck, std::uint64_t who, std::uint32_t first, DrawsAhead& draws);

/// One after the other: what every processor can do.
void draw_ahead_plainly(const Luck& luck, std::uint64_t who, std::uint32_t first, DrawsAhead& draws);

}
