#include "window/run/day_chart.hpp"
#include "window/run/phrases.hpp"
#include "window/run/sheets.hpp"
#include "window/widgets/panel.hpp"
#include "window/widgets/words.hpp"

#include "debrief/pathway_chart.hpp"
#include "debrief/wording.hpp"
#include "text/language.hpp"
#include "text/show.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <vector>

namespace flapdoor::window {

namespace {

struct Unit {
    double picograms;
    std::string_view name;
};

/// The largest unit that leaves figures of one or more.
Unit unit_for(double most)
{
    constexpr std::array<Unit, 4> units{{{1e12, "g"}, {1e9, "mg"}, {1e6, "\xC2\xB5g"}, {1e3, "ng"}}};
    for (const Unit& unit : units)
        if (most >= unit.picograms) return unit;
    return units.back();
}

void draw_outside(Ui& ui, const Story& story, Time now)
{
    double most = 0.0;
    for (const drill::Frame& frame : story.film.frames) most = std::max(most, static_cast<double>(frame.outside_lead.count));
    const Unit unit = unit_for(most);
    strong(ui, text::say("Lead outside the work area"));
    aside(ui, text::say_with("{} over the time of day; {}", unit.name, text::say(debrief::loading_note)));
    std::vector<DayPoint> points;
    for (const drill::Frame& frame : story.film.frames)
        points.push_back({frame.at, std::max(static_cast<double>(frame.outside_lead.count) / unit.picograms, 0.0)});
    const Box box = ui.place({ui.width_left(), ui.px(170.0F)});
    draw_day_chart(ui.canvas(), ui, box, points, {story.start, story.end, now, 0.0, std::max(most / unit.picograms, 1e-9) * 1.05});
}

void draw_pathway(Ui& ui, const debrief::PathwayLine& line)
{
    const Theme& t = ui.theme();
    Canvas canvas = ui.canvas();
    const int level = debrief::share_level(line.share);
    const std::string name = debrief::as_sentence(std::string(text::say(word_of(line.pathway))));
    const std::string told = debrief::told_share(line);
    const std::string_view how = debrief::how_it_leaves(line.pathway);
    const float how_height = canvas.measure_wrapped(ui.width_left(), how, TextStyle::small).y;
    const Box box = ui.place({ui.width_left(), ui.px(44.0F) + how_height});
    canvas.text_in({box.low, {box.high.x, box.low.y + ui.px(22.0F)}}, name, TextStyle::body, t.ink);
    canvas.text_in({box.low, {box.high.x, box.low.y + ui.px(22.0F)}}, told, TextStyle::strong, t.ink, Align::right);
    // Five fields, as many filled as the word says; an outline where nobody has measured.
    const float gap = ui.px(4.0F);
    const float field = (box.width() - 4.0F * gap) / 5.0F;
    for (int i = 0; i < 5; ++i) {
        const Box part = box_at({box.low.x + static_cast<float>(i) * (field + gap), box.low.y + ui.px(24.0F)}, {field, ui.px(9.0F)});
        if (i < level && !debrief::is_barely_known(line.pathway))
            canvas.fill_box(part, t.accent);
        else if (i < level)
            canvas.fill_box(part, t.accent_tint);
        canvas.frame_box(part, i < level ? t.accent : t.hairline, ui.px(1.0F));
    }
    canvas.text_wrapped({box.low.x, box.low.y + ui.px(38.0F)}, box.width(), how, TextStyle::small, t.muted);
}

void draw_loading(Ui& ui, std::string_view where, Loading loading)
{
    const Theme& t = ui.theme();
    Canvas canvas = ui.canvas();
    const Box box = ui.place({ui.width_left(), ui.px(26.0F)});
    canvas.text_in(box, where, TextStyle::body, t.ink);
    canvas.text_in(box, with_signs(text::show_short(loading)), TextStyle::strong, t.ink, Align::right);
}

}

void dust_sheet(Ui& ui, const Box& box, const Story& story, const Moment& moment)
{
    panel(ui, "dust", box, {.padding = 14.0F}, [&] {
        const debrief::Outcome& outcome = story.report.outcome;
        draw_outside(ui, story, moment.at);
        rule(ui);
        strong(ui, text::say("How it got out, over the whole run"));
        bool is_any = false;
        for (const debrief::PathwayLine& line : outcome.pathways) {
            if (line.amount.lead.count <= 0) continue;
            draw_pathway(ui, line);
            is_any = true;
        }
        if (!is_any) words(ui, text::say("Nothing got out."));
        rule(ui);
        strong(ui, text::say("Lead lying there at the end"));
        draw_loading(ui, text::say("Work room floor"), outcome.floor);
        draw_loading(ui, text::say("Worst sill"), outcome.sill);
        draw_loading(ui, text::say("Floor beyond the entrance"), outcome.hall_floor);
        aside(ui, debrief::as_sentence(std::string(text::say(debrief::loading_note))) + ".");
    });
}

}
