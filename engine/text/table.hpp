#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

/// Plain text laid out for a terminal. Widths are terminal columns of UTF-8 text (utf8.hpp).
namespace flapdoor::text {

enum class Align { left, right };

struct Column {
    std::string head;
    Align align = Align::left;
};

struct TextTable {
    std::vector<Column> columns;
    std::vector<std::vector<std::string>> rows;     ///< [row][column]; a short row ends in empty cells
};

/// Lines of at most `width` columns, broken at spaces; a longer word is cut; a line end in the text starts a new line.
/// At least one line. @param width at least 1; insists
std::vector<std::string> wrap(std::string_view text, std::size_t width);

/// A paragraph, every line indented and ended by a line end.
/// @param indent  less than `width`; insists
std::string paragraph(std::string_view text, std::size_t width = 80, std::size_t indent = 0);

/// Heads, a rule, rows; cells are wrapped so that no line is wider than `width`, as long as every column can keep six
/// columns of its own. Columns that need less than their share keep what they need. Insists that no row is too long.
std::string lay_out(const TextTable& table, std::size_t width = 80);

/// Two blocks of lines beside each other, `gap` columns apart.
std::string side_by_side(std::string_view left, std::string_view right, std::size_t gap = 4);

}
