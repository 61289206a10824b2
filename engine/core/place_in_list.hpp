#pragma once

#include <cstddef>

namespace flapdoor::inline core {

/// A number that is not below zero as a place in a list: `list[at(card)]`.
constexpr std::size_t at(int number) { return static_cast<std::size_t>(number); }

}
