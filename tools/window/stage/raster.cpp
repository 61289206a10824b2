#include "window/stage/raster.hpp"

#include "window/stage/imgui_words.hpp"

#include <algorithm>
#include <cmath>

namespace flapdoor::window {

namespace {

struct Pigment {
    float r, g, b, a; // 0 to 1
};

Pigment pigment(Color c)
{
    constexpr float full = 255.0F;
    return {static_cast<float>(c.r) / full, static_cast<float>(c.g) / full, static_cast<float>(c.b) / full, static_cast<float>(c.a) / full};
}

Color unpacked(ImU32 c)
{
    return {static_cast<std::uint8_t>(c >> IM_COL32_R_SHIFT), static_cast<std::uint8_t>(c >> IM_COL32_G_SHIFT),
            static_cast<std::uint8_t>(c >> IM_COL32_B_SHIFT), static_cast<std::uint8_t>(c >> IM_COL32_A_SHIFT)};
}

/// Bilinear, edges repeated: as a graphics card reads a smooth texture.
Pigment sampled(const Picture& picture, float u, float v)
{
    const float x = u * static_cast<float>(picture.width) - 0.5F;
    const float y = v * static_cast<float>(picture.height) - 0.5F;
    const float fx = x - std::floor(x);
    const float fy = y - std::floor(y);
    const auto pick = [&](int dx, int dy) {
        return pigment(picture.at(std::clamp(static_cast<int>(std::floor(x)) + dx, 0, picture.width - 1),
                                  std::clamp(static_cast<int>(std::floor(y)) + dy, 0, picture.height - 1)));
    };
    const Pigment p[4] = {pick(0, 0), pick(1, 0), pick(0, 1), pick(1, 1)};
    const float w[4] = {(1 - fx) * (1 - fy), fx * (1 - fy), (1 - fx) * fy, fx * fy};
    Pigment sum{0, 0, 0, 0};
    for (int i = 0; i < 4; ++i) sum = {sum.r + w[i] * p[i].r, sum.g + w[i] * p[i].g, sum.b + w[i] * p[i].b, sum.a + w[i] * p[i].a};
    return sum;
}

void blend(Color& under, Pigment over)
{
    const auto mix = [&](std::uint8_t below, float above) {
        return static_cast<std::uint8_t>(std::lround(static_cast<float>(below) * (1.0F - over.a) + above * over.a * 255.0F));
    };
    under = {mix(under.r, over.r), mix(under.g, over.g), mix(under.b, over.b), 255};
}

float cross(ImVec2 a, ImVec2 b, float x, float y) { return (b.x - a.x) * (y - a.y) - (b.y - a.y) * (x - a.x); }

/// Edges shared by two triangles belong to one of them only, or thin lines would be painted twice.
bool owns_edge(ImVec2 a, ImVec2 b) { return a.y == b.y ? b.x > a.x : b.y < a.y; }

void paint_triangle(Picture& out, const Picture& texture, const ImVec4& clip, ImDrawVert a, ImDrawVert b, ImDrawVert c)
{
    float area = cross(a.pos, b.pos, c.pos.x, c.pos.y);
    if (area == 0.0F) return;
    if (area < 0.0F) {
        std::swap(b, c);
        area = -area;
    }
    const int x0 = std::max(static_cast<int>(std::floor(std::min({a.pos.x, b.pos.x, c.pos.x}))), static_cast<int>(std::floor(clip.x)));
    const int x1 = std::min(static_cast<int>(std::ceil(std::max({a.pos.x, b.pos.x, c.pos.x}))), static_cast<int>(std::ceil(clip.z)));
    const int y0 = std::max(static_cast<int>(std::floor(std::min({a.pos.y, b.pos.y, c.pos.y}))), static_cast<int>(std::floor(clip.y)));
    const int y1 = std::min(static_cast<int>(std::ceil(std::max({a.pos.y, b.pos.y, c.pos.y}))), static_cast<int>(std::ceil(clip.w)));
    const Pigment ca = pigment(unpacked(a.col));
    const Pigment cb = pigment(unpacked(b.col));
    const Pigment cc = pigment(unpacked(c.col));
    const bool is_plain = a.uv.x == b.uv.x && a.uv.x == c.uv.x && a.uv.y == b.uv.y && a.uv.y == c.uv.y; // no picture: one sample does
    const Pigment plain = sampled(texture, a.uv.x, a.uv.y);
    const bool own_a = owns_edge(b.pos, c.pos);
    const bool own_b = owns_edge(c.pos, a.pos);
    const bool own_c = owns_edge(a.pos, b.pos);
    for (int y = std::max(y0, 0); y < std::min(y1, out.height); ++y) {
        for (int x = std::max(x0, 0); x < std::min(x1, out.width); ++x) {
            const float px = static_cast<float>(x) + 0.5F;
            const float py = static_cast<float>(y) + 0.5F;
            const float wa = cross(b.pos, c.pos, px, py);
            const float wb = cross(c.pos, a.pos, px, py);
            const float wc = cross(a.pos, b.pos, px, py);
            if (wa < 0 || wb < 0 || wc < 0 || (wa == 0 && !own_a) || (wb == 0 && !own_b) || (wc == 0 && !own_c)) continue;
            const float ka = wa / area;
            const float kb = wb / area;
            const float kc = wc / area;
            const Pigment tex =
                is_plain ? plain : sampled(texture, ka * a.uv.x + kb * b.uv.x + kc * c.uv.x, ka * a.uv.y + kb * b.uv.y + kc * c.uv.y);
            blend(out.at(x, y), {tex.r * (ka * ca.r + kb * cb.r + kc * cc.r), tex.g * (ka * ca.g + kb * cb.g + kc * cc.g),
                                 tex.b * (ka * ca.b + kb * cb.b + kc * cc.b), tex.a * (ka * ca.a + kb * cb.a + kc * cc.a)});
        }
    }
}

}

Picture painted(const ImDrawData& frame, const PictureShelf& pictures, Color background)
{
    Picture out(static_cast<int>(frame.DisplaySize.x), static_cast<int>(frame.DisplaySize.y), background);
    for (int l = 0; l < frame.CmdListsCount; ++l) {
        const ImDrawList& list = *frame.CmdLists[l];
        for (const ImDrawCmd& command : list.CmdBuffer) {
            const PictureShelf::Entry* entry = pictures.find(picture_id(command.TextureId));
            if (entry == nullptr) continue;
            for (unsigned i = 0; i + 2 < command.ElemCount; i += 3) {
                const auto corner = [&](unsigned k) {
                    const auto index = list.IdxBuffer[static_cast<int>(command.IdxOffset + i + k)];
                    return list.VtxBuffer[static_cast<int>(command.VtxOffset + index)];
                };
                paint_triangle(out, entry->picture, command.ClipRect, corner(0), corner(1), corner(2));
            }
        }
    }
    return out;
}

}
