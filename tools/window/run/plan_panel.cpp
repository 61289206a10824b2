#include "window/run/plan_panel.hpp"

#include "window/drawing/containment.hpp"
#include "window/drawing/dimension.hpp"
#include "window/drawing/fixtures.hpp"
#include "window/drawing/legend.hpp"
#include "window/run/fault_sign.hpp"
#include "window/run/phrases.hpp"
#include "window/run/plan_part.hpp"
#include "window/run/reading.hpp"
#include "window/widgets/button.hpp"
#include "window/widgets/choice.hpp"
#include "window/widgets/panel.hpp"
#include "window/widgets/words.hpp"

#include "debrief/wording.hpp"
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
constexpr double zoom_of_a_notch = 1.15;
const Color grain = color(0x5B4A36);

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

// --- legend -------------------------------------------------------------------------------------------------------------

/// Swatches of grain with the share of the floor that it hides.
float draw_grain_legend(Canvas canvas, const Ui& ui, Point low, float width)
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
                    canvas.fill_box(box_at({u, v}, {pitch * 0.85F, pitch * 0.85F}), grain);
            }
        canvas.frame_box(box, t.ink, ui.px(1.0F));
        canvas.text_in({{box.low.x, box.high.y + ui.px(2.0F)}, {box.high.x, box.high.y + ui.px(20.0F)}}, text::show_percent(shares[i]),
                       TextStyle::small, t.muted, Align::center);
    }
    y += ui.px(46.0F);
    y += canvas.text_wrapped({low.x, y}, width, text::say("Below 0.2 % nothing shows: unseen is not clean."), TextStyle::small, t.muted);
    return y - low.y;
}

float draw_view_legend(Ui& ui, Point low, float width, const ScreenState& state, const std::optional<Reading>& reading)
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
    return draw_grain_legend(canvas, ui, low, width);
}

// --- reading ------------------------------------------------------------------------------------------------------------

void draw_reading_slip(Ui& ui, const Story& story, const Reading& reading, ViewKind view)
{
    const std::string place = fmt::format("{}, {}", debrief::as_sentence(debrief::called(reading.surface)), text::say(story.film.zones[reading.zone].title));
    std::string head;
    std::vector<std::string> lines{place};
    switch (view) {
        case ViewKind::there:
            head = text::say_with("{} {} lead", loading_text(reading.loading), loading_unit);
            break;
        case ViewKind::seen:
            head = reading.coverage >= reading.threshold ? text::say("You would see this") : text::say("Looks clean");
            lines.push_back(text::say_with("dust hides {}; noticed from {}",
                                        reading.coverage > 0.0 ? text::show_percent(reading.coverage) : "0 %",
                                        text::show_percent(reading.threshold)));
            break;
        case ViewKind::airborne:
            head =
                text::say_with("{} {} lead in the air", reading.air < air_scale.least ? "< 0.1" : text::show_number(reading.air, 2), air_unit);
            lines[0] = story.film.zones[reading.zone].title;
            break;
    }
    lines.push_back(std::string(model_caution));
    draw_slip(ui.overlay(), ui, ui.input().mouse, head, lines);
}

// --- drawing ------------------------------------------------------------------------------------------------------------

void fit_to(const Box& window, const Ui& ui, const Story& story, ScreenState& state)
{
    if (state.plan_view && state.plan_window == window) return;
    const PaperBox whole = whole_plan(story.inputs.scenario);
    const float margin = ui.px(10.0F);
    const bool is_small = window.height() < ui.px(220.0F);
    const PaperBox near = near_part(story.inputs.scenario, is_small ? 0.15 : room_for_measures);
    state.plan_view = state.shows_whole_plan ? PaperView::fit(whole, window, margin) : comfortable_view(near, whole, window, margin);
    state.plan_window = window;
}

/// Where the fault happened that was asked for: a ring with the fault's sign, as long as the run stands there.
void draw_shown_place(Board& board, const Story& story, const Moment& moment, ScreenState& state)
{
    if (!state.shown_place || state.shown_place->time != moment.at) return state.shown_place.reset();
    const Point at = board.at(state.shown_place->at);
    const Theme& t = board.theme();
    const float radius = board.px(34.0F);
    board.canvas.ring(at, radius, t.sheet, board.px(8.0F));
    board.canvas.ring(at, radius, t.caution, board.px(3.4F));
    const Point sign = at + Point{radius * 0.72F, -radius * 0.72F};
    board.canvas.fill_circle(sign, board.px(15.0F), t.sheet);
    draw_fault_sign(board.canvas, board.ui, sign, board.px(12.0F), story.report.faults[state.shown_place->fault]);
}

/// Brings a place into the window when it lies outside.
void look_at(const Box& box, const Ui& ui, ScreenState& state)
{
    if (!state.shown_place || !state.plan_view) return;
    const Box inner = box.inset(ui.px(50.0F));
    const Point at = state.plan_view->at(state.shown_place->at);
    if (!inner.contains(at)) state.plan_view->pan(box.center() - at);
}

