#pragma once

#include "window/widgets/choice.hpp"

#include <vector>

namespace flapdoor::window {

/// Small answers that flow like words, wrapped to the width left; one is chosen, or none yet. True when it changed.
bool choose_chip(Ui& ui, std::string_view name, std::span<const Option> options, std::optional<std::size_t>& chosen);

/// The same, any number of them chosen. @param chosen  one entry an option; insists
bool choose_chips(Ui& ui, std::string_view name, std::span<const Option> options, std::vector<bool>& chosen);

}
