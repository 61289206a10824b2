#include "window/run/waiting_screen.hpp"

#include "window/run/header.hpp"
#include "window/run/help.hpp"
#include "window/run/phrases.hpp"
#include "window/run/plan_part.hpp"
#include "window/shell/masthead.hpp"
#include "window/widgets/panel.hpp"
#include "window/widgets/words.hpp"

#include "debrief/wording.hpp"
#include "text/language.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace flapdoor::window {

namespace {

/// A short bar that swings slowly on a line: it goes on, and nobody knows how long. It stands for those who want that.
void draw_swing(Ui& ui, const Box& line, double seconds, bool keeps_still)
{
    const Theme& t = ui.theme();
    Canvas canvas = ui.canvas();
    canvas.fill_box(line, t.field, ui.px(3.0F));
    canvas.frame_box(line, t.line, 1.0F, ui.px(3.0F));
    const double place = keeps_still ? 0.5 : 0.5 - 0.5 * std::cos(seconds * 1.6);
    const float width = line.width() * 0.22F;
    const float from = line.low.x + (line.width() - width) * static_cast<float>(place);
    canvas.fill_box({{from, line.low.y}, {from + width, line.high.y}}, t.accent, ui.px(3.0F));
}

}

void waiting_screen(Ui& ui, const debrief::Inputs& inputs, std::uint64_t seed, double seconds, ScreenState& state)
{
    const Layout layout = lay_out(ui.screen(), ui.text_scale());
    RunTitle title = title_of(inputs, seed, {});
    title.has_way_back = state.has_way_back;
    if (header(ui, layout.header, title, state)) state.wants_to_quit = true;
    const Box rest{{layout.plan.low.x, layout.header.high.y + ui.px(10.0F)},
                   {layout.header.high.x - ui.px(14.0F), layout.header.low.y + ui.screen().height() - ui.px(14.0F)}};
    panel(ui, "waiting", rest, {.can_scroll = false, .padding = 0.0F}, [&] {
        Box drawing = rest;
        const Box foot = cut_bottom(drawing, ui.px(118.0F));
        Board board{ui.canvas(), comfortable_view(near_part(inputs.scenario), whole_plan(inputs.scenario), drawing, ui.px(14.0F)), ui};
        {
            const auto clip = board.canvas.clipped_to(drawing);
            draw_empty_site(board, inputs.scenario, drawing);
        }
        Canvas canvas = ui.canvas();
        canvas.fill_box(foot, ui.theme().sheet);
        canvas.line(foot.low, {foot.high.x, foot.low.y}, ui.theme().ink, ui.px(1.2F));
        const float width = std::min(foot.width() - ui.px(40.0F), ui.px(560.0F));
        const Point low{foot.center().x - width * 0.5F, foot.low.y + ui.px(16.0F)};
        const std::string text = text::say_number("Carrying the plan out: {} card", "Carrying the plan out: {} cards", inputs.plan.cards.size());
        canvas.text_in(box_at(low, {width, ui.px(26.0F)}), text, TextStyle::strong, ui.theme().ink, Align::center);
        ui.note({"waiting/words", Role::text, text, {}, box_at(low, {width, ui.px(26.0F)})});
        draw_swing(ui, box_at(low + Point{0.0F, ui.px(38.0F)}, {width, ui.px(8.0F)}), seconds, state.keeps_still);
        canvas.text_in(box_at(low + Point{0.0F, ui.px(58.0F)}, {width, ui.px(22.0F)}), text::say(model_caution), TextStyle::small, ui.theme().muted,
                       Align::center);
        canvas.frame_box(rest, ui.theme().ink, ui.px(1.2F), ui.px(2.0F));
    });
    if (ui.shortcut(Key::escape) || ui.shortcut(Key::q)) state.wants_to_quit = true;
    take_keys_of_all_screens(ui, state);
    if (state.shows_help) state.shows_help = help(ui, title, state);
}

}
