#pragma once

#include "window/stage/input.hpp"

#include <deque>
#include <memory>

namespace sf {
class Event;
}

namespace flapdoor::window {

/// Turns the events of the window library into one FrameInput a frame. Events that one frame could not tell apart, such
/// as a press and its release, or a click and the move after it, are held back for the next frame, in order; so a click
/// faster than a frame is still a click. Needs no display.
class Bridge {
public:
    explicit Bridge(Point size);
    ~Bridge();
    Bridge(Bridge&&) noexcept;
    Bridge& operator=(Bridge&&) noexcept;

    /// Takes an event; keys that the library cannot name (its code -1) are left out, what they write is not.
    void feed(const sf::Event& event);

    /// What the next frame sees. @param seconds  since the frame before; kept between 0.1 ms and 250 ms
    FrameInput next_frame(float seconds);

    bool has_held_events() const; ///< true: ask for another frame soon
    bool wants_to_close() const { return wants_to_close_; }

private:
    bool take(const sf::Event& event, struct FrameSeen& seen);
    bool take_key(Key key, bool is_down, Modifiers with, struct FrameSeen& seen);
    bool take_button(std::size_t button, bool is_down, Point at, struct FrameSeen& seen);
    void let_go_of_everything();

    std::deque<sf::Event> held_;
    FrameInput now_;
    bool wants_to_close_ = false;
};

}
