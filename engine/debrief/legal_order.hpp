#pragma once

#include "debrief/report.hpp"

#include <string>
#include <vector>

namespace flapdoor::debrief {

/// A legal order nearest to the run's own, a line a stretch: "Steps 1 to 16 as they are", "Move here: 18 Post warning signs",
/// "Put in: Mist the sheeting". Empty when every order holds.
std::vector<std::string> legal_order_lines(const Report& report);

/// The same for the terminal, under its title; empty when every order holds.
std::string legal_order_text(const Report& report, std::size_t width);

}
