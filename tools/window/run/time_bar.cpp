#include "window/run/time_bar.hpp"

#include "window/widgets/button.hpp"
#include "window/widgets/choice.hpp"
#include "window/widgets/panel.hpp"
#include "window/widgets/scrubber.hpp"
#include "text/language.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace flapdoor::window {

namespace {

constexpr double arrow_step = 30.0; // s of one arrow key

std::vector<ScrubberMark> marks_of(const Story& story, Time now)
{
    std::vector<ScrubberMark> marks;
    for (std::size_t i = 0; i < story.report.steps.size(); ++i) {
        const debrief::StepLine& step = story.report.steps[i];
        marks.push_back(
            {(step.start - story.start).si, false, fmt::format("{}  {}. {}", day_time_text(step.start.si), step.number, step.title)});
    }
    const std::size_t happened = story.happened_by(now);
    for (std::size_t i = 0; i < story.happenings.size(); ++i) {
        const double at = (story.happenings[i].at - story.start).si;
        const bool is_known = i < happened; // what is still to come shows its place, not its name
        const std::string label = is_known ? text::say_with("{}  Fault {}: {}", day_time_text(story.happenings[i].at.si),
                                                         story.report.faults[story.happenings[i].fault].number,
                                                         text::say(story.report.faults[story.happenings[i].fault].rule.says))
                                           : text::say_with("{}  a fault", day_time_text(story.happenings[i].at.si));
        if (!marks.empty() && marks.back().is_fault && marks.back().seconds == at) continue; // one flag a moment
        marks.push_back({at, true, label});
    }
    return marks;
}

void label(Ui& ui, std::string_view text, float width)
{
    const Box box = ui.place({ui.px(width), ui.px(40.0F)});
    ui.canvas().text_in(box, text, TextStyle::small, ui.theme().ink, Align::center);
    ui.note({fmt::format("label/{}", text), Role::text, std::string(text), {}, box});
    ui.beside(0.0F);
}

void speed_choice(Ui& ui, bool is_roomy, Playback& playback)
{
    std::size_t chosen = playback.speed();
    if (!is_roomy) {
        const std::string text = fmt::format("\xC3\x97{}", playing_speeds[chosen]);
        if (button(ui, "speed", text, {.width = 76.0F, .hint = text::say("Speed: times faster than the clock (S)")}))
            playback.set_speed((chosen + 1) % playing_speeds.size());
        return;
    }
    std::vector<Option> options;
    for (const int speed : playing_speeds)
        options.push_back({fmt::format("{}", speed), fmt::format("\xC3\x97{}", speed), Icon::none, std::string(text::say("Times faster than the clock (S)"))});
    if (choice_row(ui, "speed", options, chosen)) playback.set_speed(chosen);
}

void controls(Ui& ui, bool is_roomy, const Story& story, Playback& playback)
{
    const std::size_t card = story.card_at(playback.now());
    const std::size_t faults = story.broken_by(playback.now());
    if (is_roomy) {
        if (button(ui, "to-start", "", {.icon = Icon::to_start, .hint = text::say("Back to the start (Home)")})) playback.go_to(story.start);
        ui.beside(6.0F);
    }
    const bool is_playing = playback.is_playing();
    if (button(ui, "play", "",
               {.emphasis = Emphasis::primary,
                .icon = is_playing ? Icon::pause : Icon::play,
                .width = is_roomy ? 64.0F : 44.0F,
                .hint = is_playing ? text::say("Pause (Space)") : text::say("Play (Space)")}))
        playback.play_or_pause();
    ui.beside(is_roomy ? 22.0F : 6.0F);
    if (button(ui, "card-before", "", {.emphasis = Emphasis::quiet, .icon = Icon::back, .hint = text::say("Card before (Page Up)")}))
        playback.to_card(-1);
    ui.beside(0.0F);
    const std::size_t cards = story.report.steps.size();
    const std::size_t number = cards == 0 ? 0 : card + 1;
    label(ui, is_roomy ? text::say_with("card {} of {}", number, cards) : fmt::format("{}/{}", number, cards), is_roomy ? 108.0F : 52.0F);
    if (button(ui, "card-after", "", {.emphasis = Emphasis::quiet, .icon = Icon::forward, .hint = text::say("Next card (Page Down)")}))
        playback.to_card(+1);
    ui.beside(is_roomy ? 16.0F : 2.0F);
    if (story.hides_faults) return speed_choice(ui, is_roomy, playback);
    if (button(ui, "fault-before", "", {.emphasis = Emphasis::quiet, .icon = Icon::back, .hint = text::say("Fault before (Shift + F)")}))
        playback.to_fault(-1);
    ui.beside(0.0F);
    label(ui, is_roomy ? text::say_number("{} fault so far", "{} faults so far", faults) : text::say_number("{} fault", "{} faults", faults), is_roomy ? 116.0F : 60.0F);
    if (button(ui, "fault-after", "", {.emphasis = Emphasis::quiet, .icon = Icon::forward, .hint = text::say("Next fault (F)")}))
        playback.to_fault(+1);
    ui.beside(is_roomy ? 16.0F : 2.0F);
    speed_choice(ui, is_roomy, playback);
}

}

void time_bar(Ui& ui, const Box& box, bool is_roomy, const Story& story, Playback& playback)
{
    panel(ui, "time", box, {.is_sheet = false, .can_scroll = false, .padding = 0.0F}, [&] {
        Box rest{{box.low.x + ui.px(14.0F), box.low.y + ui.px(8.0F)}, {box.high.x - ui.px(14.0F), box.high.y}};
        Box row = cut_top(rest, ui.px(40.0F));
        ui.go_to(row.low);
        controls(ui, is_roomy, story, playback);
        const std::string clock = day_time_text(playback.now().si);
        Canvas canvas = ui.canvas();
        const Box at = cut_right(row, canvas.measure(clock, TextStyle::title).x + ui.px(2.0F));
        canvas.text_in(at, clock, TextStyle::title, ui.theme().ink, Align::right);
        ui.note({"clock", Role::text, clock, {}, at});

        ui.go_to({rest.low.x, rest.low.y + ui.px(4.0F)});
        const std::vector<ScrubberMark> marks = marks_of(story, playback.now());
        double seconds = (playback.now() - story.start).si;
        if (scrubber(ui, "day", seconds,
                     {.end = std::max(story.length().si, 60.0), // there is no bar without a length
                      .step = arrow_step,
                      .marks = marks,
                      .width = rest.width() / ui.text_scale(),
                      .label = text::say("Time of day"),
                      .day_time_at_start = story.start.si}))
            playback.go_to(story.start + Time{seconds});
    });
}

}
