#pragma once

#include "core/result.hpp"

#include <filesystem>
#include <vector>

namespace flapdoor::window {

/// Where the files that come with the program may lie, best place first: `assets` beside the program or in a folder
/// above it (a build inside the source tree), `../share/flapdoor/assets` (installed), then `last_resort` if not empty.
std::vector<std::filesystem::path> asset_folders(const std::filesystem::path& program, const std::filesystem::path& last_resort = {});

/// The running program's own file, as the system tells it; empty when it does not.
std::filesystem::path program_file();

struct FontFiles {
    std::filesystem::path regular;
    std::filesystem::path semibold;
};

/// The first folder that holds both fonts, or a Problem listing every place that was looked at.
Result<FontFiles> find_fonts(const std::vector<std::filesystem::path>& folders);

}
