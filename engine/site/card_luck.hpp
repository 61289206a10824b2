#pragma once

#include "core/philox.hpp"

#include <array>
#include <cstdint>
#include <map>

namespace flapdoor::site {

/// The numbers under which the card in progress asks for random draws. They hang on which card it is and on how often it has asked
/// for that purpose, not on what was done before it: two plans share the luck of the cards they have in common, also after one of
/// them had a card more.
class CardLuck {
public:
    /// The next card begins. @param key  of job::card_key; the second card of one key counts as another card
    void begin_card(std::uint64_t key);

    /// Another number for the card in progress. Never the same twice in a card; across cards no more often than chance has it among
    /// 2^32.
    std::uint64_t next(Stream purpose);

    /// Numbers given to the card in progress so far.
    std::uint32_t count(Stream purpose) const { return counts_[static_cast<std::size_t>(purpose)]; }

    /// How often each key has begun: all that later cards' numbers hang on.
    const std::map<std::uint64_t, std::uint32_t>& begun() const { return begun_; }

private:
    std::uint32_t card_ = 0;
    std::array<std::uint32_t, stream_count> counts_{};
    std::map<std::uint64_t, std::uint32_t> begun_;
};

}
