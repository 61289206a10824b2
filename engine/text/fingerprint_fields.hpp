#pragma once

#include "core/hash.hpp"
#include "text/writing.hpp"

#include <string_view>

namespace flapdoor::text {

/// Feeds a value into a fingerprint: keys, values as bits, the length of every list, the name of every alternative. Two
/// structs that differ in one field differ in their fingerprints; the order of fields() counts.
template <class T>
void fingerprint_fields(Fingerprint& fingerprint, const T& value)
{
    if constexpr (is_optional<T>) {
        fingerprint.add(value.has_value());
        if (value) fingerprint_fields(fingerprint, *value);
    }
    else if constexpr (is_list<T>) {
        fingerprint.add(value.size());
        for (const auto& entry : value) fingerprint_fields(fingerprint, static_cast<const typename T::value_type&>(entry));
    }
    else if constexpr (is_choice<T>) {
        std::visit(
            [&]<class A>(const A& alternative) {
                fingerprint.add_text(A::name);
                fingerprint_fields(fingerprint, alternative);
            },
            value);
    }
    else if constexpr (Described<T>) {
        T::fields(value, [&](std::string_view key, const auto& field, const auto&...) {
            fingerprint.add_text(key);
            fingerprint_fields(fingerprint, field);
        });
    }
    else if constexpr (SpellsItself<T>) fingerprint.add_text(plain_text(T::to_node(value)));
    else if constexpr (is_id<T>) fingerprint.add_text(value.name);
    else if constexpr (std::same_as<T, std::string>) fingerprint.add_text(value);
    else if constexpr (std::same_as<T, Picograms>) fingerprint.add(value.count);
    else if constexpr (Measured<T>) fingerprint.add(si_of(value));
    else fingerprint.add(value);
}

}
