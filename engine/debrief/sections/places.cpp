#include "debrief/sections/parts.hpp"

#include "debrief/level.hpp"
#include "debrief/wording.hpp"
#include "text/language.hpp"
#include "text/page.hpp"
#include "text/show.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace flapdoor::debrief::sections {

using text::Element;
using text::say;
using text::say_with;

namespace {

Element zones(const Report& report)
{
    Element list = level_table(say("Loose lead dust that the job made, by place (chips apart)"), {say("Place"), say("Share")}, level_heads(report));
    Element body("tbody");
    for (std::size_t i = 0; i < report.places.size(); ++i) {
        const PlaceLine& line = report.places[i];
        if (line.lead == Picograms{} && !line.is_zone) continue;
        Element row("tr");
        row.add(piece("th", line.is_work_room ? say_with("{} (work room)", called(line.title)) : called(line.title)).with("scope", "row"));
        row.add(piece("td", said_share(line.share)));
        if (line.is_barely_known) add_unknown(row, report);
        else add_level(row, report, level_of(line.lead, report.bands ? report.bands->find(Measured::place, i) : nullptr));
        body.add(std::move(row));
    }
    return list.add(std::move(body));
}

/// Floors first and walls last, as people ask for them.
std::vector<const SurfaceLine*> in_order(const Outcome& outcome)
{
    std::vector<const SurfaceLine*> lines;
    for (const SurfaceLine& line : outcome.surfaces) lines.push_back(&line);
    std::stable_sort(lines.begin(), lines.end(), [](const SurfaceLine* a, const SurfaceLine* b) { return order_of(a->role) < order_of(b->role); });
    return lines;
}

Element surfaces(const Report& report)
{
    Element list = level_table(say("Lead on surfaces at the end, with what lay there before the job (chips apart)"), {say("Surface"), say(">Area")}, level_heads(report));
    Element body("tbody");
    for (const SurfaceLine* line : in_order(report.outcome)) {
        Element row("tr");
        row.add(piece("th", as_sentence(called(line->name))).with("scope", "row"));
        row.add(piece("td", text::show_short(line->area), "right nowrap"));
        add_level(row, report, level_of(line->lead, report.bands ? report.bands->of_surface(line->surface) : nullptr));
        body.add(std::move(row));
    }
    return list.add(std::move(body));
}

}

Element places(const Report& report)
{
    Element section = titled(say("Where lead dust lies at the end"));
    section.add(text::box(text::Tone::caution, say("Training model."),
                          report.bands ? fmt::format("{} {}", source_line(*report.bands), say("No figure is a clearance."))
                                       : say("These figures belong to one run of a model with uncertain parameters. Only many runs give a level with its band, and no run gives "
                                         "a clearance.")));
    section.add(surfaces(report));
    section.add(zones(report));
    return section;
}

}
