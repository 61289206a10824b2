#pragma once

#include "rehearsal.hpp"

#include "window/room/room_screen.hpp"
#include "window/shell/screens.hpp"

#include <chrono>
#include <filesystem>
#include <memory>
#include <string>
#include <thread>

namespace flapdoor::window {

/// A folder that goes with the test: the small drill of tests/data, the federal book, and a place for what is left.
struct TestPlaces {
    std::filesystem::path root;
    Places places;

    explicit TestPlaces(const std::string& name) : root(std::filesystem::temp_directory_path() / ("flapdoor-" + name))
    {
        namespace fs = std::filesystem;
        fs::remove_all(root);
        fs::create_directories(root / "scenarios");
        fs::create_directory_symlink(FLAPDOOR_SOURCE_DIR "/tests/data/drills/one-window", root / "scenarios/one-window");
        fs::create_directory_symlink(FLAPDOOR_SOURCE_DIR "/scenarios/rules", root / "scenarios/rules");
        places = {root / "scenarios", root / "own", "federal"};
    }
    ~TestPlaces() { std::filesystem::remove_all(root); }
    TestPlaces(const TestPlaces&) = delete;
    TestPlaces& operator=(const TestPlaces&) = delete;
};

/// The whole window without a display, from the first screen on.
struct PlayedShell {
    Shell shell;
    bool is_open = false; ///< a first screen is there
    Rehearsal stage;

    explicit PlayedShell(const Places& places, float text_scale = 1.0F, Point size = {1440.0F, 900.0F})
        : shell(places), stage([this](Ui& ui) { is_open ? shell.play(ui) : void(); }, text_scale)
    {
        stage.input.size = size;
    }

    void go_to(std::unique_ptr<Screen> screen)
    {
        shell.go_to(std::move(screen));
        is_open = true;
        settle();
    }
    void settle()
    {
        for (int i = 0; i < 4; ++i) stage.frame();
    }
    const Spot* find(const std::string& name) const { return stage.ui->find(name); }
    RoomScreen* room() { return dynamic_cast<RoomScreen*>(shell.screen()); }

    /// Frames until it holds, a minute at most.
    template <class Holds>
    bool wait_until(Holds&& holds)
    {
        for (int i = 0; i < 12000 && !holds(); ++i) {
            stage.frame();
            std::this_thread::sleep_for(std::chrono::milliseconds(5));
        }
        return holds();
    }
    /// Until nothing is in play and the deck is there again.
    bool wait_for_room()
    {
        return wait_until([&] { return room() != nullptr && !room()->attempt().is_busy() && find("filter") != nullptr; });
    }

    // By mouse alone.
    /// Scrolls with the wheel until the thing lies within its panel's part of the screen, then clicks.
    bool click(const std::string& name, const std::string& panel)
    {
        if (!wait_until([&] { return find(name) != nullptr; })) return false; // the deck is dealt beside the window
        for (int i = 0; i < 200; ++i) {
            const Spot* spot = find(name);
            const Spot* frame = find(panel);
            if (spot == nullptr || frame == nullptr) return false;
            const Point at = spot->box.center();
            const Box inner = frame->box.inset(14.0F);
            if (at.y > inner.low.y && at.y < inner.high.y) {
                stage.click(at);
                settle();
                return true;
            }
            stage.point_at(frame->box.center());
            stage.input.wheel = at.y < inner.low.y ? 1.0F : -1.0F;
            stage.frame();
        }
        return false;
    }

    // By keyboard alone.
    /// Tab until the thing has the focus.
    bool walk_to(const std::string& name)
    {
        if (!wait_until([&] { return find(name) != nullptr; })) return false;
        for (int i = 0; i < 400 && stage.ui->focused() != name; ++i) stage.press(Key::tab);
        return stage.ui->focused() == name;
    }
    bool press_on(const std::string& name, Key key = Key::enter)
    {
        if (!walk_to(name)) return false;
        stage.press(key);
        settle();
        return true;
    }
};

}
