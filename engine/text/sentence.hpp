#pragma once

#include <concepts>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace flapdoor::text {

/// A sentence that is kept, in a log or on a sheet, before anybody reads it: an English pattern and what goes into its blanks
/// ({} in order, {0} by number), so that both can be looked up when it is shown. A part is a sentence itself; a name or a
/// figure is one without blanks, which no catalog holds.
struct Sentence {
    std::string pattern;
    std::vector<Sentence> parts;

    Sentence() = default;
    Sentence(std::string words) : pattern(std::move(words)) {}
    Sentence(std::string_view words) : pattern(words) {}
    Sentence(const char* words) : pattern(words) {}
    Sentence(std::string_view words, std::vector<Sentence> with) : pattern(words), parts(std::move(with)) {}

    bool empty() const { return pattern.empty(); }
    std::string english() const;    ///< as it is compared
    std::string said() const;       ///< in the language in force

    friend bool operator==(const Sentence&, const Sentence&) = default;
};

/// A number as a part.
Sentence part_of(std::integral auto number) { return Sentence(std::to_string(number)); }
inline Sentence part_of(Sentence part) { return part; }

/// A kept sentence. Marks it for the collecting of sentences.
template <typename... Parts> Sentence sentence(std::string_view pattern, Parts&&... parts)
{
    return {pattern, std::vector<Sentence>{part_of(std::forward<Parts>(parts))...}};
}

/// First letter large; a sentence may begin with `card 5`, and a Spanish one with `ú`.
std::string as_sentence(std::string text);

}
