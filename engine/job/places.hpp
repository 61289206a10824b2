#pragma once

#include "text/document.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace flapdoor::job {

/// Where the value of `key` in entry `index` of the list `list` stands; the entry itself when it has no such key.
/// @param root  a document that was read without problems
Place place_of(const text::Node& root, std::string_view list, std::size_t index, std::string_view key = {});

/// The same for one entry of a value that is itself a list: the second name of `by = ["ana", "bob"]`.
Place place_in_list(const text::Node& root, std::string_view list, std::size_t index, std::string_view key, std::size_t entry);

/// ", perhaps `hall`" when a known name is near; empty when none is.
std::string nearest_hint(const std::string& word, const std::vector<std::string>& known);

}
