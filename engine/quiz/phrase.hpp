#pragma once

#include "core/result.hpp"
#include "text/document.hpp"

#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace flapdoor::quiz {

/// A text in both languages, `{ en = "Six feet", es = "Seis pies" }`; a plain `"6 ft"` reads alike in both. Blanks such as
/// {area} are filled when the text is shown.
struct Phrase {
    std::string en;
    std::string es;     ///< empty: looked up in the catalog of the language in force, English where that holds nothing
    std::map<std::string, Phrase> blanks;
    Place where;        ///< in its file

    bool is_empty() const { return en.empty(); }

    static void from_node(const text::Node& node, Phrase& into, Problems& problems);
    static text::Node to_node(const Phrase& phrase);
};

/// The same text, whatever was filled in; where it stands in a file does not count.
bool operator==(const Phrase& a, const Phrase& b);

/// A text of our own or of a scenario, which a catalog may hold in other languages.
Phrase phrase(std::string_view english);

/// In the language in force, blanks filled.
std::string shown(const Phrase& phrase);

/// In English, blanks filled: for what is kept or compared.
std::string in_english(const Phrase& phrase);

/// Names of the blanks in a text, in their order, each once; `{{` is a brace.
std::vector<std::string> blanks_in(std::string_view text);

}
