#include "window/own_ui.hpp"

#include <cstdio>
#include <cstdlib>

namespace flapdoor::window {

int tell_problems(const Problems& problems)
{
    for (const Problem& problem : problems) std::fprintf(stderr, "flapdoor: %s\n", describe(problem).c_str());
    return cannot_show;
}

Result<std::unique_ptr<Ui>> own_ui(float text_scale)
{
    const Result<FontFiles> fonts = find_fonts(asset_folders(program_file(), FLAPDOOR_SOURCE_DIR "/assets"));
    if (!fonts) return failed(fonts.error());
    return Ui::open(*fonts, drafting_theme(), text_scale);
}

bool has_display()
{
    const char* display = std::getenv("DISPLAY");
    return display != nullptr && *display != '\0';
}

}
