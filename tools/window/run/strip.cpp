#include "window/run/strip.hpp"

#include "text/language.hpp"

#include <algorithm>

namespace flapdoor::window {

namespace {

using text::say;
using text::to_say;
using text::to_say_of;

constexpr int strip_count = 6;
constexpr float plan_width = 96.0F; // of the key plan, at 100 %
constexpr float bar = 25.0F;        // depth of a wall to be pressed

/// What stands for a wall on the key plan: the first letter of its point of the compass.
std::string_view letter(job::WallSide side)
{
    constexpr std::array<std::string_view, 4> letters{to_say_of("compass", "S"), to_say_of("compass", "E"), to_say_of("compass", "N"), to_say_of("compass", "W")};
    return text::say_of("compass", letters[static_cast<std::size_t>(side)]);
}

Box wall_box(const Box& plan, float depth, job::WallSide side)
{
    Box rest = plan;
    const Box north = cut_top(rest, depth);
    const Box south = cut_bottom(rest, depth);
    switch (side) {
        case job::WallSide::north: return north;
        case job::WallSide::south: return south;
        case job::WallSide::west: return cut_left(rest, depth);
        case job::WallSide::east: break;
    }
    return cut_right(rest, depth);
}

void key_wall(Ui& ui, const Box& plan, job::WallSide side, Strip& strip)
{
    const Theme& t = ui.theme();
    const Box box = wall_box(plan, ui.px(bar), side);
    const bool is_on = strip == strip_of(side);
    ui.go_to(box.low);
    const Touch touch = ui.touch({.name = "strip/" + std::string(wall_word(side)), .role = Role::choice, .label = say(wall_title(side)), .size = box.size(), .is_on = is_on, .ring_rounding = 2.0F});
    Canvas canvas = ui.canvas();
    if (is_on || touch.is_hovered) canvas.fill_box(box, is_on ? t.accent : t.accent_tint);
    canvas.text_in(box, letter(side), TextStyle::small, is_on ? t.on_accent : t.ink, Align::center);
    ui.hint(say(wall_title(side)));
    if (touch.is_clicked) strip = strip_of(side);
}

void key_chip(Ui& ui, const Box& box, std::string_view name, std::string_view label, std::string_view hint, Strip shows, bool is_enabled, Strip& strip)
{
    const Theme& t = ui.theme();
    const bool is_on = strip == shows;
    ui.go_to(box.low);
    const Touch touch = ui.touch({.name = name, .role = Role::choice, .label = label, .size = box.size(), .is_enabled = is_enabled, .is_on = is_on, .ring_rounding = 4.0F});
    Canvas canvas = ui.canvas();
    canvas.fill_box(box, is_on ? t.accent : touch.is_hovered ? t.accent_tint : t.sheet, ui.px(4.0F));
    canvas.frame_box(box, is_on ? t.accent : t.line, ui.px(1.0F), ui.px(4.0F));
    canvas.text_in(box, label, TextStyle::small, is_on ? t.on_accent : is_enabled ? t.ink : faded(t.muted, 0.7), Align::center);
    ui.hint(hint);
    if (touch.is_clicked) strip = shows;
}

}

std::optional<job::WallSide> wall_on(Strip strip)
{
    for (const job::WallSide side : wall_sides)
        if (strip_of(side) == strip) return side;
    return std::nullopt;
}

Strip strip_of(job::WallSide side)
{
    switch (side) {
        case job::WallSide::north: return Strip::north;
        case job::WallSide::east: return Strip::east;
        case job::WallSide::south: return Strip::south;
        case job::WallSide::west: break;
    }
    return Strip::west;
}

Strip stepped(Strip strip, int by, bool has_flap)
{
    const auto next = static_cast<Strip>((static_cast<int>(strip) + by + strip_count) % strip_count);
    return next == Strip::flap && !has_flap ? stepped(next, by, has_flap) : next;
}

std::string_view title_of(Strip strip)
{
    constexpr std::array<std::string_view, strip_count> titles{to_say("Section; heights in feet"),
                                                               to_say("North wall from inside; heights in feet"),
                                                               to_say("East wall from inside; heights in feet"),
                                                               to_say("South wall from inside; heights in feet"),
                                                               to_say("West wall from inside; heights in feet"),
                                                               to_say("Flap door in section; heights in feet")};
    return titles[static_cast<std::size_t>(strip)];
}

float chooser_width(const Ui& ui, const Canvas& canvas)
{
    const float words = std::max(canvas.measure(say("Section"), TextStyle::small).x, canvas.measure(say("Flap door"), TextStyle::small).x);
    return std::max(ui.px(plan_width), words + ui.px(16.0F));
}

void strip_chooser(Ui& ui, Box box, Strip& strip, bool has_flap)
{
    const float chip = ui.px(26.0F);
    const float gap = ui.px(4.0F);
    const float height = std::clamp(box.height() - 2.0F * (chip + gap), ui.px(3.0F * bar - 1.0F), ui.px(92.0F));
    const Box plan = cut_top(box, height);
    ui.canvas().fill_box(plan, ui.theme().floor);
    for (const job::WallSide side : wall_sides) key_wall(ui, plan, side, strip);
    const float wall = ui.px(4.0F);
    ui.canvas().frame_box(plan.inset(wall * 0.5F), ui.theme().wall, wall);
    cut_top(box, gap);
    key_chip(ui, cut_top(box, chip), "strip/section", say("Section"), say("The cut through work room and passage (W steps on)"), Strip::section, true, strip);
    cut_top(box, gap);
    key_chip(ui, cut_top(box, chip), "strip/flap", say("Flap door"), has_flap ? say("Its sheets while somebody walks through") : say("No flap door hangs at this time"), Strip::flap, has_flap, strip);
}

}
