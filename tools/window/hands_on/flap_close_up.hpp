#pragma once

#include "window/hands_on/close_up.hpp"
#include "window/hands_on/flap_view.hpp"

#include "job/scenario.hpp"
#include "site/flap_moves.hpp"

namespace flapdoor::window {

/// Hanging a flap door move by move. What is done here sets the parameters of the card; what a wrong or missing move does
/// shows at once, worked out by the rigid-body section.
class FlapCloseUp {
public:
    /// @param doorway  the opening it is hung in
    FlapCloseUp(const job::Opening& doorway, const job::HangFlap& card);

    CloseUpEnd play(Ui& ui, const Box& box, bool keeps_still);

    /// The card as the moves make it; opening and sheeting as it came.
    job::HangFlap card() const;
    const site::FlapInHand& in_hand() const { return in_hand_; }
    FlapView& view() { return view_; }
    bool is_moving() const { return view_.is_moving(); }

private:
    mechanics::FlapDoor door() const;
    void drawing(Ui& ui, const Box& box);
    CloseUpEnd sheet(Ui& ui, const Box& box);

    job::Opening doorway_;
    job::HangFlap card_;
    site::FlapInHand in_hand_;
    FlapView view_;
    bool is_looked_over_ = false;
};

}
