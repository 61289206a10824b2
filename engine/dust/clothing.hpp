#pragma once

#include "core/quantity.hpp"
#include "dust/band.hpp"

#include <cstdint>

namespace flapdoor::dust {

/// What a person does while dust gets on their clothes.
enum class Stirring : std::uint8_t { walking, working, vacuuming };

/// Share of the reachable floor dust that gets onto one person's clothes: measured 0.07 to 6.6 % in 20 minutes, from walking
/// on a clean hard floor to vacuuming a dirty carpet (carpet x2.7, dirty x2.4). Work lies between them (judgment).
/// Source: clothing study with fluorescent particles, PMC8620412, abstract.
/// @param time  0 or more; the share never passes 1
double clothing_gain(Stirring stirring, bool on_carpet, bool is_dirty, Time time);

/// Share of it that falls off again while walking about: 47 % in the first hour, and so on (same study).
double clothing_loss(Time walking);

/// Shares taken off by vacuuming the clothes, kept in a coverall rolled inward, wiped off a tool (judgment).
inline constexpr Band clothing_vacuumed{0.90, 0.70, 0.97};
inline constexpr Band kept_in_coverall{0.95, 0.85, 0.99};
inline constexpr Band wiped_off_tool{0.90, 0.70, 0.98};

/// Upward surface of a hand tool or a small machine; it carries the loading of the room.
inline constexpr Area tool_surface{0.05};

}
