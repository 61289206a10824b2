#include "text/utf8.hpp"

#include <array>

namespace flapdoor::text {
namespace {

constexpr char32_t broken = 0xFFFD;

bool is_combining(char32_t code) { return code >= 0x300 && code <= 0x36F; }

std::size_t announced_bytes(unsigned char lead)
{
    if (lead < 0x80) return 1;
    if (lead >= 0xC2 && lead < 0xE0) return 2;
    if (lead >= 0xE0 && lead < 0xF0) return 3;
    if (lead >= 0xF0 && lead < 0xF5) return 4;
    return 0;
}

}

Letter first_letter(std::string_view text)
{
    if (text.empty()) return {};
    const auto lead = static_cast<unsigned char>(text[0]);
    const std::size_t bytes = announced_bytes(lead);
    if (bytes == 1) return {lead, 1};
    if (bytes == 0 || bytes > text.size()) return {broken, 1};

    char32_t code = lead & (0x7FU >> bytes);
    for (std::size_t i = 1; i < bytes; ++i) {
        const auto next = static_cast<unsigned char>(text[i]);
        if ((next & 0xC0U) != 0x80U) return {broken, 1};
        code = (code << 6) | (next & 0x3FU);
    }
    constexpr std::array<char32_t, 5> least{0, 0, 0x80, 0x800, 0x10000};
    const bool is_surrogate = code >= 0xD800 && code < 0xE000;
    if (code < least[bytes] || code > 0x10FFFF || is_surrogate) return {broken, 1};
    return {code, bytes};
}

std::size_t columns(std::string_view text)
{
    std::size_t count = 0;
    while (!text.empty()) {
        const Letter letter = first_letter(text);
        if (!is_combining(letter.code)) ++count;
        text.remove_prefix(letter.bytes);
    }
    return count;
}

std::string_view first_columns(std::string_view text, std::size_t most)
{
    std::size_t count = 0;
    std::size_t end = 0;
    while (end < text.size()) {
        const Letter letter = first_letter(text.substr(end));
        if (!is_combining(letter.code) && ++count > most) break;
        end += letter.bytes;
    }
    return text.substr(0, end);
}

}
