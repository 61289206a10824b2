#include "window/show_run.hpp"

#include "window/run/run_screen.hpp"

#include "core/insist.hpp"

#include <cstdio>

namespace flapdoor::window {

namespace {

constexpr int cannot_paint = 3;

int tell_problems(const Problems& problems)
{
    for (const Problem& problem : problems) std::fprintf(stderr, "flapdoor: %s\n", describe(problem).c_str());
    return cannot_paint;
}

}

int picture_run(const debrief::Inputs& inputs, std::uint64_t seed, Time at, const std::filesystem::path& path, int width, int height)
{
    insist(width >= 320 && height >= 320 && width <= 8192 && height <= 8192, "a picture of a screen is 320 to 8192 pixels wide and high");
    const Result<FontFiles> fonts = find_fonts(asset_folders(program_file(), FLAPDOOR_SOURCE_DIR "/assets"));
    if (!fonts) return tell_problems(fonts.error());
    Result<std::unique_ptr<Ui>> ui = Ui::open(*fonts, drafting_theme());
    if (!ui) return tell_problems(ui.error());

    RunScreen screen(std::make_shared<const Story>(tell(inputs, debrief::carry_through(inputs, seed, true))));
    screen.playback().go_to(at);
    FrameInput input;
    input.size = {static_cast<float>(width), static_cast<float>(height)};
    for (int frame = 0; frame < 3; ++frame) { // lists scroll to their place from one frame to the next
        (*ui)->begin_frame(input);
        screen.play(**ui);
        (*ui)->end_frame();
    }
    const Result<std::filesystem::path> saved = save_png((*ui)->picture_of_frame(), path);
    return saved ? 0 : tell_problems(saved.error());
}

}
