#include "text/table.hpp"

#include "core/insist.hpp"
#include "text/quote.hpp"
#include "text/utf8.hpp"

#include <algorithm>
#include <numeric>

namespace flapdoor::text {
namespace {

constexpr std::size_t gap_between_columns = 2;
constexpr std::size_t narrowest = 6;

using Widths = std::vector<std::size_t>;

std::vector<std::string_view> lines_of(std::string_view text)
{
    std::vector<std::string_view> lines;
    while (true) {
        const std::size_t end = text.find('\n');
        lines.push_back(text.substr(0, end));
        if (end == std::string_view::npos) return lines;
        text.remove_prefix(end + 1);
    }
}

/// One line of the text, already printable.
void wrap_line(std::string_view line, std::size_t width, std::vector<std::string>& out)
{
    std::string current;
    while (true) {
        line.remove_prefix(std::min(line.find_first_not_of(' '), line.size()));
        if (line.empty()) break;
        std::string_view word = line.substr(0, line.find(' '));
        line.remove_prefix(word.size());

        if (!current.empty() && columns(current) + 1 + columns(word) > width) {
            out.push_back(current);
            current.clear();
        }
        while (columns(word) > width) {
            const std::string_view piece = first_columns(word, width);
            out.emplace_back(piece);
            word.remove_prefix(piece.size());
        }
        if (!current.empty()) current += ' ';
        current += word;
    }
    out.push_back(current);
}

std::string padded(std::string_view text, std::size_t width, Align align)
{
    const std::string fill(width - std::min(width, columns(text)), ' ');
    return align == Align::left ? std::string(text).append(fill) : std::string(fill).append(text);
}

void end_line(std::string& line)
{
    line.erase(line.find_last_not_of(' ') + 1);
    line += '\n';
}

std::size_t widest_line(std::string_view text)
{
    std::size_t widest = 0;
    for (const std::string_view line : lines_of(text)) widest = std::max(widest, columns(printable(line)));
    return widest;
}

Widths natural_widths(const TextTable& table)
{
    Widths widths;
    for (const Column& column : table.columns) widths.push_back(std::max<std::size_t>(1, widest_line(column.head)));
    for (const auto& row : table.rows) {
        insist(row.size() <= table.columns.size(), "a row has no more cells than the table has columns");
        for (std::size_t i = 0; i < row.size(); ++i) widths[i] = std::max(widths[i], widest_line(row[i]));
    }
    return widths;
}

/// Takes from the widest column, one at a time, until the table fits.
void shrink(Widths& widths, std::size_t room)
{
    while (std::accumulate(widths.begin(), widths.end(), std::size_t{0}) > room) {
        const auto widest = std::max_element(widths.begin(), widths.end());
        if (*widest <= narrowest) return;
        --*widest;
    }
}

void add_row(const std::vector<std::string>& cells, const TextTable& table, const Widths& widths, std::string& out)
{
    std::vector<std::vector<std::string>> wrapped;
    std::size_t height = 1;
    for (std::size_t i = 0; i < widths.size(); ++i) {
        wrapped.push_back(wrap(i < cells.size() ? cells[i] : std::string{}, widths[i]));
        height = std::max(height, wrapped.back().size());
    }
    for (std::size_t y = 0; y < height; ++y) {
        std::string line;
        for (std::size_t i = 0; i < widths.size(); ++i) {
            if (i > 0) line.append(gap_between_columns, ' ');
            line += padded(y < wrapped[i].size() ? wrapped[i][y] : std::string{}, widths[i], table.columns[i].align);
        }
        end_line(line);
        out += line;
    }
}

}

std::vector<std::string> wrap(std::string_view text, std::size_t width)
{
    insist(width >= 1, "text is wrapped to at least one column");
    std::vector<std::string> out;
    for (const std::string_view line : lines_of(text)) wrap_line(printable(line), width, out);
    return out;
}

std::string paragraph(std::string_view text, std::size_t width, std::size_t indent)
{
    insist(indent < width, "an indented paragraph has room for text");
    std::string out;
    for (const std::string& line : wrap(text, width - indent)) {
        std::string indented(indent, ' ');
        indented += line;
        end_line(indented);
        out += indented;
    }
    return out;
}

std::string lay_out(const TextTable& table, std::size_t width)
{
    if (table.columns.empty()) return {};
    Widths widths = natural_widths(table);
    const std::size_t gaps = gap_between_columns * (widths.size() - 1);
    shrink(widths, width > gaps ? width - gaps : 0);

    std::vector<std::string> heads, rules;
    for (std::size_t i = 0; i < widths.size(); ++i) {
        heads.push_back(table.columns[i].head);
        rules.emplace_back(widths[i], '-');
    }
    std::string out;
    add_row(heads, table, widths, out);
    add_row(rules, table, widths, out);
    for (const auto& row : table.rows) add_row(row, table, widths, out);
    return out;
}

std::string side_by_side(std::string_view left, std::string_view right, std::size_t gap)
{
    const auto block = [](std::string_view text) {
        if (text.ends_with('\n')) text.remove_suffix(1);
        return lines_of(text);
    };
    const auto left_lines = block(left), right_lines = block(right);
    std::size_t width = 0;
    for (const std::string_view line : left_lines) width = std::max(width, columns(line));

    std::string out;
    for (std::size_t y = 0; y < std::max(left_lines.size(), right_lines.size()); ++y) {
        std::string line = padded(y < left_lines.size() ? left_lines[y] : std::string_view{}, width + gap, Align::left);
        if (y < right_lines.size()) line += right_lines[y];
        end_line(line);
        out += line;
    }
    return out;
}

}
