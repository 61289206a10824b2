#include "debrief/csv_line.hpp"

#include "core/insist.hpp"

#include <algorithm>

namespace flapdoor::debrief {

namespace {

std::string quoted(const std::string& cell)
{
    insist(cell.find_first_of("\r\n") == std::string::npos, "a cell stands on one line");
    if (cell.find_first_of(",\"") == std::string::npos) return cell;
    std::string out = "\"";
    for (const char c : cell) {
        if (c == '"') out += '"';
        out += c;
    }
    return out + '"';
}

}

std::string csv_line(std::span<const std::string> cells)
{
    std::string line;
    for (std::size_t i = 0; i < cells.size(); ++i) line += (i > 0 ? "," : "") + quoted(cells[i]);
    return line + "\r\n";
}

Result<std::vector<CsvCell>> csv_cells(std::string_view line, const std::string& file, int number)
{
    const auto* control = std::find_if(line.begin(), line.end(), [](char c) { return static_cast<unsigned char>(c) < ' '; });
    if (control != line.end()) return failed({{file, number, static_cast<int>(control - line.begin()) + 1}, "text without control characters", "one"});
    std::vector<CsvCell> cells;
    std::size_t at = 0;
    while (true) {
        CsvCell cell{{}, static_cast<int>(at) + 1};
        const Place begin{file, number, cell.column};
        if (at < line.size() && line[at] == '"') {
            bool is_closed = false;
            for (++at; at < line.size() && !is_closed; ++at) {
                if (line[at] != '"') cell.text += line[at];
                else if (at + 1 < line.size() && line[at + 1] == '"') cell.text += line[++at];
                else is_closed = true;
            }
            if (!is_closed) return failed({begin, "a quote that is closed on its line", "none"});
            if (at < line.size() && line[at] != ',') return failed({{file, number, static_cast<int>(at) + 1}, "a comma after the closing quote", "other text"});
        }
        else
            for (; at < line.size() && line[at] != ','; ++at) cell.text += line[at];
        cells.push_back(std::move(cell));
        if (at >= line.size()) return cells;
        ++at;   // the comma
    }
}

}
