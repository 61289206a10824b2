#include "window/shell/masthead.hpp"

#include "window/widgets/button.hpp"

namespace flapdoor::window {

namespace {

using text::say;

constexpr float text_step = 0.25F;

/// The first of the texts that fits on one line; the last one when none does.
struct Try {
    std::string text;
    TextStyle style;
};
Try first_that_fits(const Canvas& canvas, float width, const std::vector<Try>& tries)
{
    for (const Try& attempt : tries)
        if (canvas.measure(attempt.text, attempt.style).x <= width) return attempt;
    return tries.back();
}

/// Nothing but the title, in as many lines as it takes.
void draw_title_alone(Ui& ui, const Box& box, const Try& head)
{
    Canvas canvas = ui.canvas();
    const float height = canvas.measure_wrapped(box.width(), head.text, head.style).y;
    const Point low{box.low.x, box.center().y - height * 0.5F};
    canvas.text_wrapped(low, box.width(), head.text, head.style, ui.theme().ink);
    ui.note({"title", Role::text, head.text, {}, box_at(low, {box.width(), height})});
}

void draw_titles(Ui& ui, const Box& box, const Masthead& masthead)
{
    const Theme& t = ui.theme();
    Canvas canvas = ui.canvas();
    const std::string& title = masthead.title;
    const Try head =
        first_that_fits(canvas, box.width(), {{title, TextStyle::title}, {title, TextStyle::strong}, {title, TextStyle::small}});
    std::vector<Try> tries;
    for (const std::string& line : masthead.lines) tries.push_back({line, TextStyle::small});
    const bool has_line = !tries.empty() && canvas.measure(first_that_fits(canvas, box.width(), tries).text, TextStyle::small).x <= box.width();
    if (canvas.measure(head.text, head.style).x > box.width() || !has_line) return draw_title_alone(ui, box, head);
    const Try line = first_that_fits(canvas, box.width(), tries);
    const float head_height = canvas.measure(head.text, head.style).y;
    const float line_height = canvas.measure(line.text, line.style).y;
    const float top = box.center().y - (head_height + line_height) * 0.5F;
    const Box head_box{{box.low.x, top}, {box.high.x, top + head_height}};
    const Box line_box{{box.low.x, top + head_height}, {box.high.x, top + head_height + line_height}};
    canvas.text_in(head_box, head.text, head.style, t.ink);
    canvas.text_in(line_box, line.text, line.style, t.muted);
    ui.note({"title", Role::text, head.text, line.text, {head_box.low, line_box.high}});
}

/// @return the room it took from the right
float draw_result(Ui& ui, const Box& box, const Masthead& head)
{
    if (head.mark.empty()) return 0.0F;
    Canvas canvas = ui.canvas();
    const float chip = canvas.measure(head.mark, TextStyle::small).x + ui.px(head.standing == Standing::plain ? 16.0F : 34.0F);
    const float caution = canvas.measure(head.caution, TextStyle::small).x;
    const bool has_caution = !head.caution.empty() && box.height() >= ui.px(60.0F) && box.width() > caution + ui.px(340.0F);
    const float width = has_caution ? std::max(chip, caution) : chip;
    const float height = ui.px(24.0F) + (has_caution ? ui.px(20.0F) : 0.0F);
    const float top = box.center().y - height * 0.5F;
    const Box drawn = draw_mark(canvas, ui, {box.high.x - chip, top}, head.standing, head.mark);
    ui.note({"result", Role::text, head.mark, {}, drawn});
    if (has_caution)
        canvas.text_in({{box.high.x - width, top + ui.px(25.0F)}, {box.high.x, top + height + ui.px(2.0F)}}, head.caution,
                       TextStyle::small, ui.theme().caution, Align::right);
    return width + ui.px(18.0F);
}

/// Which of the small buttons have room; the sheet of keys has them all.
struct Tools {
    bool has_still, has_language, has_projector;
    float width() const { return 128.0F + (has_still ? 64.0F : 0.0F) + (has_language ? 44.0F : 0.0F) + (has_projector ? 44.0F : 0.0F); }
};

Tools tools_for(float width_at_100_percent) { return {width_at_100_percent >= 640.0F, width_at_100_percent >= 560.0F, width_at_100_percent >= 760.0F}; }

void tools(Ui& ui, const Tools& shown, Settings& settings)
{
    const float scale = ui.text_scale();
    const auto small = [&](std::string_view name, std::string_view label, float width, bool is_on, bool is_enabled, std::string_view hint) {
        const bool is_pressed =
            button(ui, name, label, {.emphasis = Emphasis::quiet, .width = width, .is_enabled = is_enabled, .is_on = is_on, .hint = hint});
        ui.beside(4.0F);
        return is_pressed;
    };
    if (small("text-smaller", "A-", 40.0F, false, scale > 1.0F, say("Smaller text"))) ui.set_text_scale(scale - text_step);
    if (small("text-larger", "A+", 40.0F, false, scale < 2.0F, say("Larger text"))) ui.set_text_scale(scale + text_step);
    if (shown.has_still && small("keep-still", say("Still"), 60.0F, settings.keeps_still, true, say("Little motion: no dots, nobody glides (M)")))
        settings.keeps_still = !settings.keeps_still;
    if (shown.has_projector) {
        if (button(ui, "projector", "",
                   {.emphasis = Emphasis::quiet, .icon = Icon::wall, .width = 40.0F, .is_on = settings.is_projected,
                    .hint = say("Large type for a projector (Ctrl + P)")}))
            project(ui, settings, !settings.is_projected);
        ui.beside(4.0F);
    }
    const bool is_english = text::spoken() == text::Language::english;
    if (shown.has_language && small("language", is_english ? "ES" : "EN", 40.0F, false, true, is_english ? "Espa\xC3\xB1ol (Ctrl + L)" : "English (Ctrl + L)"))
        change_language();
    if (button(ui, "help", "?", {.emphasis = Emphasis::quiet, .width = 40.0F, .hint = say("Keys and what they do (?)")}))
        settings.shows_help = true;
}

}

float masthead_height(const Box& screen, float scale) { return (screen.height() / scale >= 560.0F ? 68.0F : 54.0F) * scale; }

bool masthead(Ui& ui, const Box& box, const Masthead& head, Settings& settings)
{
    Canvas canvas = ui.canvas();
    const float line = ui.px(1.4F);
    canvas.line({box.low.x + ui.px(14.0F), box.high.y - line}, {box.high.x - ui.px(14.0F), box.high.y - line}, ui.theme().ink, line);
    Box rest{{box.low.x + ui.px(16.0F), box.low.y}, {box.high.x - ui.px(14.0F), box.high.y - ui.px(3.0F)}};
    bool is_back = false;
    if (head.has_way_back) {
        const Box back = cut_left(rest, ui.px(52.0F));
        ui.go_to({back.low.x, back.center().y - ui.px(20.0F)});
        is_back = button(ui, "back", "", {.icon = Icon::back, .width = 40.0F, .hint = head.back_hint});
    }
    const Tools shown = tools_for(box.width() / ui.text_scale());
    const Box buttons = cut_right(rest, ui.px(shown.width()));
    cut_right(rest, ui.px(14.0F));
    cut_right(rest, draw_result(ui, rest, head));
    draw_titles(ui, rest, head);
    ui.go_to({buttons.low.x, buttons.center().y - ui.px(20.0F)});
    tools(ui, shown, settings);
    return is_back;
}

void take_keys_of_all_screens(Ui& ui, Settings& settings)
{
    if (ui.shortcut(Key::l, {.control = true})) change_language();
    if (ui.shortcut(Key::p, {.control = true})) project(ui, settings, !settings.is_projected);
    while (ui.shortcut(Key::plus, {.control = true})) ui.set_text_scale(ui.text_scale() + text_step);
    while (ui.shortcut(Key::minus, {.control = true})) ui.set_text_scale(ui.text_scale() - text_step);
    if (ui.shortcut(Key::m)) settings.keeps_still = !settings.keeps_still;
}

}
