#pragma once

#include "window/run/story.hpp"

#include <array>

namespace flapdoor::window {

/// Times faster than the clock.
inline constexpr std::array<int, 4> playing_speeds{30, 120, 600, 2400};
inline constexpr std::size_t calm_speed = 2;    ///< of these: twenty minutes in two seconds

/// Where the story is, and how it goes on.
class Playback {
public:
    explicit Playback(const Story& story) : story_(&story), now_(story.start) {}

    Time now() const { return now_; }
    bool is_playing() const { return is_playing_; }
    bool is_at_end() const { return now_ >= story_->end; }
    std::size_t speed() const { return speed_; } ///< in playing_speeds

    void set_speed(std::size_t speed);
    void play_or_pause(); ///< from the end it begins again
    void play() { is_playing_ = true; }
    void pause() { is_playing_ = false; }
    void advance(float seconds); ///< of the clock on the wall; stops at the end
    void go_to(Time time);       ///< kept between start and end
    void step_by(Time time) { go_to(now_ + time); }
    void to_card(int by);  ///< +1 to the start of the next card; -1 to the start of this one, or of the one before
    void to_fault(int by); ///< to the next or previous moment at which a fault happens; stays when there is none

private:
    const Story* story_;
    Time now_;
    bool is_playing_ = false;
    std::size_t speed_ = 1;
};

}
