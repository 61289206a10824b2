#pragma once

#include <catch2/catch.hpp>

#include <initializer_list>
#include <string_view>

namespace flapdoor::published {

/// One figure of the model beside what an outside source says it should be. `source` says where the expected figure comes
/// from; "recomputed" means that the named formula was worked out apart from this program.
struct Row {
    std::string_view label;
    double found;
    double expected;
    double tolerance;   ///< relative
    std::string_view source;
};

/// A figure that a source gives as a range.
struct RangeRow {
    std::string_view label;
    double found;
    double least;
    double most;
    std::string_view source;
};

inline void check(std::initializer_list<Row> rows)
{
    for (const Row& row : rows) {
        INFO(row.label << " (" << row.source << ")");
        CHECK(row.found == Approx(row.expected).epsilon(row.tolerance));
    }
}

inline void check(std::initializer_list<RangeRow> rows)
{
    for (const RangeRow& row : rows) {
        INFO(row.label << " (" << row.source << ")");
        CHECK(row.found >= row.least);
        CHECK(row.found <= row.most);
    }
}

}
