#pragma once

#include "source_file.hpp"

#include <map>
#include <set>
#include <sstream>
#include <utility>

namespace flapdoor::house {

/// One sentence of a catalog. Line breaks and quotation marks stand as in the file, with a backslash.
struct CatalogEntry {
    int line = 0;
    std::string context, one, many;             ///< `many` is empty for a sentence without a number
    std::vector<std::string> translated;
    bool is_fuzzy = false;
};

/// The sentences of a .po file; its head, which has no English, left out.
inline std::vector<CatalogEntry> catalog_entries(const std::string& text)
{
    std::vector<CatalogEntry> entries;
    CatalogEntry entry;
    std::string* last = nullptr;
    const auto end = [&] {
        if (!entry.one.empty()) entries.push_back(entry);
        entry = {};
        last = nullptr;
    };
    std::istringstream lines(text);
    std::string line;
    for (int number = 1; std::getline(lines, line); ++number) {
        if (line.starts_with("#,") && line.find("fuzzy") != std::string::npos) entry.is_fuzzy = true;
        if (line.empty()) end();
        const std::size_t open = line.find('"'), close = line.rfind('"');
        if (line.starts_with('#') || open == std::string::npos || close == open) continue;
        if (line.starts_with("msgctxt")) last = &entry.context;
        else if (line.starts_with("msgid_plural")) last = &entry.many;
        else if (line.starts_with("msgid")) entry.line = number, last = &entry.one;
        else if (line.starts_with("msgstr")) last = &entry.translated.emplace_back();
        if (last != nullptr) *last += line.substr(open + 1, close - open - 1);
    }
    end();
    return entries;
}

/// The blanks of a sentence: how often each occurs, those without a number counted together.
inline std::map<std::string, int> blanks(const std::string& text)
{
    std::map<std::string, int> found;
    for (std::size_t at = text.find('{'); at != std::string::npos; at = text.find('{', at + 1)) {
        const std::size_t end = text.find('}', at);
        if (end != std::string::npos) ++found[text.substr(at, end - at + 1)];
    }
    return found;
}

/// What stands before and behind the words and must be the same in every language: spaces, line breaks, the `>` of a column.
inline std::pair<std::string, std::string> edges(const std::string& text)
{
    constexpr std::string_view edge = " >";
    const std::size_t first = text.find_first_not_of(edge), last = text.find_last_not_of(edge);
    if (first == std::string::npos) return {text, {}};
    return {text.substr(0, first), text.substr(last + 1)};
}

inline Faults catalog_faults(const SourceFile& file)
{
    Faults faults;
    std::set<std::pair<std::string, std::string>> seen;
    for (const CatalogEntry& entry : catalog_entries(file.text)) {
        const auto fault = [&](const std::string& what) { faults.push_back(file.path + ":" + std::to_string(entry.line) + ": " + what + ": \"" + entry.one + "\""); };
        if (!seen.emplace(entry.context, entry.one).second) fault("twice");
        if (entry.is_fuzzy) fault("a guess that nobody has looked at");
        if (entry.translated.size() != (entry.many.empty() ? 1U : 2U)) fault("another number of forms");
        for (std::size_t i = 0; i < entry.translated.size(); ++i) {
            const std::string& spanish = entry.translated[i];
            const std::string& english = i == 0 ? entry.one : entry.many;
            if (spanish.empty()) fault("not translated");
            else if (blanks(spanish) != blanks(english)) fault("other blanks");
            else if (edges(spanish) != edges(english)) fault("other edges");
        }
    }
    return faults;
}

}
