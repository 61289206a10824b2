#pragma once

#include <span>
#include <string>

namespace flapdoor::records {

/// A cell of an exported table: text, or a number that stands as it is.
struct CsvCell {
    std::string text;
    bool is_number = false;
};

/// One line of a table as RFC 4180 writes it, its CR LF included. Cells with a comma, a quote or a line end are quoted,
/// quotes doubled. A text that a spreadsheet would run as a formula gets a quote mark in front.
std::string csv_line(std::span<const CsvCell> cells);

}
