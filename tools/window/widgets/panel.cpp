#include "window/widgets/panel.hpp"

#include "window/widgets/button.hpp"
#include "window/widgets/words.hpp"

#include <string>

namespace flapdoor::window {

void begin_panel(Ui& ui, std::string_view name, const Box& box, const PanelLook& look)
{
    Canvas canvas = ui.canvas();
    const Theme& t = ui.theme();
    if (look.is_sheet) {
        // Only the edge of the shadow that shows: filling all of it twice is dear without a graphics card.
        canvas.fill_box({{box.low.x, box.high.y - ui.px(6.0F)}, {box.high.x, box.high.y + ui.px(2.0F)}}, faded(t.ink, 0.07), ui.px(3.0F));
        canvas.fill_box(box, t.sheet, ui.px(3.0F));
        canvas.frame_box(box, t.hairline, 1.0F, ui.px(3.0F));
    }
    Box inner = box;
    if (!look.title.empty()) {
        Box head = cut_top(inner, ui.px(40.0F));
        canvas.text_in({{head.low.x + ui.px(look.padding), head.low.y}, {head.high.x - ui.px(look.padding), head.high.y}}, look.title,
                       TextStyle::strong, t.ink);
        canvas.line({head.low.x, head.high.y - 0.5F}, {head.high.x, head.high.y - 0.5F}, t.hairline);
    }
    ui.note({std::string(name), Role::panel, std::string(look.title), {}, box});
    ui.open_panel(name, inner, look.padding, look.can_scroll);
}

bool begin_dialog(Ui& ui, std::string_view name, std::string_view heading, Point size_at_100_percent)
{
    const Box screen = ui.screen().inset(ui.px(16.0F));
    const Point size{std::min(ui.px(size_at_100_percent.x), screen.width()), std::min(ui.px(size_at_100_percent.y), screen.height())};
    const Box box = box_around(ui.screen().center(), size);
    ui.open_layer(name, box, 24.0F);
    ui.note({std::string(name), Role::panel, std::string(heading), {}, box});

    const Point start = ui.cursor();
    const float close = ui.px(40.0F);
    ui.go_to({start.x + ui.width_left() - close, start.y - ui.px(4.0F)});
    const bool is_closed = button(ui, std::string(name) + "/close", "", {.emphasis = Emphasis::quiet, .icon = Icon::cross});
    const bool is_escaped = ui.shortcut(Key::escape);
    Canvas canvas = ui.canvas();
    canvas.text_in({start, {start.x + ui.width_left() - close - ui.px(8.0F), start.y + ui.px(32.0F)}}, heading, TextStyle::title,
                   ui.theme().ink);
    ui.go_to({start.x, start.y + ui.px(48.0F)});
    return !is_closed && !is_escaped;
}

}
