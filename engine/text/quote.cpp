#include "text/quote.hpp"

#include "text/utf8.hpp"

#include <fmt/format.h>

#include <cstdint>
#include <iterator>

namespace flapdoor::text {
namespace {

/// Controls (C0, C1) and the marks that turn the direction of writing: they can forge what a terminal shows.
bool is_unsafe(char32_t code)
{
    const auto within = [code](char32_t least, char32_t most) { return code >= least && code <= most; };
    return code < 0x20 || within(0x7F, 0x9F) || within(0x200B, 0x200F) || within(0x2028, 0x202E) || within(0x2066, 0x2069);
}

}

std::string printable(std::string_view text)
{
    std::string shown;
    while (!text.empty()) {
        const Letter letter = first_letter(text);
        if (letter.code == 0xFFFD) shown += '?';
        else if (letter.code == '\n') shown += "\\n";
        else if (is_unsafe(letter.code)) fmt::format_to(std::back_inserter(shown), "\\u{:04X}", static_cast<std::uint32_t>(letter.code));
        else shown += text.substr(0, letter.bytes);
        text.remove_prefix(letter.bytes);
    }
    return shown;
}

std::string quoted(std::string_view text, std::size_t most)
{
    const bool is_cut = columns(text.substr(0, 4 * most + 4)) > most;
    const std::string shown = printable(is_cut ? first_columns(text, most) : text);
    return fmt::format("\"{}{}\"", shown, is_cut ? "..." : "");
}

std::string one_of(std::span<const std::string_view> words)
{
    constexpr std::size_t most = 12;
    std::string list;
    for (std::size_t i = 0; i < words.size() && i < most; ++i) {
        if (i > 0) list += i + 1 == words.size() ? " or " : ", ";
        list += fmt::format("\"{}\"", words[i]);
    }
    if (words.size() > most) list += fmt::format(" and {} more", words.size() - most);
    return list;
}

}
