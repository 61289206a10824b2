#include "records/csv.hpp"

namespace flapdoor::records {

namespace {

std::string escaped(const CsvCell& cell)
{
    std::string text = cell.text;
    if (!cell.is_number && !text.empty() && std::string("=+-@\t\r\n").find(text.front()) != std::string::npos) text.insert(text.begin(), '\'');
    if (text.find_first_of(",\"\r\n") == std::string::npos) return text;
    std::string quoted = "\"";
    for (const char c : text) {
        if (c == '"') quoted += '"';
        quoted += c;
    }
    return quoted + '"';
}

}

std::string csv_line(std::span<const CsvCell> cells)
{
    std::string line;
    for (std::size_t i = 0; i < cells.size(); ++i) line += (i > 0 ? "," : "") + escaped(cells[i]);
    return line + "\r\n";
}

}
