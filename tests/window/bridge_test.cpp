#include "window/stage/bridge.hpp"

#include <SFML/Window/Event.hpp>
#include <catch2/catch.hpp>

using namespace flapdoor::window;

namespace {

sf::Event mouse_button(bool is_down, int x, int y, sf::Mouse::Button button = sf::Mouse::Left)
{
    sf::Event event{};
    event.type = is_down ? sf::Event::MouseButtonPressed : sf::Event::MouseButtonReleased;
    event.mouseButton.button = button;
    event.mouseButton.x = x;
    event.mouseButton.y = y;
    return event;
}

sf::Event mouse_move(int x, int y)
{
    sf::Event event{};
    event.type = sf::Event::MouseMoved;
    event.mouseMove.x = x;
    event.mouseMove.y = y;
    return event;
}

sf::Event key(bool is_down, sf::Keyboard::Key code, bool has_shift = false)
{
    sf::Event event{};
    event.type = is_down ? sf::Event::KeyPressed : sf::Event::KeyReleased;
    event.key.code = code;
    event.key.shift = has_shift;
    return event;
}

sf::Event typed(sf::Uint32 code)
{
    sf::Event event{};
    event.type = sf::Event::TextEntered;
    event.text.unicode = code;
    return event;
}

sf::Event plain(sf::Event::EventType type)
{
    sf::Event event{};
    event.type = type;
    return event;
}

constexpr float tick = 1.0F / 60.0F;

}

TEST_CASE("a press and its release within one frame are seen one after the other")
{
    Bridge bridge({100.0F, 100.0F});
    bridge.feed(mouse_button(true, 10, 20));
    bridge.feed(mouse_button(false, 10, 20));

    const FrameInput first = bridge.next_frame(tick);
    CHECK(first.buttons_down[0]);
    CHECK(first.mouse == Point{10.0F, 20.0F});
    CHECK(bridge.has_held_events());
    CHECK_FALSE(bridge.next_frame(tick).buttons_down[0]);
    CHECK_FALSE(bridge.has_held_events());
}

TEST_CASE("a double click that arrives in one batch stays two clicks")
{
    Bridge bridge({100.0F, 100.0F});
    for (const bool is_down : {true, false, true, false}) bridge.feed(mouse_button(is_down, 5, 5));
    for (const bool is_down : {true, false, true, false}) CHECK(bridge.next_frame(tick).buttons_down[0] == is_down);
}

TEST_CASE("a click is seen where it was made, not where the mouse went next")
{
    Bridge bridge({100.0F, 100.0F});
    bridge.feed(mouse_move(1, 1));
    bridge.feed(mouse_move(30, 30));
    bridge.feed(mouse_button(true, 30, 30));
    bridge.feed(mouse_move(80, 80));
    bridge.feed(mouse_button(false, 80, 80));

    const FrameInput down = bridge.next_frame(tick);
    CHECK(down.mouse == Point{30.0F, 30.0F});
    CHECK(down.buttons_down[0]);
    const FrameInput up = bridge.next_frame(tick);
    CHECK(up.mouse == Point{80.0F, 80.0F});
    CHECK_FALSE(up.buttons_down[0]);
}

TEST_CASE("a key that the library cannot name does no harm, and what it writes arrives")
{
    Bridge bridge({100.0F, 100.0F});
    bridge.feed(key(true, sf::Keyboard::Unknown)); // -1, as every accented key sends
    bridge.feed(typed(0x00E1));
    bridge.feed(key(false, sf::Keyboard::Unknown));
    const FrameInput seen = bridge.next_frame(tick);
    CHECK(seen.pressed.empty());
    CHECK(seen.keys_down.none());
    CHECK(seen.typed == U"\u00E1");
    CHECK_FALSE(bridge.has_held_events());
}

TEST_CASE("a fast press of a key is seen down, then up")
{
    Bridge bridge({100.0F, 100.0F});
    bridge.feed(key(true, sf::Keyboard::Space));
    bridge.feed(key(false, sf::Keyboard::Space));
    const auto space = static_cast<std::size_t>(Key::space);
    const FrameInput down = bridge.next_frame(tick);
    CHECK(down.keys_down[space]);
    CHECK(down.pressed == std::vector<KeyPress>{{Key::space, {}}});
    const FrameInput up = bridge.next_frame(tick);
    CHECK_FALSE(up.keys_down[space]);
    CHECK(up.pressed.empty());
}

