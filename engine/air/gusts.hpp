#pragma once

#include "air/network.hpp"
#include "air/two_way_flow.hpp"

#include <array>
#include <cstddef>
#include <vector>

namespace flapdoor::air {

/// Wind on the sides of a house: the pressure on each wanders about its mean by about 1 Pa and remembers itself for about 30 s
/// (judgment). Long against the time a room needs to answer, so each moment is a steady one to the network of zones.
inline constexpr Pressure gust_rms{1.0};
inline constexpr Time gust_memory{30.0};

inline constexpr std::size_t house_sides = 4;

/// What the wind adds to the pressure outside each side at one moment.
using Gust = std::array<Pressure, house_sides>;

/// Moments that stand for all, each as likely as the next: sides independent, normal, with `gust_rms` on each, and with every
/// moment its opposite. Always the same ones.
const std::vector<Gust>& gusts();

/// Drafts about an opening: air that moves at 0.1 to 0.2 m/s and a kelvin between rooms make the pressure across it differ from place
/// to place and from breath to breath by about this much (judgment; 0.01 to 0.1 Pa). An open window of area A then swaps
/// 0.07 m/s A, the 0.025 A U of Warren 1977 (memory) in a wind of 3 m/s.
inline constexpr Pressure draft_rms{0.05};

/// Flow each way through a link with a pressure across it and drafts about it: what the pressure drives, and on top of it as
/// much back as forth of what the drafts carry against it.
TwoWayFlow with_drafts(const Link& link, Pressure across);

/// Mean flow each way through a link whose pressure difference is normal around `mean`, summed over 4 standard deviations either
/// way in even steps.
/// @param mean  positive pushes out
/// @param rms   0 or more; insists
TwoWayFlow mean_flow(const Link& link, Pressure mean, Pressure rms);

}
