#include "quiz/qti/item_parts.hpp"

#include "quiz/qti/figure_units.hpp"
#include "text/language.hpp"

#include <fmt/format.h>

namespace flapdoor::quiz {

namespace {

/// Whether the answer is a figure, as near as the tolerance says.
XmlElement equals(XmlElement figure, const Tolerance& tolerance, const std::string& unit)
{
    XmlElement equal = over("qti-equal", {variable_named("RESPONSE"), std::move(figure)});
    if (tolerance.si <= 0.0) give(equal, "tolerance-mode", "exact");
    else {
        const std::string width = tolerance.is_share ? fmt::format("{:.10g}", 100.0 * tolerance.si) : fmt::format("{:.10g}", width_in(tolerance.si, unit));
        give(equal, "tolerance-mode", tolerance.is_share ? "relative" : "absolute");
        give(equal, "tolerance", width + " " + width);
    }
    return equal;
}

}

ItemParts parts_of(const Number& asked, const Question& question)
{
    ItemParts parts;
    const std::string unit = unit_of(asked.answer);
    parts.response = response_declaration("single", "float", {number_text(asked.answer, unit)});
    XmlElement words = tag("p");
    say(words, shown(question.text));
    parts.body.push_back(std::move(words));
    XmlElement line = tag("p");
    XmlElement& entry = add(line, tag("qti-text-entry-interaction", {{"response-identifier", "RESPONSE"}, {"expected-length", "10"}}));
    give(entry, "data-flapdoor-answer", asked.answer.text);
    give(entry, "data-flapdoor-tolerance", asked.tolerance.text);
    if (!unit.empty()) say(line, " " + unit);
    parts.body.push_back(std::move(line));

    std::vector<XmlElement> otherwise;
    for (std::size_t i = 0; i < asked.wrong.size(); ++i) {
        const WrongFigure& wrong = asked.wrong[i];
        const std::string identifier = fmt::format("wrong-{}", i + 1);
        XmlElement block = feedback_block(identifier, wrong.told);
        give(block, "data-flapdoor-figure", wrong.figure.text);
        give(block, "data-flapdoor-misconception", wrong.misconception);
        parts.body.push_back(std::move(block));
        otherwise.push_back(condition(equals(value_of("float", number_text(wrong.figure, unit)), asked.tolerance, unit), {show_feedback(identifier)}));
    }
    parts.processing.push_back(condition(equals(correct_response(), asked.tolerance, unit), {set_to("SCORE", value_of("float", std::to_string(question.points)))}, std::move(otherwise)));
    if (asked.answer.unit.kind) parts.losses.push_back(text::say_with("The answer is asked for in {}; other units do not count there.", unit));
    return parts;
}

}
