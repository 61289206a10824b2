#include "window/run/header.hpp"

#include "window/run/phrases.hpp"
#include "window/widgets/button.hpp"
#include "window/widgets/words.hpp"
#include "text/language.hpp"

#include <fmt/format.h>

#include <vector>

namespace flapdoor::window {

namespace {

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

void draw_titles(Ui& ui, const Box& box, const RunTitle& title)
{
    const Theme& t = ui.theme();
    Canvas canvas = ui.canvas();
    const std::string drill(text::say(title.drill));
    const Try head = first_that_fits(canvas, box.width(),
                                     {{drill, TextStyle::title}, {drill, TextStyle::strong}, {drill, TextStyle::small}});
    const Try line = first_that_fits(
        canvas, box.width(),
        {{text::say_with("Plan: {}  \xC2\xB7  seed {}  \xC2\xB7  book: {}", text::say(title.plan), title.seed, text::say(title.book)), TextStyle::small},
         {text::say_with("{}  \xC2\xB7  seed {}  \xC2\xB7  {}", text::say(title.plan), title.seed, text::say(title.book)), TextStyle::small},
         {text::say_with("{}  \xC2\xB7  seed {}", text::say(title.plan), title.seed), TextStyle::small},
         {std::string(text::say(title.plan)), TextStyle::small}});
    if (canvas.measure(head.text, head.style).x > box.width()) { // nothing but the drill, in as many lines as it takes
        const float height = canvas.measure_wrapped(box.width(), head.text, head.style).y;
        const Point low{box.low.x, box.center().y - height * 0.5F};
        canvas.text_wrapped(low, box.width(), head.text, head.style, t.ink);
        ui.note({"title", Role::text, head.text, {}, box_at(low, {box.width(), height})});
        return;
    }
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
float draw_result(Ui& ui, const Box& box, const RunTitle& title)
{
    Canvas canvas = ui.canvas();
    const std::string_view word = !title.is_passed ? text::say("being worked out") : *title.is_passed ? text::say("passed as practice") : text::say("not passed");
    const Standing standing = !title.is_passed ? Standing::plain : *title.is_passed ? Standing::good : Standing::critical;
    const float chip = canvas.measure(word, TextStyle::small).x + ui.px(standing == Standing::plain ? 16.0F : 34.0F);
    const float caution = canvas.measure(text::say(model_caution), TextStyle::small).x;
    const bool has_caution = box.height() >= ui.px(60.0F) && box.width() > caution + ui.px(340.0F);
    const float width = has_caution ? std::max(chip, caution) : chip;
    const float height = ui.px(24.0F) + (has_caution ? ui.px(20.0F) : 0.0F);
    const float top = box.center().y - height * 0.5F;
    const Box drawn = draw_mark(canvas, ui, {box.high.x - chip, top}, standing, word);
    ui.note({"result", Role::text, std::string(word), {}, drawn});
    if (has_caution)
        canvas.text_in({{box.high.x - width, top + ui.px(25.0F)}, {box.high.x, top + height + ui.px(2.0F)}}, text::say(model_caution),
                       TextStyle::small, ui.theme().caution, Align::right);
    return width + ui.px(18.0F);
}

}

RunTitle title_of(const debrief::Inputs& inputs, std::uint64_t seed, std::optional<bool> is_passed)
{
    return {inputs.scenario.title, inputs.plan.title, inputs.book.title, seed, is_passed};
}

void header(Ui& ui, const Box& box, const RunTitle& title, ScreenState& state)
{
    const Theme& t = ui.theme();
    Canvas canvas = ui.canvas();
    const float rule = ui.px(1.4F);
    canvas.line({box.low.x + ui.px(14.0F), box.high.y - rule}, {box.high.x - ui.px(14.0F), box.high.y - rule}, t.ink, rule);
    Box rest{{box.low.x + ui.px(16.0F), box.low.y}, {box.high.x - ui.px(14.0F), box.high.y - ui.px(3.0F)}};
    const bool has_still = box.width() >= ui.px(640.0F); // on a small screen the help page has it
    const Box buttons = cut_right(rest, ui.px(has_still ? 192.0F : 128.0F));
    cut_right(rest, ui.px(14.0F));
    cut_right(rest, draw_result(ui, rest, title));
    draw_titles(ui, rest, title);

    ui.go_to({buttons.low.x, buttons.center().y - ui.px(20.0F)});
    const float scale = ui.text_scale();
    if (button(ui, "text-smaller", "A-", {.emphasis = Emphasis::quiet, .width = 40.0F, .is_enabled = scale > 1.0F, .hint = text::say("Smaller text")}))
        ui.set_text_scale(scale - text_step);
    ui.beside(4.0F);
    if (button(ui, "text-larger", "A+", {.emphasis = Emphasis::quiet, .width = 40.0F, .is_enabled = scale < 2.0F, .hint = text::say("Larger text")}))
        ui.set_text_scale(scale + text_step);
    ui.beside(4.0F);
    if (has_still &&
        button(
            ui, "keep-still", text::say("Still"),
            {.emphasis = Emphasis::quiet, .width = 60.0F, .is_on = state.keeps_still, .hint = text::say("Little motion: no dots, nobody glides (M)")}))
        state.keeps_still = !state.keeps_still;
    if (has_still) ui.beside(4.0F);
    if (button(ui, "help", "?", {.emphasis = Emphasis::quiet, .width = 40.0F, .hint = text::say("Keys and what they do (?)")}))
        state.shows_help = true;
}

}
