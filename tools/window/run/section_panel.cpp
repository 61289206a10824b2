#include "window/run/section_panel.hpp"

#include "window/drawing/legend.hpp"
#include "window/run/day_chart.hpp"
#include "window/run/hung_flap.hpp"
#include "window/run/openings.hpp"
#include "window/run/phrases.hpp"
#include "window/run/site_section.hpp"
#include "window/run/wall_elevation.hpp"
#include "window/widgets/panel.hpp"
#include "window/widgets/words.hpp"

#include "text/language.hpp"
#include "text/show.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace flapdoor::window {

namespace {

constexpr float scale_room = 34.0F; // at 100 %, left of the cut for its heights
constexpr float slab = 14.0F;       // hatch of floor and ceiling
constexpr float title_height = 22.0F;

struct SiteWord {
    Standing standing;
    std::string text;
};

/// How the site stands, in words: what a picture of a small room shows too small.
std::vector<SiteWord> site_words(const Story& story, const Moment& moment)
{
    std::vector<SiteWord> words;
    const auto tell = [&](bool is_safe, std::string_view safe, std::string_view open) {
        words.push_back({is_safe ? Standing::good : Standing::plain, std::string(is_safe ? safe : open)});
    };
    const drill::Frame& now = *moment.now;
    tell(!now.is_hvac_running, text::say("blower off"), text::say("blower runs"));
    const auto& openings = story.inputs.scenario.openings;
    for (std::size_t i = 0; i < openings.size(); ++i) {
        const drill::OpeningShot& shot = now.openings[i];
        switch (openings[i].kind) {
            case job::OpeningKindOf::supply:
            case job::OpeningKindOf::return_air:
            case job::OpeningKindOf::exhaust: {
                const std::string_view name = text::say(word_of(openings[i].kind));
                tell(shot.is_covered, text::say_with("{} covered", name), text::say_with(shot.is_open ? text::to_say("{} open") : text::to_say("{} closed, bare"), name));
                break;
            }
            case job::OpeningKindOf::door:
                if (shot.has_flap) tell(true, text::say("flap door hung"), "");
                break;
            default:
                break;
        }
    }
    const bool has_sign = std::any_of(now.openings.begin(), now.openings.end(), [](const drill::OpeningShot& o) { return o.has_sign; });
    tell(has_sign, text::say("signs up"), text::say("no signs"));
    tell(std::any_of(now.is_sheeted.begin(), now.is_sheeted.end(), [](std::uint8_t c) { return c != 0; }), text::say("sheeting down"), text::say("no sheeting"));
    if (now.has_tack_pad) tell(true, text::say("tack pad down"), "");
    return words;
}

/// @return  the height they took
float draw_site_words(Ui& ui, const Box& box, const Story& story, const Moment& moment)
{
    Canvas canvas = ui.canvas();
    Point at = box.low;
    for (const SiteWord& word : site_words(story, moment)) {
        const float width = canvas.measure(word.text, TextStyle::small).x + ui.px(word.standing == Standing::plain ? 16.0F : 34.0F);
        if (at.x + width > box.high.x && at.x > box.low.x) at = {box.low.x, at.y + ui.px(30.0F)};
        if (at.y + ui.px(24.0F) > box.high.y) break;
        const Box drawn = draw_mark(canvas, ui, at, word.standing, word.text);
        at.x = drawn.high.x + ui.px(6.0F);
    }
    return at.y + ui.px(24.0F) - box.low.y;
}

/// Lead in the work room's air over the day, when there is room for it.
void draw_air_chart(Ui& ui, Box box, const Story& story, Time now)
{
    if (box.height() < ui.px(84.0F) || box.width() < ui.px(190.0F)) return;
    const std::string head = text::say_with("Lead in the work room's air, {}; training model", air_unit);
    box.low.y += ui.canvas().text_wrapped(box.low, box.width(), head, TextStyle::small, ui.theme().muted);
    std::vector<DayPoint> points;
    for (const drill::Frame& frame : story.film.frames) points.push_back({frame.at, frame.air_lead[story.film.work_room]});
    draw_day_chart(ui.canvas(), ui, box, points, {story.start, story.end, now, air_scale.least, air_scale.most});
}

void draw_now(Ui& ui, Box box, const Story& story, const Moment& moment)
{
    const Theme& t = ui.theme();
    Canvas canvas = ui.canvas();
    const bool is_broad = box.width() >= ui.px(440.0F);
    if (is_broad) {
        Box right = cut_right(box, box.width() * 0.46F);
        cut_right(box, ui.px(12.0F));
        draw_air_chart(ui, right, story, moment.at);
    }
    if (story.report.steps.empty()) { // nothing has been done yet
        draw_site_words(ui, box, story, moment);
        return;
    }
    const debrief::StepLine& step = story.report.steps[moment.card];
    const CardWords& words = story.words[moment.card];
    const bool is_between = moment.at > step.end;
    const std::string head = text::say_with(is_between ? text::to_say("After card {} of {}") : text::to_say("Now: card {} of {}"), step.number, story.report.steps.size());
    canvas.text(box.low, head, TextStyle::small, t.muted);
    box.low.y += canvas.measure(head, TextStyle::small).y + ui.px(1.0F);
    box.low.y += canvas.text_wrapped(box.low, box.width(), text::say(step.title), TextStyle::strong, t.ink);
    const std::string more = text::say_with("{}, {} to {}{}{}", words.crew, text::show_clock(step.start), text::show_clock(step.end),
                                         words.detail.empty() ? "" : " \xC2\xB7 ", words.detail.said());
    box.low.y += canvas.text_wrapped(box.low, box.width(), more, TextStyle::small, t.muted) + ui.px(7.0F);
    box.low.y += draw_site_words(ui, box, story, moment) + ui.px(10.0F);
    if (!is_broad) draw_air_chart(ui, box, story, moment.at);
}

/// The title, or a shorter one where there is no room.
void draw_title(Ui& ui, const Box& box, Strip strip, const Section& section)
{
    Canvas canvas = ui.canvas();
    std::string title(text::say(title_of(strip)));
    if (strip == Strip::section) title = section.runs_east ? text::say("Section, looking north; heights in feet") : text::say("Section, looking west; heights in feet");
    const auto fits = [&] { return canvas.measure(title, TextStyle::small).x <= box.width(); };
    if (const auto side = wall_on(strip); side && !fits()) title = text::say(wall_title(*side));
    if (!fits()) title = text::say(strip == Strip::flap ? text::to_say("Flap door") : text::to_say("Section, feet"));
    canvas.text_in(box, title, TextStyle::small, ui.theme().muted);
    ui.note({"strip-title", Role::text, title, {}, box});
}

/// Width that what is chosen asks for at a height, all in pixels.
float natural_width(const Ui& ui, float height, const Story& story, Strip strip, const Section& section)
{
    if (strip == Strip::flap) return FlapView::strip_width(ui, height - ui.px(title_height));
    const auto side = wall_on(strip);
    const RoomWall wall = room_wall(story.inputs.scenario, side.value_or(job::WallSide::north));
    const double shape = side ? (wall.width() + 2.0 * wall_thickness) / wall.ceiling : (section.to - section.from) / section.ceiling;
    return (height - ui.px(title_height + 2.0F * slab)) * static_cast<float>(shape) + ui.px(scale_room + 26.0F);
}

/// What lies on the panel under the pointer.
void read_wall(Ui& ui, const Box& field, const PaperView& view, const Moment& moment, const RoomWall& wall, ViewKind shown)
{
    ui.go_to(field.low);
    const Touch touch = ui.touch({.name = "elevation", .role = Role::drawing, .label = text::say(wall_title(wall.side)), .size = field.size(), .is_stop = false});
    if (!touch.is_hovered || shown != ViewKind::there) return;
    const auto lead = lead_on_wall(*moment.now, wall, view.paper(ui.input().mouse));
    const std::string lines[] = {std::string(text::say(wall_title(wall.side))), std::string(model_caution)};
    if (lead) draw_slip(ui.overlay(), ui, ui.input().mouse, text::say_with("{} {} lead", loading_text(*lead), loading_unit), lines);
}

void draw_strip(Ui& ui, Box box, const Section& section, const Story& story, const Moment& moment, ScreenState& state)
{
    draw_title(ui, cut_top(box, ui.px(title_height)), state.strip, section);
    if (state.strip == Strip::flap) {
        if (const auto door = hung_flap(story, moment.at)) state.strip_flap.play_strip(ui, box, {.door = *door, .keeps_still = state.keeps_still});
        return;
    }
    const Box field{{box.low.x + scale_room * ui.text_scale(), box.low.y + ui.px(slab)}, {box.high.x, box.high.y - ui.px(slab)}};
    if (const auto side = wall_on(state.strip)) {
        const RoomWall wall = room_wall(story.inputs.scenario, *side);
        Board board{ui.canvas(), PaperView::fit({{-wall_thickness, 0.0}, {wall.width() + wall_thickness, wall.ceiling}}, field, 0.0F), ui};
        for (const PlacedName& name : draw_wall_elevation(board, story, moment, wall, {box, state.view, !state.keeps_still})) ui.note({"elevation/" + name.name, Role::text, name.words, {}, name.box});
        return read_wall(ui, field, board.view, moment, wall, state.view);
    }
    const PaperBox whole{{section.from - 0.1, 0.0}, {section.to + 0.1, section.ceiling}};
    Board board{ui.canvas(), PaperView::fit(whole, field, 0.0F), ui};
    draw_site_section(board, story, moment, !state.keeps_still);
}

}

