#include "window/widgets/list.hpp"

#include "core/insist.hpp"

#include <fmt/format.h>

namespace flapdoor::window {

namespace {

void draw_row_ground(Ui& ui, Canvas& canvas, const Touch& touch, bool is_on)
{
    const Theme& t = ui.theme();
    if (is_on)
        canvas.fill_box(touch.box, t.accent_tint);
    else if (touch.is_hovered)
        canvas.fill_box(touch.box, t.field);
    if (is_on) canvas.fill_box({touch.box.low, {touch.box.low.x + ui.px(3.0F), touch.box.high.y}}, t.accent);
    canvas.line({touch.box.low.x, touch.box.high.y - 0.5F}, {touch.box.high.x, touch.box.high.y - 0.5F}, t.hairline);
}

/// Walks from row to row without the Tab key.
void walk(Ui& ui, const Touch& touch, std::size_t i, std::size_t count, const auto& name_of)
{
    if (!touch.has_focus) return;
    if (i + 1 < count && ui.take_key(Key::down)) ui.focus_on(name_of(i + 1));
    if (i > 0 && ui.take_key(Key::up)) ui.focus_on(name_of(i - 1));
}

void draw_cells(Ui& ui, Canvas& canvas, const Box& box, std::span<const Column> columns, const std::vector<std::string>& cells,
                TextStyle style, Color color)
{
    float shares = 0.0F;
    for (const Column& column : columns) shares += column.share;
    float x = box.low.x + ui.px(10.0F);
    const float width = box.width() - ui.px(20.0F);
    for (std::size_t c = 0; c < columns.size(); ++c) {
        const float right = x + width * columns[c].share / shares;
        canvas.text_in({{x, box.low.y}, {right - ui.px(10.0F), box.high.y}}, cells[c], style, color,
                       columns[c].is_figure ? Align::right : Align::left);
        x = right;
    }
}

}

std::optional<std::size_t> list(Ui& ui, std::string_view name, std::span<const Row> rows, std::optional<std::size_t> chosen)
{
    std::optional<std::size_t> pressed;
    const Theme& t = ui.theme();
    const auto name_of = [&](std::size_t i) { return fmt::format("{}/{}", name, rows[i].name); };
    for (std::size_t i = 0; i < rows.size(); ++i) {
        const Row& row = rows[i];
        Canvas canvas = ui.canvas();
        const Touch touch = ui.touch({.name = name_of(i),
                                      .role = Role::row,
                                      .label = row.title,
                                      .value = row.figure,
                                      .size = {ui.width_left(), ui.px(row.note.empty() ? 44.0F : 60.0F)},
                                      .is_enabled = row.is_enabled,
                                      .is_on = chosen == i,
                                      .ring_rounding = 2.0F});
        draw_row_ground(ui, canvas, touch, chosen == i);
        Box inner{{touch.box.low.x + ui.px(12.0F), touch.box.low.y}, {touch.box.high.x - ui.px(12.0F), touch.box.high.y}};
        if (row.icon != Icon::none)
            draw_icon(canvas, row.icon, {inner.low.x + ui.px(10.0F), inner.center().y}, ui.px(18.0F), t.muted, t.sheet),
                cut_left(inner, ui.px(34.0F));
        if (!row.figure.empty())
            canvas.text_in(cut_right(inner, canvas.measure(row.figure, TextStyle::body).x + ui.px(12.0F)), row.figure, TextStyle::body,
                           t.ink, Align::right);
        const Color ink = row.is_enabled ? t.ink : faded(t.muted, 0.8);
        if (row.note.empty()) {
            canvas.text_in(inner, row.title, TextStyle::body, ink);
        }
        else {
            const float middle = inner.center().y;
            canvas.text_in({{inner.low.x, middle - ui.px(24.0F)}, {inner.high.x, middle}}, row.title, TextStyle::strong, ink);
            canvas.text_in({{inner.low.x, middle}, {inner.high.x, middle + ui.px(20.0F)}}, row.note, TextStyle::small, t.muted);
        }
        if (touch.is_clicked) pressed = i;
        walk(ui, touch, i, rows.size(), name_of);
    }
    return pressed;
}

std::optional<std::size_t> table(Ui& ui, std::string_view name, std::span<const Column> columns,
                                 std::span<const std::vector<std::string>> cells, std::optional<std::size_t> chosen)
{
    const Theme& t = ui.theme();
    Canvas canvas = ui.canvas();
    std::vector<std::string> titles;
    for (const Column& column : columns) titles.push_back(column.title);
    const Box head = ui.place({ui.width_left(), ui.px(32.0F)});
    draw_cells(ui, canvas, head, columns, titles, TextStyle::small, t.muted);
    canvas.line({head.low.x, head.high.y - 0.5F}, {head.high.x, head.high.y - 0.5F}, t.ink, ui.px(1.2F));

    std::optional<std::size_t> pressed;
    const auto name_of = [&](std::size_t i) { return fmt::format("{}/{}", name, i); };
    for (std::size_t i = 0; i < cells.size(); ++i) {
        insist(cells[i].size() == columns.size(), "every row of a table has all columns");
        const Point size{ui.width_left(), ui.px(36.0F)};
        if (name.empty()) {
            const Touch still{.box = ui.place(size)};
            draw_row_ground(ui, canvas, still, false);
            draw_cells(ui, canvas, still.box, columns, cells[i], TextStyle::body, t.ink);
            continue;
        }
        const Touch touch = ui.touch(
            {.name = name_of(i), .role = Role::row, .label = cells[i].front(), .size = size, .is_on = chosen == i, .ring_rounding = 2.0F});
        draw_row_ground(ui, canvas, touch, chosen == i);
        draw_cells(ui, canvas, touch.box, columns, cells[i], TextStyle::body, t.ink);
        if (touch.is_clicked) pressed = i;
        walk(ui, touch, i, cells.size(), name_of);
    }
    return pressed;
}

}
