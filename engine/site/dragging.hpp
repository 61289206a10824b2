#pragma once

#include "site/site.hpp"

namespace flapdoor::site {

/// Somebody alone with a bag that is more than half full drags it; two carry it between them (judgment).
bool is_dragged(const Bag& bag, std::size_t people);

/// Drags a bag over the floor of a zone: its skin takes up dust like a sole, leaves some of its own, and what it bumps
/// against shakes some off.
/// @param way_out  of what the skin leaves where it is outside the work area; what it takes up there counts as carried back
void drag(Site& site, Bag& bag, std::size_t zone, plan::Point from, plan::Point to, dust::Pathway way_out);

}
