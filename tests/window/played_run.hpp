#pragma once

#include "rehearsal.hpp"

#include "window/run/run_screen.hpp"

#include <memory>

namespace flapdoor::window {

inline debrief::Inputs inputs_of_the_house(const char* plan)
{
    const std::string drill = FLAPDOOR_SOURCE_DIR "/scenarios/back-bedroom/";
    return debrief::read_inputs(drill + "scenario.toml", drill + plan, {FLAPDOOR_SOURCE_DIR "/scenarios/rules/federal.toml"}).value();
}

/// The shipped careless plan, carried out once for all tests of a process.
inline std::shared_ptr<const Story> careless_story()
{
    static const auto story = [] {
        const debrief::Inputs inputs = inputs_of_the_house("careless.toml");
        return std::make_shared<const Story>(tell(inputs, debrief::carry_through(inputs, 1, true)));
    }();
    return story;
}

/// The screen of that run, played by hand.
struct PlayedRun {
    RunScreen screen{careless_story()};
    Rehearsal stage;

    explicit PlayedRun(float text_scale = 1.0F, Point size = {1280.0F, 800.0F}) : stage([this](Ui& ui) { screen.play(ui); }, text_scale)
    {
        stage.input.size = size;
        settle();
    }
    void settle()
    {
        for (int i = 0; i < 3; ++i) stage.frame();
    }
    void go_to(double hour)
    {
        screen.playback().go_to(Time{hour * 3600.0});
        settle();
    }
    void show(Page page)
    {
        screen.state().page = page;
        settle();
    }
    double hour() { return screen.playback().now().si / 3600.0; }
    const Spot* find(const std::string& name) { return stage.ui->find(name); }
};

}
