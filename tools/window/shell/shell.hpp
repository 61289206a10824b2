#pragma once

#include "window/shell/screen.hpp"
#include "window/shell/settings.hpp"

#include <filesystem>
#include <memory>
#include <string>

namespace flapdoor::window {

/// Where the window finds what it shows, and keeps what people leave.
struct Places {
    std::filesystem::path scenarios;       ///< a folder a drill; `rules` beside them
    std::filesystem::path own;             ///< drills in progress and finished runs; made when first written to
    std::string book = "federal";          ///< rule book in `scenarios/rules`
    std::string today = {};                ///< date that practice goes by, such as `2026-11-29`; empty: the computer's
};

/// The window from the first screen to the last: holds the screen that is on, and what holds for all of them.
class Shell {
public:
    explicit Shell(Places places, Settings settings = {});
    ~Shell();   ///< no window is there any more: waits for what was let go in it
    Shell(const Shell&) = delete;
    Shell& operator=(const Shell&) = delete;

    /// One frame of the screen that is on, and the sheet of keys above it when it is asked for.
    void play(Ui& ui);

    /// From the next frame on, that screen is on. The one that asks for it goes.
    void go_to(std::unique_ptr<Screen> screen);
    void quit() { settings_.wants_to_quit = true; }

    bool wants_to_quit() const { return settings_.wants_to_quit; }
    bool is_moving() const { return next_ != nullptr || (screen_ && screen_->is_moving()); }
    const Screen* screen() const { return screen_.get(); } ///< null before the first
    Screen* screen() { return screen_.get(); }
    Settings& settings() { return settings_; }
    const Places& places() const { return places_; }

private:
    Places places_;
    Settings settings_;
    std::unique_ptr<Screen> screen_;
    std::unique_ptr<Screen> next_;
};

}
