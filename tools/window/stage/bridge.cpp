#include "window/stage/bridge.hpp"

#include <SFML/Window/Event.hpp>

#include <algorithm>
#include <optional>

namespace flapdoor::window {

/// What the frame under way has taken so far, to know what it can still tell apart.
struct FrameSeen {
    std::bitset<key_count> changed_keys;
    std::array<bool, 3> changed_buttons{};
    bool has_clicked = false;
    bool has_typed = false;
    bool has_pressed_key = false;
};

namespace {

std::optional<Key> key_of(sf::Keyboard::Key code)
{
    using K = sf::Keyboard;
    const auto shifted = [](Key first, int by) { return static_cast<Key>(static_cast<int>(first) + by); };
    if (code < 0 || code >= K::KeyCount) return std::nullopt;
    if (code >= K::A && code <= K::Z) return shifted(Key::a, code - K::A);
    if (code >= K::Num0 && code <= K::Num9) return shifted(Key::digit_0, code - K::Num0);
    if (code >= K::Numpad0 && code <= K::Numpad9) return shifted(Key::digit_0, code - K::Numpad0);
    switch (code) {
        case K::Tab:
            return Key::tab;
        case K::Left:
            return Key::left;
        case K::Right:
            return Key::right;
        case K::Up:
            return Key::up;
        case K::Down:
            return Key::down;
        case K::PageUp:
            return Key::page_up;
        case K::PageDown:
            return Key::page_down;
        case K::Home:
            return Key::home;
        case K::End:
            return Key::end;
        case K::Insert:
            return Key::insert;
        case K::Delete:
            return Key::erase;
        case K::Backspace:
            return Key::backspace;
        case K::Space:
            return Key::space;
        case K::Enter:
            return Key::enter;
        case K::Escape:
            return Key::escape;
        case K::Equal:
        case K::Add:
            return Key::plus;
        case K::Hyphen:
        case K::Subtract:
            return Key::minus;
        case K::F1:
            return Key::f1;
        case K::F5:
            return Key::f5;
        case K::F11:
            return Key::f11;
        default:
            return std::nullopt;
    }
}

std::optional<std::size_t> button_of(sf::Mouse::Button button)
{
    switch (button) {
        case sf::Mouse::Left:
            return 0;
        case sf::Mouse::Right:
            return 1;
        case sf::Mouse::Middle:
            return 2;
        default:
            return std::nullopt;
    }
}

bool any(const std::array<bool, 3>& flags) { return flags[0] || flags[1] || flags[2]; }

Point point(int x, int y) { return {static_cast<float>(x), static_cast<float>(y)}; }

}

Bridge::Bridge(Point size) { now_.size = size; }
Bridge::~Bridge() = default;
Bridge::Bridge(Bridge&&) noexcept = default;
Bridge& Bridge::operator=(Bridge&&) noexcept = default;

void Bridge::feed(const sf::Event& event)
{
    if (event.type == sf::Event::Closed)
        wants_to_close_ = true;
    else
        held_.push_back(event);
}

bool Bridge::has_held_events() const { return !held_.empty(); }

FrameInput Bridge::next_frame(float seconds)
{
    now_.seconds = std::clamp(seconds, 1e-4F, 0.25F);
    now_.wheel = 0.0F;
    now_.pressed.clear();
    now_.typed.clear();

    FrameSeen seen;
    while (!held_.empty() && take(held_.front(), seen)) held_.pop_front();
    return now_;
}

/// False when the frame cannot take this event without losing one that it already took.
bool Bridge::take(const sf::Event& event, FrameSeen& seen)
{
    switch (event.type) {
        case sf::Event::Resized:
            now_.size = {static_cast<float>(event.size.width), static_cast<float>(event.size.height)};
            return true;
        case sf::Event::LostFocus:
            let_go_of_everything();
            return true;
        case sf::Event::MouseLeft:
            now_.has_mouse = any(now_.buttons_down);
            return true; // a drag may leave the window
        case sf::Event::MouseMoved:
            if (seen.has_clicked) return false;
            now_.mouse = point(event.mouseMove.x, event.mouseMove.y);
            now_.has_mouse = true;
            return true;
        case sf::Event::MouseWheelScrolled:
            if (event.mouseWheelScroll.wheel == sf::Mouse::VerticalWheel) now_.wheel += event.mouseWheelScroll.delta;
            return true;
        case sf::Event::MouseButtonPressed:
        case sf::Event::MouseButtonReleased: {
            const auto button = button_of(event.mouseButton.button);
            return !button ||
                   take_button(*button, event.type == sf::Event::MouseButtonPressed, point(event.mouseButton.x, event.mouseButton.y), seen);
        }
        case sf::Event::KeyPressed:
        case sf::Event::KeyReleased: {
            const auto key = key_of(event.key.code);
            return !key || take_key(*key, event.type == sf::Event::KeyPressed, {event.key.shift, event.key.control, event.key.alt}, seen);
        }
        case sf::Event::TextEntered:
            if (event.text.unicode >= 0x20 && event.text.unicode != 0x7F) { // tab, return and the like are keys, not text
                now_.typed.push_back(static_cast<char32_t>(event.text.unicode));
                seen.has_typed = true;
            }
            return true;
        default:
            return true;
    }
}

bool Bridge::take_button(std::size_t button, bool is_down, Point at, FrameSeen& seen)
{
    const bool has_moved = seen.has_clicked && !(at == now_.mouse);
    if (seen.changed_buttons[button] || has_moved) return false;
    seen.changed_buttons[button] = true;
    seen.has_clicked = true;
    now_.mouse = at;
    now_.has_mouse = true;
    now_.buttons_down[button] = is_down;
    return true;
}

bool Bridge::take_key(Key key, bool is_down, Modifiers with, FrameSeen& seen)
{
    const auto bit = static_cast<std::size_t>(key);
    const bool is_repeat = is_down && now_.keys_down[bit];
    if (seen.changed_keys[bit] && !is_repeat) return false;
    if (is_down && (seen.has_typed || (seen.has_pressed_key && !(with == now_.modifiers)))) return false;
    if (!is_repeat) seen.changed_keys[bit] = true;
    now_.keys_down[bit] = is_down;
    now_.modifiers = with;
    if (is_down) {
        now_.pressed.push_back({key, with});
        seen.has_pressed_key = true;
    }
    return true;
}

void Bridge::let_go_of_everything()
{
    now_.keys_down.reset();
    now_.buttons_down.fill(false);
    now_.modifiers = {};
    now_.has_mouse = false;
}

}
