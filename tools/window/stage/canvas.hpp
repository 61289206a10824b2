#pragma once

#include "window/base/color.hpp"
#include "window/base/geometry.hpp"
#include "window/base/picture.hpp"
#include "window/stage/fonts.hpp"

#include <span>
#include <string>
#include <string_view>
#include <vector>

struct ImDrawList;

namespace flapdoor::window {

enum class Align : int { left, center, right };

/// Where one draws: lines, shapes, text and pictures in pixels, smooth-edged. Lives for one frame.
class Canvas {
public:
    /// @param cut  takes every text that had to be shortened; none when null
    /// @param heard  takes every text that is drawn, in full; none when null
    Canvas(ImDrawList& list, const Fonts& fonts, std::vector<std::string>* cut = nullptr, std::vector<std::string>* heard = nullptr)
        : list_(&list), fonts_(&fonts), cut_(cut), heard_(heard)
    {
    }

    void line(Point from, Point to, Color color, float width = 1.0F);
    void polyline(std::span<const Point> points, Color color, float width = 1.0F, bool is_closed = false);
    /// @param dash, gap  lengths in pixels, both above 0
    void dashes(Point from, Point to, Color color, float width, float dash, float gap);
    void fill(std::span<const Point> polygon, Color color); ///< any polygon that does not cross itself
    void fill_convex(std::span<const Point> polygon, Color color);
    void fill_box(const Box& box, Color color, float rounding = 0.0F);
    void frame_box(const Box& box, Color color, float width = 1.0F, float rounding = 0.0F);
    void fill_circle(Point center, float radius, Color color);
    void ring(Point center, float radius, Color color, float width = 1.0F);
    /// Angles in radians, 0 to the right, growing clockwise on the screen.
    void arc(Point center, float radius, float from, float to, Color color, float width = 1.0F);
    void picture(PictureId id, const Box& box);

    Point measure(std::string_view text, TextStyle style) const;
    void text(Point low, std::string_view text, TextStyle style, Color color);
    /// One line, centered upright in the box, cut with an ellipsis when it is too long.
    void text_in(const Box& box, std::string_view text, TextStyle style, Color color, Align align = Align::left);
    /// Wrapped between words. @return the height it took
    float text_wrapped(Point low, float width, std::string_view text, TextStyle style, Color color);
    Point measure_wrapped(float width, std::string_view text, TextStyle style) const;
    /// Turned about its center. @param angle  radians, clockwise
    void text_turned(Point center, float angle, std::string_view text, TextStyle style, Color color);

    /// Nothing is drawn outside the box while the guard lives.
    class Clip {
    public:
        Clip(ImDrawList& list, const Box& box);
        ~Clip();
        Clip(const Clip&) = delete;
        Clip& operator=(const Clip&) = delete;

    private:
        ImDrawList* list_;
    };
    [[nodiscard]] Clip clipped_to(const Box& box) { return Clip(*list_, box); }

private:
    ImDrawList* list_;
    const Fonts* fonts_;
    void hear(std::string_view text) const;

    std::vector<std::string>* cut_;
    std::vector<std::string>* heard_;
};

}
