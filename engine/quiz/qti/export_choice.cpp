#include "quiz/qti/item_parts.hpp"

#include "core/insist.hpp"
#include "text/language.hpp"

#include <algorithm>

namespace flapdoor::quiz {

namespace {

XmlElement choice_of(const Option& option)
{
    const std::string id = identifier_of(option.id.text);
    XmlElement choice = tag("qti-simple-choice", {{"identifier", id}});
    if (id != option.id.text) give(choice, "data-flapdoor-id", option.id.text);
    give(choice, "data-flapdoor-misconception", option.misconception);
    say(choice, shown(option.text));
    if (!option.told.is_empty()) {
        // What is said of a right one is said to whoever missed it.
        XmlElement& told = add(choice, tag("qti-feedback-inline", {{"outcome-identifier", "FEEDBACK"}, {"identifier", option.is_right ? "missed-" + id : id}, {"show-hide", "show"}}));
        say(told, shown(option.told));
    }
    return choice;
}

XmlElement interaction_of(const std::vector<Option>& options, const Question& question, bool is_single, bool is_shuffled)
{
    XmlElement interaction = tag("qti-choice-interaction", {{"response-identifier", "RESPONSE"}, {"max-choices", is_single ? "1" : "0"}, {"shuffle", is_shuffled ? "true" : "false"}});
    add(interaction, prompt_of(question));
    for (const Option& option : options) add(interaction, choice_of(option));
    return interaction;
}

std::vector<std::string> keys_of(const std::vector<Option>& options)
{
    std::vector<std::string> keys;
    for (const Option& option : options)
        if (option.is_right) keys.push_back(identifier_of(option.id.text));
    return keys;
}

/// What is said to whoever missed a right option.
void tell_missed(const std::vector<Option>& options, std::vector<XmlElement>& processing)
{
    for (const Option& option : options) {
        if (!option.is_right || option.told.is_empty()) continue;
        const std::string id = identifier_of(option.id.text);
        // Nothing chosen at all is no container to look into.
        XmlElement has = over("qti-and", {over("qti-not", {over("qti-is-null", {variable_named("RESPONSE")})}), over("qti-member", {value_of("identifier", id), over("qti-multiple", {variable_named("RESPONSE")})})});
        processing.push_back(condition(over("qti-not", {std::move(has)}), {show_feedback("missed-" + id)}));
    }
}

ItemParts single_choice(const std::vector<Option>& options, const Question& question, bool is_shuffled)
{
    ItemParts parts;
    parts.response = response_declaration("single", "identifier", keys_of(options));
    parts.body.push_back(interaction_of(options, question, true, is_shuffled));
    parts.processing.push_back(condition(over("qti-match", {variable_named("RESPONSE"), correct_response()}), {set_to("SCORE", value_of("float", std::to_string(question.points)))}));
    parts.processing.push_back(set_to("FEEDBACK", over("qti-multiple", {variable_named("RESPONSE")})));
    tell_missed(options, parts.processing);
    return parts;
}

}

ItemParts parts_of(const ChooseOne& asked, const Question& question) { return single_choice(asked.options, question, true); }

ItemParts parts_of(const ChooseSeveral& asked, const Question& question)
{
    ItemParts parts;
    const std::vector<std::string> keys = keys_of(asked.options);
    parts.response = response_declaration("multiple", "identifier", keys);
    const std::string most = std::to_string(keys.size());
    XmlElement& mapping = add(parts.response, tag("qti-mapping", {{"lower-bound", "0"}, {"upper-bound", most}, {"default-value", "0"}}));
    for (const Option& option : asked.options) add(mapping, tag("qti-map-entry", {{"map-key", identifier_of(option.id.text)}, {"mapped-value", option.is_right ? "1" : "-1"}}));
    parts.body.push_back(interaction_of(asked.options, question, false, true));
    XmlElement score = over("qti-divide", {over("qti-product", {tag("qti-map-response", {{"identifier", "RESPONSE"}}), value_of("float", std::to_string(question.points))}), value_of("float", most)});
    parts.processing.push_back(condition(over("qti-not", {over("qti-is-null", {variable_named("RESPONSE")})}), {set_to("SCORE", std::move(score)), set_to("FEEDBACK", variable_named("RESPONSE"))}));
    tell_missed(asked.options, parts.processing);
    return parts;
}

ItemParts parts_of(const SpotFault& asked, const Question& question)
{
    // The moments stay in the order of the run.
    ItemParts parts = single_choice(asked.moments, question, false);
    parts.losses.emplace_back(text::say("The run itself does not travel: the steps are a choice, the fault that the marking found is its key."));
    return parts;
}

ItemParts parts_of(const Predict& asked, const Question& question)
{
    ItemParts parts = single_choice(asked.options, question, true);
    if (!asked.reveal.is_empty()) parts.body.push_back(feedback_block("reveal", asked.reveal));
    if (!asked.reveal.is_empty()) parts.processing.push_back(show_feedback("reveal"));
    parts.losses.emplace_back(text::say("The runs themselves do not travel: what came out of them is the key and is told afterwards."));
    return parts;
}

ItemParts parts_of(const Generated&, const Question&)
{
    insist(false, "a template is made into a question before it is exported");
    return {};
}

}
