#pragma once

#include "core/result.hpp"
#include "window/base/color.hpp"

#include <cstdint>
#include <filesystem>
#include <map>
#include <vector>

namespace flapdoor::window {

/// Pixels, row by row from the top.
struct Picture {
    int width = 0;
    int height = 0;
    std::vector<Color> pixels; ///< [row][column], width * height of them

    Picture() = default;
    Picture(int columns, int rows, Color fill = {0, 0, 0, 0});
    Color& at(int column, int row)
    {
        return pixels[static_cast<std::size_t>(row) * static_cast<std::size_t>(width) + static_cast<std::size_t>(column)];
    }
    const Color& at(int column, int row) const { return const_cast<Picture&>(*this).at(column, row); }
};

/// Writes a PNG. Fails with a Problem naming the file.
Result<std::filesystem::path> save_png(const Picture& picture, const std::filesystem::path& file);

/// Name of a picture on the shelf; 0 names none.
enum class PictureId : std::uint32_t {};

/// Pictures that a frame shows. They live here as plain pixels; whoever draws the frame (graphics card or tests) makes
/// of them what it needs, when `revision` tells it that they changed.
class PictureShelf {
public:
    struct Entry {
        Picture picture;
        std::uint64_t revision = 0;
    };

    PictureId add(Picture picture);
    void replace(PictureId id, Picture picture); ///< insists that it is there
    void remove(PictureId id);
    const Entry* find(PictureId id) const; ///< nothing when it is not there

private:
    std::map<PictureId, Entry> entries_;
    std::uint32_t next_ = 1;
    std::uint64_t revision_ = 0;
};

}
