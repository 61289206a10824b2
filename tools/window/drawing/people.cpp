#include "window/drawing/people.hpp"

#include <algorithm>
#include <cmath>
#include <initializer_list>

namespace flapdoor::window {

namespace {

std::vector<Point> ellipse(Point center, float along, float across, float angle)
{
    std::vector<Point> points;
    const Point u{std::cos(angle), std::sin(angle)};
    const Point v{-u.y, u.x};
    for (int i = 0; i < 36; ++i) {
        const float at = static_cast<float>(i) / 36.0F * 6.2831853F;
        points.push_back(center + u * (along * std::cos(at)) + v * (across * std::sin(at)));
    }
    return points;
}

/// A bent limb: a thick line with round joints and an ink edge.
void draw_limb(Board& board, std::initializer_list<Point> joints, float width, Color fill)
{
    for (const bool is_edge : {true, false}) {
        const float w = is_edge ? width + board.px(2.6F) : width;
        const Color color = is_edge ? board.theme().ink : fill;
        for (const Point* joint = joints.begin(); joint != joints.end(); ++joint) {
            board.canvas.fill_circle(*joint, w * 0.5F, color);
            if (joint + 1 != joints.end()) board.canvas.line(*joint, *(joint + 1), color, w);
        }
    }
}

Color cloth(const Theme& t, Outfit outfit) { return outfit == Outfit::own_clothes ? mixed(t.ink, t.sheet, 0.30) : t.field; }

}

void draw_person(Board& board, PaperPoint at, double facing, Outfit outfit, std::string_view initials, bool is_chosen)
{
    const Theme& t = board.theme();
    const Point c = board.at(at);
    const float half = std::max(board.view.length(0.24), board.px(9.0F)); // shoulder half width
    const auto angle = static_cast<float>(-facing);
    const Point front{std::cos(angle), std::sin(angle)};
    const Point side{-front.y, front.x};
    if (is_chosen) {
        board.canvas.fill_circle(c, half * 1.45F, faded(t.accent, 0.14));
        board.canvas.ring(c, half * 1.45F, t.sheet, board.px(5.0F)); // cased, to read over dust
        board.canvas.ring(c, half * 1.45F, t.accent, board.px(2.0F));
    }
    for (const float hand : {-1.0F, 1.0F}) { // arms reach forward, hands nearer to each other than the shoulders
        const Point shoulder = c + side * (half * 0.80F * hand);
        const Point elbow = c + side * (half * 0.86F * hand) + front * (half * 0.42F);
        const Point palm = c + side * (half * 0.46F * hand) + front * (half * 0.86F);
        draw_limb(board, {shoulder, elbow, palm}, half * 0.30F, cloth(t, outfit));
    }
    const std::vector<Point> shoulders = ellipse(c, half * 0.46F, half, angle);
    board.canvas.fill_convex(shoulders, cloth(t, outfit));
    board.canvas.polyline(shoulders, t.ink, board.px(1.5F), true);
    const float head = half * 0.46F;
    const Point brow = c + front * (half * 0.08F);
    const Point nose[3] = {brow + front * (head * 1.5F), brow + side * (head * 0.5F) + front * (head * 0.8F),
                           brow - side * (head * 0.5F) + front * (head * 0.8F)};
    board.canvas.fill_convex(nose, t.ink);
    board.canvas.fill_circle(brow, head, outfit == Outfit::own_clothes ? t.ink : t.field);
    board.canvas.ring(brow, head, t.ink, board.px(1.5F));
    if (outfit == Outfit::suit_and_respirator)
        for (const float filter : {-1.0F, 1.0F})
            board.canvas.fill_circle(brow + front * (head * 0.95F) + side * (head * 0.6F * filter), head * 0.34F, t.accent);
    if (initials.empty()) return;
    const Point words = board.canvas.measure(initials, TextStyle::small);
    const Box tag = box_around(c - Point{0.0F, half * (is_chosen ? 1.45F : 1.0F) + words.y * 0.5F + board.px(6.0F)},
                               {words.x + board.px(10.0F), words.y + board.px(4.0F)});
    board.canvas.fill_box(tag, t.ink, board.px(3.0F));
    board.canvas.text_in(tag, initials, TextStyle::small, t.sheet, Align::center);
}

void draw_person_in_section(Board& board, double x, double height, bool faces_right, Outfit outfit)
{
    const Theme& t = board.theme();
    const double way = faces_right ? 1.0 : -1.0;
    const auto at = [&](double along_body, double share) {
        return board.at(PaperPoint{x + way * along_body * height / 1.75, share * height});
    };
    const float r = board.view.length(0.065 * height);
    const Color fill = cloth(t, outfit);
    // Upright, one foot forward; one arm held out.
    draw_limb(board, {at(-0.03, 0.50), at(-0.04, 0.27), at(-0.13, 0.04), at(-0.06, 0.03)}, r * 1.05F, fill);
    draw_limb(board, {at(0.03, 0.50), at(0.10, 0.27), at(0.11, 0.04), at(0.18, 0.03)}, r * 1.05F, fill);
    draw_limb(board, {at(0.01, 0.775), at(0.0, 0.53)}, r * 2.0F, fill);
    draw_limb(board, {at(0.02, 0.765), at(0.16, 0.625), at(0.36, 0.70)}, r * 0.8F, fill);
    const Point head = at(0.02, 0.925);
    board.canvas.fill_circle(head, r * 1.12F, outfit == Outfit::own_clothes ? mixed(t.ink, t.sheet, 0.2) : t.field);
    board.canvas.ring(head, r * 1.12F, t.ink, board.px(1.4F));
    if (outfit == Outfit::suit_and_respirator)
        board.canvas.fill_circle(at(0.02 + 0.11, 0.905), r * 0.5F, t.accent);
    else
        board.canvas.fill_circle(at(0.02 + 0.12, 0.925), r * 0.25F, t.ink);
}

}
