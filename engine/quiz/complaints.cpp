#include "quiz/complaints.hpp"

#include "text/leaf_reading.hpp"
#include "text/nearest.hpp"
#include "text/quote.hpp"

#include <fmt/format.h>

#include <set>

namespace flapdoor::quiz {

void Complaints::add(const Place& where, std::string expected, const std::string& found)
{
    if (problems_.size() < text::most_problems) problems_.push_back({where, std::move(expected), fmt::format("{} in question {}", found, text::quoted(question_))});
}

void Complaints::unknown(const rules::Marked& word, std::string_view what, std::span<const std::string> known)
{
    const std::vector<std::string_view> words(known.begin(), known.end());
    const auto near = text::nearest(word.text, words);
    add(word.where, near ? fmt::format("a known {}, the nearest is \"{}\"", what, *near) : fmt::format("a known {}: {}", what, text::one_of(words)), text::quoted(word.text));
}

void Complaints::must_differ(std::string_view what, const std::vector<rules::Marked>& names)
{
    std::set<std::string> seen;
    for (const rules::Marked& name : names)
        if (!seen.insert(name.text).second) add(name.where, fmt::format("{} of its own", what), fmt::format("{} a second time", text::quoted(name.text)));
}

}
