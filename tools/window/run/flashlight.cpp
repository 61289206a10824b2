#include "window/run/flashlight.hpp"

#include <algorithm>
#include <cmath>

namespace flapdoor::window {

namespace {

constexpr double arm = 0.60;       // m from the hand to the spot that is looked at
constexpr double nearest = 0.12;   // m from the hand to where the light begins
constexpr double farthest = 1.20;  // m from the hand, where it ends
constexpr double half_width = 0.05; // m at the hand
constexpr double beam_spread = 0.32;    // m to each side for each meter
const Color light = color(0xFFE9A8);

PaperPoint edge(const Beam& beam, double off, double side)
{
    const PaperPoint way = along(beam.hand, beam.spot);
    return beam.hand + way * off + left_of(way) * (side * (half_width + beam_spread * off));
}

}

void Beam::look_at(PaperPoint next)
{
    if (next == spot) return;
    const PaperPoint way = distance(hand, next) > 1e-6 ? along(hand, next) : along(hand, spot);
    spot = next;
    hand = spot - way * arm;
}

bool Beam::lights(PaperPoint p) const
{
    const PaperPoint way = along(hand, spot);
    const PaperPoint off = p - hand;
    const double ahead = off.x * way.x + off.y * way.y;
    const double aside = std::abs(off.x * way.y - off.y * way.x);
    return ahead >= nearest && ahead <= farthest && aside <= half_width + beam_spread * ahead;
}

Beam beam_on(PaperPoint spot) { return {spot - PaperPoint{0.0, arm}, spot}; }

PaperBox taken_by(const Beam& beam)
{
    PaperBox box{beam.hand, beam.hand};
    const PaperPoint way = along(beam.hand, beam.spot);
    for (const PaperPoint p : {edge(beam, farthest, 1.0), edge(beam, farthest, -1.0), beam.hand + left_of(way) * 0.15, beam.hand - left_of(way) * 0.15, beam.hand - way * 0.3}) {
        box.low = {std::min(box.low.x, p.x), std::min(box.low.y, p.y)};
        box.high = {std::max(box.high.x, p.x), std::max(box.high.y, p.y)};
    }
    return box;
}

void draw_flashlight(Board& board, const Beam& beam)
{
    const Theme& t = board.theme();
    for (const double side : {-1.0, 1.0}) {
        board.canvas.line(board.at(edge(beam, nearest, side)), board.at(edge(beam, farthest, side)), faded(t.sheet, 0.9), board.px(3.0F));
        board.canvas.line(board.at(edge(beam, nearest, side)), board.at(edge(beam, farthest, side)), t.ink, board.px(1.2F));
    }
    // The light itself: barrel, head, lens.
    const Point hand = board.at(beam.hand);
    const PaperPoint paper_way = along(beam.hand, beam.spot);
    const Point way{static_cast<float>(paper_way.x), static_cast<float>(-paper_way.y)};
    const Point side{-way.y, way.x};
    const auto at = [&](float off, float aside) { return hand + way * board.px(off) + side * board.px(aside); };
    const Point barrel[4] = {at(-22.0F, -4.0F), at(-2.0F, -4.0F), at(-2.0F, 4.0F), at(-22.0F, 4.0F)};
    const Point head[4] = {at(-2.0F, -5.0F), at(8.0F, -8.5F), at(8.0F, 8.5F), at(-2.0F, 5.0F)};
    for (const auto& part : {std::span<const Point>(barrel), std::span<const Point>(head)}) {
        board.canvas.polyline(part, t.sheet, board.px(4.0F), true);
        board.canvas.fill_convex(part, t.ink);
    }
    board.canvas.line(at(8.0F, -8.0F), at(8.0F, 8.0F), light, board.px(3.0F));
}

}
