#pragma once

#include "core/result.hpp"

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace flapdoor::text {

struct Node;
struct Entry;

using Array = std::vector<Node>;

/// The keys of a table in the order in which they first stand in the file.
struct Table {
    std::vector<Entry> entries;

    const Node* find(std::string_view key) const;   ///< null when there is no such key
};

/// One value of a TOML file and where it stands.
struct Node {
    Place where;
    std::variant<std::string, std::int64_t, double, bool, Array, Table> value;
};

struct Entry {
    std::string key;
    Place where;        ///< of the key
    Node value;
};

inline constexpr std::size_t most_bytes = 8 * 1024 * 1024;  ///< of a file
inline constexpr int deepest = 32;                          ///< tables and lists inside one another
inline constexpr std::size_t most_values = 250'000;         ///< in a file

/// The tree of a TOML file; its root is a Table. Stops at the first mistake in the writing (TOML cannot be read on from
/// there). Dates are refused: no format of ours has one outside quotes. NaN and infinity are kept; the reader refuses
/// them. Too large, too deep, too many values: a problem each.
/// @param file_name  for the places only; nothing is opened
Result<Node> parse_document(std::string_view text, const std::string& file_name);

}
