#include "quiz/qti/item_parts.hpp"

#include "text/language.hpp"

#include <fmt/format.h>

namespace flapdoor::quiz {

namespace {

/// Whether one card lies before another: all others are taken out of the answer, what is left is compared.
XmlElement lies_before(const PutInOrder& asked, const std::string& before, const std::string& after)
{
    XmlElement left = variable_named("RESPONSE");
    for (const LayCard& card : asked.cards) {
        if (card.id.text == before || card.id.text == after) continue;
        left = over("qti-delete", {value_of("identifier", identifier_of(card.id.text)), std::move(left)});
    }
    XmlElement order = over("qti-ordered", {value_of("identifier", identifier_of(before)), value_of("identifier", identifier_of(after))});
    return over("qti-match", {std::move(left), std::move(order)});
}

XmlElement is_kept(const PutInOrder& asked, const LayRule& rule)
{
    XmlElement all = tag("qti-and");
    for (std::size_t i = 1; i < rule.order.size(); ++i) add(all, lies_before(asked, rule.order[i - 1].text, rule.order[i].text));
    return all;
}

XmlElement interaction_of(const PutInOrder& asked, const Question& question)
{
    XmlElement interaction = tag("qti-order-interaction", {{"response-identifier", "RESPONSE"}, {"shuffle", "true"}, {"orientation", "vertical"}});
    add(interaction, prompt_of(question));
    for (const LayCard& card : asked.cards) {
        const std::string id = identifier_of(card.id.text);
        XmlElement choice = tag("qti-simple-choice", {{"identifier", id}});
        if (id != card.id.text) give(choice, "data-flapdoor-id", card.id.text);
        say(choice, shown(card.text));
        add(interaction, std::move(choice));
    }
    return interaction;
}

XmlElement block_of(const LayRule& rule, const std::string& identifier)
{
    XmlElement block = feedback_block(identifier, rule.told);
    std::vector<std::string> order;
    for (const rules::Marked& card : rule.order) order.push_back(identifier_of(card.text));
    give(block, "data-flapdoor-order", fmt::format("{}", fmt::join(order, " ")));
    give(block, "data-flapdoor-weight", std::to_string(rule.weight));
    if (rule.is_critical) give(block, "data-flapdoor-critical", "true");
    return block;
}

}

ItemParts parts_of(const PutInOrder& asked, const Question& question)
{
    ItemParts parts;
    std::vector<std::string> key;
    for (const std::string& card : one_right_order(asked).cards) key.push_back(identifier_of(card));
    parts.response = response_declaration("ordered", "identifier", key);
    parts.body.push_back(interaction_of(asked, question));
    int weights = 0;
    for (const LayRule& rule : asked.rules) weights += rule.weight;
    std::vector<XmlElement> gates;
    for (std::size_t i = 0; i < asked.rules.size(); ++i) {
        const LayRule& rule = asked.rules[i];
        const std::string identifier = fmt::format("rule-{}", i + 1);
        parts.body.push_back(block_of(rule, identifier));
        parts.processing.push_back(condition(is_kept(asked, rule), {set_to("SCORE", over("qti-sum", {variable_named("SCORE"), value_of("float", std::to_string(rule.weight))}))}, {show_feedback(identifier)}));
        if (rule.is_critical) gates.push_back(condition(over("qti-not", {is_kept(asked, rule)}), {set_to("SCORE", value_of("float", "0"))}));
    }
    XmlElement share = over("qti-divide", {over("qti-product", {variable_named("SCORE"), value_of("float", std::to_string(question.points))}), value_of("float", std::to_string(weights))});
    parts.processing.push_back(set_to("SCORE", std::move(share)));
    for (XmlElement& gate : gates) parts.processing.push_back(std::move(gate));
    parts.losses.emplace_back(text::say("Points for an order that is partly right go by the rules kept there, not by the fewest cards to move."));
    return parts;
}

}
