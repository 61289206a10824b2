#include "quiz/qti/processing.hpp"

namespace flapdoor::quiz {

XmlElement variable_named(std::string_view identifier) { return tag("qti-variable", {{"identifier", std::string(identifier)}}); }

XmlElement correct_response() { return tag("qti-correct", {{"identifier", "RESPONSE"}}); }

XmlElement value_of(std::string_view base_type, std::string_view value)
{
    XmlElement element = tag("qti-base-value", {{"base-type", std::string(base_type)}});
    say(element, value);
    return element;
}

XmlElement over(std::string_view op, std::vector<XmlElement> operands)
{
    XmlElement element = tag(op);
    for (XmlElement& operand : operands) add(element, std::move(operand));
    return element;
}

XmlElement set_to(std::string_view outcome, XmlElement value)
{
    XmlElement element = tag("qti-set-outcome-value", {{"identifier", std::string(outcome)}});
    add(element, std::move(value));
    return element;
}

XmlElement show_feedback(std::string_view identifier)
{
    return set_to("FEEDBACK", over("qti-multiple", {variable_named("FEEDBACK"), value_of("identifier", identifier)}));
}

XmlElement condition(XmlElement when, std::vector<XmlElement> then, std::vector<XmlElement> otherwise)
{
    XmlElement element = tag("qti-response-condition");
    XmlElement& branch = add(element, tag("qti-response-if"));
    add(branch, std::move(when));
    for (XmlElement& statement : then) add(branch, std::move(statement));
    if (!otherwise.empty()) add(element, over("qti-response-else", std::move(otherwise)));
    return element;
}

XmlElement response_declaration(std::string_view cardinality, std::string_view base_type, const std::vector<std::string>& key)
{
    XmlElement element = tag("qti-response-declaration", {{"identifier", "RESPONSE"}, {"cardinality", std::string(cardinality)}, {"base-type", std::string(base_type)}});
    XmlElement& correct = add(element, tag("qti-correct-response"));
    for (const std::string& value : key) say(add(correct, tag("qti-value")), value);
    return element;
}

std::vector<XmlElement> outcome_declarations(int points)
{
    const auto number = [](std::string_view name, int value) {
        XmlElement element = tag("qti-outcome-declaration", {{"identifier", std::string(name)}, {"cardinality", "single"}, {"base-type", "float"}});
        say(add(add(element, tag("qti-default-value")), tag("qti-value")), std::to_string(value));
        return element;
    };
    std::vector<XmlElement> all{number("SCORE", 0), number("MAXSCORE", points)};
    give(all.front(), "normal-maximum", std::to_string(points));
    all.push_back(tag("qti-outcome-declaration", {{"identifier", "FEEDBACK"}, {"cardinality", "multiple"}, {"base-type", "identifier"}}));
    all.push_back(tag("qti-outcome-declaration", {{"identifier", "EXPLANATION"}, {"cardinality", "single"}, {"base-type", "identifier"}}));
    return all;
}

}
