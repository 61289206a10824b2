#pragma once

#include "quiz/qti/import.hpp"
#include "quiz/qti/xml.hpp"
#include "text/language.hpp"

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// What reading an item needs at every turn. Names are those of version 2: camel case, without `qti-`.
namespace flapdoor::quiz {

/// Names and attributes of version 3 as version 2 spells them: `qti-simple-choice` becomes `simpleChoice`. `data-` and `aria-`
/// attributes stay.
void use_common_names(XmlElement& element);

/// An item while it is read.
struct ItemReading {
    const XmlElement& root;
    const XmlElement* body = nullptr;
    const FindScenario& find;
    std::string identifier;
    std::vector<ImportNote> notes;
    std::map<std::string, std::string> told;    ///< feedback by its identifier
    bool is_ours = false;                       ///< written by this program

    void note(const XmlElement& where, std::string what);
    std::nullopt_t give_up(const XmlElement& where, std::string what);  ///< notes that the question is left out
};

/// Elements of that name anywhere inside, in the order of the file.
std::vector<const XmlElement*> all_named(const XmlElement& inside, std::string_view name);

/// What a person reads of an element on one line: interactions become a blank, pictures their description, feedback and
/// what is for others than the candidate stays away. @param without  an element to leave out, or null
std::string words_in(const XmlElement& element, const XmlElement* without = nullptr);

/// The values of the key of an interaction's response, in order; those that a mapping gives points where there is no key.
std::vector<std::string> key_of(const ItemReading& item, const XmlElement& interaction);

/// The declaration of an interaction's response; null where there is none.
const XmlElement* declaration_of(const ItemReading& item, const XmlElement& interaction);

/// The id a thing had here before it was exported, or its identifier.
rules::Marked id_of(const XmlElement& element);

/// What is told for an identifier, or `otherwise`.
Phrase told_of(const ItemReading& item, const std::string& identifier, std::string_view otherwise);

/// Words from elsewhere: braces are no blanks.
Phrase phrase_of(const std::string& words);

inline constexpr std::string_view not_right = text::to_say("This answer does not count as right.");

// Interactions. Nothing is returned for what had to be left out, which is then noted.
std::optional<AnyKind> read_choice(ItemReading& item, const XmlElement& interaction);
std::optional<AnyKind> read_order(ItemReading& item, const XmlElement& interaction);
std::optional<AnyKind> read_text_entry(ItemReading& item, const XmlElement& interaction);
std::optional<AnyKind> read_hotspot(ItemReading& item, const XmlElement& interaction);

/// Options of one question, `is_single` when one is to be chosen.
std::optional<AnyKind> choice_among(ItemReading& item, const XmlElement& interaction, std::vector<Option> options, const std::vector<std::string>& identifiers, bool is_single);

}
