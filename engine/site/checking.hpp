#pragma once

#include "site/effects.hpp"

#include <functional>

namespace flapdoor::site {

/// How a verification wipe is made.
struct WipeKind {
    bool is_proper_cloth = true;    ///< wet disposable cloth; on floors with a long handle
    bool folds_used_cloth = false;  ///< the same cloth folded to an unused face
    bool is_named = false;          ///< the card names the item; else it means whatever is due
};

/// Wipes every chosen item whose wipe is due and compares with the card. A wipe that the rule does not count (not by the
/// certified renovator, before the inspection passed, wrong cloth, re-cleaning left out) changes no item's state. An item
/// that waits for its dry cloth may be wiped wet once more when it is named: that tells nothing, and it has to dry again.
Done wipe_items(Site& site, const Team& by, const WipeKind& how, const std::function<bool(const Item&)>& is_chosen);

/// Ends the check of items that failed twice: counts only an hour or more after the second darker cloth, on a dry surface.
Done dry_wipe_items(Site& site, const Team& by, bool is_dry_cloth);

/// Cleans what failed a wipe or showed dust: vacuum, then damp wipe or mop; either may be left out.
Done clean_again(Site& site, const Team& by, const job::Supply* vacuum_with, bool wipes);

/// Divides the floor into another number of sections, before its first wipe.
void divide_floor(Site& site, int sections);

/// Notes when the last item has passed.
void settle_verification(Site& site);

/// Forgets what was verified: dust was made again.
void reopen_verification(Site& site);

}
