#include "job/card_words.hpp"

#include "text/language.hpp"

#include <algorithm>
#include <array>

namespace flapdoor::job {

using text::to_say;

namespace {

struct Label {
    std::string_view key, label;
};

/// Fields that read better with words of their own; the others are called by their keys.
constexpr std::array<Label, 67> labels{{
    {"by", to_say("By whom")},
    {"opening", to_say("Where")},
    {"vacuum", to_say("Vacuum")},
    {"sheeting", to_say("Sheeting")},
    {"cloth", to_say("Cloth")},
    {"bag", to_say("Bag")},
    {"is-taped", to_say("Taped at the edges")},
    {"component", to_say("Painted part")},
    {"time", to_say("How long")},
    {"target", to_say("What")},
    {"shoe-covers", to_say("Shoe covers")},
    {"section", to_say("Section")},
    {"reach", to_say("How far it reaches")},
    {"path", to_say("Way of working")},
    {"order", to_say("Order")},
    {"object", to_say("Thing")},
    {"mop", to_say("Mop")},
    {"minutes-per-square-meter", to_say("Minutes a square meter")},
    {"layers", to_say("Layers")},
    {"kind", to_say("Kind")},
    {"at", to_say("At")},
    {"zone", to_say("Room")},
    {"worker", to_say("Who is trained")},
    {"water-changes", to_say("Changes of water")},
    {"twist", to_say("Length of the twist")},
    {"technique", to_say("How")},
    {"tape", to_say("Tape")},
    {"supplies", to_say("What is brought in")},
    {"soles", to_say("Soles")},
    {"sill", to_say("Sill")},
    {"side", to_say("Side")},
    {"sheets", to_say("Sheets")},
    {"share", to_say("Share of the area")},
    {"sections", to_say("Sections")},
    {"respirator", to_say("Respirator")},
    {"receipt", to_say("Proof")},
    {"press", to_say("Air pressed out")},
    {"place", to_say("Place")},
    {"pad", to_say("Pad")},
    {"overlap", to_say("Overlap")},
    {"only-if-due", to_say("Only when it is due")},
    {"notes-exceptions", to_say("Notes exceptions")},
    {"names-people", to_say("Names the people")},
    {"mists-air", to_say("Mists the air")},
    {"mister", to_say("Mister")},
    {"light", to_say("Light")},
    {"length", to_say("Length")},
    {"language", to_say("Language")},
    {"item", to_say("What")},
    {"is-secured", to_say("Secured")},
    {"is-sealed", to_say("Sealed")},
    {"is-reachable", to_say("Can be reached")},
    {"is-misted", to_say("Kept misted")},
    {"heat", to_say("Heat")},
    {"has-shroud", to_say("With a shroud")},
    {"has-hepa", to_say("HEPA vacuum attached")},
    {"has-handle", to_say("On a long handle")},
    {"has-folds", to_say("Folds at top and bottom")},
    {"has-dowel", to_say("Dowel at the lower edge")},
    {"has-beater-bar", to_say("With a beater bar")},
    {"gap", to_say("Gap above the floor")},
    {"fill", to_say("How full")},
    {"does-edges", to_say("Edges once more")},
    {"dirty-side", to_say("Dirty side")},
    {"days-before", to_say("Days before the start")},
    {"crosses", to_say("A second pass across")},
    {"closure", to_say("How it is closed")},
}};

}

std::string with_spaces(std::string_view key)
{
    std::string words(key);
    std::replace(words.begin(), words.end(), '-', ' ');
    return words;
}

std::string field_label(std::string_view key)
{
    for (const Label& label : labels)
        if (label.key == key) return std::string(text::say(label.label));
    std::string words(text::say(with_spaces(key)));
    if (!words.empty() && words[0] >= 'a' && words[0] <= 'z') words[0] = static_cast<char>(words[0] - 'a' + 'A');
    return words;
}

std::string word_label(std::string_view word) { return std::string(text::say(with_spaces(word))); }

}
