#include "debrief/legal_order.hpp"

#include "text/language.hpp"
#include "text/table.hpp"

#include <fmt/format.h>

namespace flapdoor::debrief {

using text::say;
using text::say_with;

std::vector<std::string> legal_order_lines(const Report& report)
{
    std::vector<std::string> lines;
    const auto number = [&](int entry) { return report.steps.at(static_cast<std::size_t>(entry)).number; };
    const auto title = [&](int entry) { return text::say(report.steps.at(static_cast<std::size_t>(entry)).title); };
    const auto step = [&](int entry) { return fmt::format("{} {}", number(entry), title(entry)); };
    for (const rules::SheetStretch& stretch : legal_stretches(report.sheet)) {
        if (stretch.first < 0) lines.push_back(say_with("Put in: {}", stretch.missing.said()));
        else if (stretch.is_moved) lines.push_back(say_with("Move here: {}", step(stretch.first)));
        else if (stretch.first == stretch.last) lines.push_back(step(stretch.first));
        else lines.push_back(say_with("{} to {} as they are: {} … {}", number(stretch.first), number(stretch.last), title(stretch.first), title(stretch.last)));
    }
    return lines;
}

std::string legal_order_text(const Report& report, std::size_t width)
{
    const std::vector<std::string> lines = legal_order_lines(report);
    if (lines.empty()) return {};
    std::string out = fmt::format("\n{}\n", say("A legal order nearest to this one (rules of order only)"));
    for (const std::string& line : lines) out += text::paragraph(line, width, 4);
    return out;
}

}
