#include "window/widgets/field.hpp"

#include "window/widgets/words.hpp"

namespace flapdoor::window {

bool text_field(Ui& ui, std::string_view name, std::string_view label, std::string& text, const FieldLook& look)
{
    const Theme& t = ui.theme();
    if (!label.empty()) aside(ui, label);
    const Point low = ui.cursor();
    const Point size{look.width > 0.0F ? ui.px(look.width) : ui.width_left(), ui.px(40.0F)};
    const bool has_changed = ui.edit_line({.name = name,
                                           .role = Role::text_field,
                                           .label = label,
                                           .value = text,
                                           .size = size,
                                           .is_enabled = look.is_enabled,
                                           .ring_rounding = 4.0F},
                                          text);
    Canvas canvas = ui.canvas();
    const Box box = box_at(low, size);
    if (text.empty() && !look.empty_text.empty() && !(ui.focused() == name && ui.is_writing()))
        canvas.text_in(box.inset(ui.px(10.0F)), look.empty_text, TextStyle::body, t.muted);
    if (!look.problem.empty()) {
        canvas.frame_box(box, t.caution, ui.px(2.0F), ui.px(4.0F));
        mark(ui, Standing::caution, look.problem);
    }
    return has_changed;
}

}
