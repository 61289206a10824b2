#include "window/quiz/plan_pointing.hpp"

#include "job/walls.hpp"
#include "quiz/print/plan_figure.hpp"
#include "text/language.hpp"

#include <algorithm>
#include <array>

namespace flapdoor::window {

namespace {

/// Plan to pixels, north up.
struct Scale {
    plan::Rect window;
    Box box;

    float per_meter() const { return std::min(box.width() / static_cast<float>(window.width.si), box.height() / static_cast<float>(window.depth.si)); }
    Point at(plan::Point p) const { return {box.low.x + static_cast<float>((p.x - window.west).si) * per_meter(), box.low.y + static_cast<float>((window.north() - p.y).si) * per_meter()}; }
    Box at(const plan::Rect& r) const { return {at(plan::Point{r.west, r.north()}), at(plan::Point{r.east(), r.south})}; }
    plan::Point back(Point p) const
    {
        return {window.west + 1.0_m * static_cast<double>((p.x - box.low.x) / per_meter()), window.north() - 1.0_m * static_cast<double>((p.y - box.low.y) / per_meter())};
    }
};

void draw_rooms(Ui& ui, Canvas& canvas, const job::Scenario& site, const Scale& scale)
{
    const Theme& t = ui.theme();
    for (const job::Zone& zone : site.zones) {
        const plan::Rect floor = plan::intersection(job::floor_of(zone), scale.window);
        if (floor.area().si <= 0.0) continue;
        canvas.fill_box(scale.at(floor), t.floor);
        canvas.frame_box(scale.at(floor), t.wall, ui.px(1.5F));
    }
    for (const job::Object& object : site.objects) {
        const plan::Rect place{object.west, object.south, object.width, object.depth};
        if (!scale.window.contains(place)) continue;
        canvas.fill_box(scale.at(place), t.thing);
        canvas.frame_box(scale.at(place), t.line, 1.0F);
    }
    for (const job::Opening& opening : site.openings) {
        const job::Zone* zone = job::find_by_id(site.zones, opening.zone);
        if (zone == nullptr) continue;
        const Box gap = scale.at(job::wall_strip(*zone, opening.wall, opening.from, opening.width, 0.06_m, 0.06_m));
        canvas.fill_box(gap, opening.kind == job::OpeningKindOf::window ? t.glass : opening.kind == job::OpeningKindOf::door ? t.sheet : t.ink);
        canvas.frame_box(gap, t.ink, 1.0F);
    }
    for (const job::Zone& zone : site.zones) {
        const plan::Rect floor = plan::intersection(job::floor_of(zone), scale.window);
        const Box box = scale.at(floor);
        const std::string_view name = text::say(zone.title);
        if (box.width() < canvas.measure(name, TextStyle::small).x + ui.px(6.0F) || box.height() < ui.px(30.0F)) continue;
        const float y = box.height() < ui.px(60.0F) ? box.high.y - ui.px(11.0F) : box.center().y; // clear of a letter on the door above
        canvas.text_in({{box.low.x, y - ui.px(9.0F)}, {box.high.x, y + ui.px(9.0F)}}, name, TextStyle::small, t.muted, Align::center);
    }
}

void draw_letters(Ui& ui, Canvas& canvas, const quiz::PointAtPlan& asked, const AnswerInHand& draft, const Scale& scale, bool is_told)
{
    const Theme& t = ui.theme();
    for (std::size_t i = 0; i < asked.regions.size(); ++i) {
        const Point p = scale.at(asked.regions[i].place.center());
        const bool is_chosen = !draft.pointed && draft.chosen == i;
        const float radius = ui.px(12.0F);
        canvas.fill_circle(p, radius, is_chosen ? t.accent : t.sheet);
        canvas.ring(p, radius, t.ink, ui.px(1.5F));
        if (is_told && asked.regions[i].is_right) canvas.ring(p, radius + ui.px(5.0F), t.accent, ui.px(3.0F));
        canvas.text_in(box_around(p, {2.0F * radius, 2.0F * radius}), std::string(1, static_cast<char>('A' + i % 26)), TextStyle::strong, is_chosen ? t.on_accent : t.ink, Align::center);
    }
    if (!draft.pointed) return;
    const Point p = scale.at(plan::Point{draft.pointed->x, draft.pointed->y});
    const float arm = ui.px(9.0F);
    for (const auto& [from, to] : {std::pair{Point{-arm, -arm}, Point{arm, arm}}, std::pair{Point{-arm, arm}, Point{arm, -arm}}}) {
        canvas.line(p + from, p + to, t.sheet, ui.px(6.0F));
        canvas.line(p + from, p + to, t.caution, ui.px(3.0F));
    }
}

}

Box plan_pointing(Ui& ui, const quiz::PointAtPlan& asked, AnswerInHand& draft, Point most, bool is_told)
{
    Scale scale{quiz::plan_window(asked), {}};
    const float ratio = static_cast<float>(scale.window.depth / scale.window.width);
    const Point size{std::min(most.x, most.y / ratio), std::min(most.x * ratio, most.y)};
    const Touch touch = ui.touch({.name = "plan", .role = Role::drawing, .label = text::say("Plan of the drill, north up"), .size = size, .is_enabled = !is_told, .is_stop = false, .is_pressed_by_keys = false});
    scale.box = touch.box;
    Canvas canvas = ui.canvas();
    {
        const auto clip = canvas.clipped_to(touch.box);
        draw_rooms(ui, canvas, *asked.site, scale);
    }
    if (touch.is_clicked && !is_told) {
        const plan::Point p = scale.back(ui.input().mouse);
        draft.pointed = quiz::Pointed{{}, p.x, p.y};
        draft.chosen.reset();
    }
    draw_letters(ui, canvas, asked, draft, scale, is_told);
    return touch.box;
}

}
