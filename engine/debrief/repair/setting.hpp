#pragma once

#include "debrief/repair/shelf.hpp"

#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace flapdoor::debrief {

/// A setting with which a card is no longer what a spot forbids: a yes or no turned round, else what the pattern has, else another word
/// of the same list. Empty when none is known.
std::vector<std::pair<std::string, text::Node>> settings_against(const Shelf& shelf, int card, const rules::Spot& spot, const std::string& object);

/// The kind of card whose settings or absence decide a measure that is taken at another kind of card; empty when the card at which it
/// is measured decides itself.
std::string_view deciding_step(std::string_view measure);

}
