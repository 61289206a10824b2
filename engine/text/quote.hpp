#pragma once

#include <cstddef>
#include <span>
#include <string>
#include <string_view>

namespace flapdoor::text {

/// A user's text on one line, safe to show on a terminal: control characters and marks that turn the direction of writing
/// are spelled out, broken UTF-8 is replaced by `?`.
std::string printable(std::string_view text);

/// A user's text in double quotes, printable; what is longer than `most` letters is cut and ends in `...`.
std::string quoted(std::string_view text, std::size_t most = 60);

/// `"a", "b" or "c"`; after twelve words `and 30 more`.
std::string one_of(std::span<const std::string_view> words);

}
