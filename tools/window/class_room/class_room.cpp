#include "window/class_room/class_room.hpp"

#include "window/drawing/legend.hpp"
#include "window/run/phrases.hpp"
#include "window/run/plan_part.hpp"
#include "window/run/site_plan.hpp"
#include "window/widgets/button.hpp"
#include "window/widgets/choice.hpp"
#include "window/widgets/panel.hpp"
#include "window/widgets/scrubber.hpp"
#include "window/widgets/words.hpp"

#include "text/language.hpp"
#include "text/show.hpp"

#include <algorithm>
#include <array>

namespace flapdoor::window {

namespace {

using text::say;
using text::say_with;

std::string legend_unit(ViewKind view) { return std::string(view == ViewKind::airborne ? air_unit : loading_unit); }

}

ClassRoom::ClassRoom(std::shared_ptr<const Story> played, debrief::Inputs careful, std::uint64_t seed)
    : played_(std::move(played)), careful_(std::move(careful), seed), playback_(*played_)
{
}

void ClassRoom::ask_next()
{
    playback_.pause();
    const std::shared_ptr<const Story>& careful = careful_.story();
    wants_next_ = careful == nullptr;
    if (careful != nullptr) question_ = what_next(*played_, *careful, playback_.now());
}

void ClassRoom::ask_where()
{
    playback_.pause();
    question_ = where_will_it_go(*played_, playback_.now());
}

void ClassRoom::plan(Ui& ui, const Box& box, bool keeps_still)
{
    panel(ui, "class-plan", box, {.can_scroll = false, .padding = 0.0F}, [&] {
        Box rest = box;
        const bool has_room = box.height() > ui.px(330.0F);
        Box head = cut_top(rest, ui.px(42.0F));
        ui.go_to(head.low);
        const std::array<Option, 3> views{{{"there", std::string(say("There"))}, {"seen", std::string(say("Seen"))}, {"air", std::string(say("In the air"))}}};
        auto chosen = static_cast<std::size_t>(view_);
        if (choice_row(ui, "class-view", views, chosen)) view_ = static_cast<ViewKind>(chosen);
        Box foot = has_room && view_ != ViewKind::seen ? cut_bottom(rest, ui.px(84.0F)) : cut_bottom(rest, 0.0F);
        const Moment moment = moment_of(*played_, playback_.now(), !keeps_still);
        const PaperView view = comfortable_view(near_part(played_->inputs.scenario, has_room ? room_for_measures : 0.15), whole_plan(played_->inputs.scenario), rest, ui.px(8.0F));
        {
            Board board{ui.canvas(), view, ui};
            const auto clip = board.canvas.clipped_to(rest);
            static const std::vector<PictureId> none;
            const std::vector<PictureId>& pictures = view_ == ViewKind::airborne ? none : dust_.of(ui.pictures(), *played_, moment.frame, view_, grain_color);
            draw_site(board, *played_, moment, {rest, view_, !keeps_still}, pictures);
        }
        Canvas canvas = ui.canvas();
        if (foot.height() > 1.0F) {
            canvas.line(foot.low, {foot.high.x, foot.low.y}, ui.theme().ink, ui.px(1.0F));
            const bool is_air = view_ == ViewKind::airborne;
            const std::string unit = legend_unit(view_);
            draw_legend(canvas, ui, foot.low + Point{ui.px(12.0F), ui.px(5.0F)}, std::min(foot.width() - ui.px(24.0F), ui.px(440.0F)), is_air ? air_scale : floor_scale, dust_ramp,
                        {is_air ? say("Lead in the air") : say("Lead lying there"), unit, say(model_caution)});
        }
        else {
            const Point size = canvas.measure(say(model_caution), TextStyle::small);
            if (size.x + ui.px(24.0F) < rest.width()) draw_label(canvas, ui, {rest.high.x - size.x * 0.5F - ui.px(12.0F), rest.high.y - ui.px(16.0F)}, say(model_caution));
        }
        canvas.frame_box(box, ui.theme().ink, ui.px(1.2F), ui.px(2.0F));
    });
}

void ClassRoom::ask(Ui& ui, const Box& box)
{
    panel(ui, "class-ask", box, {.padding = 16.0F}, [&] {
        const Moment moment = moment_of(*played_, playback_.now(), false);
        const debrief::StepLine& step = played_->report.steps[moment.card];
        aside(ui, say_with("Card {} of {}", step.number, played_->report.steps.size()));
        title(ui, say(step.title));
        if (!played_->words[moment.card].detail.empty()) words(ui, played_->words[moment.card].detail.said());
        rule(ui);
        strong(ui, say("Freeze and ask the class"));
        if (button(ui, "ask-next", say("What next?"), {.emphasis = Emphasis::primary, .icon = Icon::people, .width = -1.0F, .hint = say("Which cards may come next (N)")})) ask_next();
        if (button(ui, "ask-where", say("Where will it go?"), {.icon = Icon::dust, .width = -1.0F, .hint = say("Which rooms gain lead (W)")})) ask_where();
        if (wants_next_) aside(ui, say("The careful run is being carried out; the question comes in a moment ..."));
        if (question_ || !playback_.is_at_end()) return;
        rule(ui);
        words(ui, say("The run is over."));
        if (button(ui, "class-debrief", say("To the debrief"), {.icon = Icon::forward, .width = -1.0F})) wants_debrief_ = true;
    });
}

void ClassRoom::bar(Ui& ui, const Box& box)
{
    panel(ui, "class-time", box, {.is_sheet = false, .can_scroll = false, .padding = 0.0F}, [&] {
        Box rest = box;
        ui.go_to(rest.low);
        const bool is_playing = playback_.is_playing();
        if (button(ui, "class-play", "",
                   {.emphasis = Emphasis::primary, .icon = is_playing ? Icon::pause : Icon::play, .width = 64.0F, .hint = is_playing ? say("Pause (Space)") : say("Play (Space)")})) playback_.play_or_pause();
        ui.beside(6.0F);
        if (button(ui, "class-before", "", {.emphasis = Emphasis::quiet, .icon = Icon::back, .hint = say("Card before (Page Up)")})) playback_.to_card(-1);
        ui.beside(0.0F);
        if (button(ui, "class-after", "", {.emphasis = Emphasis::quiet, .icon = Icon::forward, .hint = say("Next card (Page Down)")})) playback_.to_card(+1);
        ui.beside(6.0F);
        const std::string speed = say_with("\xC3\x97{}", playing_speeds[playback_.speed()]);
        if (button(ui, "class-speed", speed, {.width = 84.0F, .hint = say("Speed: times faster than the clock (S)")})) playback_.set_speed((playback_.speed() + 1) % playing_speeds.size());
        Canvas canvas = ui.canvas();
        const std::string clock = day_time_text(playback_.now().si);
        const Box at{{rest.high.x - canvas.measure(clock, TextStyle::title).x, rest.low.y}, {rest.high.x, rest.low.y + ui.px(40.0F)}};
        canvas.text_in(at, clock, TextStyle::title, ui.theme().ink, Align::right);
        ui.note({"class-clock", Role::text, clock, {}, at});
        ui.go_to({rest.low.x, rest.low.y + ui.px(44.0F)});
        double seconds = (playback_.now() - played_->start).si;
        if (scrubber(ui, "class-day", seconds, {.end = played_->length().si, .step = 30.0, .width = rest.width() / ui.text_scale(), .label = say("Time of day"), .day_time_at_start = played_->start.si}))
            playback_.go_to(played_->start + Time{seconds});
    });
}

void ClassRoom::take_keys(Ui& ui)
{
    const bool is_frozen = question_ && !question_->is_revealed;
    if (is_frozen) return;
    if (ui.shortcut(Key::space)) question_.reset(), playback_.play_or_pause();
    while (ui.shortcut(Key::page_down)) playback_.to_card(+1), question_.reset();
    while (ui.shortcut(Key::page_up)) playback_.to_card(-1), question_.reset();
    if (ui.shortcut(Key::s)) playback_.set_speed((playback_.speed() + 1) % playing_speeds.size());
    if (ui.shortcut(Key::n)) ask_next();
    if (ui.shortcut(Key::w)) ask_where();
}

void ClassRoom::play(Ui& ui, const Box& box, bool keeps_still)
{
    playback_.advance(ui.input().seconds);
    careful_.story();
    if (wants_next_ && careful_.story() != nullptr) ask_next();
    Box rest = box;
    // While a question is asked the day stands still: its bar makes room for the answers.
    const bool is_asking = question_.has_value();
    const Box time = cut_bottom(rest, is_asking ? 0.0F : ui.px(96.0F));
    if (!is_asking) cut_bottom(rest, ui.px(8.0F));
    const bool is_wide = box.width() >= ui.px(720.0F);
    const float least_sheet = ui.px(is_asking ? 470.0F : 330.0F);
    Box side = is_wide ? cut_right(rest, std::clamp(least_sheet, box.width() * 0.36F, box.width() * 0.58F)) : cut_bottom(rest, rest.height() * 0.62F);
    if (is_wide) cut_right(rest, ui.px(10.0F));
    else cut_bottom(rest, ui.px(8.0F));
    plan(ui, rest, keeps_still);
    if (question_) {
        switch (sheet_.play(ui, side, *question_)) {
            case VotePress::reveal: question_->is_revealed = true; break;
            case VotePress::play_on:
                question_.reset();
                playback_.play_or_pause();
                break;
            case VotePress::none: break;
        }
    }
    else {
        ask(ui, side);
        bar(ui, time);
    }
    take_keys(ui);
}

}
