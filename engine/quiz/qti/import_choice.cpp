#include "quiz/qti/item_reading.hpp"

#include "text/quote.hpp"

#include <algorithm>

namespace flapdoor::quiz {

std::optional<AnyKind> choice_among(ItemReading& item, const XmlElement& interaction, std::vector<Option> options, const std::vector<std::string>& identifiers, bool is_single)
{
    const std::vector<std::string> key = key_of(item, interaction);
    if (key.empty()) return item.give_up(interaction, std::string(text::say("It has no key: which answer is right is not in the file.")));
    for (const std::string& right : key) {
        const auto at = std::find(identifiers.begin(), identifiers.end(), right);
        if (at == identifiers.end()) return item.give_up(interaction, text::say_with("Its key names {}, which is not among the answers.", text::quoted(right)));
        options[static_cast<std::size_t>(at - identifiers.begin())].is_right = true;
    }
    for (std::size_t i = 0; i < options.size(); ++i) {
        Option& option = options[i];
        const std::string missed = "missed-" + identifiers[i];
        if (option.is_right) {
            option.misconception.clear();
            if (item.told.contains(missed)) option.told = told_of(item, missed, {});
            continue;
        }
        if (option.misconception.empty()) option.misconception = option.id.text;
        option.told = told_of(item, identifiers[i], not_right);
    }
    if (is_single && key.size() == 1) return ChooseOne{std::move(options)};
    if (is_single) item.note(interaction, std::string(text::say("One answer was to be chosen of several that are right; here every right one is to be chosen.")));
    return ChooseSeveral{std::move(options)};
}

std::optional<AnyKind> read_choice(ItemReading& item, const XmlElement& interaction)
{
    std::vector<Option> options;
    std::vector<std::string> identifiers;
    for (const XmlElement* choice : interaction.children("simpleChoice")) {
        Option option;
        option.id = id_of(*choice);
        option.text = phrase_of(words_in(*choice));
        option.misconception = choice->attribute("data-flapdoor-misconception").value_or("");
        identifiers.push_back(choice->attribute("identifier").value_or(""));
        options.push_back(std::move(option));
    }
    const XmlElement* declaration = declaration_of(item, interaction);
    const bool is_single = declaration != nullptr && declaration->attribute("cardinality") == "single";
    return choice_among(item, interaction, std::move(options), identifiers, is_single);
}

}
