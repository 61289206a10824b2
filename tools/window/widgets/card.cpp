#include "window/widgets/card.hpp"

#include "window/stage/icon.hpp"
#include "window/widgets/button.hpp"
#include "window/widgets/words.hpp"

#include <fmt/format.h>

#include <vector>

namespace flapdoor::window {

namespace {

struct CardMeasure {
    float text_x; // from the card's left edge
    float text_width;
    float title_height;
    float note_height;
    float height;
};

Standing standing_of(CardState state)
{
    switch (state) {
        case CardState::done:
            return Standing::good;
        case CardState::refused:
        case CardState::caution:
            return Standing::caution;
        default:
            return Standing::plain;
    }
}

CardMeasure measured(const Ui& ui, const Canvas& canvas, const CardFace& face, bool has_grip, float room_on_the_right, float width)
{
    CardMeasure m{};
    m.text_x = ui.px(14.0F) + (has_grip ? ui.px(20.0F) : 0.0F) + (face.number > 0 ? ui.px(36.0F) : 0.0F);
    m.text_width = std::max(width - m.text_x - ui.px(12.0F) - room_on_the_right, ui.px(60.0F));
    m.title_height = canvas.measure_wrapped(m.text_width, face.title, TextStyle::strong).y;
    m.note_height = face.note.empty() ? 0.0F : canvas.measure_wrapped(m.text_width, face.note, TextStyle::small).y + ui.px(3.0F);
    const float mark = face.state_word.empty() ? 0.0F : ui.px(30.0F);
    m.height = std::max(m.title_height + m.note_height + mark + ui.px(22.0F), ui.px(52.0F));
    return m;
}

void draw_number(const Ui& ui, Canvas& canvas, Point center, const CardFace& face)
{
    const Theme& t = ui.theme();
    const bool is_filled = face.is_chosen || face.state == CardState::under_way;
    const float radius = ui.px(14.0F);
    const Box square = box_around(center, {2.0F * radius, 2.0F * radius});
    canvas.fill_circle(center, radius, is_filled ? t.accent : t.sheet);
    if (!is_filled) canvas.ring(center, radius, t.line, ui.px(1.2F));
    canvas.text_in(square, fmt::format("{}", face.number), TextStyle::small, is_filled ? t.on_accent : t.ink, Align::center);
}

}

Touch card(Ui& ui, const CardFace& face, bool has_grip, float room_on_the_right)
{
    Canvas canvas = ui.canvas();
    const Theme& t = ui.theme();
    const float width = ui.width_left();
    const CardMeasure m = measured(ui, canvas, face, has_grip, room_on_the_right, width);
    const Touch touch = ui.touch({.name = face.name,
                                  .role = Role::card,
                                  .label = face.title,
                                  .value = face.note,
                                  .size = {width, m.height},
                                  .is_on = face.is_chosen,
                                  .lets_others_on_top = true,
                                  .ring_rounding = 5.0F});
    const Box box = touch.box;
    const bool needs_care = face.state == CardState::refused || face.state == CardState::caution;
    const Color ground = needs_care ? t.caution_tint : face.is_chosen ? t.accent_tint : touch.is_hovered ? t.field : t.sheet;
    const Color edge = needs_care ? t.caution : face.is_chosen ? t.accent : t.hairline;
    const float rounding = ui.px(5.0F);
    canvas.fill_box(box.moved({0.0F, ui.px(2.0F)}), faded(t.ink, 0.10), rounding);
    canvas.fill_box(box, ground, rounding);
    canvas.frame_box(box, edge, face.is_chosen || needs_care ? ui.px(1.5F) : 1.0F, rounding);

    const float first_line = box.low.y + ui.px(11.0F);
    if (has_grip) draw_icon(canvas, Icon::grip, {box.low.x + ui.px(16.0F), first_line + ui.px(14.0F)}, ui.px(18.0F), t.line, ground);
    if (face.number > 0) draw_number(ui, canvas, {box.low.x + m.text_x - ui.px(22.0F), first_line + ui.px(14.0F)}, face);
    const bool is_single = m.note_height == 0.0F && face.state_word.empty();
    float y = is_single ? box.center().y - m.title_height * 0.5F : first_line;
    canvas.text_wrapped({box.low.x + m.text_x, y}, m.text_width, face.title, TextStyle::strong, t.ink);
    y += m.title_height + ui.px(3.0F);
    if (!face.note.empty()) canvas.text_wrapped({box.low.x + m.text_x, y}, m.text_width, face.note, TextStyle::small, t.muted);
    if (!face.state_word.empty())
        draw_mark(canvas, ui, {box.low.x + m.text_x, y + m.note_height + ui.px(3.0F)}, standing_of(face.state), face.state_word);
    return touch;
}

std::optional<CardListEvent> card_list(Ui& ui, std::span<const CardFace> cards, CardDrag& drag, bool can_move)
{
    using Kind = CardListEvent::Kind;
    std::optional<CardListEvent> event;
    std::vector<Box> boxes;
    const float buttons = can_move ? ui.px(84.0F) : 0.0F;
    bool is_still_held = false;
    for (std::size_t i = 0; i < cards.size(); ++i) {
        const CardFace& face = cards[i];
        const bool has_buttons = can_move && face.is_chosen;
        const Touch touch = card(ui, face, can_move, has_buttons ? buttons : 0.0F);
        boxes.push_back(touch.box);
        const Point after = ui.cursor();
        if (touch.is_held && can_move) {
            if (!drag.card) drag = {i, ui.input().mouse.y};
            is_still_held = drag.card == i;
        }
        if (touch.is_clicked) event = CardListEvent{Kind::chosen, i, i};
        if (touch.has_focus && can_move) {
            if (i > 0 && ui.take_key(Key::up, {.alt = true})) event = CardListEvent{Kind::moved, i, i - 1};
            if (i + 1 < cards.size() && ui.take_key(Key::down, {.alt = true})) event = CardListEvent{Kind::moved, i, i + 1};
            // A card picked up moves with the arrows; otherwise they walk.
            if (i > 0 && ui.take_key(Key::up)) face.is_chosen ? void(event = CardListEvent{Kind::moved, i, i - 1}) : ui.focus_on(cards[i - 1].name);
            if (i + 1 < cards.size() && ui.take_key(Key::down)) face.is_chosen ? void(event = CardListEvent{Kind::moved, i, i + 1}) : ui.focus_on(cards[i + 1].name);
        }
        if (has_buttons) {
            ui.go_to({touch.box.high.x - buttons - ui.px(4.0F), touch.box.center().y - ui.px(20.0F)});
            if (button(ui, face.name + "/up", "",
                       {.emphasis = Emphasis::quiet, .icon = Icon::up, .is_enabled = i > 0, .hint = "Alt + \xE2\x86\x91"}))
                event = CardListEvent{Kind::moved, i, i - 1};
            ui.beside(4.0F);
            if (button(ui, face.name + "/down", "",
                       {.emphasis = Emphasis::quiet, .icon = Icon::down, .is_enabled = i + 1 < cards.size(), .hint = "Alt + \xE2\x86\x93"}))
                event = CardListEvent{Kind::moved, i, i + 1};
            ui.go_to(after);
        }
    }
    if (!drag.card || *drag.card >= cards.size()) {
        drag.card.reset();
        return event;
    }

    const float y = ui.input().mouse.y;
    const bool has_moved = std::abs(y - drag.grip_y) > ui.px(8.0F);
    std::size_t gap = 0; // the card would go before the one that stands here now
    while (gap < boxes.size() && boxes[gap].center().y < y) ++gap;
    if (is_still_held) {
        if (has_moved) {
            const float at = gap < boxes.size() ? boxes[gap].low.y - ui.px(4.0F) : boxes.back().high.y + ui.px(4.0F);
            Canvas over = ui.overlay();
            over.line({boxes[0].low.x, at}, {boxes[0].high.x, at}, ui.theme().accent, ui.px(3.0F));
            over.fill_circle({boxes[0].low.x, at}, ui.px(5.0F), ui.theme().accent);
        }
        return event;
    }
    const std::size_t from = *drag.card;
    const std::size_t to = gap > from ? gap - 1 : gap;
    drag.card.reset();
    if (has_moved && to != from) event = CardListEvent{Kind::moved, from, to};
    return event;
}

}
