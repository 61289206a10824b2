#include "window/stage/icon.hpp"

#include <array>
#include <initializer_list>
#include <vector>

namespace flapdoor::window {

namespace {

/// A pen on a square that runs from -1 to 1 both ways, y downwards.
struct Pen {
    Canvas& canvas;
    Point center;
    float half;
    Color color;
    Color ground;

    Point at(Point p) const { return center + p * half; }
    float stroke() const { return half * 0.24F; }
    void path(std::initializer_list<Point> points, bool is_closed = false) const
    {
        std::vector<Point> moved;
        for (const Point p : points) moved.push_back(at(p));
        canvas.polyline(moved, color, stroke(), is_closed);
    }
    void shape(std::initializer_list<Point> points) const
    {
        std::vector<Point> moved;
        for (const Point p : points) moved.push_back(at(p));
        canvas.fill_convex(moved, color);
    }
    void bar(Point low, Point high) const { canvas.fill_box({at(low), at(high)}, color, half * 0.08F); }
    void dot(Point p, float radius) const { canvas.fill_circle(at(p), radius * half, color); }
    void hole(Point p, float radius) const { canvas.fill_circle(at(p), radius * half, ground); }
    void circle(Point p, float radius) const { canvas.ring(at(p), radius * half, color, stroke()); }
    void arc(Point p, float radius, float from, float to) const { canvas.arc(at(p), radius * half, from, to, color, stroke()); }
};

void draw_eye(const Pen& pen)
{
    pen.arc({0.0F, 0.62F}, 1.08F, -2.45F, -0.69F);
    pen.arc({0.0F, -0.62F}, 1.08F, 0.69F, 2.45F);
    pen.dot({0.0F, 0.0F}, 0.34F);
}

void draw_dust(const Pen& pen)
{
    constexpr std::array<Point, 7> specks{
        {{-0.6F, -0.5F}, {0.1F, -0.7F}, {0.65F, -0.2F}, {-0.15F, 0.0F}, {-0.7F, 0.35F}, {0.3F, 0.55F}, {-0.2F, 0.75F}}};
    float radius = 0.2F;
    for (const Point p : specks) {
        pen.dot(p, radius);
        radius = radius > 0.18F ? 0.12F : 0.2F;
    }
}

void draw_people(const Pen& pen)
{
    pen.dot({-0.35F, -0.4F}, 0.3F);
    pen.arc({-0.35F, 0.75F}, 0.55F, 3.1416F, 6.2832F);
    pen.dot({0.5F, -0.25F}, 0.24F);
    pen.arc({0.5F, 0.75F}, 0.42F, 4.4F, 6.2832F);
}

}

void draw_icon(Canvas& canvas, Icon icon, Point center, float size, Color color, Color ground)
{
    const Pen pen{canvas, center, size * 0.5F, color, ground};
    switch (icon) {
        case Icon::none:
            break;
        case Icon::play:
            pen.shape({{-0.5F, -0.75F}, {0.8F, 0.0F}, {-0.5F, 0.75F}});
            break;
        case Icon::pause:
            pen.bar({-0.6F, -0.7F}, {-0.15F, 0.7F}), pen.bar({0.15F, -0.7F}, {0.6F, 0.7F});
            break;
        case Icon::to_start:
            pen.bar({-0.75F, -0.7F}, {-0.45F, 0.7F}), pen.shape({{0.75F, -0.7F}, {0.75F, 0.7F}, {-0.35F, 0.0F}});
            break;
        case Icon::back:
            pen.path({{0.3F, -0.7F}, {-0.4F, 0.0F}, {0.3F, 0.7F}});
            break;
        case Icon::forward:
            pen.path({{-0.3F, -0.7F}, {0.4F, 0.0F}, {-0.3F, 0.7F}});
            break;
        case Icon::up:
            pen.path({{-0.55F, -0.1F}, {0.0F, -0.65F}, {0.55F, -0.1F}}), pen.path({{0.0F, -0.6F}, {0.0F, 0.7F}});
            break;
        case Icon::down:
            pen.path({{-0.55F, 0.1F}, {0.0F, 0.65F}, {0.55F, 0.1F}}), pen.path({{0.0F, 0.6F}, {0.0F, -0.7F}});
            break;
        case Icon::plus:
            pen.path({{0.0F, -0.65F}, {0.0F, 0.65F}}), pen.path({{-0.65F, 0.0F}, {0.65F, 0.0F}});
            break;
        case Icon::minus:
            pen.path({{-0.65F, 0.0F}, {0.65F, 0.0F}});
            break;
        case Icon::fit:
            pen.path({{-0.75F, -0.3F}, {-0.75F, -0.75F}, {-0.3F, -0.75F}}), pen.path({{0.3F, -0.75F}, {0.75F, -0.75F}, {0.75F, -0.3F}});
            pen.path({{0.75F, 0.3F}, {0.75F, 0.75F}, {0.3F, 0.75F}}), pen.path({{-0.3F, 0.75F}, {-0.75F, 0.75F}, {-0.75F, 0.3F}});
            break;
        case Icon::check:
            pen.path({{-0.65F, 0.05F}, {-0.2F, 0.5F}, {0.65F, -0.45F}});
            break;
        case Icon::cross:
            pen.path({{-0.5F, -0.5F}, {0.5F, 0.5F}}), pen.path({{0.5F, -0.5F}, {-0.5F, 0.5F}});
            break;
        case Icon::caution:
            pen.path({{0.0F, -0.8F}, {0.9F, 0.75F}, {-0.9F, 0.75F}}, true), pen.path({{0.0F, -0.25F}, {0.0F, 0.25F}}),
                pen.dot({0.0F, 0.5F}, 0.13F);
            break;
        case Icon::info:
            pen.circle({0.0F, 0.0F}, 0.85F), pen.path({{0.0F, -0.05F}, {0.0F, 0.5F}}), pen.dot({0.0F, -0.4F}, 0.14F);
            break;
        case Icon::eye:
            draw_eye(pen);
            break;
        case Icon::dust:
            draw_dust(pen);
            break;
        case Icon::repeat:
            pen.arc({0.0F, 0.0F}, 0.68F, -0.6F, 4.4F), pen.shape({{0.25F, -0.55F}, {0.95F, -0.75F}, {0.85F, -0.05F}});
            break;
        case Icon::grip:
            for (const float x : {-0.3F, 0.3F})
                for (const float y : {-0.65F, 0.0F, 0.65F}) pen.dot({x, y}, 0.15F);
            break;
        case Icon::page:
            pen.path({{-0.6F, -0.85F}, {0.6F, -0.85F}, {0.6F, 0.85F}, {-0.6F, 0.85F}}, true), pen.path({{-0.3F, -0.35F}, {0.3F, -0.35F}}),
                pen.path({{-0.3F, 0.1F}, {0.3F, 0.1F}});
            break;
        case Icon::people:
            draw_people(pen);
            break;
        case Icon::book:
            pen.path({{0.0F, -0.55F}, {-0.85F, -0.75F}, {-0.85F, 0.6F}, {0.0F, 0.8F}, {0.85F, 0.6F}, {0.85F, -0.75F}}, true),
                pen.path({{0.0F, -0.55F}, {0.0F, 0.8F}});
            break;
        case Icon::house:
            pen.path({{-0.85F, 0.0F}, {0.0F, -0.8F}, {0.85F, 0.0F}}),
                pen.path({{-0.6F, -0.1F}, {-0.6F, 0.8F}, {0.6F, 0.8F}, {0.6F, -0.1F}});
            break;
        case Icon::wall:
            pen.path({{-0.9F, -0.75F}, {0.9F, -0.75F}}), pen.path({{-0.75F, -0.75F}, {-0.75F, 0.3F}, {0.75F, 0.3F}, {0.75F, -0.75F}}),
                pen.path({{-0.35F, 0.85F}, {0.0F, 0.3F}, {0.35F, 0.85F}});
            break;
    }
}

}
