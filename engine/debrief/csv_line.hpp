#pragma once

#include "core/result.hpp"

#include <span>
#include <string>
#include <string_view>
#include <vector>

/// Lines of comma-separated values as RFC 4180 has them, without line ends inside a cell.
namespace flapdoor::debrief {

/// A line with its CR LF. Cells with a comma or a quote are quoted, quotes doubled. Insists that no cell holds a line end.
std::string csv_line(std::span<const std::string> cells);

struct CsvCell {
    std::string text;
    int column = 1;     ///< byte of the line at which it begins, from 1
};

/// The cells of one line, its line end taken off. A quote that is never closed, text after a closing one, or a control
/// character: a problem at its place.
Result<std::vector<CsvCell>> csv_cells(std::string_view line, const std::string& file, int number);

}
