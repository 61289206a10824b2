#pragma once

#include "window/base/geometry.hpp"

#include <array>
#include <bitset>
#include <cstddef>
#include <string>
#include <vector>

namespace flapdoor::window {

/// Keys that the window knows. Letters and digits are for shortcuts; writing arrives as text.
enum class Key : int {
    tab,
    left,
    right,
    up,
    down,
    page_up,
    page_down,
    home,
    end,
    insert,
    erase,
    backspace,
    space,
    enter,
    escape,
    a,
    b,
    c,
    d,
    e,
    f,
    g,
    h,
    i,
    j,
    k,
    l,
    m,
    n,
    o,
    p,
    q,
    r,
    s,
    t,
    u,
    v,
    w,
    x,
    y,
    z,
    digit_0,
    digit_1,
    digit_2,
    digit_3,
    digit_4,
    digit_5,
    digit_6,
    digit_7,
    digit_8,
    digit_9,
    plus,
    minus,
    f1,
    f5,
    f11,
};
inline constexpr std::size_t key_count = static_cast<std::size_t>(Key::f11) + 1;

struct Modifiers {
    bool shift = false;
    bool control = false;
    bool alt = false;

    friend constexpr bool operator==(Modifiers, Modifiers) = default;
};

struct KeyPress {
    Key key = Key::tab;
    Modifiers with;

    friend constexpr bool operator==(KeyPress, KeyPress) = default;
};

enum class MouseButton : int { left, right, middle };

/// What the person did since the frame before, as one frame sees it.
struct FrameInput {
    Point size;                   ///< of the drawing area, pixels
    float seconds = 1.0F / 60.0F; ///< since the frame before, above 0
    bool has_mouse = false;       ///< false when the pointer is outside
    Point mouse;
    std::array<bool, 3> buttons_down{}; ///< by MouseButton
    float wheel = 0.0F;                 ///< notches, up is positive
    std::bitset<key_count> keys_down;
    Modifiers modifiers;
    std::vector<KeyPress> pressed; ///< in the order they came, repeats of a held key included
    std::u32string typed;
};

}
