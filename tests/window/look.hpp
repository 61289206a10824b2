#pragma once

// Whole screens against pictures in look/. After a change of look or model that is meant: run with FLAPDOOR_APPROVE=1, look at
// the new pictures, and commit them with the change.

#include "window/base/picture.hpp"

#include <SFML/Graphics/Image.hpp>
#include <catch2/catch.hpp>

#include <cstdlib>
#include <filesystem>
#include <string>

namespace flapdoor::window {

inline constexpr int fuzz = 5;                  // of 255, 2 %: other versions of the font library set edges a little differently
inline constexpr double most_differing = 0.005; // of the pixels

inline Picture load(const std::filesystem::path& file)
{
    sf::Image image;
    REQUIRE(image.loadFromFile(file.string()));
    Picture picture(static_cast<int>(image.getSize().x), static_cast<int>(image.getSize().y));
    const sf::Uint8* bytes = image.getPixelsPtr();
    for (std::size_t i = 0; i < picture.pixels.size(); ++i)
        picture.pixels[i] = {bytes[4 * i], bytes[4 * i + 1], bytes[4 * i + 2], bytes[4 * i + 3]};
    return picture;
}

inline double differing(const Picture& a, const Picture& b)
{
    if (a.width != b.width || a.height != b.height) return 1.0;
    std::size_t count = 0;
    const auto is_off = [](int x, int y) { return std::abs(x - y) > fuzz; };
    for (std::size_t i = 0; i < a.pixels.size(); ++i) {
        const Color p = a.pixels[i];
        const Color q = b.pixels[i];
        if (is_off(p.r, q.r) || is_off(p.g, q.g) || is_off(p.b, q.b)) ++count;
    }
    return static_cast<double>(count) / static_cast<double>(a.pixels.size());
}

inline void compare(const Picture& now, const std::string& name)
{
    const std::filesystem::path file = std::filesystem::path(FLAPDOOR_SOURCE_DIR) / "tests/window/look" / (name + ".png");
    if (std::getenv("FLAPDOOR_APPROVE") != nullptr) {
        REQUIRE(save_png(now, file));
        return;
    }
    const double share = differing(now, load(file));
    if (share > most_differing) {
        const auto beside = std::filesystem::temp_directory_path() / (name + "-now.png");
        REQUIRE(save_png(now, beside));
        UNSCOPED_INFO("the screen as it is now: " << beside.string());
    }
    CHECK(share <= most_differing);
}

}
