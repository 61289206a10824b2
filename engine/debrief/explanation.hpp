#pragma once

#include "debrief/what_if.hpp"

#include <string>

namespace flapdoor::debrief {

/// Why a figure of a what-if looks better with the mistake than without it, in the language spoken; empty where none does by more than a
/// trifle. People who know the trade expect a repair to help: where it does not, the reader is owed a reason, even if it is luck.
std::string why_better_with_it(const WhatIf& what_if);

}
