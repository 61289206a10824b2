#include "window/drawing/cloud.hpp"

#include "core/insist.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace flapdoor::window {

Picture cloud_picture(std::span<const PaperPoint> parcels, const PaperBox& part, int width, int height, Color color, double weight)
{
    insist(width > 0 && height > 0 && part.width() > 0.0 && part.height() > 0.0, "a cloud is drawn on some paper");
    insist(weight > 0.0 && weight <= 1.0, "a dot is seen, and is no more than opaque");

    // Each dot gives to the three by three pixels about its place, by a smooth bump centered where it really is.
    const auto columns = static_cast<std::size_t>(width) + 2; // a rim of one pixel, so that dots need no clipping
    const auto rows = static_cast<std::size_t>(height) + 2;
    std::vector<float> weights(columns * rows, 0.0F);
    const double across = width / part.width();
    const double down = height / part.height();
    const auto bump = [](double share) { // weights of the three pixels for a place `share` (0..1) into the middle one
        const double a = 0.5 * (1.0 - share) * (1.0 - share);
        const double c = 0.5 * share * share;
        return std::array<float, 3>{static_cast<float>(a), static_cast<float>(1.0 - a - c), static_cast<float>(c)};
    };
    for (const PaperPoint p : parcels) {
        const double x = (p.x - part.low.x) * across;
        const double y = (part.high.y - p.y) * down;
        if (!(x >= 0.0 && y >= 0.0 && x < width && y < height)) continue;
        const auto column = static_cast<std::size_t>(x);
        const auto row = static_cast<std::size_t>(y);
        const std::array<float, 3> bx = bump(x - static_cast<double>(column));
        const std::array<float, 3> by = bump(y - static_cast<double>(row));
        for (std::size_t r = 0; r < 3; ++r)
            for (std::size_t c = 0; c < 3; ++c) weights[(row + r) * columns + column + c] += by[r] * bx[c];
    }

    // The middle pixel of a lone dot gets 9/16 at most; opacity of dots on each other multiplies.
    const double thinness = std::log(1.0 - std::min(weight, 0.995)) / 0.5625;
    std::array<std::uint8_t, 1024> alphas{};
    constexpr float steps_per_dot = 128.0F;
    for (std::size_t i = 0; i < alphas.size(); ++i)
        alphas[i] = static_cast<std::uint8_t>(std::lround(
            static_cast<double>(color.a) * (1.0 - std::exp(thinness * static_cast<double>(i) / static_cast<double>(steps_per_dot)))));
    Picture picture(width, height, {color.r, color.g, color.b, 0});
    for (int row = 0; row < height; ++row)
        for (int column = 0; column < width; ++column) {
            const float sum = weights[(static_cast<std::size_t>(row) + 1) * columns + static_cast<std::size_t>(column) + 1];
            if (sum > 0.0F) picture.at(column, row).a = alphas[std::min(static_cast<std::size_t>(sum * steps_per_dot), alphas.size() - 1)];
        }
    return picture;
}

void draw_parcel(Board& board, Point center, float radius)
{
    constexpr float half = 0.5F;
    constexpr float side = 0.8660254F;
    constexpr std::array<Point, 6> corners{{{1.0F, 0.0F}, {half, side}, {-half, side}, {-1.0F, 0.0F}, {-half, -side}, {half, -side}}};
    const auto hexagon = [&](float r, Color color) {
        std::array<Point, 6> points{};
        for (std::size_t i = 0; i < points.size(); ++i) points[i] = center + corners[i] * r;
        board.canvas.fill_convex(points, color);
    };
    hexagon(radius + board.px(1.1F), faded(board.theme().field, 0.85));
    hexagon(radius, board.theme().ink);
}

}
