#include "window/hands_on/bag_picture.hpp"

#include "window/widgets/words.hpp"

#include "text/language.hpp"
#include "text/show.hpp"

#include <algorithm>
#include <cmath>
#include <vector>

namespace flapdoor::window {

namespace {

using site::BagMove;

bool is_made(const site::BagInHand& bag, BagMove move) { return std::find(bag.moves.begin(), bag.moves.end(), move) != bag.moves.end(); }

bool is_air_out(const site::BagInHand& bag)
{
    return is_made(bag, BagMove::press_gently) || is_made(bag, BagMove::press_hard) || is_made(bag, BagMove::draw_air);
}

/// Luck of a drawing: the same every frame.
struct Grain {
    std::uint32_t state = 977;
    float next()
    {
        state = state * 1664525U + 1013904223U;
        return static_cast<float>(state >> 8) / 16777216.0F;
    }
};

constexpr int outline_points = 22;

/// Left and right edge of the bag between its mouth (0) and its bottom (1).
float half_width(float down, double fill, bool is_flat, bool is_gathered)
{
    const float bottom = 1.0F - std::pow(std::max(down, 0.0F), 14.0F) * 0.16F;
    const auto debris_top = static_cast<float>(1.0 - fill);
    if (down >= debris_top) return bottom;
    const float above = debris_top > 0.0F ? (debris_top - down) / debris_top : 0.0F; // 0 at the debris, 1 at the mouth
    const float mouth = is_gathered ? 0.10F : 0.82F;
    if (is_flat) return bottom + (mouth - bottom) * std::min(1.0F, above * (is_gathered ? 1.35F : 1.0F));
    const float bulge = is_gathered ? std::sqrt(std::max(0.0F, 1.0F - above * above)) : 1.0F - 0.18F * above;
    return std::max(mouth, bulge);
}

void draw_neck(Canvas& canvas, const Ui& ui, Point foot, const site::BagInHand& bag, const site::BagHandled& handled, float inch)
{
    const Theme& t = ui.theme();
    const float width = ui.px(15.0F);
    const bool is_twisted = is_made(bag, BagMove::twist) && handled.card.twist > Length{};
    const bool is_folded = handled.card.is_folded && is_twisted;
    const float length = is_twisted ? static_cast<float>(bag.twist.si / 0.0254) * inch : ui.px(24.0F);
    const auto column = [&](Point from, Point to) {
        canvas.line(from, to, t.ink, width + ui.px(3.0F));
        canvas.line(from, to, t.thing, width);
        const Point way = to - from;
        const float size = std::hypot(way.x, way.y);
        for (float at = ui.px(5.0F); at < size - ui.px(3.0F); at += ui.px(8.0F)) { // the turns of the twist
            const Point p = from + way * (at / size);
            const Point q = from + way * (std::min(at + ui.px(7.0F), size) / size);
            canvas.line(p - Point{width * 0.45F, 0.0F}, q + Point{width * 0.45F, 0.0F}, t.ink, ui.px(1.2F));
        }
    };
    const auto band = [&](Point center, float across) {
        const Box box = box_around(center, {across, ui.px(11.0F)});
        canvas.fill_box(box, t.sheet, ui.px(2.0F));
        canvas.fill_box(box.inset(ui.px(1.0F)), t.tape, ui.px(2.0F));
    };
    if (is_made(bag, BagMove::knot)) {
        canvas.fill_circle(foot - Point{0.0F, ui.px(8.0F)}, ui.px(11.0F), t.thing);
        canvas.ring(foot - Point{0.0F, ui.px(8.0F)}, ui.px(11.0F), t.ink, ui.px(1.8F));
        for (const float side : {-1.0F, 1.0F}) canvas.line(foot - Point{0.0F, ui.px(14.0F)}, foot + Point{side * ui.px(22.0F), -ui.px(34.0F)}, t.ink, ui.px(3.0F));
        return;
    }
    if (!is_twisted) {
        if (is_made(bag, BagMove::tape)) { // gathered film with a brush of pleats above the tape
            for (int i = -3; i <= 3; ++i) canvas.line(foot, foot + Point{static_cast<float>(i) * ui.px(7.0F), -ui.px(30.0F)}, t.ink, ui.px(1.3F));
            band(foot - Point{0.0F, ui.px(6.0F)}, ui.px(30.0F));
        }
        return;
    }
    if (!is_folded) {
        column(foot, foot - Point{0.0F, length});
        if (is_made(bag, BagMove::tape)) band(foot - Point{0.0F, length * 0.5F}, width + ui.px(10.0F));
        return;
    }
    const float half = length * 0.5F;
    const float spread = width * 0.62F;
    const float bend = foot.y - half;
    column(foot - Point{spread, 0.0F}, {foot.x - spread, bend});
    column({foot.x + spread, bend}, {foot.x + spread, foot.y - half * 0.15F});
    canvas.arc({foot.x, bend}, spread, 3.14159265F, 6.2831853F, t.ink, width + ui.px(3.0F));
    canvas.arc({foot.x, bend}, spread, 3.14159265F, 6.2831853F, t.thing, width);
    if (is_made(bag, BagMove::tape)) band({foot.x, foot.y - half * 0.12F}, 2.0F * spread + width + ui.px(8.0F));
    if (handled.card.has_loop) band({foot.x, bend + 2.5F * inch}, 2.0F * spread + width + ui.px(8.0F));
}

void draw_puff(Canvas& canvas, const Ui& ui, Point mouth, double share)
{
    if (share <= 0.0) return;
    Grain grain;
    const int dots = 12 + static_cast<int>(110.0 * share);
    for (int i = 0; i < dots; ++i) {
        const float angle = -1.5708F + (grain.next() - 0.5F) * 1.7F;
        const float far = ui.px(14.0F) + grain.next() * ui.px(40.0F + 70.0F * static_cast<float>(share));
        canvas.fill_circle(mouth + Point{std::cos(angle) * far, std::sin(angle) * far}, ui.px(1.1F + grain.next() * 1.5F), faded(ui.theme().ink, 0.55));
    }
}

}

BagDrawing bag_drawing(const Ui& ui, const Box& field, double fill)
{
    const float height = std::min(field.height() * 0.62F, field.width() * 1.05F);
    const float width = height * 0.66F;
    const Box body{{field.center().x - width * 0.5F, field.high.y - ui.px(14.0F) - height}, {field.center().x + width * 0.5F, field.high.y - ui.px(14.0F)}};
    return {body, body.high.y - height * static_cast<float>(fill)};
}

void draw_bag_in_hand(Canvas canvas, const Ui& ui, const Box& field, const site::BagInHand& bag, const site::BagHandled& handled)
{
    const Theme& t = ui.theme();
    const auto clip = canvas.clipped_to(field);
    const auto [body, fill_y] = bag_drawing(ui, field, bag.fill);
    const bool is_gathered = is_made(bag, BagMove::twist) || is_made(bag, BagMove::tape) || is_made(bag, BagMove::knot);
    std::vector<Point> left, right;
    for (int i = 0; i <= outline_points; ++i) {
        const float down = static_cast<float>(i) / outline_points;
        const float half = half_width(down, bag.fill, is_air_out(bag), is_gathered) * body.width() * 0.5F;
        left.push_back({body.center().x - half, body.low.y + down * body.height()});
        right.push_back({body.center().x + half, body.low.y + down * body.height()});
    }
    canvas.line({field.low.x, body.high.y}, {field.high.x, body.high.y}, t.wall, ui.px(2.0F));
    std::vector<Point> outline = left;
    outline.insert(outline.end(), right.rbegin(), right.rend());
    canvas.fill(outline, faded(t.thing, 0.9));
    std::vector<Point> debris; // up to the fill line
    for (const Point p : left)
        if (p.y >= fill_y) debris.push_back(p);
    for (auto p = right.rbegin(); p != right.rend(); ++p)
        if (p->y >= fill_y) debris.push_back(*p);
    if (debris.size() > 2) canvas.fill(debris, mixed(t.wall, t.thing, 0.55));
    Grain grain;
    for (int i = 0; i < 46; ++i) { // chips and splinters
        const Point p{body.low.x + body.width() * (0.08F + 0.84F * grain.next()), fill_y + ui.px(5.0F) + (body.high.y - fill_y - ui.px(16.0F)) * grain.next()};
        const float angle = grain.next() * 6.28F;
        const Point way = Point{std::cos(angle), std::sin(angle)} * ui.px(3.0F + 5.0F * grain.next());
        if (p.y < body.high.y - ui.px(6.0F)) canvas.line(p - way, p + way, faded(t.sheet, 0.85), ui.px(1.6F));
    }
    canvas.polyline(outline, t.ink, ui.px(1.8F), true);
    if (!handled.is_vacuumed_after)
        for (int i = 0; i < 60; ++i) { // dust on the skin
            const std::vector<Point>& edge = i % 2 == 0 ? left : right;
            const Point p = edge[static_cast<std::size_t>(grain.next() * static_cast<float>(edge.size() - 1))];
            canvas.fill_circle(p + Point{(grain.next() - 0.5F) * ui.px(9.0F), (grain.next() - 0.5F) * ui.px(9.0F)}, ui.px(1.3F), faded(t.ink, 0.7));
        }
    const Point mouth{body.center().x, body.low.y};
    const float inch = body.height() / 30.0F; // a bag of about 30 in
    draw_neck(canvas, ui, mouth + Point{0.0F, ui.px(4.0F)}, bag, handled, inch);
    draw_puff(canvas, ui, mouth, handled.closing.pressed_out * (is_air_out(bag) ? 1.0 : 0.0));
    // Two thirds full: beyond, no film is left to twist.
    const float mark_y = body.high.y - body.height() * static_cast<float>(site::fullest);
    canvas.dashes({body.low.x - ui.px(10.0F), mark_y}, {body.high.x + ui.px(10.0F), mark_y}, t.caution, ui.px(1.6F), ui.px(7.0F), ui.px(4.0F));
    const std::string two_thirds{text::say("two thirds")};
    canvas.text({body.high.x + ui.px(10.0F) - canvas.measure(two_thirds, TextStyle::small).x, mark_y - ui.px(21.0F)}, two_thirds, TextStyle::small, t.caution);
}

}