void section_panel(Ui& ui, const Box& box, const Story& story, const Moment& moment, ScreenState& state)
{
    const bool has_flap = hung_flap(story, moment.at).has_value();
    if (state.strip == Strip::flap && !has_flap) state.strip = Strip::section;
    panel(ui, "section", box, {.can_scroll = false, .padding = 0.0F}, [&] {
        const Section section = section_of(story.inputs.scenario);
        Box rest = box.inset(ui.px(10.0F));
        Canvas canvas = ui.canvas();
        const float chooser = chooser_width(ui, canvas);
        const float gap = ui.px(12.0F);
        Box cut;
        if (box.height() > box.width() * 0.8F) { // words below
            const float shape = natural_width(ui, ui.px(1000.0F), story, state.strip, section) / ui.px(1000.0F);
            const float height = std::min(std::max((rest.width() - chooser - gap) / std::max(shape, 0.1F), ui.px(190.0F)), rest.height() * 0.5F);
            cut = cut_top(rest, height);
            cut_top(rest, ui.px(10.0F));
            canvas.line({box.low.x, rest.low.y - ui.px(4.0F)}, {box.high.x, rest.low.y - ui.px(4.0F)}, ui.theme().ink, ui.px(1.0F));
            cut_top(rest, ui.px(4.0F));
        }
        else { // words beside: the drawing is as wide as its height asks for, and leaves them their room
            const float natural = natural_width(ui, rest.height(), story, state.strip, section) + gap + chooser;
            cut = cut_left(rest, std::min(natural, rest.width() * 0.66F));
            cut_left(rest, ui.px(16.0F));
            canvas.line({rest.low.x - ui.px(8.0F), box.low.y}, {rest.low.x - ui.px(8.0F), box.high.y}, ui.theme().ink, ui.px(1.0F));
        }
        strip_chooser(ui, cut_right(cut, chooser), state.strip, has_flap);
        cut_right(cut, gap);
        if (state.strip == Strip::flap && !has_flap) state.strip = Strip::section;
        {
            const auto clip = canvas.clipped_to(box);
            draw_strip(ui, cut, section, story, moment, state);
            draw_now(ui, rest, story, moment);
        }
        canvas.frame_box(box, ui.theme().ink, ui.px(1.2F), ui.px(2.0F));
    });
    while (ui.shortcut(Key::w)) state.strip = stepped(state.strip, +1, has_flap);
    while (ui.shortcut(Key::w, {.shift = true})) state.strip = stepped(state.strip, -1, has_flap);
}

}
