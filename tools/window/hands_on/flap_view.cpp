#include "window/hands_on/flap_view.hpp"

#include "window/drawing/line_chart.hpp"
#include "window/hands_on/flap_picture.hpp"
#include "window/widgets/button.hpp"
#include "window/widgets/choice.hpp"
#include "window/widgets/panel.hpp"
#include "window/widgets/slider.hpp"
#include "window/widgets/words.hpp"

#include "site/opening.hpp"
#include "text/language.hpp"
#include "text/show.hpp"

#include <algorithm>
#include <array>
#include <functional>

namespace flapdoor::window {

namespace {

using text::say;
using text::say_with;
using text::to_say;

constexpr float strip_controls = 236.0F; // at 100 %, beside the section on a strip
constexpr double square_foot = meters_per_foot * meters_per_foot;

struct Variant {
    std::string_view name, label;
    void (*change)(mechanics::FlapDoor&);
};
constexpr std::array<Variant, 6> variants{{
    {"as-hung", to_say("As it hangs"), [](mechanics::FlapDoor&) {}},
    {"no-dowel", to_say("No dowel"), [](mechanics::FlapDoor& d) { d.dowel = {}; }},
    {"one-sheet", to_say("One sheet"), [](mechanics::FlapDoor& d) { d.sheets = 1; }},
    {"untaped", to_say("Not taped"), [](mechanics::FlapDoor& d) { d.is_taped = false; }},
    {"short", to_say("Too short"), [](mechanics::FlapDoor& d) { d.hem_height = 2.0_ft; }},
    {"no-folds", to_say("No folds"), [](mechanics::FlapDoor& d) { d.has_folds = false; }},
}};

std::vector<ChartPoint> chart_points(const mechanics::FlapSwing& swing)
{
    std::vector<ChartPoint> points;
    for (std::size_t i = 0; i < swing.openings.size(); ++i)
        points.push_back({(mechanics::swing_grid * static_cast<double>(i)).si, swing.openings[i].area.si / square_foot});
    return points;
}

/// 5, 10, 20 ...: so that charts of like doors share a scale.
double rounded_up(double value, double least)
{
    double most = least;
    while (most < value) most *= 2.0;
    return most;
}

void draw_chart(Ui& ui, const Box& box, const FlapStudy& study, const FlapStudy* taught, Time now)
{
    const std::vector<ChartPoint> own = chart_points(study.film.swing);
    const std::vector<ChartPoint> other = taught != nullptr ? chart_points(taught->film.swing) : std::vector<ChartPoint>{};
    double most = 0.0;
    for (const std::vector<ChartPoint>* line : {&own, &other})
        for (const ChartPoint& p : *line) most = std::max(most, p.y);
    const ChartLine lines[] = {{own, true}, {other, false}};
    draw_line_chart(ui.canvas(), ui, box, lines,
                    {.x_most = rounded_up(study.film.length().si, 8.0),
                     .y_most = rounded_up(most, 6.0),
                     .x_unit = "s",
                     .y_unit = "ft\xC2\xB2",
                     .x_now = now.si});
}

/// Whole line: what the chart's two lines are.
void draw_key(Ui& ui, Box box)
{
    Canvas canvas = ui.canvas();
    const Theme& t = ui.theme();
    const auto entry = [&](bool is_main, std::string_view words) {
        const float y = box.low.y + ui.px(10.0F);
        if (is_main)
            canvas.line({box.low.x, y}, {box.low.x + ui.px(26.0F), y}, t.accent, ui.px(2.4F));
        else
            canvas.dashes({box.low.x, y}, {box.low.x + ui.px(26.0F), y}, t.ink, ui.px(1.6F), ui.px(6.0F), ui.px(4.0F));
        box.low.y += std::max(canvas.text_wrapped({box.low.x + ui.px(34.0F), box.low.y}, box.width() - ui.px(34.0F), words, TextStyle::small, t.ink), ui.px(18.0F));
    };
    entry(true, say("this door"));
    entry(false, say("a door hung as taught"));
}

struct Figure {
    std::string what, own, taught;
    bool is_worse;
};

std::vector<Figure> figures_of(const FlapStudy& study, const FlapStudy* taught)
{
    const auto seconds = [](Time t) { return say_with("{} s", text::show_number(t.si, 2)); };
    const auto open_for = [](mechanics::OpenFor o) { return say_with("{} ft\xC2\xB2 s", text::show_number(o.si / square_foot, 2)); };
    const auto row = [&](std::string_view what, auto value, auto show, double tolerance) {
        const auto own = value(study);
        Figure figure{std::string(what), show(own), {}, false};
        if (taught != nullptr) {
            figure.taught = show(value(*taught));
            figure.is_worse = own.si > value(*taught).si * tolerance;
        }
        return figure;
    };
    return {
        row(say("Leaks at rest, in a 1 Pa draft"), [](const FlapStudy& s) { return s.leak; }, opening_text, 1.2),
        row(say("Stands open, at most"), [](const FlapStudy& s) { return s.film.swing.peak; }, opening_text, 1.2),
        row(say("Opening summed over the passage"), [](const FlapStudy& s) { return s.film.swing.open_for; }, open_for, 1.2),
        row(say("Falls shut within"), [](const FlapStudy& s) { return s.film.swing.closing; }, seconds, 1.2),
    };
}

float draw_figures(Ui& ui, const Box& box, const std::vector<Figure>& figures)
{
    Canvas canvas = ui.canvas();
    const Theme& t = ui.theme();
    float y = box.low.y;
    float own_width = ui.px(40.0F), taught_width = canvas.measure(say("taught"), TextStyle::small).x;
    for (const Figure& f : figures) {
        own_width = std::max(own_width, canvas.measure(f.own, TextStyle::strong).x + ui.px(24.0F));
        taught_width = std::max(taught_width, canvas.measure(f.taught, TextStyle::small).x);
    }
    const float taught_x = box.high.x - taught_width;
    const float own_x = taught_x - ui.px(14.0F);
    const float words = own_x - own_width - box.low.x - ui.px(6.0F);
    canvas.text({taught_x, y}, say("taught"), TextStyle::small, t.muted);
    y += ui.px(20.0F);
    for (const Figure& f : figures) {
        const float height = std::max(canvas.measure_wrapped(words, f.what, TextStyle::small).y, ui.px(22.0F));
        canvas.text_wrapped({box.low.x, y + ui.px(1.0F)}, words, f.what, TextStyle::small, t.ink);
        const Point own = canvas.measure(f.own, TextStyle::strong);
        canvas.text({own_x - own.x, y}, f.own, TextStyle::strong, f.is_worse ? t.caution : t.ink);
        if (f.is_worse) draw_icon(canvas, Icon::caution, {own_x - own.x - ui.px(12.0F), y + ui.px(11.0F)}, ui.px(14.0F), t.caution, t.sheet);
        canvas.text({box.high.x - canvas.measure(f.taught, TextStyle::small).x, y + ui.px(2.0F)}, f.taught, TextStyle::small, t.muted);
        y += height + ui.px(4.0F);
        canvas.line({box.low.x, y - ui.px(2.0F)}, {box.high.x, y - ui.px(2.0F)}, t.hairline);
    }
    return y - box.low.y;
}

void draw_section(Ui& ui, const Box& box, const FlapViewLook& look, const mechanics::FlapDoor& door, const FlapStudy* study, Time now, bool goes_in)
{
    Canvas canvas = ui.canvas();
    const auto clip = canvas.clipped_to(box);
    const Box field{{box.low.x + ui.px(26.0F), box.low.y + ui.px(24.0F)}, box.high};
    Board board{ui.canvas(), PaperView::fit(flap_section_part, field, ui.px(6.0F)), ui};
    std::optional<mechanics::SwingFrame> frame;
    if (study != nullptr) frame = mechanics::frame_at(study->film, now);
    draw_flap_moment(board, door, look.can_pass && frame ? &*frame : nullptr, goes_in, look.can_pass && now > Time{});
    const Theme& t = ui.theme();
    const auto name = [&](double x, std::string_view words) {
        const Point size = canvas.measure(words, TextStyle::small);
        const Point at = board.at({x, 0.0});
        canvas.text({std::clamp(at.x - size.x * 0.5F, box.low.x, std::max(box.high.x - size.x, box.low.x)), box.low.y}, words, TextStyle::small, t.muted);
    };
    name(-0.72, say("clean side"));
    name(0.85, say("work side"));
    if (frame && frame->has_torn_loose) {
        Canvas over = ui.canvas();
        draw_mark(over, ui, {board.at({0.12, 0.0}).x, board.at({0.0, 0.30}).y}, Standing::caution, say("tape torn"));
    }
}

/// Area below and beside the sheets at a moment.
Area open_now(const FlapStudy& study, Time now)
{
    const auto& openings = study.film.swing.openings;
    if (openings.empty()) return {};
    return openings[std::min(static_cast<std::size_t>(std::max(now / mechanics::swing_grid, 0.0)), openings.size() - 1)].area;
}

}

std::string opening_text(Area area) { return say_with("{} ft\xC2\xB2", text::show_number(area.si / square_foot, 2)); }

void FlapView::walk()
{
    now_ = {};
    is_walking_ = true;
}

void FlapView::set_heading(mechanics::Heading heading)
{
    if (heading != heading_) now_ = {}, is_walking_ = false;
    heading_ = heading;
}

void FlapView::controls(Ui& ui, std::string_view name, const FlapViewLook& look, const FlapStudy* study)
{
    const std::string stem(name);
    const float width = ui.width_left();
    const bool can_walk = look.can_pass && study != nullptr;
    const std::array<Option, 2> ways{{{"in", std::string(say("Walk in"))}, {"out", std::string(say("Walk out"))}}};
    auto chosen = static_cast<std::size_t>(heading_);
    if (choice_row(ui, stem + "/way", ways, chosen)) set_heading(static_cast<mechanics::Heading>(chosen));
    const bool is_narrow = width < ui.px(420.0F); // the slider then has a row of its own
    if (!look.keeps_still || !is_narrow) ui.beside();
    if (!look.keeps_still) {
        const bool is_on = is_walking_;
        if (button(ui, stem + "/walk", "", {.icon = is_on ? Icon::pause : Icon::play, .is_enabled = can_walk, .hint = say("Somebody walks through")})) {
            if (is_on)
                is_walking_ = false;
            else if (study != nullptr && now_ >= study->film.length())
                walk();
            else
                is_walking_ = true;
        }
        if (!is_narrow) ui.beside();
    }
    double seconds = now_.si;
    const double most = study != nullptr ? study->film.length().si : 1.0;
    if (slider(ui, stem + "/time", say("Moment"), seconds,
               {.most = most, .step = mechanics::swing_grid.si, .is_enabled = can_walk, .show = [](double s) { return say_with("{} s", text::show_number(std::max(s, 0.0), 2)); }}))
        go_to(Time{seconds});
}

/// The moment after this frame's. @return  the passage, or null while it is being worked out
const FlapStudy* FlapView::go_on(Ui& ui, const mechanics::FlapDoor& door, const FlapViewLook& look)
{
    const FlapStudy* study = films_.find(door, heading_);
    if (look.keeps_still || !look.can_pass) is_walking_ = false;
    if (study == nullptr) return nullptr;
    if (is_walking_) {
        now_ += Time{static_cast<double>(ui.input().seconds)};
        if (now_ >= study->film.length()) now_ = study->film.length(), is_walking_ = false;
    }
    now_ = std::min(now_, study->film.length());
    return study;
}

float FlapView::strip_width(const Ui& ui, float height) { return height + ui.px(strip_controls + 12.0F); }

void FlapView::play_strip(Ui& ui, const Box& box, const FlapViewLook& look)
{
    const FlapStudy* study = go_on(ui, look.door, look);
    Box rest = box;
    draw_section(ui, cut_left(rest, std::min(box.height(), std::max(box.width() - ui.px(strip_controls + 12.0F), box.width() * 0.3F))), look, look.door, study, now_, heading_ == mechanics::Heading::into_room);
    cut_left(rest, ui.px(12.0F));
    ui.open_panel("strip-flap", rest, 0.0F, true);
    controls(ui, "strip-flap", look, study);
    if (!look.can_pass) aside(ui, say("Without a slit nobody gets through."));
    else if (study == nullptr) aside(ui, say("Working out how these sheets swing ..."));
    else aside(ui, say_with("Stands open: {}", opening_text(open_now(*study, now_))));
    ui.close_panel();
}

void FlapView::play(Ui& ui, const Box& box, const FlapViewLook& look)
{
    mechanics::FlapDoor door = look.door;
    if (look.offers_variants) variants[variant_].change(door);
    const FlapStudy* taught = films_.find(site::careful_door, heading_);
    const FlapStudy* study = go_on(ui, door, look);

    ui.open_panel("flap-view", box, 0.0F, true);
    if (look.offers_variants) {
        float x = 0.0F;
        for (std::size_t i = 0; i < variants.size(); ++i) {
            const std::string_view label = say(variants[i].label);
            const float width = ui.canvas().measure(label, TextStyle::body).x + ui.px(32.0F);
            if (i > 0 && x + ui.px(8.0F) + width <= box.width()) ui.beside(), x += ui.px(8.0F);
            else x = 0.0F;
            x += width;
            if (button(ui, "flap/variant/" + std::string(variants[i].name), label, {.is_on = variant_ == i})) variant_ = i, now_ = {}, is_walking_ = false;
        }
    }
    const float width = ui.width_left();
    const bool is_broad = width >= ui.px(560.0F);
    const bool is_triple = width >= ui.px(780.0F); // section, chart and figures beside each other
    const float height = std::max(ui.px(is_triple ? 200.0F : is_broad ? 340.0F : 230.0F), std::min(box.high.y - ui.cursor().y - ui.px(is_broad ? 64.0F : 450.0F), ui.px(460.0F)));
    const Box whole = ui.place({width, height});
    Box rest = whole;
    const Box section = is_broad ? cut_left(rest, std::min(height * 1.05F, width * 0.5F)) : rest;
    draw_section(ui, section, look, door, study, now_, heading_ == mechanics::Heading::into_room);
    Box side = rest;
    if (!is_broad) side = ui.place({width, ui.px(360.0F)});
    else cut_left(side, ui.px(14.0F));
    if (!look.can_pass)
        ui.canvas().text_wrapped(side.low, side.width(), say("Without a slit nobody gets through."), TextStyle::body, ui.theme().ink);
    else if (study == nullptr)
        ui.canvas().text_wrapped(side.low, side.width(), say("Working out how these sheets swing ..."), TextStyle::body, ui.theme().muted);
    else {
        const std::string head{say("How far the door stands open while somebody walks through")};
        side.low.y += ui.canvas().text_wrapped(side.low, side.width(), head, TextStyle::small, ui.theme().ink) + ui.px(2.0F);
        const float figures = ui.px(150.0F);
        Box figures_box = side;
        if (is_triple) {
            Box right = cut_right(side, side.width() * 0.46F);
            cut_right(side, ui.px(14.0F));
            figures_box = right;
        }
        Box chart = side;
        chart.high.y = std::max(side.low.y + ui.px(96.0F), side.high.y - (is_triple ? 0.0F : figures) - ui.px(40.0F));
        draw_chart(ui, chart, *study, taught, now_);
        draw_key(ui, {{side.low.x + ui.px(44.0F), chart.high.y}, {side.high.x, chart.high.y + ui.px(40.0F)}});
        draw_figures(ui, is_triple ? figures_box : Box{{side.low.x, chart.high.y + ui.px(42.0F)}, side.high}, figures_of(*study, taught));
    }
    controls(ui, "flap", look, study);
    if (study != nullptr && study->film.swing.has_torn_loose)
        mark(ui, Standing::caution, say("The first to walk through tears the sheet from its tape."));
    ui.close_panel();
}

}
