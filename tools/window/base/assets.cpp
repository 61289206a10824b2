#include "window/base/assets.hpp"

#include <system_error>

namespace flapdoor::window {

namespace fs = std::filesystem;

std::vector<fs::path> asset_folders(const fs::path& program, const fs::path& last_resort)
{
    std::vector<fs::path> folders;
    if (!program.empty()) {
        const fs::path home = program.parent_path();
        folders.push_back(home / "assets");
        folders.push_back(home.parent_path() / "share" / "flapdoor" / "assets");
        fs::path above = home;
        for (int level = 0; level < 4 && above.has_parent_path() && above != above.parent_path(); ++level) {
            above = above.parent_path();
            folders.push_back(above / "assets");
        }
    }
    if (!last_resort.empty()) folders.push_back(last_resort);
    return folders;
}

fs::path program_file()
{
    std::error_code none;
    return fs::read_symlink("/proc/self/exe", none);
}

Result<FontFiles> find_fonts(const std::vector<fs::path>& folders)
{
    std::string looked;
    for (const fs::path& folder : folders) {
        const FontFiles files{folder / "fonts" / "Inter-Regular.otf", folder / "fonts" / "Inter-SemiBold.otf"};
        std::error_code none;
        if (fs::exists(files.regular, none) && fs::exists(files.semibold, none)) return files;
        looked += (looked.empty() ? "" : ", ") + (folder / "fonts").string();
    }
    Problem problem;
    problem.where.file = "Inter-Regular.otf";
    problem.expected = "the fonts Inter-Regular.otf and Inter-SemiBold.otf";
    problem.found = "not both in any of: " + looked;
    return failed(std::move(problem));
}

}
