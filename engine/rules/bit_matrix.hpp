#pragma once

#include "core/insist.hpp"

#include <bit>
#include <cstddef>
#include <cstdint>
#include <vector>

namespace flapdoor::rules {

/// A relation among `size` things, one row of bits a thing: `at(a, b)` says whether a stands in relation to b.
class BitMatrix {
public:
    explicit BitMatrix(int size = 0) : size_(size), words_((size + 63) / 64), bits_(static_cast<std::size_t>(size_ * words_), 0)
    {
        insist(size >= 0, "a relation has no negative size");
    }

    int size() const { return size_; }
    bool at(int a, int b) const { return (bits_[word(a, b)] >> (b & 63) & 1U) != 0; }
    void set(int a, int b) { bits_[word(a, b)] |= std::uint64_t{1} << (b & 63); }

    /// Row a gets everything row b of `other` has.
    void unite(int a, const BitMatrix& other, int b)
    {
        insist(other.size_ == size_, "only relations among the same things are united");
        for (int w = 0; w < words_; ++w) bits_[index(a, w)] |= other.bits_[other.index(b, w)];
    }
    void unite(int a, int b) { unite(a, *this, b); }

    /// Calls `visit(b)` for every b of row a, lowest first, until it says true; tells whether it did.
    template <class Visit>
    bool any_of(int a, Visit&& visit) const
    {
        for (int w = 0; w < words_; ++w)
            for (std::uint64_t rest = bits_[index(a, w)]; rest != 0; rest &= rest - 1)
                if (visit(w * 64 + std::countr_zero(rest))) return true;
        return false;
    }

    friend bool operator==(const BitMatrix&, const BitMatrix&) = default;

private:
    std::size_t index(int a, int w) const { return static_cast<std::size_t>(a * words_ + w); }
    std::size_t word(int a, int b) const
    {
        insist(a >= 0 && a < size_ && b >= 0 && b < size_, "both ends of a pair lie in the relation");
        return index(a, b / 64);
    }

    int size_;
    int words_;
    std::vector<std::uint64_t> bits_;
};

}
