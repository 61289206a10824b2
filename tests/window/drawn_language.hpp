#pragma once

// Whether what a frame shows is all in one language: every text that was drawn is held against the catalog.

#include "../house/catalog.hpp"

#include <cctype>
#include <set>
#include <string>
#include <string_view>
#include <vector>

namespace flapdoor::window {

/// Sentences of the catalog in both languages, and how to tell that a drawn text is one of the wrong one.
class TwoLanguages {
public:
    TwoLanguages()
    {
        for (const house::CatalogEntry& entry : house::catalog_entries(house::read(std::string(FLAPDOOR_SOURCE_DIR) + "/assets/translations/es.po")))
            for (std::size_t i = 0; i < entry.translated.size(); ++i) {
                const std::string english = plain(i == 0 ? entry.one : entry.many), spanish = plain(entry.translated[i]);
                if (spanish.empty()) continue;
                texts_[0].insert(english);
                texts_[1].insert(spanish);
            }
        for (std::size_t i = 0; i < 2; ++i)
            for (const std::string& text : texts_[i])
                if (!texts_[1 - i].contains(text) && letters(text) >= 3) strangers_[1 - i].push_back(text);
    }

    /// The sentence of the other language that stands in the text; empty when there is none.
    /// @param spoken  0 English, 1 Spanish
    std::string stranger_in(const std::string& drawn, std::size_t spoken) const
    {
        if (texts_[spoken].contains(drawn)) return {};
        for (const std::string& stranger : strangers_[spoken])
            if (stranger.find('{') == std::string::npos ? stands_in(stranger, drawn) : fits(stranger, drawn)) return stranger;
        return {};
    }

    std::size_t size() const { return strangers_[1].size(); }

private:
    static std::size_t letters(std::string_view text)
    {
        std::size_t count = 0;
        bool is_in_blank = false;
        for (const char c : text) {
            if (c == '{') is_in_blank = true;
            else if (c == '}') is_in_blank = false;
            else if (!is_in_blank && (static_cast<unsigned char>(c) >= 0x80 || std::isalpha(static_cast<unsigned char>(c)) != 0)) ++count;
        }
        return count;
    }

    /// Without the backslashes of the file.
    static std::string plain(const std::string& text)
    {
        std::string out;
        for (std::size_t i = 0; i < text.size(); ++i) {
            if (text[i] == '\\' && i + 1 < text.size()) ++i, out += text[i] == 'n' ? '\n' : text[i];
            else out += text[i];
        }
        return out;
    }

    static bool is_letter(char c) { return static_cast<unsigned char>(c) >= 0x80 || std::isalnum(static_cast<unsigned char>(c)) != 0; }

    /// Whole; or, when it is more than one word, as a part that begins and ends at a word's edge. A single word must be all between two separators.
    static bool stands_in(const std::string& sentence, const std::string& drawn)
    {
        if (sentence == drawn) return true;
        const bool is_one_word = sentence.find(' ') == std::string::npos;
        for (std::size_t at = drawn.find(sentence); at != std::string::npos; at = drawn.find(sentence, at + 1)) {
            const std::size_t end = at + sentence.size();
            if (!is_one_word) {
                const bool begins = at == 0 || !is_letter(drawn[at - 1]);
                if (begins && (end == drawn.size() || !is_letter(drawn[end]))) return true;
                continue;
            }
            constexpr std::string_view before = ":,(", after = ",)";
            const bool begins = at == 0 || (at >= 2 && drawn[at - 1] == ' ' && (before.find(drawn[at - 2]) != std::string_view::npos || static_cast<unsigned char>(drawn[at - 2]) == 0xB7));
            if (begins && (end == drawn.size() || after.find(drawn[end]) != std::string_view::npos || drawn.compare(end, 2, " \xC2") == 0)) return true;
        }
        return false;
    }

    /// Whether the text is the pattern with its blanks filled. Patterns of a few letters fit too much.
    static bool fits(std::string_view pattern, std::string_view drawn)
    {
        if (letters(pattern) < 6) return false;
        std::size_t at = 0, place = 0;
        bool is_after_blank = false;
        while (place <= pattern.size()) {
            const std::size_t blank = std::min(pattern.find('{', place), pattern.size());
            const std::string_view piece = pattern.substr(place, blank - place);
            const std::size_t found = is_after_blank ? (blank == pattern.size() ? last(drawn, piece, at) : drawn.find(piece, at)) : drawn.substr(0, piece.size()) == piece ? 0 : std::string_view::npos;
            if (found == std::string_view::npos) return false;
            at = found + piece.size();
            if (blank == pattern.size()) return at == drawn.size();
            place = pattern.find('}', blank) + 1;
            is_after_blank = true;
        }
        return true;
    }
    static std::size_t last(std::string_view drawn, std::string_view piece, std::size_t from)
    {
        return drawn.size() >= from + piece.size() && drawn.substr(drawn.size() - piece.size()) == piece ? drawn.size() - piece.size() : std::string_view::npos;
    }

    std::set<std::string> texts_[2];
    std::vector<std::string> strangers_[2];     ///< [language spoken] of the other one, and of it alone
};

}
