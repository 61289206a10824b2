#pragma once

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

    /// One frame; goes between Ui::begin_frame and Ui::end_frame.
    void play(Ui& ui);

    bool wants_to_quit() const { return state_.wants_to_quit; }
    /// True while the picture changes by itself.
    bool is_moving() const { return playback_.is_playing(); }

    const Story& story() const { return *story_; }
    Playback& playback() { return playback_; }
    ScreenState& state() { return state_; }

private:
    void take_keys_first(Ui& ui);
    void take_keys_left(Ui& ui);
    void tabs(Ui& ui, const Layout& layout);
    void page(Ui& ui, const Layout& layout, const Moment& moment);

    std::shared_ptr<const Story> story_;
    Playback playback_;
    ScreenState state_;
};

}
