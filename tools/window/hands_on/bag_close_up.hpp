#pragma once

#include "window/hands_on/close_up.hpp"

#include "job/steps/close_bag.hpp"
#include "site/bag_moves.hpp"

namespace flapdoor::window {

/// Closing a bag move by move. What is done here sets the parameters of the card; what it does to the dust shows at once.
class BagCloseUp {
public:
    /// @param fill     how full the bag is
    /// @param can_fill the fill is set here as well, for the card that fills the bag
    BagCloseUp(const job::CloseBag& card, double fill, bool can_fill);

    CloseUpEnd play(Ui& ui, const Box& box);

    /// The card as the moves make it; bag and vacuum as it came.
    job::CloseBag card() const;
    double fill() const { return in_hand_.fill; }
    /// The outside was vacuumed: a card of its own, before or after the closing.
    bool vacuums_outside() const;
    bool vacuums_too_early() const;
    const site::BagInHand& in_hand() const { return in_hand_; }

private:
    void drawing(Ui& ui, const Box& box);
    void figures(Ui& ui, const site::BagHandled& handled);
    CloseUpEnd sheet(Ui& ui, const Box& box);

    job::CloseBag card_;
    site::BagInHand in_hand_;
    bool can_fill_ = false;
    bool is_looked_over_ = false;
};

}
