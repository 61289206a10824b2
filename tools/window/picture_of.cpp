#include "window/show.hpp"

#include "window/own_ui.hpp"
#include "window/run/run_screen.hpp"
#include "window/stage/ui.hpp"

#include "core/insist.hpp"

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <functional>
#include <thread>

namespace flapdoor::window {

namespace {

constexpr int frames_to_settle = 4; // lists scroll to their place from one frame to the next
constexpr std::chrono::seconds longest_wait{60};

/// @param is_waiting  true while something is still worked out that the picture is to show
int paint(const PictureLook& look, const std::function<void(Ui&)>& play, const std::function<bool()>& is_waiting = [] { return false; })
{
    insist(look.width >= 320 && look.height >= 320 && look.width <= 8192 && look.height <= 8192, "a picture of a screen is 320 to 8192 pixels wide and high");
    Result<std::unique_ptr<Ui>> ui = own_ui(look.text_scale);
    if (!ui) return tell_problems(ui.error());
    FrameInput input;
    input.size = {static_cast<float>(look.width), static_cast<float>(look.height)};
    const auto begin = std::chrono::steady_clock::now();
    const auto waits = [&] { return is_waiting() && std::chrono::steady_clock::now() - begin < longest_wait; };
    for (int left = frames_to_settle; left > 0; --left) {
        (*ui)->begin_frame(input);
        play(**ui);
        (*ui)->end_frame();
        if (!waits()) continue;
        std::this_thread::sleep_for(std::chrono::milliseconds(5));
        left = frames_to_settle;
    }
    const Result<std::filesystem::path> saved = save_png((*ui)->picture_of_frame(), look.file);
    return saved ? 0 : tell_problems(saved.error());
}

struct NamedScreen {
    const char* name;
    std::unique_ptr<Screen> (*make)(Shell&, Sitting);
};
constexpr NamedScreen screens[] = {
    {"start", [](Shell& shell, Sitting) { return start_screen(shell); }},
    {"brief", [](Shell& shell, Sitting sitting) { return brief_screen(shell, std::move(sitting)); }},
    {"room",
     [](Shell& shell, Sitting sitting) {
         job::Scenario all = sitting.drill->careful.scenario;
         return room_screen(shell, std::move(sitting), std::move(all));
     }},
    {"order", [](Shell& shell, Sitting sitting) { return order_screen(shell, std::move(sitting)); }},
    {"spot", [](Shell& shell, Sitting sitting) { return spot_screen(shell, std::move(sitting)); }},
    {"class", [](Shell& shell, Sitting sitting) { return class_screen(shell, std::move(sitting)); }},
    {"quiz", [](Shell& shell, Sitting) { return quiz_start_screen(shell); }},
};

}

std::vector<std::string> screen_names()
{
    std::vector<std::string> names;
    for (const NamedScreen& screen : screens) names.emplace_back(screen.name);
    return names;
}

int picture_run(const debrief::Inputs& inputs, std::uint64_t seed, Time at, const PictureLook& look)
{
    RunScreen screen(std::make_shared<const Story>(tell(inputs, debrief::carry_through(inputs, seed, true))));
    screen.playback().go_to(at);
    return paint(look, [&](Ui& ui) { screen.play(ui); });
}

int picture_screen(Places places, const std::string& name, Sitting sitting, const PictureLook& look)
{
    const auto* found = std::find_if(std::begin(screens), std::end(screens), [&](const NamedScreen& screen) { return name == screen.name; });
    insist(found != std::end(screens), "the screen has a name that is known");
    Shell shell(std::move(places));
    shell.go_to(found->make(shell, std::move(sitting)));
    return paint(look, [&](Ui& ui) { shell.play(ui); }, [&] { return shell.is_moving(); });
}

}
