#include "window/run/fault_sign.hpp"
#include "window/run/sheets.hpp"
#include "window/widgets/panel.hpp"
#include "window/widgets/words.hpp"

#include "debrief/wording.hpp"
#include "rules/telling.hpp"
#include "text/language.hpp"

#include <fmt/format.h>

namespace flapdoor::window {

namespace {

/// Wanted, lost and left as three figures over one bar.
void draw_total(Ui& ui, const rules::MarkingSheet& sheet)
{
    const Theme& t = ui.theme();
    Canvas canvas = ui.canvas();
    const rules::Quarters wanted = rules::whole_points(sheet.wanted);
    const rules::Quarters left = wanted - sheet.lost;
    const Box box = ui.place({ui.width_left(), ui.px(96.0F)});
    const struct {
        std::string figure;
        std::string_view word;
    } parts[] = {{points_text(wanted), text::say("wanted")},
                 {points_text(sheet.lost), text::say("lost")},
                 {points_text(left), text::say_of("points", "left")},
                 {percent_text(sheet.score), text::say("score")}};
    const float step = box.width() / static_cast<float>(std::size(parts));
    for (std::size_t i = 0; i < std::size(parts); ++i) {
        const float x = box.low.x + step * static_cast<float>(i);
        canvas.text_in({{x, box.low.y}, {x + step - ui.px(6.0F), box.low.y + ui.px(32.0F)}}, parts[i].figure,
                       i + 1 == std::size(parts) ? TextStyle::title : TextStyle::strong, t.ink);
        canvas.text_in({{x, box.low.y + ui.px(30.0F)}, {x + step - ui.px(6.0F), box.low.y + ui.px(52.0F)}}, parts[i].word, TextStyle::small,
                       t.muted);
    }
    const Box bar{{box.low.x, box.low.y + ui.px(60.0F)}, {box.high.x, box.low.y + ui.px(76.0F)}};
    const double share = sheet.wanted > 0 ? static_cast<double>(left.count) / static_cast<double>(wanted.count) : 1.0;
    canvas.fill_box(bar, t.caution_fill);
    canvas.fill_box({bar.low, {bar.low.x + bar.width() * static_cast<float>(share), bar.high.y}}, t.accent);
    canvas.frame_box(bar, t.ink, ui.px(1.0F));
}

void draw_charge(Ui& ui, const debrief::MarkLine& line, const debrief::FaultLine* fault)
{
    const Theme& t = ui.theme();
    Canvas canvas = ui.canvas();
    const float left = ui.px(36.0F);
    const float right = ui.px(58.0F);
    const float width = ui.width_left() - left - right;
    const std::string note = line.cite.empty()
                                 ? text::say_with("{} of {}", debrief::share_of_weight(line.kind), line.weight)
                                 : text::say_with("{} of {} \xC2\xB7 {}", debrief::share_of_weight(line.kind), line.weight, rules::cited(line.cite));
    const float what = canvas.measure_wrapped(width, text::as_sentence(line.what.said()), TextStyle::small).y;
    const float cite = canvas.measure_wrapped(width, note, TextStyle::small).y;
    const Box box = ui.place({ui.width_left(), what + cite + ui.px(10.0F)});
    if (!ui.is_in_view(box)) return;
    if (fault != nullptr) draw_fault_sign(canvas, ui, {box.low.x + ui.px(15.0F), box.low.y + ui.px(16.0F)}, ui.px(10.0F), *fault);
    canvas.text_wrapped({box.low.x + left, box.low.y + ui.px(4.0F)}, width, text::as_sentence(line.what.said()), TextStyle::small, t.ink);
    canvas.text_wrapped({box.low.x + left, box.low.y + ui.px(4.0F) + what}, width, note, TextStyle::small, t.muted);
    canvas.text_in({{box.high.x - right, box.low.y + ui.px(3.0F)}, {box.high.x, box.low.y + ui.px(24.0F)}}, "-" + points_text(line.lost),
                   TextStyle::strong, t.ink, Align::right);
    canvas.line({box.low.x, box.high.y - 0.5F}, {box.high.x, box.high.y - 0.5F}, t.hairline);
}

}

void marks_sheet(Ui& ui, const Box& box, const Story& story)
{
    panel(ui, "marks", box, {.padding = 14.0F}, [&] {
        const debrief::Report& report = story.report;
        mark(ui, report.sheet.is_passed ? Standing::good : Standing::critical,
             report.sheet.is_passed ? text::say("passed as practice") : text::say("not passed"));
        draw_total(ui, report.sheet);
        aside(ui, text::say_with("Marks of the whole run, by the book \"{}\", {}.", text::say(report.sheet.book), text::say(report.sheet.edition)));
        aside(ui, text::say(debrief::score_note));
        if (!report.sheet.critical.empty()) {
            strong(ui, text::say("Not passed because of"));
            for (const std::string& rule : report.sheet.critical)
                if (const debrief::FaultLine* fault = debrief::find_fault(report.faults, rule))
                    aside(ui, fmt::format("{}: {}", fault->number, text::say(fault->rule.says)));
        }
        debrief::MarkKind kind{};
        for (std::size_t i = 0; i < report.marks.size(); ++i) {
            const debrief::MarkLine& line = report.marks[i];
            if (i == 0 || line.kind != kind) strong(ui, debrief::title_of(line.kind));
            kind = line.kind;
            draw_charge(ui, line, line.fault > 0 ? &report.faults[static_cast<std::size_t>(line.fault - 1)] : nullptr);
        }
        if (report.marks.empty()) words(ui, text::say("Nothing was lost."));
    });
}

}
