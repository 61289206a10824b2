#pragma once

#include "window/hands_on/bag_close_up.hpp"
#include "window/hands_on/flap_close_up.hpp"

#include "job/work_plan.hpp"
#include "site/site.hpp"

#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace flapdoor::window {

/// A card that is done move by move in a close-up instead of on its form: hanging the flap door, closing a bag.
class ByHand {
public:
    /// What the button to it says, in the language in force; empty for a card that has no close-up, or does not yet name what
    /// it is done to.
    static std::string label_for(const site::Site& site, const job::Step& step);

    /// Insists that label_for is not empty.
    ByHand(const site::Site& site, const job::Step& step);

    CloseUpEnd play(Ui& ui, const Box& box, bool keeps_still);

    /// What the moves say, first to last: the card itself, and one to vacuum the outside of a bag before or after it.
    std::vector<job::Step> steps() const;
    bool is_moving() const;

private:
    std::variant<FlapCloseUp, BagCloseUp> view_;
};

}
