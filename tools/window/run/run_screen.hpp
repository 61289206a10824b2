#pragma once

#include "window/debrief/compare_panel.hpp"
#include "window/debrief/reference_run.hpp"
#include "window/debrief/swipe_panel.hpp"
#include "window/debrief/what_if_job.hpp"
#include "window/hands_on/flap_view.hpp"
#include "window/run/header.hpp"
#include "window/run/playback.hpp"
#include "window/run/screen_state.hpp"
#include "window/stage/ui.hpp"

#include <memory>

namespace flapdoor::window {

/// The screen on which a finished run is played. It changes nothing but what it shows.
class RunScreen {
public:
    explicit RunScreen(std::shared_ptr<const Story> story);

    /// The careful plan of the same drill: the run can then be laid beside it.
    void offer_reference(debrief::Inputs careful);
    ReferenceRun* reference() { return reference_.get(); } ///< null when none is offered
    WhatIfJob& what_ifs() { return what_ifs_; }

    /// One frame; goes between Ui::begin_frame and Ui::end_frame.
    void play(Ui& ui);

    bool wants_to_quit() const { return state_.wants_to_quit; }
    /// True while the picture changes by itself.
    bool is_moving() const { return playback_.is_playing() || (reference_ && reference_->is_under_way()) || what_ifs_.is_under_way() || (state_.mode == PlanMode::flap && flap_.is_moving()) || (state_.strip == Strip::flap && state_.strip_flap.is_moving()); }
    FlapView& flap() { return flap_; }

    const Story& story() const { return *story_; }
    Playback& playback() { return playback_; }
    ScreenState& state() { return state_; }

private:
    void take_keys_first(Ui& ui);
    void take_keys_left(Ui& ui);
    void tabs(Ui& ui, const Layout& layout);
    void page(Ui& ui, const Layout& layout, const Moment& moment);
    void drawing(Ui& ui, Box box, bool is_wide, const Moment& moment);
    void section(Ui& ui, const Box& box, const Moment& moment);
    void what_if(Ui& ui, const Box& box);
    const Story* other();

    std::shared_ptr<const Story> story_;
    Playback playback_;
    ScreenState state_;
    std::unique_ptr<ReferenceRun> reference_;
    WhatIfJob what_ifs_;
    SwipePanel swipe_;
    ComparePanel compare_;
    FlapView flap_;
};

}
