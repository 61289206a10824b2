#include "window/run/fault_place.hpp"
#include "window/run/fault_sign.hpp"
#include "window/run/sheets.hpp"
#include "window/stage/icon.hpp"
#include "window/widgets/panel.hpp"
#include "window/widgets/words.hpp"

#include "debrief/wording.hpp"
#include "rules/telling.hpp"
#include "text/language.hpp"
#include "text/show.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <tuple>

namespace flapdoor::window {

namespace {

/// A broken rule with the times at which it was broken up to now.
struct Shown {
    std::size_t fault = 0;
    std::vector<const Happening*> times;
};

/// The rule broken last comes first; rules broken at one time stand in the order of the marking sheet.
std::vector<Shown> shown_by(const Story& story, Time now)
{
    std::vector<Shown> shown;
    const std::size_t count = story.happened_by(now);
    for (std::size_t i = 0; i < count; ++i) {
        const Happening& happening = story.happenings[i];
        const auto same = std::find_if(shown.begin(), shown.end(), [&](const Shown& s) { return s.fault == happening.fault; });
        if (same != shown.end())
            same->times.push_back(&happening);
        else
            shown.push_back({happening.fault, {&happening}});
    }
    std::stable_sort(shown.begin(), shown.end(), [](const Shown& a, const Shown& b) {
        return std::tuple(-a.times.back()->at.si, a.fault) < std::tuple(-b.times.back()->at.si, b.fault);
    });
    return shown;
}

/// What weighs, with "critical" before it where it is.
std::string rank_text(const debrief::FaultLine& fault, std::string rank) { return fault.rule.is_critical ? text::say_with("critical, {}", rank) : rank; }

std::string kind_text(const debrief::FaultLine& fault)
{
    switch (fault.kind) {
        case debrief::FaultKind::order:
        case debrief::FaultKind::line:
            return rank_text(fault, fault.rule.lost.count > 0 ? text::say_with("{}, weight {}, {} lost", debrief::title_of(fault.rule.weight_class), fault.rule.weight, points_text(fault.rule.lost))
                                                              : text::say_with("{}, weight {}", debrief::title_of(fault.rule.weight_class), fault.rule.weight));
        case debrief::FaultKind::consequence:
            return rank_text(fault, std::string(text::say("follows from another fault, not weighed again")));
        case debrief::FaultKind::advice:
            return std::string(text::say("advice, not weighed"));
    }
    return {};
}

/// Goes to the first time the rule was broken; from there to the next one, and from the last to the first again.
void show_me(const Story& story, const Shown& shown, ScreenState& state, Playback& playback)
{
    const auto here = std::find_if(shown.times.begin(), shown.times.end(), [&](const Happening* h) { return h->at == playback.now(); });
    const bool goes_on = state.shown_place && state.shown_place->fault == shown.fault && here != shown.times.end() && here + 1 != shown.times.end();
    const Happening& happening = goes_on ? **(here + 1) : *shown.times.front();
    playback.pause();
    playback.go_to(happening.at);
    state.shown_place.reset();
    if (state.mode == PlanMode::swipe) state.mode = PlanMode::plan;
    if (const auto place = place_of(story, happening)) state.shown_place = ShownPlace{*place, shown.fault, playback.now()};
}

void draw_fault(Ui& ui, const Story& story, const Shown& shown, ScreenState& state, Playback& playback)
{
    const Theme& t = ui.theme();
    const debrief::FaultLine& fault = story.report.faults[shown.fault];
    struct Line {
        std::string text;
        TextStyle style;
        Color color;
        float indent;
    };
    std::vector<Line> lines{{debrief::as_sentence(std::string(text::say(fault.rule.says))), TextStyle::strong, t.ink, 0.0F},
                            {kind_text(fault), TextStyle::small, t.muted, 0.0F}};
    for (const Happening* time : shown.times)
        lines.push_back({fmt::format("{}  {}", text::show_clock(time->at), text::as_sentence(time->what.said())), TextStyle::small, t.ink, 0.0F});
    if (!fault.rule.reason.empty()) lines.push_back({text::say_with("Why: {}", text::say(fault.rule.reason)), TextStyle::small, t.ink, 0.0F});
    if (!fault.rule.harm.empty()) lines.push_back({text::say_with("What it does: {}", text::say(fault.rule.harm)), TextStyle::small, t.ink, 0.0F});
    if (!fault.rule.cite.empty()) lines.push_back({rules::cited(fault.rule.cite), TextStyle::small, t.caution, 0.0F});

    Canvas canvas = ui.canvas();
    const float left = ui.px(46.0F);
    const float width = ui.width_left() - left - ui.px(12.0F);
    const std::string show{text::say("Show me")};
    float height = ui.px(46.0F);
    for (const Line& line : lines) height += canvas.measure_wrapped(width, line.text, line.style).y + ui.px(3.0F);
    const Touch touch = ui.touch({.name = fmt::format("fault-{}", fault.number),
                                  .role = Role::row,
                                  .label = std::string(text::say(fault.rule.says)),
                                  .value = rules::cited(fault.rule.cite),
                                  .size = {ui.width_left(), height},
                                  .ring_rounding = 4.0F});
    const Box box = touch.box;
    if (touch.is_clicked) show_me(story, shown, state, playback);
    if (!ui.is_in_view(box)) return;
    canvas.fill_box(box, touch.is_hovered ? t.field : t.sheet, ui.px(4.0F));
    canvas.frame_box(box, fault.is_weighed() ? t.caution : t.hairline, ui.px(1.2F), ui.px(4.0F));
    if (fault.is_weighed()) canvas.fill_box({box.low, {box.low.x + ui.px(4.0F), box.high.y}}, t.caution, ui.px(2.0F));
    draw_fault_sign(canvas, ui, {box.low.x + ui.px(25.0F), box.low.y + ui.px(24.0F)}, ui.px(12.0F), fault);
    float y = box.low.y + ui.px(10.0F);
    for (const Line& line : lines) y += canvas.text_wrapped({box.low.x + left, y}, width, line.text, line.style, line.color) + ui.px(3.0F);
    draw_icon(canvas, Icon::eye, {box.low.x + left + ui.px(9.0F), y + ui.px(12.0F)}, ui.px(18.0F), t.accent, t.sheet);
    canvas.text({box.low.x + left + ui.px(26.0F), y + ui.px(2.0F)}, show, TextStyle::small, t.accent);
}

}

void faults_sheet(Ui& ui, const Box& box, const Story& story, const Moment& moment, ScreenState& state, Playback& playback)
{
    panel(ui, "faults", box, {.padding = 12.0F}, [&] {
        const std::vector<Shown> shown = shown_by(story, moment.at);
        const std::size_t later = story.report.faults.size() - shown.size();
        strong(ui, shown.empty() ? std::string(text::say("No rule broken so far")) : text::say_number("{} rule broken so far", "{} rules broken so far", shown.size()));
        if (later > 0)
            aside(ui, text::say_number("{} will show when the run comes to it. F goes to the next one.", "{} will show when the run comes to them. F goes to the next one.", later));
        else if (story.report.faults.empty())
            aside(ui, text::say("This run breaks none."));
        for (const Shown& fault : shown) draw_fault(ui, story, fault, state, playback);
    });
}

}
