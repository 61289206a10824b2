#include "window/widgets/words.hpp"

#include "window/stage/icon.hpp"

namespace flapdoor::window {

namespace {

void paragraph(Ui& ui, std::string_view text, TextStyle style, Color color)
{
    Canvas canvas = ui.canvas();
    const float width = ui.width_left();
    const Box box = ui.place({width, canvas.measure_wrapped(width, text, style).y});
    canvas.text_wrapped(box.low, width, text, style, color);
}

struct MarkLook {
    Color ground, edge, text;
    Icon icon;
};

MarkLook look_of(const Theme& t, Standing standing)
{
    switch (standing) {
        case Standing::good:
            return {t.accent_tint, t.accent, t.accent, Icon::check};
        case Standing::caution:
            return {t.caution_tint, t.caution, t.caution, Icon::caution};
        case Standing::critical:
            return {t.ink, t.ink, t.sheet, Icon::cross};
        case Standing::plain:
            break;
    }
    return {t.sheet, t.line, t.ink, Icon::none};
}

Point mark_size(const Canvas& canvas, const Ui& ui, Standing standing, std::string_view text)
{
    const float icon = standing == Standing::plain ? 0.0F : ui.px(18.0F);
    return {canvas.measure(text, TextStyle::small).x + icon + ui.px(16.0F), ui.px(24.0F)};
}

}

void title(Ui& ui, std::string_view text) { paragraph(ui, text, TextStyle::title, ui.theme().ink); }
void strong(Ui& ui, std::string_view text) { paragraph(ui, text, TextStyle::strong, ui.theme().ink); }
void words(Ui& ui, std::string_view text) { paragraph(ui, text, TextStyle::body, ui.theme().ink); }
void aside(Ui& ui, std::string_view text) { paragraph(ui, text, TextStyle::small, ui.theme().muted); }

void rule(Ui& ui)
{
    const Box box = ui.place({ui.width_left(), ui.px(1.0F)});
    ui.canvas().fill_box(box, ui.theme().hairline);
}

void mark(Ui& ui, Standing standing, std::string_view text)
{
    Canvas canvas = ui.canvas();
    const Box box = ui.place(mark_size(canvas, ui, standing, text));
    draw_mark(canvas, ui, box.low, standing, text);
}

Box draw_mark(Canvas& canvas, const Ui& ui, Point low, Standing standing, std::string_view text)
{
    const MarkLook look = look_of(ui.theme(), standing);
    const Box box = box_at(low, mark_size(canvas, ui, standing, text));
    canvas.fill_box(box, look.ground, ui.px(4.0F));
    canvas.frame_box(box, look.edge, ui.px(1.0F), ui.px(4.0F));
    Box inner{{box.low.x + ui.px(8.0F), box.low.y}, {box.high.x - ui.px(8.0F), box.high.y}};
    if (look.icon != Icon::none) {
        const Box place = cut_left(inner, ui.px(18.0F));
        draw_icon(canvas, look.icon, {place.low.x + ui.px(6.0F), place.center().y}, ui.px(12.0F), look.text, look.ground);
    }
    canvas.text_in({inner.low, {inner.high.x + 1.0F, inner.high.y}}, text, TextStyle::small, look.text);
    return box;
}

Box draw_label(Canvas& canvas, const Ui& ui, Point center, std::string_view text)
{
    const Point size = canvas.measure(text, TextStyle::small) + Point{ui.px(12.0F), ui.px(6.0F)};
    const Box box = box_around(center, size);
    canvas.fill_box(box, ui.theme().sheet, ui.px(3.0F));
    canvas.frame_box(box, ui.theme().hairline, ui.px(1.0F), ui.px(3.0F));
    canvas.text_in(box, text, TextStyle::small, ui.theme().ink, Align::center);
    return box;
}

}
