#include "window/run/fault_sign.hpp"

#include <fmt/format.h>

namespace flapdoor::window {

void draw_fault_sign(Canvas& canvas, const Ui& ui, Point center, float radius, const debrief::FaultLine& fault)
{
    const Theme& t = ui.theme();
    Color text = t.ink;
    if (fault.rule.is_critical) {
        const float r = radius * 1.32F;
        const Point diamond[4] = {center + Point{0.0F, -r}, center + Point{r, 0.0F}, center + Point{0.0F, r}, center + Point{-r, 0.0F}};
        canvas.fill_convex(diamond, t.ink);
        text = t.sheet;
    }
    else if (fault.is_weighed()) {
        canvas.fill_circle(center, radius, t.caution_tint);
        canvas.ring(center, radius, t.caution, ui.px(2.0F));
    }
    else {
        const Box square = box_around(center, {radius * 1.8F, radius * 1.8F});
        canvas.fill_box(square, t.field);
        canvas.frame_box(square, t.line, ui.px(1.5F));
    }
    canvas.text_in(box_around(center, {radius * 3.0F, radius * 2.0F}), fmt::format("{}", fault.number), TextStyle::small, text,
                   Align::center);
}

}
