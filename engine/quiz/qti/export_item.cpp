#include "quiz/qti/export_item.hpp"

#include "quiz/qti/item_parts.hpp"
#include "text/language.hpp"

namespace flapdoor::quiz {

namespace {

constexpr std::string_view name_space = "http://www.imsglobal.org/xsd/imsqtiasi_v3p0";

/// Why the right answer is right, and where it is written.
XmlElement explanation(const Question& question)
{
    XmlElement feedback = tag("qti-modal-feedback", {{"outcome-identifier", "EXPLANATION"}, {"identifier", "why"}, {"show-hide", "show"}});
    XmlElement& body = add(feedback, tag("qti-content-body"));
    say(add(body, tag("p")), shown(question.why));
    say(add(body, tag("p", {{"class", "cite"}})), question.cite);
    return feedback;
}

}

XmlElement feedback_block(const std::string& identifier, const Phrase& told)
{
    XmlElement block = tag("qti-feedback-block", {{"outcome-identifier", "FEEDBACK"}, {"identifier", identifier}, {"show-hide", "show"}});
    say(add(add(block, tag("qti-content-body")), tag("p")), shown(told));
    return block;
}

XmlElement prompt_of(const Question& question)
{
    XmlElement prompt = tag("qti-prompt");
    say(prompt, shown(question.text));
    return prompt;
}

QtiItem export_item(const Question& question, const std::string& name)
{
    ItemParts parts = std::visit([&](const auto& kind) { return parts_of(kind, question); }, question.kind);
    QtiItem item;
    item.identifier = identifier_of(name);
    item.pictures = std::move(parts.pictures);
    item.losses = std::move(parts.losses);

    XmlElement root = tag("qti-assessment-item", {{"xmlns", std::string(name_space)}, {"identifier", item.identifier}, {"title", question.id.text}, {"adaptive", "false"}, {"time-dependent", "false"}, {"xml:lang", std::string(text::code_of(text::spoken()))}, {"tool-name", "Flapdoor"}, {"tool-version", "1"}});
    add(root, std::move(parts.response));
    for (XmlElement& outcome : outcome_declarations(question.points)) add(root, std::move(outcome));
    XmlElement& body = add(root, tag("qti-item-body"));
    XmlElement& all = add(body, tag("div", {{"data-flapdoor-id", question.id.text}, {"data-flapdoor-kind", std::string(kind_name(question))}, {"data-flapdoor-topic", std::string(word_of(question.topic))}, {"data-flapdoor-level", std::string(word_of(question.level))}, {"data-flapdoor-cite", question.cite}}));
    for (XmlElement& part : parts.body) add(all, std::move(part));
    XmlElement& processing = add(root, tag("qti-response-processing"));
    for (XmlElement& statement : parts.processing) add(processing, std::move(statement));
    add(processing, set_to("EXPLANATION", value_of("identifier", "why")));
    add(root, explanation(question));
    item.xml = write_xml(root);
    return item;
}

}
