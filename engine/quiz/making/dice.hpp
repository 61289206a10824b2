#pragma once

#include <cstddef>
#include <cstdint>
#include <string_view>
#include <utility>
#include <vector>

namespace flapdoor::quiz {

/// Luck of papers and questions: the same seed and purpose give the same row of throws, everywhere.
class Dice {
public:
    /// @param purpose  what is thrown for: throws for one purpose do not shift those for another
    Dice(std::uint64_t seed, std::string_view purpose);

    /// A whole number from least to most, each as likely. @param most  not below `least`; insists
    int between(int least, int most);

    /// Insists that there is one.
    template <class T>
    const T& one_of(const std::vector<T>& things)
    {
        return things[static_cast<std::size_t>(between(0, static_cast<int>(things.size()) - 1))];
    }

    template <class T>
    void shuffle(std::vector<T>& things)
    {
        for (std::size_t left = things.size(); left > 1; --left) std::swap(things[left - 1], things[static_cast<std::size_t>(between(0, static_cast<int>(left) - 1))]);
    }

    /// A seed for something that is made apart, small enough to be read out.
    std::uint64_t seed();

private:
    std::uint64_t key_;
    std::uint32_t thrown_ = 0;
};

}
