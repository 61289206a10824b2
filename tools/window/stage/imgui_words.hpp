#pragma once

#include "window/base/color.hpp"
#include "window/base/geometry.hpp"
#include "window/base/picture.hpp"

#include <imgui.h>

#include <cstdint>
#include <span>
#include <vector>

/// Our words in the control library's types. Included by .cpp files of stage/ and widgets/ only.
namespace flapdoor::window {

inline ImVec2 vec(Point p) { return {p.x, p.y}; }
inline Point point(ImVec2 v) { return {v.x, v.y}; }
inline ImU32 packed(Color c) { return IM_COL32(c.r, c.g, c.b, c.a); }

inline std::vector<ImVec2> vecs(std::span<const Point> points)
{
    std::vector<ImVec2> out;
    out.reserve(points.size());
    for (const Point p : points) out.push_back(vec(p));
    return out;
}

inline ImTextureID texture(PictureId id) { return reinterpret_cast<ImTextureID>(static_cast<std::uintptr_t>(id)); }
inline PictureId picture_id(ImTextureID id)
{
    return static_cast<PictureId>(static_cast<std::uint32_t>(reinterpret_cast<std::uintptr_t>(id)));
}

}
