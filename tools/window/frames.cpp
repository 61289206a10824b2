#include "window/show.hpp"

#include "window/base/clock.hpp"
#include "window/class_room/class_room.hpp"
#include "window/drawing/cloud.hpp"
#include "window/drawing/heat_map.hpp"
#include "window/own_ui.hpp"
#include "window/room/room_screen.hpp"
#include "window/run/run_screen.hpp"
#include "window/stage/painter.hpp"
#include "window/stage/ui.hpp"

#include <SFML/Graphics/RenderWindow.hpp>
#include <SFML/Window/Event.hpp>

#include <fmt/format.h>

#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <functional>

namespace flapdoor::window {

namespace {

constexpr unsigned width = 1280;
constexpr unsigned height = 800;
constexpr int frames_before_measuring = 10;
constexpr int frames_measured = 120;
constexpr int map_cells = 256;
constexpr std::size_t point_count = 100000;

/// A map in which every cell changes from frame to frame.
HeatGrid moving_map(int frame)
{
    HeatGrid grid{map_cells, map_cells, {0.0, 0.0}, 0.05};
    for (int row = 0; row < map_cells; ++row)
        for (int column = 0; column < map_cells; ++column) {
            grid.loading.push_back(static_cast<float>(std::exp(6.0 + 4.0 * std::sin(column * 0.05 + frame * 0.1) * std::cos(row * 0.04))));
            grid.room.push_back(1);
        }
    return grid;
}

std::vector<PaperPoint> moving_points(int frame)
{
    std::vector<PaperPoint> points;
    points.reserve(point_count);
    std::uint32_t luck = 12345;
    const auto next = [&] { return static_cast<double>((luck = luck * 1664525U + 1013904223U) >> 8) / 16777216.0; };
    for (std::size_t i = 0; i < point_count; ++i) {
        const double x = next();
        points.push_back({12.8 * std::fmod(x + 0.002 * frame, 1.0), 12.8 * next()});
    }
    return points;
}

/// One picture over the whole window, made anew for every frame.
class PictureScene {
public:
    explicit PictureScene(std::function<Picture(int)> make) : make_(std::move(make)) {}
    void play(Ui& ui)
    {
        Picture picture = make_(frame_++);
        if (id_ == PictureId{}) id_ = ui.pictures().add(std::move(picture));
        else ui.pictures().replace(id_, std::move(picture));
        ui.canvas().picture(id_, ui.screen());
    }

private:
    std::function<Picture(int)> make_;
    PictureId id_{};
    int frame_ = 0;
};

struct Scene {
    std::string name;
    std::function<void(Ui&)> play;
};

struct Times {
    double middle, most; ///< ms: half of the frames take less; 95 of 100 take less
};

Times measured(const Scene& scene, Ui& ui, sf::RenderWindow& window, Painter& painter)
{
    std::vector<double> times;
    FrameInput input;
    input.size = {static_cast<float>(width), static_cast<float>(height)};
    for (int frame = 0; frame < frames_before_measuring + frames_measured; ++frame) {
        for (sf::Event event{}; window.pollEvent(event);) {}
        const double before = seconds_now();
        ui.begin_frame(input);
        scene.play(ui);
        ui.end_frame();
        painter.paint(ui, window);
        window.display();
        if (frame >= frames_before_measuring) times.push_back((seconds_now() - before) * 1000.0);
    }
    std::sort(times.begin(), times.end());
    return {times[times.size() / 2], times[times.size() * 95 / 100]};
}

}

int show_frames(Places places)
{
    if (!has_display()) {
        std::fprintf(stderr, "flapdoor: frames are measured in a window, and there is no display to open one on\n");
        return cannot_show;
    }
    Result<std::unique_ptr<Ui>> ui = own_ui();
    if (!ui) return tell_problems(ui.error());
    const DrillShelf shelf = read_drills(places.scenarios, places.book);
    if (shelf.drills.empty()) {
        std::fprintf(stderr, "flapdoor: there is no drill to show\n");
        return cannot_show;
    }
    const std::shared_ptr<const Drill> drill = shelf.drills.front();
    const auto story = std::make_shared<const Story>(tell(drill->careful, debrief::carry_through(drill->careful, 1, true)));
    RunScreen run(story);
    ClassRoom lesson(story, drill->careful, 1);
    lesson.careful().wait();
    const auto play_run = [&](Ui& stage, ViewKind view) {
        run.state().view = view;
        if (!run.playback().is_playing()) run.playback().play_or_pause();
        run.playback().set_speed(3);
        run.play(stage);
    };
    Shell shell(std::move(places));
    const auto on_shell = [&](Ui& stage) { shell.play(stage); };
    PictureScene map([](int frame) { return heat_picture(moving_map(frame), {1.0, 100000.0}, dust_ramp, 1); });
    PictureScene points([](int frame) { return cloud_picture(moving_points(frame), {{0.0, 0.0}, {12.8, 12.8}}, 640, 400, color(0x0B5A5C)); });

    sf::RenderWindow window(sf::VideoMode(width, height), "Flapdoor, frames");
    Painter painter;
    const auto tell_scene = [&](const std::string& name, const std::function<void(Ui&)>& play) {
        const Times times = measured({name, play}, **ui, window, painter);
        fmt::print("{:<44} {:>7.1f} {:>7.1f} {:>9.0f}\n", name, times.middle, times.most, 1000.0 / times.middle);
        std::fflush(stdout);
    };
    fmt::print("{} x {} pixels, {} frames a scene, no limit\n{:<44} {:>7} {:>7} {:>9}\n", width, height, frames_measured, "scene", "p50 ms", "p95 ms", "frames/s");
    shell.go_to(start_screen(shell));
    tell_scene("first screen", on_shell);
    shell.go_to(brief_screen(shell, {drill, Mode::step_by_step, 1, {}}));
    tell_scene("brief", on_shell);
    shell.go_to(room_screen(shell, {drill, Mode::step_by_step, 1, {}}, drill->careful.scenario));
    tell_scene("drill room", on_shell);
    auto room = std::make_unique<RoomScreen>(shell, Sitting{drill, Mode::step_by_step, 1, {}}, drill->careful.scenario);
    room->take_up({job::LayFloorSheet{}, {drill->careful.scenario.crew.front().id}, {}});
    shell.go_to(std::move(room));
    tell_scene("drill room, a card in hand with its tools", on_shell);
    tell_scene("a class watching", [&](Ui& stage) {
        if (!lesson.playback().is_playing()) lesson.playback().play_or_pause();
        lesson.play(stage, stage.screen(), false);
    });
    tell_scene("a run playing, what is there", [&](Ui& stage) { play_run(stage, ViewKind::there); });
    tell_scene("a run playing, what could be seen", [&](Ui& stage) { play_run(stage, ViewKind::seen); });
    tell_scene("a run playing, airborne", [&](Ui& stage) { play_run(stage, ViewKind::airborne); });
    tell_scene("256 x 256 map, made anew every frame", [&](Ui& stage) { map.play(stage); });
    tell_scene("100 000 points, moved every frame", [&](Ui& stage) { points.play(stage); });
    tell_scene("both over a run playing", [&](Ui& stage) { play_run(stage, ViewKind::there), map.play(stage), points.play(stage); });
    return 0;
}

}
