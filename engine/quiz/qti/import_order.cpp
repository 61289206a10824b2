#include "quiz/qti/item_reading.hpp"

#include "text/quote.hpp"

#include <algorithm>
#include <map>
#include <sstream>

namespace flapdoor::quiz {

namespace {

using CardIds = std::map<std::string, rules::Marked>;      ///< identifier -> card

/// The rules an item of ours carries; nothing when one of them names what is no card.
std::optional<std::vector<LayRule>> own_rules(const ItemReading& item, const CardIds& cards)
{
    std::vector<LayRule> rules;
    for (const XmlElement* block : all_named(*item.body, "feedbackBlock")) {
        const auto order = block->attribute("data-flapdoor-order");
        if (!order) continue;
        LayRule rule;
        std::istringstream words(*order);
        for (std::string word; words >> word;) {
            const auto card = cards.find(word);
            if (card == cards.end()) return std::nullopt;
            rule.order.push_back(card->second);
        }
        const auto weight = number_in(block->attribute("data-flapdoor-weight").value_or(""));
        if (rule.order.size() < 2 || !weight || weight->si < 1.0 || weight->si > 100.0) return std::nullopt;
        rule.weight = static_cast<int>(weight->si);
        rule.is_critical = block->attribute("data-flapdoor-critical") == "true";
        rule.told = told_of(item, block->attribute("identifier").value_or(""), {});
        rules.push_back(std::move(rule));
    }
    if (rules.empty()) return std::nullopt;
    return rules;
}

/// Whether the key of the file keeps every rule: if another program changed it, the file's own key counts.
bool keeps(const std::vector<rules::Marked>& key, const std::vector<LayRule>& rules)
{
    const auto place = [&](const rules::Marked& card) { return std::find_if(key.begin(), key.end(), [&](const rules::Marked& one) { return one.text == card.text; }); };
    return std::all_of(rules.begin(), rules.end(), [&](const LayRule& rule) { return std::is_sorted(rule.order.begin(), rule.order.end(), [&](const auto& a, const auto& b) { return place(a) < place(b); }); });
}

std::vector<LayRule> chain(const std::vector<rules::Marked>& key)
{
    std::vector<LayRule> rules;
    for (std::size_t i = 1; i < key.size(); ++i) {
        LayRule rule;
        rule.order = {key[i - 1], key[i]};
        rule.told = phrase(text::to_say("The file puts these the other way round."));
        rules.push_back(std::move(rule));
    }
    return rules;
}

}

std::optional<AnyKind> read_order(ItemReading& item, const XmlElement& interaction)
{
    PutInOrder asked;
    CardIds cards;
    for (const XmlElement* choice : interaction.children("simpleChoice")) {
        asked.cards.push_back({id_of(*choice), phrase_of(words_in(*choice))});
        cards.emplace(choice->attribute("identifier").value_or(""), asked.cards.back().id);
    }
    std::vector<rules::Marked> key;
    for (const std::string& right : key_of(item, interaction)) {
        const auto card = cards.find(right);
        if (card == cards.end()) return item.give_up(interaction, text::say_with("Its key names {}, which is not among the answers.", text::quoted(right)));
        key.push_back(card->second);
    }
    if (key.size() != asked.cards.size() || cards.size() != asked.cards.size())
        return item.give_up(interaction, std::string(text::say("Its key does not name every card once; only orders of all cards are taken.")));
    const auto rules = own_rules(item, cards);
    if (rules && keeps(key, *rules)) asked.rules = *rules;
    else {
        asked.rules = chain(key);
        item.note(interaction, std::string(text::say("The file knows one order only: each card must come before the next.")));
    }
    return asked;
}

}
