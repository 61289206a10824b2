#include "window/stage/canvas.hpp"

#include "window/stage/imgui_words.hpp"
#include "window/stage/triangles.hpp"

#include <cmath>
#include <string>

namespace flapdoor::window {

namespace {

constexpr const char* ellipsis = "\xE2\x80\xA6";

/// An empty view may point nowhere, which the library takes for a text without a known end.
const char* begin_of(std::string_view text) { return text.empty() ? "" : text.data(); }
const char* end_of(std::string_view text) { return begin_of(text) + text.size(); }

/// Longest start of the text that fits with an ellipsis behind it, cut between characters.
std::string shortened(const Canvas& canvas, std::string_view text, TextStyle style, float width)
{
    std::string kept(text);
    while (!kept.empty() && canvas.measure(kept + ellipsis, style).x > width) {
        while (!kept.empty() && (static_cast<unsigned char>(kept.back()) & 0xC0U) == 0x80U) kept.pop_back();
        if (!kept.empty()) kept.pop_back();
    }
    while (!kept.empty() && kept.back() == ' ') kept.pop_back();
    return kept + ellipsis;
}

}

void Canvas::line(Point from, Point to, Color color, float width) { list_->AddLine(vec(from), vec(to), packed(color), width); }

void Canvas::polyline(std::span<const Point> points, Color color, float width, bool is_closed)
{
    const std::vector<ImVec2> path = vecs(points);
    list_->AddPolyline(path.data(), static_cast<int>(path.size()), packed(color), is_closed ? ImDrawFlags_Closed : ImDrawFlags_None, width);
}

void Canvas::dashes(Point from, Point to, Color color, float width, float dash, float gap)
{
    const Point along = to - from;
    const float length = std::hypot(along.x, along.y);
    if (length <= 0.0F || dash <= 0.0F || gap <= 0.0F) return;
    for (float at = 0.0F; at < length; at += dash + gap)
        line(from + along * (at / length), from + along * (std::min(at + dash, length) / length), color, width);
}

void Canvas::fill(std::span<const Point> polygon, Color color)
{
    // Smooth edges would show as seams between the triangles, so they are drawn without.
    const ImDrawListFlags before = list_->Flags;
    list_->Flags &= ~ImDrawListFlags_AntiAliasedFill;
    for (const auto& [a, b, c] : triangles(polygon))
        list_->AddTriangleFilled(vec(polygon[a]), vec(polygon[b]), vec(polygon[c]), packed(color));
    list_->Flags = before;
}

void Canvas::fill_convex(std::span<const Point> polygon, Color color)
{
    // The library shades the smooth edge outwards only for points that run clockwise on the screen.
    std::vector<ImVec2> path = vecs(polygon);
    if (signed_area(polygon) < 0.0) path = {path.rbegin(), path.rend()};
    list_->AddConvexPolyFilled(path.data(), static_cast<int>(path.size()), packed(color));
}

void Canvas::fill_box(const Box& box, Color color, float rounding)
{
    list_->AddRectFilled(vec(box.low), vec(box.high), packed(color), rounding);
}

void Canvas::frame_box(const Box& box, Color color, float width, float rounding)
{
    list_->AddRect(vec(box.low), vec(box.high), packed(color), rounding, ImDrawFlags_None, width);
}

void Canvas::fill_circle(Point center, float radius, Color color) { list_->AddCircleFilled(vec(center), radius, packed(color)); }

void Canvas::ring(Point center, float radius, Color color, float width) { list_->AddCircle(vec(center), radius, packed(color), 0, width); }

void Canvas::arc(Point center, float radius, float from, float to, Color color, float width)
{
    list_->PathArcTo(vec(center), radius, from, to);
    list_->PathStroke(packed(color), ImDrawFlags_None, width);
}

void Canvas::picture(PictureId id, const Box& box) { list_->AddImage(texture(id), vec(box.low), vec(box.high)); }

Point Canvas::measure(std::string_view text, TextStyle style) const
{
    const ImFont& font = *fonts_->font(style);
    const ImVec2 size = font.CalcTextSizeA(font.FontSize, FLT_MAX, 0.0F, begin_of(text), end_of(text));
    return {std::ceil(size.x), size.y};
}

void Canvas::hear(std::string_view text) const
{
    if (heard_ != nullptr) heard_->emplace_back(text);
}

void Canvas::text(Point low, std::string_view text, TextStyle style, Color color)
{
    hear(text);
    ImFont* font = fonts_->font(style);
    list_->AddText(font, font->FontSize, ImVec2(std::round(low.x), std::round(low.y)), packed(color), begin_of(text), end_of(text));
}

void Canvas::text_in(const Box& box, std::string_view words, TextStyle style, Color color, Align align)
{
    Point size = measure(words, style);
    std::string cut;
    if (size.x > box.width() + 0.5F) {
        if (cut_ != nullptr) cut_->emplace_back(words);
        hear(words);
        cut = shortened(*this, words, style, box.width());
        words = cut;
        size = measure(words, style);
    }
    const float room = box.width() - size.x;
    const float shift = align == Align::left ? 0.0F : align == Align::center ? room * 0.5F : room;
    text({box.low.x + shift, box.center().y - size.y * 0.5F}, words, style, color);
}

Point Canvas::measure_wrapped(float width, std::string_view text, TextStyle style) const
{
    const ImFont& font = *fonts_->font(style);
    const ImVec2 size = font.CalcTextSizeA(font.FontSize, FLT_MAX, std::max(width, 1.0F), begin_of(text), end_of(text));
    return {std::ceil(size.x), size.y};
}

float Canvas::text_wrapped(Point low, float width, std::string_view text, TextStyle style, Color color)
{
    hear(text);
    ImFont* font = fonts_->font(style);
    list_->AddText(font, font->FontSize, ImVec2(std::round(low.x), std::round(low.y)), packed(color), begin_of(text), end_of(text),
                   std::max(width, 1.0F));
    return measure_wrapped(width, text, style).y;
}

void Canvas::text_turned(Point center, float angle, std::string_view words, TextStyle style, Color color)
{
    hear(words);
    const int first = list_->VtxBuffer.Size;
    // Not by AddText: that leaves out letters beyond the clip, which may come inside it by the turn.
    ImFont* font = fonts_->font(style);
    const Point low = center - measure(words, style) * 0.5F;
    const ImVec4 everywhere(-1e6F, -1e6F, 1e6F, 1e6F);
    font->RenderText(list_, font->FontSize, vec({std::round(low.x), std::round(low.y)}), packed(color), everywhere, begin_of(words),
                     end_of(words));
    const float c = std::cos(angle);
    const float s = std::sin(angle);
    for (int i = first; i < list_->VtxBuffer.Size; ++i) {
        ImVec2& at = list_->VtxBuffer[i].pos;
        const float x = at.x - center.x;
        const float y = at.y - center.y;
        at = ImVec2(center.x + c * x - s * y, center.y + s * x + c * y);
    }
}

Canvas::Clip::Clip(ImDrawList& list, const Box& box) : list_(&list) { list.PushClipRect(vec(box.low), vec(box.high), true); }
Canvas::Clip::~Clip() { list_->PopClipRect(); }

}
