#pragma once

#include <cstddef>
#include <string_view>

namespace flapdoor::text {

/// One letter at the start of a text.
struct Letter {
    char32_t code = 0;          ///< U+FFFD when the bytes are not UTF-8
    std::size_t bytes = 0;      ///< 0 only for an empty text
};

/// The first letter of a text; a byte that starts no letter counts as a letter of its own.
Letter first_letter(std::string_view text);

/// Columns a text takes in a terminal: one a letter, none for combining accents. Wide scripts are not known here.
std::size_t columns(std::string_view text);

/// The longest start of a text that takes at most that many columns.
std::string_view first_columns(std::string_view text, std::size_t most);

}
