#pragma once

#include "core/fields.hpp"
#include "core/picograms.hpp"
#include "core/result.hpp"
#include "text/document.hpp"
#include "text/units.hpp"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>

/// Single values taken from a Node, each with its complaint. Nothing when the value does not fit.
namespace flapdoor::text {

/// What a value is called in a complaint: "`by`" or "entry 2 of `by`"; empty for a whole document.
struct Subject {
    std::string_view key;
    std::size_t entry = 0;      ///< counts from 1; 0 is the value as a whole
};

inline constexpr std::size_t most_entries = 10'000;     ///< of one list or table
inline constexpr std::size_t most_problems = 200;       ///< told about one file; more help nobody

std::string found_text(const Node& node);               ///< `"0.5"`, `7`, `a list`

/// "expected `reach` to be a length such as ..., found ...". Says nothing once there are `most_problems`.
void refuse(const Node& node, const Subject& subject, const std::string& expected, Problems& problems);
void refuse_as(const Node& node, const Subject& subject, const std::string& expected, const std::string& found, Problems& problems);
void refuse_missing(const Place& table, std::string_view key, Problems& problems);
void refuse_unknown(const Entry& entry, std::span<const std::string_view> known, Problems& problems);

std::optional<bool> take_flag(const Node& node, const Subject& subject, Problems& problems);
std::optional<std::int64_t> take_whole(const Node& node, const Subject& subject, Range<std::int64_t> range, bool is_plain, Problems& problems);
std::optional<double> take_number(const Node& node, const Subject& subject, const std::optional<Range<double>>& range, Problems& problems);
std::optional<double> take_si(const Node& node, const Subject& subject, Kind kind, const std::optional<Range<double>>& range, Problems& problems);
std::optional<Picograms> take_picograms(const Node& node, const Subject& subject, const std::optional<Range<Picograms>>& range, Problems& problems);
std::optional<std::string> take_text(const Node& node, const Subject& subject, bool may_be_empty, Problems& problems);
std::optional<std::string> take_name(const Node& node, const Subject& subject, bool may_be_empty, Problems& problems);
std::optional<std::size_t> take_word(const Node& node, const Subject& subject, std::span<const std::string_view> words, Problems& problems);

/// The entries of a list of at most `most_entries`; null when it is none.
const Array* take_list(const Node& node, const Subject& subject, bool may_be_empty, Problems& problems);
const Table* take_table(const Node& node, const Subject& subject, Problems& problems);

}
