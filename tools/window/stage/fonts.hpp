#pragma once

#include "core/result.hpp"
#include "window/base/assets.hpp"
#include "window/base/picture.hpp"

#include <array>
#include <string>
#include <string_view>
#include <vector>

struct ImFont;

namespace flapdoor::window {

/// The four kinds of text. Each is baked at its own size, because a font stretched while drawing is blurred.
enum class TextStyle : int { small, body, strong, title };
inline constexpr std::size_t text_style_count = 4;

/// Height of a style in pixels at 100 %.
float height_of(TextStyle style);

/// The baked fonts, owned by the stage they were baked for.
class Fonts {
public:
    /// Bakes all four styles into the font atlas of the current stage. Fails when a file cannot be read as a font.
    /// @param scale  1 to 2
    static Result<Fonts> bake(const FontFiles& files, float scale);

    ImFont* font(TextStyle style) const { return fonts_[static_cast<std::size_t>(style)]; }

    /// The glyph picture, as it stands in the atlas.
    static Picture atlas_picture();

    /// Characters of a UTF-8 text that this style cannot show; empty when it can show all.
    std::vector<char32_t> missing(std::string_view text, TextStyle style = TextStyle::body) const;

private:
    std::array<ImFont*, text_style_count> fonts_{};
};

}
