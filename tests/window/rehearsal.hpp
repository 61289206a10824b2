#pragma once

#include "window/stage/ui.hpp"

#include <functional>
#include <memory>
#include <string>

namespace flapdoor::window {

inline FontFiles fonts_of_the_house() { return find_fonts({FLAPDOOR_SOURCE_DIR "/assets"}).value(); }

/// A stage with one screen, played by hand.
struct Rehearsal {
    std::unique_ptr<Ui> ui;
    std::function<void(Ui&)> screen;
    FrameInput input;

    explicit Rehearsal(std::function<void(Ui&)> play, float text_scale = 1.0F)
        : ui(std::move(Ui::open(fonts_of_the_house(), drafting_theme(), text_scale).value())), screen(std::move(play))
    {
        input.size = {800.0F, 600.0F};
        frame();
    }

    void frame()
    {
        ui->begin_frame(input);
        screen(*ui);
        ui->end_frame();
        input.pressed.clear();
        input.typed.clear();
        input.wheel = 0.0F;
    }
    void press(Key key, Modifiers with = {})
    {
        input.pressed = {{key, with}};
        input.modifiers = with;
        input.keys_down.set(static_cast<std::size_t>(key));
        frame();
        input.keys_down.reset();
        input.modifiers = {};
        frame();
    }
    void point_at(Point p)
    {
        input.has_mouse = true;
        input.mouse = p;
        frame();
    }
    void hold() { input.buttons_down[0] = true, frame(); }
    void let_go() { input.buttons_down[0] = false, frame(); }
    void click(Point p) { point_at(p), hold(), let_go(); }
    void click(const std::string& name) { click(ui->find(name)->box.center()); }
};

}
