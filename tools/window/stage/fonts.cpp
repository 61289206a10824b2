#include "window/stage/fonts.hpp"

#include <imgui.h>
#include <imgui_freetype.h>

#include <cmath>
#include <cstring>
#include <fstream>
#include <iterator>

namespace flapdoor::window {

namespace {

// English, Spanish and their neighbors; dashes and quotes; arrows; minus; at most and at least; euro.
constexpr std::array<ImWchar, 13> glyph_ranges{0x0020, 0x017F, 0x2010, 0x2027, 0x2190, 0x2193, 0x2212,
                                               0x2212, 0x2264, 0x2265, 0x20AC, 0x20AC, 0};

struct StyleOf {
    float height;
    bool is_semibold;
};

constexpr std::array<StyleOf, text_style_count> styles{{{14.0F, false}, {17.0F, false}, {17.0F, true}, {24.0F, true}}};

/// Whole file, or nothing. Read by us because the font library stops the program on a file that it cannot open.
std::vector<char> bytes_of(const std::filesystem::path& file)
{
    std::ifstream in(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

bool looks_like_font(const std::vector<char>& bytes)
{
    const auto starts = [&](const char(&mark)[5]) { return bytes.size() > 1024 && std::memcmp(bytes.data(), mark, 4) == 0; };
    return starts("OTTO") || starts("true") || (bytes.size() > 1024 && std::memcmp(bytes.data(), "\0\1\0\0", 4) == 0);
}

Problem not_a_font(const std::filesystem::path& file)
{
    Problem problem;
    problem.where.file = file.string();
    problem.expected = "an OpenType or TrueType font";
    problem.found = "something else, or no readable file";
    return problem;
}

ImFont* add(ImFontAtlas& atlas, const std::vector<char>& bytes, const std::string& name, float height)
{
    void* copy = IM_ALLOC(bytes.size()); // the atlas frees it
    std::memcpy(copy, bytes.data(), bytes.size());
    ImFontConfig config;
    config.GlyphRanges = glyph_ranges.data();
    config.OversampleH = 1;
    config.PixelSnapH = true;
    std::strncpy(config.Name, name.c_str(), sizeof config.Name - 1);
    return atlas.AddFontFromMemoryTTF(copy, static_cast<int>(bytes.size()), height, &config);
}

}

float height_of(TextStyle style) { return styles[static_cast<std::size_t>(style)].height; }

Result<Fonts> Fonts::bake(const FontFiles& files, float scale)
{
    const std::vector<char> regular = bytes_of(files.regular);
    const std::vector<char> semibold = bytes_of(files.semibold);
    Problems problems;
    if (!looks_like_font(regular)) problems.push_back(not_a_font(files.regular));
    if (!looks_like_font(semibold)) problems.push_back(not_a_font(files.semibold));
    if (!problems.empty()) return failed(std::move(problems));

    ImFontAtlas& atlas = *ImGui::GetIO().Fonts;
    atlas.Clear();
    atlas.FontBuilderIO = ImGuiFreeType::GetBuilderForFreeType();
    atlas.FontBuilderFlags = ImGuiFreeTypeBuilderFlags_LightHinting;

    Fonts fonts;
    for (std::size_t i = 0; i < styles.size(); ++i)
        fonts.fonts_[i] =
            add(atlas, styles[i].is_semibold ? semibold : regular, "style " + std::to_string(i), std::round(styles[i].height * scale));
    if (!atlas.Build()) return failed(not_a_font(files.regular));
    ImGui::GetIO().FontDefault = fonts.font(TextStyle::body);
    return fonts;
}

Picture Fonts::atlas_picture()
{
    unsigned char* pixels = nullptr;
    int width = 0;
    int height = 0;
    ImGui::GetIO().Fonts->GetTexDataAsRGBA32(&pixels, &width, &height);
    Picture picture(width, height);
    std::memcpy(picture.pixels.data(), pixels, picture.pixels.size() * sizeof(Color));
    return picture;
}

std::vector<char32_t> Fonts::missing(std::string_view text, TextStyle style) const
{
    std::vector<char32_t> without;
    for (std::size_t i = 0; i < text.size();) {
        const auto lead = static_cast<unsigned char>(text[i]);
        const std::size_t length = lead < 0x80 ? 1 : lead < 0xE0 ? 2 : lead < 0xF0 ? 3 : 4;
        char32_t code = lead < 0x80 ? lead : lead & (0xFFU >> (length + 1));
        for (std::size_t k = 1; k < length && i + k < text.size(); ++k)
            code = (code << 6) | (static_cast<unsigned char>(text[i + k]) & 0x3FU);
        i += length;
        const bool can_hold = code <= 0xFFFF;
        if (code >= 0x20 && (!can_hold || font(style)->FindGlyphNoFallback(static_cast<ImWchar>(code)) == nullptr)) without.push_back(code);
    }
    return without;
}

}
