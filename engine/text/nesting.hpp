#pragma once

#include "core/result.hpp"

#include <optional>
#include <string>
#include <string_view>

namespace flapdoor::text {

/// The first place where a TOML text nests brackets or chains dots in a key beyond what we take, or holds more dotted
/// keys than we take. Looked for before parsing, in one pass: the parser would build such a text, and deep trees overflow
/// the stack when they are taken down, while many dotted keys take time with their square.
std::optional<Problem> find_excess(std::string_view text, const std::string& file_name);

}
