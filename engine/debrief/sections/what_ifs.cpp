#include "debrief/sections/parts.hpp"

#include "debrief/what_if_chart.hpp"
#include "debrief/what_if_line.hpp"
#include "debrief/wording.hpp"
#include "text/language.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <string>

namespace flapdoor::debrief::sections {

using text::Element;
using text::say;
using text::say_with;

namespace {

Element two_lines(const WhatIfLine::Cell& cell)
{
    Element td = Element("td").with("class", "right nowrap").say(cell.own);
    if (!cell.range.empty()) td.add(Element("br")).add(piece("span", cell.range, "range"));
    return td;
}

/// The edits and what there is to remark, below the figures and as wide as they are.
Element what_changed(const WhatIfLine& line, bool shows_edits, std::size_t columns)
{
    Element td = Element("td").with("class", "changed").with("colspan", std::to_string(columns));
    if (shows_edits)
        for (const std::string& told : line.told) td.add(piece("p", as_sentence(told) + "."));
    for (const std::string& remark : {line.doubt, line.why})
        if (!remark.empty()) td.add(piece("p", remark, "remark"));
    return Element("tr").add(std::move(td));
}

/// Does it no harm worth the name, in this run or in any light one? Such a change need not fill a row of figures.
bool is_harmless(const WhatIf& what_if) { return !did_harm(what_if) && harmful_runs(what_if) == 0; }

/// "+150 ug (+7.5 ug to +650 ug)".
std::string in_one_line(const WhatIfLine::Cell& cell)
{
    if (cell.range.empty() || cell.range == cell.own) return cell.own;
    return fmt::format("{} ({})", cell.own, cell.range);
}

std::string all_told(const WhatIfLine& line)
{
    std::string all;
    for (const std::string& told : line.told) all += (all.empty() ? "" : " ") + as_sentence(told) + ".";
    for (const std::string& remark : {line.doubt, line.why})
        if (!remark.empty()) all += " " + remark;
    return all;
}

/// Those that did no harm, a row each: papers, signs, and what was well made good by other cards.
Element harmless(const Report& report, WhatIf::Kind kind)
{
    const bool has_runs = !report.what_ifs->seeds.empty();
    const std::string outside = ">" + std::string(say("Lead that got out"));
    Element list = table(has_runs ? say("No harm, in this run or in any of the light ones") : say("No harm in this run"), {say("What"), say("What changed"), outside});
    list.with("class", "what-ifs harmless");
    Element body("tbody");
    std::size_t count = 0;
    for (const WhatIf& what_if : report.what_ifs->list) {
        if (what_if.kind != kind || !is_harmless(what_if)) continue;
        ++count;
        const WhatIfLine line = what_if_line(report, what_if);
        Element row("tr");
        row.add(piece("th", line.name).with("scope", "row")).add(piece("td", all_told(line)));
        body.add(row.add(piece("td", in_one_line(line.outside), "right")));
    }
    if (count == 0) return Element("div");
    return list.add(std::move(body));
}

Element changes(const Report& report, std::string_view caption, WhatIf::Kind kind)
{
    const bool has_runs = !report.what_ifs->seeds.empty();
    const std::string outside = ">" + std::string(say("Lead that got out")), floor = ">" + std::string(say("Floor")), sill = ">" + std::string(say("Sill")),
                      breathed = ">" + std::string(say("Breathed")), took = ">" + std::string(say("Site time")), often = ">" + std::string(say("Harm in"));
    std::vector<std::string_view> heads{say("What"), outside, floor, sill, breathed, took};
    if (has_runs) heads.push_back(often);
    Element list = table(caption, heads).with("class", "what-ifs");
    std::size_t rows = 0;
    for (const WhatIf& what_if : report.what_ifs->list) {
        const bool is_all = what_if.kind == WhatIf::Kind::all_repaired && kind == WhatIf::Kind::repaired;
        if (what_if.kind != kind && !is_all) continue;
        const WhatIfLine line = what_if_line(report, what_if);
        if (!is_all && is_harmless(what_if)) continue;
        ++rows;
        Element row("tr");
        if (is_all) row.with("class", "total");
        const bool has_more = !is_all || !line.doubt.empty() || !line.why.empty();
        Element name = piece("th", line.name).with("scope", "rowgroup");
        if (has_more) name.with("rowspan", "2");
        row.add(std::move(name));
        for (const WhatIfLine::Cell* cell : {&line.outside, &line.floor, &line.sill, &line.breathed, &line.took}) row.add(two_lines(*cell));
        if (has_runs) row.add(piece("td", line.how_often, "right nowrap"));
        Element group("tbody");
        group.add(std::move(row));
        if (has_more) group.add(what_changed(line, !is_all, heads.size() - 1));
        list.add(std::move(group));
    }
    if (rows == 0) return piece("h3", caption);     // nothing but what follows below
    return list;
}

Element not_done(const Report& report, std::string_view caption, const std::vector<NoRepair>& faults)
{
    Element list = table(caption, {say("What"), say("Why not")});
    Element body("tbody");
    for (const NoRepair& none : faults) {
        const FaultLine* fault = find_fault(report.faults, none.rule);
        Element row("tr");
        row.add(piece("th", fault != nullptr ? say_with("Fault {}: {}", fault->number, say(fault->rule.says)) : none.rule).with("scope", "row"));
        body.add(row.add(Element("td").say(as_sentence(none.why) + ".")));
    }
    return list.add(std::move(body));
}

Element near_miss_list(const Report& report)
{
    Element section("div");
    section.add(Element("h3").say(say("Near misses")));
    const std::vector<const WhatIf*> near = near_misses(*report.what_ifs);
    if (near.empty()) return section.add(piece("p", say("No mistake that did no harm here did harm in the other runs.")));
    section.add(piece("p", say("These did no harm in this run, by luck: with other seeds they do."), "intro"));
    Element list("ul");
    for (const WhatIf* what_if : near) {
        const WhatIfLine line = what_if_line(report, *what_if);
        const FaultLine* fault = find_fault(report.faults, what_if->rules.front());
        list.add(Element("li").say(say_with("{}: harm in {} runs. {}.", line.name, line.how_often, fault != nullptr ? as_sentence(std::string(say(fault->rule.says))) : std::string())));
    }
    return section.add(std::move(list));
}

}

Element what_ifs(const Report& report)
{
    Element section = titled(say("What each mistake did"));
    section.add(piece("p", say("The job was carried out again with one mistake repaired at a time, with the same luck for all that stayed the same. Each figure is what the mistake "
                               "added: + means that more got out, or more lies there, because of it.")));
    section.add(piece("p", as_it_was(*report.what_ifs)));
    section.add(piece("p", what_if_source(*report.what_ifs), "small"));
    const bool has_repairs = std::any_of(report.what_ifs->list.begin(), report.what_ifs->list.end(), [](const WhatIf& w) { return w.kind == WhatIf::Kind::repaired; });
    if (!has_repairs) section.add(piece("p", say("There was nothing to repair.")));
    else {
        const bool has_pairs = !report.what_ifs->seeds.empty();
        constexpr std::size_t charted = 15;     // those below can hardly be told from nothing
        Element figure("figure");
        figure.add(Element("figcaption").say(has_pairs ? say("Lead that got out because of each mistake, the largest median first") : say("Lead that got out because of each mistake, the largest first")));
        figure.add(what_if_chart(report, charted));
        section.add(std::move(figure));
        section.add(changes(report, say("What each mistake added"), WhatIf::Kind::repaired));
        section.add(harmless(report, WhatIf::Kind::repaired));
        section.add(piece("p", say_with("Loadings are lead on the worst floor and the worst sill of the work area at the end; {}. Repairs do not add up: two mistakes can let out the same dust.", say(model_note)), "small"));
        section.add(near_miss_list(report));
        section.add(piece("p", say("Harm is counted when at least a tenth of the lead that got out, or that lies on floor or sill, is the mistake's doing, and more than a trifle (10 ug, 0.1 ug/ft2). "
                                   "Judgment; single run, no band; training model, not a clearance prediction."), "small"));
    }
    if (!report.what_ifs->none.empty()) section.add(not_done(report, say("Faults that no change of cards repairs by itself"), report.what_ifs->none));
    const bool has_reverse = std::any_of(report.what_ifs->list.begin(), report.what_ifs->list.end(), [](const WhatIf& w) { return w.kind == WhatIf::Kind::put_in; });
    if (has_reverse) {
        section.add(changes(report, say("The same mistakes, each alone in the careful plan"), WhatIf::Kind::put_in));
        section.add(harmless(report, WhatIf::Kind::put_in));
        section.add(piece("p", say_with("In a careful job one mistake often does little, because others do not help it; {}.", say(loading_note)), "small"));
    }
    if (!report.what_ifs->not_put_in.empty()) section.add(not_done(report, say("Mistakes that cannot be put into the careful plan by themselves"), report.what_ifs->not_put_in));
    return section;
}

}
