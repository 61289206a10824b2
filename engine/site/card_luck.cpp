#include "site/card_luck.hpp"

#include "core/hash.hpp"

namespace flapdoor::site {

void CardLuck::begin_card(std::uint64_t key)
{
    Fingerprint print;
    print.add_word(key);
    print.add(begun_[key]++);
    card_ = static_cast<std::uint32_t>(print.value() >> 32);
    counts_ = {};
}

std::uint64_t CardLuck::next(Stream purpose)
{
    return static_cast<std::uint64_t>(card_) << 32 | counts_[static_cast<std::size_t>(purpose)]++;
}

}
