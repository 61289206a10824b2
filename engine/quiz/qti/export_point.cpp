#include "quiz/qti/item_parts.hpp"

#include "core/insist.hpp"
#include "quiz/qti/plan_picture.hpp"
#include "text/language.hpp"
#include "text/units.hpp"

#include <fmt/format.h>

namespace flapdoor::quiz {

namespace {

std::string coords_of(const Region& region, const PlanPicture& picture)
{
    const plan::Rect& place = region.place;
    const Length beside = region.tolerance;
    return fmt::format("{},{},{},{}", picture.x_of(place.west - beside), picture.y_of(place.north() + beside), picture.x_of(place.east() + beside), picture.y_of(place.south - beside));
}

XmlElement hotspot_of(const Region& region, const PlanPicture& picture)
{
    const std::string id = identifier_of(region.id.text);
    XmlElement hotspot = tag("qti-hotspot-choice", {{"identifier", id}, {"shape", "rect"}, {"coords", coords_of(region, picture)}});
    give(hotspot, "hotspot-label", shown(region.text));
    if (id != region.id.text) give(hotspot, "data-flapdoor-id", region.id.text);
    if (region.thing) give(hotspot, "data-flapdoor-thing", region.thing->text);
    if (region.at) give(hotspot, "data-flapdoor-at", text::canonical_text(region.at->x) + "; " + text::canonical_text(region.at->y));
    if (region.size) give(hotspot, "data-flapdoor-size", text::canonical_text(region.size->x) + "; " + text::canonical_text(region.size->y));
    give(hotspot, "data-flapdoor-tolerance", text::canonical_text(region.tolerance));
    give(hotspot, "data-flapdoor-misconception", region.misconception);
    return hotspot;
}

}

ItemParts parts_of(const PointAtPlan& asked, const Question& question)
{
    insist(asked.site != nullptr, "the places of a question that is asked were looked up");
    const PlanPicture picture = plan_picture(*asked.site);
    const std::string path = fmt::format("plans/{}.svg", identifier_of(asked.scenario.text));
    ItemParts parts;
    std::vector<std::string> keys;
    for (const Region& region : asked.regions)
        if (region.is_right) keys.push_back(identifier_of(region.id.text));
    insist(!keys.empty(), "a question that is asked has a right answer");
    // One place is pointed at, so the key is one; others that are right count by the mapping.
    parts.response = response_declaration("single", "identifier", {keys.front()});
    XmlElement& mapping = add(parts.response, tag("qti-mapping", {{"lower-bound", "0"}, {"upper-bound", "1"}, {"default-value", "0"}}));
    for (const std::string& key : keys) add(mapping, tag("qti-map-entry", {{"map-key", key}, {"mapped-value", "1"}}));

    XmlElement interaction = tag("qti-hotspot-interaction", {{"response-identifier", "RESPONSE"}, {"max-choices", "1"}, {"data-flapdoor-scenario", asked.scenario.text}});
    add(interaction, prompt_of(question));
    add(interaction, tag("img", {{"src", "../" + path}, {"width", std::to_string(picture.width)}, {"height", std::to_string(picture.height)}, {"alt", text::say_with("Plan: {}", text::say(asked.site->title))}}));
    for (const Region& region : asked.regions) add(interaction, hotspot_of(region, picture));
    parts.body.push_back(std::move(interaction));
    for (const Region& region : asked.regions)
        if (!region.told.is_empty()) parts.body.push_back(feedback_block(identifier_of(region.id.text), region.told));

    XmlElement score = over("qti-product", {tag("qti-map-response", {{"identifier", "RESPONSE"}}), value_of("float", std::to_string(question.points))});
    parts.processing.push_back(condition(over("qti-not", {over("qti-is-null", {variable_named("RESPONSE")})}), {set_to("SCORE", std::move(score)), set_to("FEEDBACK", over("qti-multiple", {variable_named("RESPONSE")}))}));
    parts.pictures.push_back({path, picture.svg});
    parts.losses.emplace_back(text::say("Places are rectangles of the picture there; where they overlap, which one counts is left to the program."));
    return parts;
}

}
