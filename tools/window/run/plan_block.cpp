#include "window/run/plan_block.hpp"

#include "window/drawing/containment.hpp"
#include "window/drawing/dimension.hpp"
#include "window/drawing/fixtures.hpp"
#include "window/drawing/legend.hpp"
#include "window/run/phrases.hpp"
#include "window/run/plan_panel.hpp"
#include "window/widgets/button.hpp"
#include "window/widgets/choice.hpp"
#include "window/widgets/toggle.hpp"

#include "text/language.hpp"
#include "text/show.hpp"

#include <fmt/format.h>

#include <array>
#include <cmath>
#include <functional>

namespace flapdoor::window {

namespace {

constexpr float block_width = 236.0F; // at 100 %
constexpr float small_block_width = 168.0F;

struct ViewWords {
    std::string_view name, label, short_label, hint;
};
constexpr std::array<ViewWords, 3> view_words{{
    {"there", text::to_say("What is there"), text::to_say("There"), text::to_say("Lead lying on every surface (1)")},
    {"seen", text::to_say("What you could see"), text::to_say("Seen"), text::to_say("Only what an eye would notice (2)")},
    {"air", text::to_say("In the air"), text::to_say("Air"), text::to_say("Lead in the air and young clouds (3)")},
}};

// --- view switch --------------------------------------------------------------------------------------------------------

/// One line of the title block: a round answer, its words, its key.
void view_row(Ui& ui, std::size_t i, ScreenState& state)
{
    const Theme& t = ui.theme();
    Canvas canvas = ui.canvas();
    const bool is_on = static_cast<std::size_t>(state.view) == i;
    const Touch touch = ui.touch({.name = fmt::format("view/{}", view_words[i].name),
                                  .role = Role::choice,
                                  .label = std::string(text::say(view_words[i].label)),
                                  .size = {ui.width_left(), ui.px(32.0F)},
                                  .is_on = is_on,
                                  .ring_rounding = 4.0F});
    if (is_on || touch.is_hovered) canvas.fill_box(touch.box, is_on ? t.accent_tint : t.field, ui.px(4.0F));
    const Point center{touch.box.low.x + ui.px(14.0F), touch.box.center().y};
    canvas.fill_circle(center, ui.px(7.0F), t.field);
    canvas.ring(center, ui.px(7.0F), is_on ? t.accent : t.line, ui.px(1.5F));
    if (is_on) canvas.fill_circle(center, ui.px(3.6F), t.accent);
    canvas.text_in({{touch.box.low.x + ui.px(28.0F), touch.box.low.y}, {touch.box.high.x - ui.px(22.0F), touch.box.high.y}},
                   text::say(view_words[i].label), TextStyle::body, is_on ? t.accent : t.ink);
    canvas.text_in({{touch.box.high.x - ui.px(22.0F), touch.box.low.y}, {touch.box.high.x - ui.px(8.0F), touch.box.high.y}},
                   fmt::format("{}", i + 1), TextStyle::small, t.muted, Align::right);
    ui.hint(text::say(view_words[i].hint));
    if (touch.is_clicked) state.view = static_cast<ViewKind>(i);
}

void view_tabs(Ui& ui, ScreenState& state)
{
    std::array<Option, view_words.size()> options;
    for (std::size_t i = 0; i < options.size(); ++i)
        options[i] = {std::string(view_words[i].name), std::string(text::say(view_words[i].short_label)), Icon::none, std::string(text::say(view_words[i].hint))};
    auto chosen = static_cast<std::size_t>(state.view);
    if (choice_row(ui, "view", options, chosen)) state.view = static_cast<ViewKind>(chosen);
}

void flashlight_switch(Ui& ui, ScreenState& state)
{
    if (state.view != ViewKind::seen) return;
    toggle(ui, "flashlight", text::say("Flashlight"), state.has_flashlight, {.hint = text::say("Held low, it shows finer dust; move the pointer over the plan, or the arrow keys (L)")});
}

// --- legend -------------------------------------------------------------------------------------------------------------

/// Swatches of grain with the share of the floor that it hides.
float draw_grain_legend(Canvas canvas, const Ui& ui, Point low, float width, const Story& story, bool has_flashlight)
{
    const Theme& t = ui.theme();
    float y = low.y;
    y += canvas.text_wrapped({low.x, y}, width, text::say("Share of the floor that dust hides"), TextStyle::small, t.ink) + ui.px(6.0F);
    constexpr std::array<double, 3> shares{0.002, 0.02, 0.2};
    const float gap = ui.px(6.0F);
    const float side = (width - 2.0F * gap) / 3.0F;
    for (std::size_t i = 0; i < shares.size(); ++i) {
        const Box box = box_at({low.x + static_cast<float>(i) * (side + gap), y}, {side, ui.px(22.0F)});
        canvas.fill_box(box, t.floor);
        const float pitch = ui.px(2.6F);
        const double share = 0.05 + 0.32 * std::log10(shares[i] / shares[0]);
        std::uint32_t luck = 977;
        for (float v = box.low.y; v + pitch <= box.high.y; v += pitch)
            for (float u = box.low.x; u + pitch <= box.high.x; u += pitch) {
                luck = luck * 1664525U + 1013904223U;
                if (static_cast<double>(luck >> 8) / 16777216.0 < share)
                    canvas.fill_box(box_at({u, v}, {pitch * 0.85F, pitch * 0.85F}), grain_color);
            }
        canvas.frame_box(box, t.ink, ui.px(1.0F));
        canvas.text_in({{box.low.x, box.high.y + ui.px(2.0F)}, {box.high.x, box.high.y + ui.px(20.0F)}}, text::show_percent(shares[i]),
                       TextStyle::small, t.muted, Align::center);
    }
    y += ui.px(46.0F);
    const double by_room = dust::just_seen / story.inputs.scenario.light;
    y += canvas.text_wrapped({low.x, y}, width, text::say_with("Below {} nothing shows: unseen is not clean.", fine_percent(by_room)), TextStyle::small, t.muted);
    if (has_flashlight)
        y += canvas.text_wrapped({low.x, y}, width, text::say_with("In the flashlight's beam it shows from {} on.", fine_percent(by_room * dust::light_factor(dust::Light::raking))), TextStyle::small, t.ink);
    return y - low.y;
}

float draw_view_legend(Ui& ui, Point low, float width, const Story& story, const ScreenState& state, const std::optional<Reading>& reading)
{
    Canvas canvas = ui.canvas();
    switch (state.view) {
        case ViewKind::there:
            return draw_legend(canvas, ui, low, width, floor_scale, dust_ramp, {text::say("Lead lying there"), loading_unit, text::say(model_caution)},
                               reading ? std::optional(reading->loading) : std::nullopt);
        case ViewKind::airborne:
            return draw_legend(canvas, ui, low, width, air_scale, dust_ramp, {text::say("Lead in the air"), air_unit, text::say(model_caution)},
                               reading ? std::optional(reading->air) : std::nullopt);
        case ViewKind::seen:
            break;
    }
    return draw_grain_legend(canvas, ui, low, width, story, state.has_flashlight);
}

void zoom_buttons(Ui& ui, ScreenState& state)
{
    if (button(ui, "zoom-out", "", {.icon = Icon::minus, .hint = text::say("Further away (-)")})) zoom_plan(state, 1.0 / 1.25);
    ui.beside(4.0F);
    if (button(ui, "zoom-in", "", {.icon = Icon::plus, .hint = text::say("Closer (+)")})) zoom_plan(state, 1.25);
    ui.beside(4.0F);
    if (button(ui, "fit", state.shows_whole_plan ? text::say("Work area") : text::say("Whole plan"), {.width = -1.0F, .hint = text::say("Fit into the window (0)")}))
        fit_plan(state);
}

/// What the signs of the drawing stand for, as many as there is room for.
void sign_key(Ui& ui, const Box& room, const PaperView& scale)
{
    struct Sign {
        std::string_view words;
        std::function<void(Board&, const PaperBox&)> draw;
    };
    const std::array<Sign, 6> signs{{
        {text::say("plastic sheeting"), [](Board& b, const PaperBox& p) { draw_sheeting(b, corners(p)); }},
        {text::say("flap door, its dowel"),
         [](Board& b, const PaperBox& p) {
             draw_flap_door(b, {p.low.x, p.low.y}, {p.high.x, p.low.y});
         }},
        {text::say("register, covered and taped"),
         [](Board& b, const PaperBox& p) {
             const double dx = p.width() * 0.16;
             const double dy = p.height() * 0.2;
             draw_register(b, {{p.low.x + dx, p.low.y + dy}, {p.high.x - dx, p.high.y - dy}}, RegisterKind::supply, true);
         }},
        {text::say("tack pad"), [](Board& b, const PaperBox& p) { draw_tack_pad(b, p, 0.0); }},
        {text::say("warning sign"), [](Board& b, const PaperBox& p) { draw_sign(b, p.center()); }},
        {text::say("part being worked on"),
         [](Board& b, const PaperBox& p) {
             const Box box = b.view.at(p).inset(b.px(3.0F));
             b.canvas.frame_box(box, b.theme().accent, b.px(2.4F), b.px(5.0F));
         }},
    }};
    const float row = ui.px(30.0F);
    Point at = room.low;
    PaperView view = scale; // the same line widths as the drawing, at a scale of its own
    view.zoom(60.0 * static_cast<double>(ui.text_scale()) / view.pixels_per_meter(), at);
    for (const Sign& sign : signs) {
        if (at.y + row > room.high.y) return;
        Board board{ui.canvas(), view, ui};
        const Box icon = box_at({at.x + ui.px(4.0F), at.y + ui.px(4.0F)}, {ui.px(38.0F), ui.px(20.0F)});
        const PaperPoint a = view.paper({icon.low.x, icon.high.y});
        const PaperPoint b = view.paper({icon.high.x, icon.low.y});
        sign.draw(board, {a, b});
        ui.canvas().text_in({{at.x + ui.px(54.0F), at.y}, {room.high.x, at.y + ui.px(28.0F)}}, sign.words, TextStyle::small,
                            ui.theme().ink);
        at.y += row;
    }
}

}

float width_of_block(const Ui& ui, bool is_wide) { return ui.px(is_wide ? block_width : small_block_width); }

std::string_view view_title(ViewKind view) { return view_words[static_cast<std::size_t>(view)].label; }

void title_block(Ui& ui, const Box& box, const Story& story, ScreenState& state, const std::optional<Reading>& reading)
{
    Canvas canvas = ui.canvas();
    canvas.fill_box(box, ui.theme().sheet);
    canvas.line(box.low, {box.low.x, box.high.y}, ui.theme().ink, ui.px(1.4F));
    ui.open_panel("plan/block", box, 12.0F, true);
    for (std::size_t i = 0; i < view_words.size(); ++i) {
        if (i > 0) ui.gap(-6.0F); // rows of one choice stand closer than things of their own
        view_row(ui, i, state);
    }
    flashlight_switch(ui, state);
    const auto divide = [&] {
        const float y = ui.cursor().y;
        ui.canvas().line({box.low.x, y}, {box.high.x, y}, ui.theme().ink, ui.px(1.0F));
        ui.gap(9.0F);
    };
    divide();
    const Point low = ui.cursor();
    const float width = ui.width_left();
    ui.place({width, draw_view_legend(ui, low, width, story, state, reading)});
    divide();
    zoom_buttons(ui, state);
    const Point bar = ui.cursor() + Point{ui.px(2.0F), ui.px(22.0F)};
    if (bar.y + ui.px(16.0F) < box.high.y) {
        Board board{ui.canvas(), *state.plan_view, ui};
        draw_scale_bar(board, bar, width - ui.px(30.0F));
    }
    const float key_top = bar.y + ui.px(26.0F);
    if (key_top + ui.px(40.0F) < box.high.y) {
        ui.canvas().line({box.low.x, key_top}, {box.high.x, key_top}, ui.theme().ink, ui.px(1.0F));
        sign_key(ui, {{bar.x, key_top + ui.px(10.0F)}, {box.high.x - ui.px(8.0F), box.high.y - ui.px(6.0F)}}, *state.plan_view);
    }
    ui.close_panel();
}

void small_block(Ui& ui, const Box& box, const Story& story, ScreenState& state, const std::optional<Reading>& reading)
{
    ui.canvas().fill_box(box, ui.theme().sheet);
    ui.canvas().line(box.low, {box.low.x, box.high.y}, ui.theme().ink, ui.px(1.4F));
    ui.open_panel("plan/block", box, 10.0F, true);
    flashlight_switch(ui, state);
    const Point low = ui.cursor();
    const float width = ui.width_left();
    ui.place({width, draw_view_legend(ui, low, width, story, state, reading)});
    ui.close_panel();
}

void small_toolbar(Ui& ui, const Box& box, ScreenState& state)
{
    ui.go_to(box.low);
    view_tabs(ui, state);
    ui.go_to({box.high.x - ui.px(128.0F), box.low.y});
    if (button(ui, "zoom-out", "", {.emphasis = Emphasis::quiet, .icon = Icon::minus, .hint = text::say("Further away (-)")}))
        zoom_plan(state, 1.0 / 1.25);
    ui.beside(4.0F);
    if (button(ui, "zoom-in", "", {.emphasis = Emphasis::quiet, .icon = Icon::plus, .hint = text::say("Closer (+)")})) zoom_plan(state, 1.25);
    ui.beside(4.0F);
    if (button(ui, "fit", "", {.emphasis = Emphasis::quiet, .icon = Icon::fit, .hint = text::say("Fit into the window (0)")})) fit_plan(state);
}

}
