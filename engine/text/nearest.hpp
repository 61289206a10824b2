#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <string_view>

namespace flapdoor::text {

/// Fewest single-letter changes (insert, drop, replace, swap two neighbors) that turn one word into the other.
/// Bytes, not letters: an accented letter counts twice. Words are cut at 64 bytes.
std::size_t edit_distance(std::string_view a, std::string_view b);

/// The known word that somebody who typed `word` most likely meant; the first of equals. Nothing when none is near:
/// more than a third of the letters would have to change.
std::optional<std::string_view> nearest(std::string_view word, std::span<const std::string_view> known);

}
