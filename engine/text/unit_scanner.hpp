#pragma once

#include "text/unit_table.hpp"

#include <optional>
#include <string>
#include <string_view>

namespace flapdoor::text {

/// Signs that people type or paste, brought to plain letters: micro, squared, cubed, degrees, odd spaces and minus.
std::string plain(std::string_view text);

constexpr bool is_digit(char c) { return c >= '0' && c <= '9'; }

/// Takes a text of numbers and units apart from the front.
class UnitScanner {
public:
    explicit UnitScanner(std::string_view text) : rest_(text) {}

    bool at_end() const { return rest_.empty(); }
    bool starts_with(char c) const { return rest_.starts_with(c); }
    bool take(char c);
    void skip_spaces();

    /// `12`, `0.5`, `1e-3`, `3/8`, `5 1/2`; nothing moves when there is none.
    std::optional<double> take_number();

    /// The longest unit of any kind that stands here, the wanted kind before others of the same spelling; null for none.
    const Unit* take_unit(Kind wanted);

    /// What stands where a unit should: up to the next space.
    std::string_view word() const { return rest_.substr(0, rest_.find(' ')); }

private:
    bool stands_here(std::string_view spelling) const;
    std::optional<double> take_decimal();
    std::optional<double> take_whole();
    std::optional<double> take_denominator();

    std::string_view rest_;
};

}
