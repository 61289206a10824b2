#pragma once

#include <string_view>
#include <utility>
#include <vector>

namespace flapdoor::window {

class Ui;

/// A key and what it does, both in English; said when shown.
using KeyLine = std::pair<std::string_view, std::string_view>;

/// What fills the window. One is on at a time; it asks its Shell for another one.
class Screen {
public:
    Screen() = default;
    virtual ~Screen() = default;
    Screen(const Screen&) = delete;
    Screen& operator=(const Screen&) = delete;

    /// One frame; goes between Ui::begin_frame and Ui::end_frame.
    virtual void play(Ui& ui) = 0;

    /// True while the picture changes by itself: the window then draws frame after frame.
    virtual bool is_moving() const { return false; }

    /// Its keys for the sheet of keys, which the Shell shows. Empty: the screen has a sheet of its own.
    virtual std::vector<KeyLine> keys() const { return {}; }
};

}
