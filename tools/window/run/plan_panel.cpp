#include "window/run/plan_panel.hpp"

#include "window/drawing/legend.hpp"
#include "window/run/fault_sign.hpp"
#include "window/run/phrases.hpp"
#include "window/run/plan_block.hpp"
#include "window/run/plan_part.hpp"
#include "window/run/reading.hpp"
#include "window/run/room_wall.hpp"
#include "window/widgets/panel.hpp"

#include "debrief/wording.hpp"
#include "site/place.hpp"
#include "text/language.hpp"
#include "text/show.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace flapdoor::window {

namespace {

constexpr double zoom_of_a_notch = 1.15;
constexpr double beam_step = 0.1524; // m: one arrow key
constexpr float wall_grip = 24.0F;  // pixels across a wall to be pressed
constexpr float most_slip = 6.0F;   // pixels a pointer may slip in a click

bool is_lit_plan(const ScreenState& state) { return state.view == ViewKind::seen && state.has_flashlight && state.beam; }

// --- reading ------------------------------------------------------------------------------------------------------------

void draw_reading_slip(Ui& ui, const Story& story, const Reading& reading, const ScreenState& state)
{
    const std::string place = fmt::format("{}, {}", debrief::as_sentence(debrief::called(reading.surface)), text::say(story.film.zones[reading.zone].title));
    std::string head;
    std::vector<std::string> lines{place};
    switch (state.view) {
        case ViewKind::there:
            head = text::say_with("{} {} lead", loading_text(reading.loading), loading_unit);
            break;
        case ViewKind::seen:
            head = reading.coverage >= reading.threshold ? text::say("You would see this") : text::say("Looks clean");
            if (reading.is_lit) lines.emplace_back(text::say("by the flashlight held low"));
            lines.push_back(text::say_with("dust hides {}; noticed from {}",
                                        reading.coverage > 0.0 ? fine_percent(reading.coverage) : "0 %", fine_percent(reading.threshold)));
            break;
        case ViewKind::airborne:
            head =
                text::say_with("{} {} lead in the air", reading.air < air_scale.least ? "< 0.1" : text::show_number(reading.air, 2), air_unit);
            lines[0] = story.film.zones[reading.zone].title;
            break;
    }
    lines.push_back(std::string(model_caution));
    if (!is_lit_plan(state)) return draw_slip(ui.overlay(), ui, ui.input().mouse, head, lines);
    // Behind the hand, where it hides nothing of what the light shows.
    const Point hand = state.plan_view->at(state.beam->hand);
    const Point way = state.plan_view->at(state.beam->spot) - hand;
    draw_slip(ui.overlay(), ui, hand, head, lines, {-way.x, -way.y});
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

/// The walls of the work room: one that is clicked comes on the strip below. Dragging from one pans as everywhere else.
bool play_walls(Ui& ui, const Box& box, Board& board, const Story& story, ScreenState& state)
{
    bool is_hovered = false;
    for (const job::WallSide side : wall_sides) {
        const RoomWall wall = room_wall(story.inputs.scenario, side);
        const Point a = board.at(wall.left), b = board.at(wall.right);
        const float grip = ui.px(wall_grip);
        const bool is_level = std::abs(a.x - b.x) > std::abs(a.y - b.y);
        const Point size = is_level ? Point{std::abs(a.x - b.x) - grip, grip} : Point{grip, std::abs(a.y - b.y) - grip};
        const Box whole = box_around((a + b) * 0.5F, size);
        const Box seen{{std::max(whole.low.x, box.low.x), std::max(whole.low.y, box.low.y)}, {std::min(whole.high.x, box.high.x), std::min(whole.high.y, box.high.y)}};
        if (seen.width() < grip * 0.9F || seen.height() < grip * 0.9F) continue;
        ui.go_to(seen.low);
        const Touch touch = ui.touch({.name = "plan/wall/" + std::string(wall_word(side)),
                                      .role = Role::choice,
                                      .label = text::say(wall_title(side)),
                                      .size = seen.size(),
                                      .is_on = state.strip == strip_of(side),
                                      .is_stop = false, // the strip's own choice has them for the keyboard
                                      .lets_others_on_top = true});
        is_hovered = is_hovered || (touch.is_hovered && !touch.is_held);
        if (touch.is_held) {
            const Point by = ui.drag();
            state.dragged += std::abs(by.x) + std::abs(by.y);
            if (state.dragged > ui.px(most_slip)) state.plan_view->pan(by);
        }
        if (touch.is_hovered && !touch.is_held && state.strip != strip_of(side)) board.canvas.line(a, b, ui.theme().accent, ui.px(3.4F));
        if (touch.is_clicked && state.dragged <= ui.px(most_slip)) state.strip = strip_of(side), state.asks_for_strip = true;
        if (touch.is_clicked) state.dragged = 0.0F;
    }
    return is_hovered;
}

/// The flashlight follows the pointer over the plan; the hand is a stop of the Tab key and moved by the arrow keys.
/// @return  true while the keyboard is on it
bool play_flashlight(Ui& ui, const Box& box, Board& board, const Story& story, const Moment& moment, bool is_pointed, ScreenState& state)
{
    if (state.view != ViewKind::seen || !state.has_flashlight) return false;
    if (!state.beam) state.beam = beam_on(paper(site::footprint(story.film.zones[story.film.work_room])).center());
    if (is_pointed && !(ui.input().mouse == state.beam_mouse)) state.beam->look_at(board.view.paper(ui.input().mouse));
    state.beam_mouse = ui.input().mouse;
    const Point hand = board.at(state.beam->hand);
    const float side = ui.px(30.0F);
    const Point kept = ui.cursor();
    ui.go_to(hand - Point{side, side} * 0.5F);
    const auto reading = reading_at(story, moment, state.beam->spot, state.beam);
    const bool is_seen = reading && reading->coverage >= reading->threshold;
    const Touch touch = ui.touch({.name = "plan/beam",
                                  .role = Role::slider,
                                  .label = text::say("Flashlight"),
                                  .value = is_seen ? text::say("You would see this") : text::say("Looks clean"),
                                  .size = {side, side},
                                  .is_pressed_by_keys = false,
                                  .lets_others_on_top = true,
                                  .ring_rounding = 15.0F});
    ui.go_to(kept);
    if (touch.has_focus) {
        const auto step = [&](double x, double y) {
            const PaperBox seen{board.view.paper({box.low.x, box.high.y}), board.view.paper({box.high.x, box.low.y})};
            const PaperPoint next = state.beam->spot + PaperPoint{x, y};
            state.beam->look_at({std::clamp(next.x, seen.low.x, seen.high.x), std::clamp(next.y, seen.low.y, seen.high.y)});
        };
        while (ui.take_key(Key::right)) step(beam_step, 0.0);
        while (ui.take_key(Key::left)) step(-beam_step, 0.0);
        while (ui.take_key(Key::up)) step(0.0, beam_step);
        while (ui.take_key(Key::down)) step(0.0, -beam_step);
    }
    draw_flashlight(board, *state.beam);
    return touch.has_focus;
}

/// What lies on the plan above its names: the next frame keeps them off it.
std::vector<Box> tools_on_top(const Ui& ui)
{
    std::vector<Box> boxes;
    for (const Spot& spot : ui.spots()) {
        const bool is_tool = spot.name.rfind("plan/", 0) == 0 && spot.role != Role::drawing && spot.role != Role::panel;
        if (is_tool && spot.name.rfind("plan/wall/", 0) != 0 && spot.name.rfind("plan/beam", 0) != 0) boxes.push_back(spot.box);
    }
    return boxes;
}

std::optional<Reading> drawing(Ui& ui, const Box& box, const Story& story, const Moment& moment, ScreenState& state)
{
    fit_to(box, ui, story, state);
    ui.go_to(box.low);
    const Touch touch = ui.touch({.name = "plan-drawing",
                                  .role = Role::drawing,
                                  .label = text::say("Plan"),
                                  .value = view_title(state.view),
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
    const std::optional<Beam> beam = is_lit_plan(state) ? state.beam : std::nullopt;
    const std::vector<PictureId>& dust =
        state.view == ViewKind::airborne ? none : state.dust.of(ui.pictures(), story, moment.frame, state.view, grain_color, beam);
    std::vector<Box> taken = state.on_top;
    if (beam) taken.push_back(board.view.at(taken_by(*beam)));
    for (const PlacedName& name : draw_site(board, story, moment, {box, state.view, !state.keeps_still, taken, wall_on(state.strip)}, dust))
        ui.note({"name/" + name.name, Role::text, name.words, {}, name.box});
    draw_shown_place(board, story, moment, state);
    const bool is_on_wall = play_walls(ui, box, board, story, state);
    const bool is_pointed = (touch.is_hovered && !touch.is_held) || is_on_wall;
    const bool is_lit_by_keys = play_flashlight(ui, box, board, story, moment, is_pointed, state);
    if (state.on_plan) state.on_plan(ui, box, *state.plan_view);
    state.on_top = tools_on_top(ui);
    if (beam && (is_pointed || is_lit_by_keys)) return reading_at(story, moment, beam->spot, beam);
    if (!is_pointed) return std::nullopt;
    return reading_at(story, moment, state.plan_view->paper(ui.input().mouse));
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

void toggle_flashlight(ScreenState& state)
{
    state.has_flashlight = !state.has_flashlight || state.view != ViewKind::seen;
    state.view = ViewKind::seen;
}

void plan_panel(Ui& ui, const Box& box, bool is_wide, const Story& story, const Moment& moment, ScreenState& state)
{
    std::optional<Reading> reading;
    panel(ui, "plan", box, {.can_scroll = false, .padding = 0.0F}, [&] {
        Box rest = box;
        if (!is_wide) small_toolbar(ui, cut_top(rest, ui.px(42.0F)), state);
        Box block = cut_right(rest, width_of_block(ui, is_wide));
        reading = drawing(ui, rest, story, moment, state);
        if (is_wide)
            title_block(ui, block, story, state, reading);
        else
            small_block(ui, block, story, state, reading);
        ui.canvas().frame_box(box, ui.theme().ink, ui.px(1.2F), ui.px(2.0F));
    });
    if (reading) draw_reading_slip(ui, story, *reading, state);
    if (ui.shortcut(Key::l)) toggle_flashlight(state);
}

}
