#pragma once

#include <compare>
#include <string>

namespace flapdoor::inline core {

/// The name of a thing in a user's files, one type per kind of thing. Empty means "none named".
template <class Kind>
struct Id {
    std::string name;

    bool is_empty() const { return name.empty(); }
    friend auto operator<=>(const Id&, const Id&) = default;
};

}
