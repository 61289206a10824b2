#include "debrief/what_if_sheet.hpp"

#include "debrief/what_if_line.hpp"
#include "debrief/wording.hpp"
#include "text/language.hpp"
#include "text/table.hpp"

#include <algorithm>

namespace flapdoor::debrief {

using text::Align;
using text::say;
using text::say_with;

namespace {

std::string told_cell(const WhatIfLine::Cell& cell) { return cell.range.empty() ? cell.own : cell.own + "\n(" + cell.range + ")"; }

std::string table_of(const Report& report, std::string_view title, WhatIf::Kind kind, std::size_t width)
{
    const bool has_runs = !report.what_ifs->seeds.empty();
    text::TextTable table{{{std::string(say("What"))}, {std::string(say("Changed"))}, {std::string(say("Lead that got out")), Align::right}, {std::string(say("Floor")), Align::right},
                           {std::string(say("Sill")), Align::right}, {std::string(say("Site time")), Align::right}}, {}};
    if (has_runs) table.columns.push_back({std::string(say("Harm in")), Align::right});
    for (const WhatIf& what_if : report.what_ifs->list) {
        const bool is_all = what_if.kind == WhatIf::Kind::all_repaired && kind == WhatIf::Kind::repaired;
        if (what_if.kind != kind && !is_all) continue;
        const WhatIfLine line = what_if_line(report, what_if);
        std::string changed;
        if (!is_all)
            for (const std::string& told : line.told) changed += (changed.empty() ? "" : "; ") + told;
        for (const std::string& remark : {line.doubt, line.why})
            if (!remark.empty()) changed += (changed.empty() ? "" : changed.ends_with('.') ? " " : ". ") + remark;
        table.rows.push_back({line.name, as_sentence(changed), told_cell(line.outside), told_cell(line.floor), told_cell(line.sill), line.took.own});
        if (has_runs) table.rows.back().push_back(line.how_often);
    }
    if (table.rows.empty()) return {};
    return "\n" + std::string(title) + "\n" + text::lay_out(table, width);
}

}

std::string what_if_sheet(const Report& report, std::size_t width)
{
    if (!report.what_ifs) return {};
    std::string out = table_of(report, say("What each mistake added (+ is more because of it)"), WhatIf::Kind::repaired, width);
    if (out.empty()) out = "\n" + text::paragraph(say("There was nothing to repair."), width);
    else {
        out += text::paragraph(as_it_was(*report.what_ifs), width);
        out += text::paragraph(what_if_source(*report.what_ifs), width);
        out += text::paragraph(say_with("Loadings are lead on the worst floor and the worst sill; {}.", say(model_note)), width);
    }
    for (const WhatIf* what_if : near_misses(*report.what_ifs)) {
        const WhatIfLine line = what_if_line(report, *what_if);
        out += text::paragraph(say_with("Near miss: {}: no harm in this run, harm in {} runs.", line.name, line.how_often), width);
    }
    for (const NoRepair& none : report.what_ifs->none) {
        const FaultLine* fault = find_fault(report.faults, none.rule);
        out += text::paragraph(say_with("Not repaired: fault {}: {}.", fault != nullptr ? std::to_string(fault->number) : none.rule, none.why), width);
    }
    out += table_of(report, say("The same mistakes, each alone in the careful plan"), WhatIf::Kind::put_in, width);
    for (const NoRepair& none : report.what_ifs->not_put_in) {
        const FaultLine* fault = find_fault(report.faults, none.rule);
        out += text::paragraph(say_with("Not put into the careful plan: fault {}: {}.", fault != nullptr ? std::to_string(fault->number) : none.rule, none.why), width);
    }
    return out;
}

}
