#pragma once

#include "core/result.hpp"
#include "quiz/number_answer.hpp"
#include "text/document.hpp"

#include <string>

namespace flapdoor::quiz {

/// A number in a bank with its unit, `"6 ft"`, `"75 %"`, or a plain one, `"4"` or `4`.
struct Figure {
    std::string text;
    NumberUnit unit;
    double si = 0.0;
    Place where;

    static void from_node(const text::Node& node, Figure& into, Problems& problems);
    static text::Node to_node(const Figure& figure);
};

/// How far off is still right: `"1 in"` or, of the key, `"5 %"`.
struct Tolerance {
    std::string text;       ///< empty: only what rounding makes
    NumberUnit unit;
    double si = 0.0;
    bool is_share = false;  ///< of the key
    Place where;

    static void from_node(const text::Node& node, Tolerance& into, Problems& problems);
    static text::Node to_node(const Tolerance& tolerance);
};

}
