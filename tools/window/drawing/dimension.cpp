#include "window/drawing/dimension.hpp"

#include "core/quantity.hpp"

#include <fmt/format.h>

#include <cmath>

namespace flapdoor::window {

std::string feet_text(double meters)
{
    const auto inches = static_cast<long>(std::lround(meters / meters_per_foot * 12.0));
    if (inches % 12 == 0) return fmt::format("{}'", inches / 12);
    if (inches < 12) return fmt::format("{}\"", inches);
    return fmt::format("{}' {}\"", inches / 12, inches % 12);
}

Box draw_dimension(Board& board, PaperPoint from, PaperPoint to, double offset)
{
    const Theme& t = board.theme();
    const PaperPoint side = left_of(along(from, to));
    const Point a = board.at(from + side * offset);
    const Point b = board.at(to + side * offset);
    const Point way = b - a;
    const float length = std::hypot(way.x, way.y);
    if (length < board.px(20.0F)) return {};
    const Point dir = way * (1.0F / length);
    const float sign = offset >= 0.0 ? 1.0F : -1.0F;
    const Point out = Point{dir.y, -dir.x} * sign; // away from what is measured, on the screen
    for (const Point end : {a, b}) {
        const float reach = std::min(board.view.length(std::abs(offset)) * 0.7F, board.px(14.0F));
        board.canvas.line(end - out * reach, end + out * board.px(4.0F), t.muted, board.px(0.9F));
        const Point slash = (dir + out) * board.px(4.2F);
        board.canvas.line(end - slash, end + slash, t.ink, board.px(1.8F));
    }
    board.canvas.line(a, b, t.muted, board.px(1.0F));
    const std::string text = feet_text(distance(from, to));
    const Point size = board.canvas.measure(text, TextStyle::small);
    float angle = std::atan2(dir.y, dir.x);
    if (angle > 1.5708F - 1e-3F) angle -= 3.1415927F;
    if (angle <= -1.5708F - 1e-3F) angle += 3.1415927F;
    if (size.x + board.px(8.0F) >= length) return {};
    const Point center = (a + b) * 0.5F + out * (size.y * 0.5F + board.px(3.0F));
    board.canvas.text_turned(center, angle, text, TextStyle::small, t.ink);
    return box_around(center, std::abs(dir.x) > std::abs(dir.y) ? size : Point{size.y, size.x});
}

void draw_scale_bar(Board& board, Point low, float room)
{
    const Theme& t = board.theme();
    const float foot = board.view.length(meters_per_foot);
    int field = 1;
    for (const int feet : {1, 2, 5, 10, 20, 50})
        if (static_cast<float>(feet * 4) * foot <= room) field = feet;
    const float height = board.px(5.0F);
    for (int i = 0; i < 4; ++i) {
        const Box box = box_at({low.x + static_cast<float>(i * field) * foot, low.y}, {static_cast<float>(field) * foot, height});
        board.canvas.fill_box(box, i % 2 == 0 ? t.ink : t.sheet);
        board.canvas.frame_box(box, t.ink, board.px(1.0F));
    }
    for (const int i : {0, 2, 4}) {
        const std::string text = i == 4 ? fmt::format("{} ft", i * field) : fmt::format("{}", i * field);
        const float x = low.x + static_cast<float>(i * field) * foot;
        const Point size = board.canvas.measure(fmt::format("{}", i * field), TextStyle::small);
        board.canvas.text({x - size.x * 0.5F, low.y - size.y - board.px(2.0F)}, text, TextStyle::small, t.muted);
    }
}

}
