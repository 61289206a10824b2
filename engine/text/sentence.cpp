#include "text/sentence.hpp"

#include "text/language.hpp"

namespace flapdoor::text {

namespace {

template <class Look> std::string put_together(const Sentence& sentence, const Look& look)
{
    if (sentence.parts.empty()) return std::string(look(sentence.pattern));    // a name may hold a brace
    std::vector<std::string> blanks;
    for (const Sentence& part : sentence.parts) blanks.push_back(put_together(part, look));
    return filled(look(sentence.pattern), blanks);
}

}

std::string Sentence::english() const
{
    return put_together(*this, [](std::string_view words) { return words; });
}

std::string Sentence::said() const
{
    return put_together(*this, [](std::string_view words) { return say(words); });
}

std::string as_sentence(std::string text)
{
    const auto at = [&](std::size_t i) { return i < text.size() ? static_cast<unsigned char>(text[i]) : 0U; };
    if (at(0) >= 'a' && at(0) <= 'z') text[0] = static_cast<char>(at(0) - 'a' + 'A');
    // Latin letters with accents, U+00E0 to U+00FE, but for the division sign.
    if (at(0) == 0xC3U && at(1) >= 0xA0U && at(1) <= 0xBEU && at(1) != 0xB7U) text[1] = static_cast<char>(at(1) - 0x20U);
    return text;
}

}
