#pragma once

#include <array>
#include <concepts>
#include <cstddef>
#include <optional>
#include <string_view>

namespace flapdoor::inline core {

/// How a plain struct describes itself, once, for the file reader, the run file, the hash, the card editor and the
/// format pages:
///
///     static void fields(auto& self, auto&& visit)
///     {
///         visit("opening", self.opening, required, About{"which opening is taped"});
///         visit("layers",  self.layers,  Range{1, 4});
///     }
///
/// A field without `required` keeps its default when a file leaves it out.
template <class T>
concept Described = requires(T& thing) { T::fields(thing, [](auto&&...) {}); };

struct Required {};
inline constexpr Required required{};

/// Inclusive bounds of a value, in the value's own type.
template <class T>
struct Range {
    T least;
    T most;
};
template <class T>
Range(T, T) -> Range<T>;

/// One line for the reader of a format page or a card: what the value means.
struct About {
    std::string_view text;
};

/// Words of an enum as they stand in files. Specialize with `static constexpr std::array<std::string_view, N> words`,
/// in the order of the enumerators, which count from 0.
template <class E>
struct Words;

template <class E>
concept Worded = requires { Words<E>::words.size(); };

template <Worded E>
constexpr std::string_view word_of(E value) { return Words<E>::words[static_cast<std::size_t>(value)]; }

template <Worded E>
constexpr std::optional<E> from_word(std::string_view word)
{
    for (std::size_t i = 0; i < Words<E>::words.size(); ++i)
        if (Words<E>::words[i] == word) return static_cast<E>(i);
    return std::nullopt;
}

}
