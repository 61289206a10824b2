#pragma once

#include <bit>
#include <cstddef>
#include <cstdint>
#include <span>
#include <string>
#include <string_view>
#include <type_traits>

namespace flapdoor::inline core {

/// 64-bit fingerprint, fed piece by piece; the same on every build. Tells results apart; it is no protection against
/// somebody who forges a file on purpose.
class Fingerprint {
public:
    void add_word(std::uint64_t word);
    void add_text(std::string_view text);

    template <class T>
        requires std::is_arithmetic_v<T> || std::is_enum_v<T>
    void add(T value)
    {
        if constexpr (std::is_same_v<T, double>) add_word(std::bit_cast<std::uint64_t>(value));
        else if constexpr (std::is_same_v<T, float>) add_word(std::bit_cast<std::uint32_t>(value));
        else add_word(static_cast<std::uint64_t>(value));
    }

    /// A row of whole numbers, or of plain structs of them, as they lie in memory: many times faster than one by one. Machines
    /// that store the low byte first agree.
    template <class T>
        requires std::has_unique_object_representations_v<T>
    void add_all(std::span<const T> row)
    {
        static_assert(std::endian::native == std::endian::little);
        add_bytes(std::as_bytes(row));
    }

    std::uint64_t value() const;

private:
    void add_bytes(std::span<const std::byte> bytes);

    std::uint64_t state_ = 0x9E3779B97F4A7C15ULL;
    std::uint64_t words_ = 0;
};

std::uint64_t fingerprint_of(std::string_view text);

/// Sixteen lower-case hexadecimal digits.
std::string to_hex(std::uint64_t value);

}
