#include "window/debrief/what_if_panel.hpp"

#include "window/run/phrases.hpp"
#include "window/widgets/button.hpp"
#include "window/widgets/panel.hpp"
#include "window/widgets/words.hpp"

#include "debrief/what_if_line.hpp"
#include "debrief/wording.hpp"
#include "text/language.hpp"
#include "text/show.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace flapdoor::window {

namespace {

using debrief::WhatIf;
using text::say;
using text::say_with;

void draw_progress(Ui& ui, std::size_t done, std::size_t of)
{
    const Theme& t = ui.theme();
    Canvas canvas = ui.canvas();
    const Box line = ui.place({ui.width_left(), ui.px(10.0F)});
    const float share = of > 0 ? static_cast<float>(done) / static_cast<float>(of) : 0.0F;
    canvas.fill_box(line, t.field, ui.px(3.0F));
    canvas.fill_box({line.low, {line.low.x + line.width() * share, line.high.y}}, t.accent, ui.px(3.0F));
    canvas.frame_box(line, t.line, 1.0F, ui.px(3.0F));
}

/// What a mistake is about, in the words of its first rule.
std::string subject_of(const debrief::Report& report, const WhatIf& what_if)
{
    if (what_if.kind == WhatIf::Kind::all_repaired || what_if.rules.empty()) return {};
    const debrief::FaultLine* fault = debrief::find_fault(report.faults, what_if.rules.front());
    return fault == nullptr ? std::string() : debrief::as_sentence(std::string(say(fault->rule.says)));
}

struct Line {
    std::string text;
    TextStyle style;
    Color color;
};

/// Three figures side by side, each below its word.
void draw_cells(Ui& ui, Canvas& canvas, Point low, float width, const debrief::WhatIfLine& line)
{
    const Theme& t = ui.theme();
    const std::array<std::pair<std::string_view, std::string>, 3> cells{{{say("got out"), line.outside.own}, {say("floor"), with_signs(line.floor.own)}, {say("time"), line.took.own}}};
    const float step = width / static_cast<float>(cells.size());
    for (std::size_t i = 0; i < cells.size(); ++i) {
        const float x = low.x + step * static_cast<float>(i);
        const float right = x + step - ui.px(6.0F);
        canvas.text_in({{x, low.y}, {right, low.y + ui.px(20.0F)}}, cells[i].first, TextStyle::small, t.muted);
        const bool fits = canvas.measure(cells[i].second, TextStyle::strong).x <= right - x;
        canvas.text_in({{x, low.y + ui.px(19.0F)}, {right, low.y + ui.px(43.0F)}}, cells[i].second, fits ? TextStyle::strong : TextStyle::small, t.ink);
    }
}

/// The widest cell decides whether three figures stand side by side.
bool has_room_for_cells(const Ui& ui, const Canvas& canvas, float width, const debrief::WhatIfLine& line)
{
    const float step = width / 3.0F - ui.px(6.0F);
    for (const std::string& figure : {line.outside.own, with_signs(line.floor.own), line.took.own})
        if (canvas.measure(figure, TextStyle::small).x > step) return false;
    return true;
}

Touch what_if_row(Ui& ui, const debrief::Report& report, const WhatIf& what_if, const std::string& name)
{
    const Theme& t = ui.theme();
    Canvas canvas = ui.canvas();
    const debrief::WhatIfLine line = debrief::what_if_line(report, what_if);
    const bool did_harm = debrief::did_harm(what_if);
    const float pad = ui.px(14.0F);
    const float width = ui.width_left() - 2.0F * pad;
    std::vector<Line> lines{{line.name, TextStyle::strong, t.ink}};
    if (const std::string subject = subject_of(report, what_if); !subject.empty()) lines.push_back({subject, TextStyle::small, t.ink});
    if (what_if.kind != WhatIf::Kind::all_repaired)
        for (const std::string& told : line.told) lines.push_back({debrief::as_sentence(told), TextStyle::small, t.muted});
    if (!line.doubt.empty()) lines.push_back({line.doubt, TextStyle::small, t.caution});
    const bool has_cells = has_room_for_cells(ui, canvas, width, line);
    std::vector<Line> figures;
    if (!has_cells)
        figures = {{say_with("got out: {}", line.outside.own), TextStyle::body, t.ink}, {say_with("floor: {}", with_signs(line.floor.own)), TextStyle::body, t.ink}, {say_with("time: {}", line.took.own), TextStyle::body, t.ink}};
    float height = ui.px(18.0F) + (has_cells ? ui.px(50.0F) : 0.0F);
    for (const auto* part : {&lines, &figures})
        for (const Line& l : *part) height += canvas.measure_wrapped(width, l.text, l.style).y + ui.px(2.0F);
    const Touch touch = ui.touch({.name = name, .role = Role::row, .label = line.name, .value = line.outside.own, .size = {ui.width_left(), height}, .ring_rounding = 4.0F});
    if (!ui.is_in_view(touch.box)) return touch;
    canvas.fill_box(touch.box, touch.is_hovered ? t.field : t.sheet, ui.px(4.0F));
    canvas.frame_box(touch.box, did_harm ? t.caution : t.hairline, ui.px(1.2F), ui.px(4.0F));
    if (did_harm) canvas.fill_box({touch.box.low, {touch.box.low.x + ui.px(4.0F), touch.box.high.y}}, t.caution, ui.px(2.0F));
    Point at{touch.box.low.x + pad, touch.box.low.y + ui.px(8.0F)};
    for (const Line& l : lines) at.y += canvas.text_wrapped(at, width, l.text, l.style, l.color) + ui.px(2.0F);
    if (has_cells) draw_cells(ui, canvas, at + Point{0.0F, ui.px(4.0F)}, width, line);
    for (const Line& l : figures) at.y += canvas.text_wrapped(at, width, l.text, l.style, l.color) + ui.px(2.0F);
    return touch;
}

void rows_of(Ui& ui, const debrief::Report& report, std::string_view head, WhatIf::Kind kind, std::string_view prefix, WhatIfPress& press)
{
    std::vector<const WhatIf*> rows;
    if (kind == WhatIf::Kind::repaired) rows = debrief::costliest(*report.what_ifs);
    for (const WhatIf& what_if : report.what_ifs->list)
        if (what_if.kind == kind && kind != WhatIf::Kind::repaired) rows.push_back(&what_if);
    if (rows.empty()) return;
    if (!head.empty()) strong(ui, head);
    for (std::size_t i = 0; i < rows.size(); ++i)
        if (what_if_row(ui, report, *rows[i], fmt::format("{}-{}", prefix, i + 1)).is_clicked && !rows[i]->rules.empty()) press.shown_rule = rows[i]->rules.front();
}

void told(Ui& ui, const debrief::Report& report, WhatIfPress& press)
{
    strong(ui, say("What each mistake added"));
    aside(ui, say("The same day with one mistake repaired at a time, with the same luck; + is more because of the mistake. Of one run: told as it came out, no measured level."));
    aside(ui, say(model_caution));
    rows_of(ui, report, {}, WhatIf::Kind::all_repaired, "what-if-all", press);
    rows_of(ui, report, {}, WhatIf::Kind::repaired, "what-if", press);
    for (const debrief::NoRepair& none : report.what_ifs->none) {
        const debrief::FaultLine* fault = debrief::find_fault(report.faults, none.rule);
        aside(ui, say_with("Not repaired: fault {}: {}.", fault != nullptr ? std::to_string(fault->number) : none.rule, say(none.why)));
    }
    rule(ui);
    rows_of(ui, report, say("The same mistakes, each alone in the careful plan"), WhatIf::Kind::put_in, "what-if-alone", press);
}

}

WhatIfPress what_if_panel(Ui& ui, const Box& box, WhatIfJob& job, bool has_faults)
{
    WhatIfPress press;
    panel(ui, "what-ifs", box, {.padding = 12.0F}, [&] {
        if (const debrief::Report* report = job.report()) return told(ui, *report, press);
        strong(ui, say("What did each mistake do?"));
        if (!has_faults) return words(ui, say("This run breaks no rule: there is nothing to repair."));
        words(ui, say("The same day is carried out again with one mistake repaired at a time and the same luck. The difference is what the mistake did."));
        aside(ui, say(model_caution));
        ui.gap(6.0F);
        if (!job.is_under_way()) {
            press.is_asked = button(ui, "what-if/ask", say("Work it out"), {.emphasis = Emphasis::primary, .width = -1.0F, .hint = say("It takes a minute or so; the window goes on meanwhile")});
            return;
        }
        words(ui, job.of() == 0 ? std::string(say("The run itself is carried out first ...")) : say_with("{} of {} runs carried out", job.done(), job.of()));
        draw_progress(ui, job.done(), job.of());
        press.is_stopped = button(ui, "what-if/stop", say("Stop it"), {});
    });
    return press;
}

}
