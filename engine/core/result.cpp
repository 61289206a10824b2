#include "core/result.hpp"

namespace flapdoor::inline core {

std::string describe(const Problem& problem)
{
    std::string line = problem.where.file;
    if (problem.where.line > 0) {
        line += ':';
        line += std::to_string(problem.where.line);
        line += ':';
        line += std::to_string(problem.where.column);
    }
    if (!line.empty()) line += ": ";
    line += "expected ";
    line += problem.expected;
    line += ", found ";
    line += problem.found;
    return line;
}

}