std::optional<Reading> drawing(Ui& ui, const Box& box, const Story& story, const Moment& moment, ScreenState& state)
{
    fit_to(box, ui, story, state);
    ui.go_to(box.low);
    const Touch touch = ui.touch({.name = "plan-drawing",
                                  .role = Role::drawing,
                                  .label = text::say("Plan"),
                                  .value = view_words[static_cast<std::size_t>(state.view)].label,
                                  .size = box.size(),
                                  .is_pressed_by_keys = false,
                                  .lets_others_on_top = true});
    if (touch.is_held) state.plan_view->pan(ui.drag());
    if (touch.has_focus) {
        const float step = ui.px(40.0F);
        while (ui.take_key(Key::left)) state.plan_view->pan({step, 0.0F});
        while (ui.take_key(Key::right)) state.plan_view->pan({-step, 0.0F});
        while (ui.take_key(Key::up)) state.plan_view->pan({0.0F, step});
        while (ui.take_key(Key::down)) state.plan_view->pan({0.0F, -step});
    }
    if (const float notches = ui.wheel_over(box); notches != 0.0F)
        state.plan_view->zoom(std::pow(zoom_of_a_notch, static_cast<double>(notches)), ui.input().mouse);

    look_at(box, ui, state);
    Board board{ui.canvas(), *state.plan_view, ui};
    const auto clip = board.canvas.clipped_to(box);
    static const std::vector<PictureId> none;
    const std::vector<PictureId>& dust =
        state.view == ViewKind::airborne ? none : state.dust.of(ui.pictures(), story, moment.frame, state.view, grain);
    draw_site(board, story, moment, {box, state.view, !state.keeps_still}, dust);
    draw_shown_place(board, story, moment, state);
    if (state.on_plan) state.on_plan(ui, box, *state.plan_view);
    if (!touch.is_hovered || touch.is_held) return std::nullopt;
    return reading_at(story, moment, state.plan_view->paper(ui.input().mouse));
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

/// The column at the right of a drafting sheet: what the drawing shows and how to read it.
void title_block(Ui& ui, const Box& box, ScreenState& state, const std::optional<Reading>& reading)
{
    Canvas canvas = ui.canvas();
    canvas.fill_box(box, ui.theme().sheet);
    canvas.line(box.low, {box.low.x, box.high.y}, ui.theme().ink, ui.px(1.4F));
    ui.open_panel("plan/block", box, 12.0F, false);
    for (std::size_t i = 0; i < view_words.size(); ++i) {
        if (i > 0) ui.gap(-6.0F); // rows of one choice stand closer than things of their own
        view_row(ui, i, state);
    }
    const auto divide = [&] {
        const float y = ui.cursor().y;
        ui.canvas().line({box.low.x, y}, {box.high.x, y}, ui.theme().ink, ui.px(1.0F));
        ui.gap(9.0F);
    };
    divide();
    const Point low = ui.cursor();
    const float width = ui.width_left();
    ui.place({width, draw_view_legend(ui, low, width, state, reading)});
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

void small_block(Ui& ui, const Box& box, const ScreenState& state, const std::optional<Reading>& reading)
{
    ui.canvas().fill_box(box, ui.theme().sheet);
    ui.canvas().line(box.low, {box.low.x, box.high.y}, ui.theme().ink, ui.px(1.4F));
    ui.open_panel("plan/block", box, 10.0F, true);
    const Point low = ui.cursor();
    const float width = ui.width_left();
    ui.place({width, draw_view_legend(ui, low, width, state, reading)});
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

void zoom_plan(ScreenState& state, double factor)
{
    if (state.plan_view) state.plan_view->zoom(factor, state.plan_window.center());
}

void fit_plan(ScreenState& state)
{
    state.shows_whole_plan = !state.shows_whole_plan;
    state.plan_view.reset();
}

void plan_panel(Ui& ui, const Box& box, bool is_wide, const Story& story, const Moment& moment, ScreenState& state)
{
    std::optional<Reading> reading;
    panel(ui, "plan", box, {.can_scroll = false, .padding = 0.0F}, [&] {
        Box rest = box;
        if (!is_wide) small_toolbar(ui, cut_top(rest, ui.px(42.0F)), state);
        Box block = cut_right(rest, ui.px(is_wide ? block_width : small_block_width));
        reading = drawing(ui, rest, story, moment, state);
        if (is_wide)
            title_block(ui, block, state, reading);
        else
            small_block(ui, block, state, reading);
        ui.canvas().frame_box(box, ui.theme().ink, ui.px(1.2F), ui.px(2.0F));
    });
    if (reading) draw_reading_slip(ui, story, *reading, state.view);
}

}
