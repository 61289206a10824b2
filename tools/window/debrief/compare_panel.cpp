#include "window/debrief/compare_panel.hpp"

#include "window/drawing/line_chart.hpp"
#include "window/run/phrases.hpp"
#include "window/run/plan_part.hpp"
#include "window/run/site_plan.hpp"
#include "window/widgets/panel.hpp"
#include "window/widgets/words.hpp"

#include "debrief/wording.hpp"
#include "text/language.hpp"
#include "text/show.hpp"

#include <algorithm>
#include <vector>

namespace flapdoor::window {

namespace {

using text::say;
using text::say_with;

void draw_run(Ui& ui, Box box, const Story& story, Time now, const ScreenState& state, std::string_view title, DustPictures& dust)
{
    const Moment moment = moment_of(story, std::clamp(now, story.start, story.end), !state.keeps_still);
    Canvas canvas = ui.canvas();
    const Theme& t = ui.theme();
    Box head = cut_top(box, ui.px(46.0F));
    canvas.text_in({head.low, {head.high.x, head.low.y + ui.px(24.0F)}}, title, TextStyle::strong, t.ink);
    const debrief::StepLine& step = story.report.steps[moment.card];
    const std::string line = say_with("card {} of {}: {}", step.number, story.report.steps.size(), say(step.title));
    const std::string shorter = say_with("card {} of {}", step.number, story.report.steps.size());
    canvas.text_in({{head.low.x, head.low.y + ui.px(22.0F)}, head.high}, canvas.measure(line, TextStyle::small).x <= head.width() ? line : shorter, TextStyle::small, t.muted);
    const PaperView view = comfortable_view(near_part(story.inputs.scenario), whole_plan(story.inputs.scenario), box, ui.px(8.0F));
    Board board{ui.canvas(), view, ui};
    const auto clip = board.canvas.clipped_to(box);
    static const std::vector<PictureId> none;
    const std::vector<PictureId>& pictures = state.view == ViewKind::airborne ? none : dust.of(ui.pictures(), story, moment.frame, state.view, grain_color);
    draw_site(board, story, moment, {box, state.view, !state.keeps_still}, pictures);
}

double milligrams(Picograms amount) { return std::max(static_cast<double>(amount.count) * 1e-9, 0.0); }

std::vector<ChartPoint> outside_of(const Story& story, Time start)
{
    std::vector<ChartPoint> points;
    for (const drill::Frame& frame : story.film.frames) points.push_back({(frame.at - start).si / 3600.0, milligrams(frame.outside_lead)});
    return points;
}

void draw_outside(Ui& ui, Box box, const Story& own, const Story& other, Time now)
{
    Canvas canvas = ui.canvas();
    const Theme& t = ui.theme();
    const Time start = std::min(own.start, other.start);
    const std::vector<ChartPoint> mine = outside_of(own, start);
    const std::vector<ChartPoint> theirs = outside_of(other, start);
    double most = 1e-6;
    for (const auto* line : {&mine, &theirs})
        for (const ChartPoint& p : *line) most = std::max(most, p.y);
    Box head = cut_top(box, ui.px(22.0F));
    canvas.text_in(head, say("Lead outside the work area"), TextStyle::small, t.ink);
    const std::string_view own_word = say("your run");
    const std::string_view other_word = say("careful run");
    float x = head.high.x - canvas.measure(other_word, TextStyle::small).x;
    canvas.text({x, head.low.y}, other_word, TextStyle::small, t.ink);
    canvas.dashes({x - ui.px(34.0F), head.center().y}, {x - ui.px(6.0F), head.center().y}, t.ink, ui.px(1.6F), ui.px(6.0F), ui.px(4.0F));
    x -= ui.px(50.0F) + canvas.measure(own_word, TextStyle::small).x;
    canvas.text({x, head.low.y}, own_word, TextStyle::small, t.ink);
    canvas.line({x - ui.px(34.0F), head.center().y}, {x - ui.px(6.0F), head.center().y}, t.accent, ui.px(2.4F));
    const ChartLine lines[] = {{mine, true}, {theirs, false}};
    draw_line_chart(ui.canvas(), ui, box, lines,
                    {.x_most = std::max((std::max(own.end, other.end) - start).si / 3600.0, 0.1), .y_most = most * 1.05, .x_unit = "h", .y_unit = "mg", .x_now = (now - start).si / 3600.0});
}

struct PairRow {
    std::string what, own, other;
};

void draw_rows(Ui& ui, const std::vector<PairRow>& rows)
{
    const Theme& t = ui.theme();
    for (const PairRow& row : rows) {
        Canvas canvas = ui.canvas();
        const float width = ui.width_left();
        if (width >= ui.px(560.0F)) { // one line: what, own, the other
            const Box line = ui.place({width, ui.px(24.0F)});
            if (!ui.is_in_view(line)) continue;
            const float third = width * 0.27F;
            canvas.text_in({line.low, {line.high.x - 2.0F * third, line.high.y}}, row.what, TextStyle::small, t.ink);
            canvas.text_in({{line.high.x - 2.0F * third, line.low.y}, {line.high.x - third - ui.px(6.0F), line.high.y}}, row.own, TextStyle::strong, t.ink);
            canvas.text_in({{line.high.x - third, line.low.y}, line.high}, row.other, TextStyle::body, t.ink);
            continue;
        }
        const float words = canvas.measure_wrapped(width, row.what, TextStyle::small).y;
        const Box box = ui.place({width, words + ui.px(28.0F)});
        if (!ui.is_in_view(box)) continue;
        canvas.text_wrapped(box.low, width, row.what, TextStyle::small, t.muted);
        const Box figures{{box.low.x, box.low.y + words}, {box.high.x, box.low.y + words + ui.px(24.0F)}};
        canvas.text_in({figures.low, {figures.center().x - ui.px(4.0F), figures.high.y}}, row.own, TextStyle::strong, t.ink);
        canvas.text_in({{figures.center().x, figures.low.y}, figures.high}, row.other, TextStyle::body, t.ink);
        canvas.line({box.low.x, box.high.y - 0.5F}, {box.high.x, box.high.y - 0.5F}, t.hairline);
    }
}

std::string points(const debrief::Report& report)
{
    return say_with("{} of {}", points_text(rules::whole_points(report.sheet.wanted) - report.sheet.lost), points_text(rules::whole_points(report.sheet.wanted)));
}

}

void ComparePanel::play(Ui& ui, const Box& box, const Story& own, const Story* other, Time now, const ScreenState& state)
{
    panel(ui, "compare", box, {.can_scroll = false, .padding = 0.0F}, [&] {
        Box rest = box.inset(ui.px(12.0F));
        Canvas canvas = ui.canvas();
        const Box chart = cut_bottom(rest, std::min(ui.px(170.0F), rest.height() * 0.34F));
        cut_bottom(rest, ui.px(8.0F));
        const Box left = cut_left(rest, (rest.width() - ui.px(14.0F)) * 0.5F);
        cut_left(rest, ui.px(14.0F));
        canvas.line({rest.low.x - ui.px(7.0F), rest.low.y}, {rest.low.x - ui.px(7.0F), rest.high.y}, ui.theme().ink, ui.px(1.0F));
        draw_run(ui, left, own, now, state, say("Your run"), dust_[0]);
        if (other == nullptr)
            canvas.text_wrapped(rest.low, rest.width(), say("The careful run on the same seed is being carried out ..."), TextStyle::body, ui.theme().muted);
        else {
            draw_run(ui, rest, *other, now, state, say("The careful run, same seed"), dust_[1]);
            draw_outside(ui, chart, own, *other, now);
        }
        canvas.frame_box(box, ui.theme().ink, ui.px(1.2F), ui.px(2.0F));
    });
}

void compare_sheet(Ui& ui, const Box& box, const Story& own, const Story* other, Time now)
{
    panel(ui, "compare-sheet", box, {.padding = 14.0F}, [&] {
        strong(ui, say("Your run beside the careful one"));
        if (other == nullptr) {
            words(ui, say("The careful run on the same seed is being carried out ..."));
            return;
        }
        aside(ui, say("Left your run, right the careful plan on the same seed: the same luck, another order of steps."));
        const auto outside_by = [&](const Story& story) { return moment_of(story, std::clamp(now, story.start, story.end), false).now->outside_lead; };
        const auto loading = [](Loading l) { return with_signs(text::show_short(l)); };
        std::vector<PairRow> rows{
            {std::string(say("Result")), std::string(own.report.sheet.is_passed ? say("passed as practice") : say("not passed")),
             std::string(other->report.sheet.is_passed ? say("passed as practice") : say("not passed"))},
            {std::string(say("Points left")), points(own.report), points(other->report)},
            {std::string(say("Rules broken")), std::to_string(own.report.faults.size()), std::to_string(other->report.faults.size())},
            {std::string(say("Lead outside so far")), text::show(outside_by(own)), text::show(outside_by(*other))},
            {std::string(say("Lead outside at the end")), text::show(own.report.outcome.outside.lead), text::show(other->report.outcome.outside.lead)},
            {std::string(say("Work room floor at the end")), loading(own.report.outcome.floor), loading(other->report.outcome.floor)},
            {std::string(say("Worst sill at the end")), loading(own.report.outcome.sill), loading(other->report.outcome.sill)},
            {std::string(say("Floor beyond the entrance")), loading(own.report.outcome.hall_floor), loading(other->report.outcome.hall_floor)},
            {std::string(say("Time on the job")), text::show(own.report.outcome.took), text::show(other->report.outcome.took)},
        };
        draw_rows(ui, rows);
        aside(ui, debrief::as_sentence(std::string(say(debrief::loading_note))) + ".");
    });
}

}
