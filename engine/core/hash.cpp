#include "core/hash.hpp"

#define XXH_INLINE_ALL
#include <xxhash.h>

namespace flapdoor::inline core {

void Fingerprint::add_word(std::uint64_t word)
{
    state_ = XXH64(&word, sizeof word, state_);
    ++words_;
}

void Fingerprint::add_text(std::string_view text)
{
    add_word(text.size());
    state_ = XXH64(text.data(), text.size(), state_);
}

void Fingerprint::add_bytes(std::span<const std::byte> bytes)
{
    add_word(bytes.size());
    state_ = XXH64(bytes.data(), bytes.size(), state_);
}

std::uint64_t Fingerprint::value() const { return XXH64(&words_, sizeof words_, state_); }

std::uint64_t fingerprint_of(std::string_view text)
{
    Fingerprint print;
    print.add_text(text);
    return print.value();
}

std::string to_hex(std::uint64_t value)
{
    std::string text(16, '0');
    for (int i = 15; i >= 0; --i, value >>= 4) text[static_cast<std::size_t>(i)] = "0123456789abcdef"[value & 15U];
    return text;
}

}