TEST_CASE("a held key repeats as presses, with its modifiers")
{
    Bridge bridge({100.0F, 100.0F});
    for (int i = 0; i < 3; ++i) bridge.feed(key(true, sf::Keyboard::Right, true));
    const FrameInput seen = bridge.next_frame(tick);
    CHECK(seen.pressed == std::vector<KeyPress>(3, {Key::right, {.shift = true}}));
    CHECK(seen.modifiers.shift);
}

TEST_CASE("quick typing keeps its order: a letter, backspace, another letter")
{
    Bridge bridge({100.0F, 100.0F});
    bridge.feed(key(true, sf::Keyboard::A));
    bridge.feed(typed('a'));
    bridge.feed(key(true, sf::Keyboard::Backspace));
    bridge.feed(typed(8));
    bridge.feed(key(true, sf::Keyboard::B));
    bridge.feed(typed('b'));

    std::u32string written;
    for (int i = 0; i < 4; ++i) {
        const FrameInput seen = bridge.next_frame(tick);
        for (const KeyPress& press : seen.pressed)
            if (press.key == Key::backspace) written.pop_back();
        written += seen.typed;
    }
    CHECK(written == U"b");
}

TEST_CASE("control characters are keys, not text")
{
    Bridge bridge({100.0F, 100.0F});
    for (const sf::Uint32 code : {8U, 9U, 13U, 27U, 127U}) bridge.feed(typed(code));
    CHECK(bridge.next_frame(tick).typed.empty());
}

TEST_CASE("losing the window lets go of everything")
{
    Bridge bridge({100.0F, 100.0F});
    bridge.feed(mouse_button(true, 5, 5));
    bridge.feed(key(true, sf::Keyboard::LAlt));
    bridge.feed(key(true, sf::Keyboard::Left));
    CHECK(bridge.next_frame(tick).buttons_down[0]);
    bridge.feed(plain(sf::Event::LostFocus));
    const FrameInput after = bridge.next_frame(tick);
    CHECK_FALSE(after.buttons_down[0]);
    CHECK(after.keys_down.none());
    CHECK_FALSE(after.has_mouse);
}

TEST_CASE("a drag may leave the window, a free pointer that leaves is gone")
{
    Bridge bridge({100.0F, 100.0F});
    bridge.feed(mouse_button(true, 5, 5));
    bridge.feed(plain(sf::Event::MouseLeft));
    CHECK(bridge.next_frame(tick).has_mouse);
    bridge.feed(mouse_button(false, 5, 5));
    CHECK(bridge.next_frame(tick).has_mouse);
    bridge.feed(plain(sf::Event::MouseLeft));
    CHECK_FALSE(bridge.next_frame(tick).has_mouse);
}

TEST_CASE("wheel notches of one frame add up and are gone in the next")
{
    Bridge bridge({100.0F, 100.0F});
    sf::Event wheel = plain(sf::Event::MouseWheelScrolled);
    wheel.mouseWheelScroll.wheel = sf::Mouse::VerticalWheel;
    wheel.mouseWheelScroll.delta = 1.0F;
    bridge.feed(wheel);
    bridge.feed(wheel);
    CHECK(bridge.next_frame(tick).wheel == 2.0F);
    CHECK(bridge.next_frame(tick).wheel == 0.0F);
}

TEST_CASE("size, closing and time reach the frame")
{
    Bridge bridge({100.0F, 100.0F});
    sf::Event resized = plain(sf::Event::Resized);
    resized.size.width = 640;
    resized.size.height = 480;
    bridge.feed(resized);
    CHECK_FALSE(bridge.wants_to_close());
    bridge.feed(plain(sf::Event::Closed));
    CHECK(bridge.wants_to_close());
    const FrameInput seen = bridge.next_frame(9.0F);
    CHECK(seen.size == Point{640.0F, 480.0F});
    CHECK(seen.seconds == 0.25F);
    CHECK(bridge.next_frame(0.0F).seconds > 0.0F);
}
