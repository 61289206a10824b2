#include "debrief/sections/parts.hpp"

#include "debrief/what_if_chart.hpp"
#include "debrief/what_if_line.hpp"
#include "debrief/wording.hpp"
#include "text/language.hpp"

#include <algorithm>

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

Element what_changed(const WhatIfLine& line, bool shows_edits)
{
    Element td("td");
    if (shows_edits) {
        Element list = Element("ul").with("class", "edits");
        for (const std::string& told : line.told) list.add(Element("li").say(as_sentence(told)));
        td.add(std::move(list));
    }
    if (!line.doubt.empty()) td.add(piece("p", line.doubt, "small"));
    return td;
}

Element changes(const Report& report, std::string_view caption, WhatIf::Kind kind)
{
    const bool has_runs = !report.what_ifs->seeds.empty() && kind != WhatIf::Kind::put_in;
    const std::string outside = ">" + std::string(say("Lead that got out")), floor = ">" + std::string(say("Floor")), sill = ">" + std::string(say("Sill")),
                      breathed = ">" + std::string(say("Breathed")), took = ">" + std::string(say("Site time")), often = ">" + std::string(say("Harm in"));
    std::vector<std::string_view> heads{say("What"), say("Changed"), outside, floor, sill, breathed, took};
    if (has_runs) heads.push_back(often);
    Element list = table(caption, heads).with("class", "what-ifs");
    Element body("tbody");
    for (const WhatIf& what_if : report.what_ifs->list) {
        const bool is_all = what_if.kind == WhatIf::Kind::all_repaired && kind == WhatIf::Kind::repaired;
        if (what_if.kind != kind && !is_all) continue;
        const WhatIfLine line = what_if_line(report, what_if);
        Element row("tr");
        if (is_all) row.with("class", "total");
        row.add(piece("th", line.name).with("scope", "row"));
        row.add(what_changed(line, !is_all));
        for (const WhatIfLine::Cell* cell : {&line.outside, &line.floor, &line.sill, &line.breathed, &line.took}) row.add(two_lines(*cell));
        if (has_runs) row.add(piece("td", line.how_often, "right nowrap"));
        body.add(std::move(row));
    }
    return list.add(std::move(body));
}

Element no_repairs(const Report& report)
{
    Element list = table(say("Faults that no change of cards repairs by itself"), {say("What"), say("Why not")});
    Element body("tbody");
    for (const NoRepair& none : report.what_ifs->none) {
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
    section.add(piece("p", what_if_source(*report.what_ifs), "small"));
    const bool has_repairs = std::any_of(report.what_ifs->list.begin(), report.what_ifs->list.end(), [](const WhatIf& w) { return w.kind == WhatIf::Kind::repaired; });
    if (!has_repairs) section.add(piece("p", say("There was nothing to repair.")));
    else {
        Element figure("figure");
        figure.add(Element("figcaption").say(say("Lead that got out because of each mistake")));
        figure.add(what_if_chart(report));
        section.add(std::move(figure));
        section.add(changes(report, say("What each mistake added"), WhatIf::Kind::repaired));
        section.add(piece("p", say_with("Loadings are lead on the worst floor and the worst sill of the work area at the end; {}. Repairs do not add up: two mistakes can let out the same dust.", say(model_note)), "small"));
        section.add(near_miss_list(report));
        section.add(piece("p", say("Harm is counted when at least a tenth of the lead that got out, or that lies on floor or sill, is the mistake's doing, and more than a trifle (10 ug, 0.1 ug/ft2). "
                                   "Judgment; single run, no band; training model, not a clearance prediction."), "small"));
    }
    if (!report.what_ifs->none.empty()) section.add(no_repairs(report));
    const bool has_reverse = std::any_of(report.what_ifs->list.begin(), report.what_ifs->list.end(), [](const WhatIf& w) { return w.kind == WhatIf::Kind::put_in; });
    if (has_reverse) {
        section.add(changes(report, say("The same mistakes, each alone in the careful plan"), WhatIf::Kind::put_in));
        section.add(piece("p", say_with("In a careful job one mistake often does little, because others do not help it; {}.", say(loading_note)), "small"));
    }
    return section;
}

}
