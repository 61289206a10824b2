#pragma once

#include "text/language.hpp"

#include <string>
#include <string_view>

namespace flapdoor::window {

/// Stands on every screen of a run.
inline constexpr std::string_view model_caution = text::to_say("Training model, not a clearance prediction");

inline constexpr std::string_view loading_unit = "\xC2\xB5g/ft\xC2\xB2";
inline constexpr std::string_view air_unit = "\xC2\xB5g/m\xC2\xB3";

/// Units as print shows them: `ug/ft2` becomes micro sign and raised figures.
std::string with_signs(std::string text);

}
