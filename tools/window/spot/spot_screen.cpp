#include "window/run/phrases.hpp"
#include "window/run/plan_panel.hpp"
#include "window/run/playback.hpp"
#include "window/run/screen_state.hpp"
#include "window/run/section_panel.hpp"
#include "window/run/time_bar.hpp"
#include "window/shell/masthead.hpp"
#include "window/shell/screens.hpp"
#include "window/shell/side_job.hpp"
#include "window/spot/spotting.hpp"
#include "window/widgets/button.hpp"
#include "window/widgets/panel.hpp"

#include "debrief/wording.hpp"
#include "text/show.hpp"

namespace flapdoor::window {

namespace {

using text::say;
using text::say_with;
using text::to_say;


/// A hurried crew is watched; moments are marked at which something goes wrong; the end tells which did.
class SpotScreen final : public Screen {
public:
    SpotScreen(Shell& shell, Sitting sitting) : shell_(shell), sitting_(std::move(sitting))
    {
        const debrief::Inputs& careful = sitting_.drill->careful;
        Result<debrief::Inputs> faulty = failed(Problems{});
        if (!sitting_.drill->faulty.empty())
            faulty = debrief::read_inputs(careful.scenario_text.name, sitting_.drill->faulty.front().string(), {careful.book_text.name});
        if (faulty) job_ = std::make_unique<SideJob>(std::move(*faulty), sitting_.seed);
        else problems_ = faulty.error();
    }

    void play(Ui& ui) override
    {
        static_cast<Settings&>(state_) = shell_.settings();
        if (job_)
            if (auto story = job_->take()) begin(std::move(*story));
        const Layout layout = lay_out(ui.screen(), ui.text_scale());
        Masthead head{.title = std::string(say(sitting_.drill->careful.scenario.title)),
                      .lines = {std::string(say("Spot the fault: mark the moments at which something goes wrong"))},
                      .mark = score_ ? say_with("{} of {} spotted", score_->spotted, score_->sightings.size()) : text::say_number("{} mark", "{} marks", marks_.size()),
                      .caution = say(model_caution),
                      .has_way_back = true,
                      .back_hint = say("Back (Esc)")};
        if (masthead(ui, layout.header, head, shell_.settings())) shell_.go_to(start_screen(shell_));
        if (story_) watch(ui, layout);
        else wait(ui, layout);
        take_keys_of_all_screens(ui, shell_.settings());
        if (!shell_.settings().shows_help && ui.shortcut(Key::escape)) shell_.go_to(start_screen(shell_));
    }

    bool is_moving() const override { return job_ != nullptr || (playback_ && playback_->is_playing()); }

    std::vector<KeyLine> keys() const override
    {
        return {{to_say("F, Enter"), to_say("mark this moment")},
                {to_say("Space"), to_say("pause, go on")},
                {"\xE2\x86\x90  \xE2\x86\x92", to_say("half a minute back, forward")},
                {to_say("S"), to_say("next speed")},
                {to_say("1, 2, 3"), to_say("what is there, what you could see, in the air")},
                {to_say("L"), to_say("the flashlight on or off; arrow keys move it while it has the focus")},
                {to_say("W, Shift + W"), to_say("below the plan: section, the four walls, the flap door")},
                {to_say("Esc"), to_say("back")}};
    }

private:
    void begin(Story story)
    {
        job_.reset();
        story_ = std::make_shared<Story>(std::move(story));
        happenings_ = std::exchange(story_->happenings, {}); // nothing is told before the end
        story_->hides_faults = true;
        playback_.emplace(*story_);
        playback_->set_speed(calm_speed);
    }

    void wait(Ui& ui, const Layout& layout)
    {
        const Box box{{layout.plan.low.x, layout.plan.low.y}, {layout.header.high.x - ui.px(14.0F), ui.screen().high.y - ui.px(14.0F)}};
        panel(ui, "spot-wait", box, {.padding = 24.0F}, [&] {
            if (job_) {
                strong(ui, say("The hurried crew is at work."));
                words(ui, text::say_number("{} card carried out", "{} cards carried out", job_->cards_done()));
                return;
            }
            strong(ui, say("There is no faulty plan of this drill to watch."));
            for (const Problem& problem : problems_) words(ui, describe(problem));
        });
    }

    void watch(Ui& ui, const Layout& layout)
    {
        playback_->advance(ui.input().seconds);
        const Moment moment = moment_of(*story_, playback_->now(), !state_.keeps_still);
        if (layout.is_wide) plan_panel(ui, layout.plan, true, *story_, moment, state_);
        if (layout.is_tall) section_panel(ui, layout.section, *story_, moment, state_);
        Box sheet = layout.sheet;
        sheet.low.y = layout.tabs.low.y;
        panel(ui, "spot", sheet, {.padding = 16.0F}, [&] { score_ ? result(ui) : marking(ui, moment); });
        time_bar(ui, layout.time, layout.is_roomy, *story_, *playback_);
        if (!score_ && (ui.shortcut(Key::f) || ui.shortcut(Key::enter))) mark_now();
        if (ui.shortcut(Key::space)) playback_->play_or_pause();
        while (ui.shortcut(Key::right)) playback_->step_by(30.0_s);
        while (ui.shortcut(Key::left)) playback_->step_by(Time{-30.0});
        if (ui.shortcut(Key::s)) playback_->set_speed((playback_->speed() + 1) % playing_speeds.size());
        if (ui.shortcut(Key::digit_1)) state_.view = ViewKind::there;
        if (ui.shortcut(Key::digit_2)) state_.view = ViewKind::seen;
        if (ui.shortcut(Key::digit_3)) state_.view = ViewKind::airborne;
    }

    void mark_now()
    {
        marks_.push_back(playback_->now());
    }

    void marking(Ui& ui, const Moment& moment)
    {
        if (!story_->report.steps.empty()) {
            const debrief::StepLine& step = story_->report.steps[moment.card];
            aside(ui, moment.at > step.end ? say("Done just now") : say("Being done now"));
            strong(ui, say(step.title));
            const CardWords& more = story_->words[moment.card];
            aside(ui, more.detail.empty() ? more.crew : more.crew + "  \xC2\xB7  " + more.detail.said());
        }
        ui.gap(6.0F);
        if (button(ui, "mark", say("Something is wrong now"), {.emphasis = Emphasis::primary, .icon = Icon::caution, .width = -1.0F, .hint = say("F or Enter")})) mark_now();
        rule(ui);
        strong(ui, say("Your marks"));
        if (marks_.empty()) words(ui, say("None yet. Play the day and mark what goes wrong: a step too early, something left out, the wrong tool."));
        for (std::size_t i = 0; i < marks_.size(); ++i) {
            const std::string clock = text::show_clock(marks_[i]);
            if (button(ui, "mark-" + std::to_string(i), clock, {.hint = say("Go there")})) playback_->go_to(marks_[i]);
            ui.beside(6.0F);
            if (button(ui, "unmark-" + std::to_string(i), "", {.emphasis = Emphasis::quiet, .icon = Icon::cross, .hint = say("Take the mark away")})) {
                marks_.erase(marks_.begin() + static_cast<std::ptrdiff_t>(i));
                break;
            }
        }
        rule(ui);
        if (button(ui, "score", say("That is all: show what went wrong"), {.width = -1.0F})) tell_score();
    }

    void tell_score()
    {
        story_->happenings = std::move(happenings_);
        story_->hides_faults = false;
        score_ = scored(*story_, marks_);
        playback_->pause();
    }

    void result(Ui& ui)
    {
        strong(ui, say_with("{} of {} spotted", score_->spotted, score_->sightings.size()));
        if (score_->idle > 0) words(ui, text::say_number("{} mark where nothing new went wrong", "{} marks where nothing new went wrong", score_->idle));
        aside(ui, say("Faults that cost marks, in the order of the day. Press one to see the moment."));
        for (const Sighting& sighting : score_->sightings) sighting_row(ui, sighting);
        ui.gap(8.0F);
        if (button(ui, "to-debrief", say("To the debrief"), {.emphasis = Emphasis::primary})) shell_.go_to(debrief_screen(shell_, story_, sitting_.drill->careful));
    }

    void sighting_row(Ui& ui, const Sighting& sighting)
    {
        const Theme& t = ui.theme();
        Canvas canvas = ui.canvas();
        const debrief::FaultLine& fault = story_->report.faults[sighting.fault];
        const std::string says = debrief::as_sentence(std::string(say(fault.rule.says))) + ".";
        const std::string_view reason = say(fault.rule.reason);
        const std::string_view verdict = sighting.is_spotted ? say("spotted") : say("missed");
        const float width = ui.width_left() - ui.px(28.0F);
        const float head_height = canvas.measure_wrapped(width, says, TextStyle::strong).y;
        const float reason_height = canvas.measure_wrapped(width, reason, TextStyle::small).y;
        const Touch touch = ui.touch({.name = "sighting-" + std::to_string(fault.number), .role = Role::row, .label = says, .value = verdict, .size = {ui.width_left(), head_height + reason_height + ui.px(52.0F)}, .ring_rounding = 4.0F});
        if (touch.is_clicked) playback_->go_to(sighting.moments.front()), playback_->pause();
        if (!ui.is_in_view(touch.box)) return;
        canvas.fill_box(touch.box, sighting.is_spotted ? t.accent_tint : t.caution_tint, ui.px(4.0F));
        canvas.frame_box(touch.box, sighting.is_spotted ? t.accent : t.caution, ui.px(touch.is_hovered ? 2.0F : 1.2F), ui.px(4.0F));
        Point at = touch.box.low + Point{ui.px(14.0F), ui.px(8.0F)};
        const Box mark = draw_mark(canvas, ui, at, sighting.is_spotted ? Standing::good : Standing::caution, verdict);
        canvas.text_in({{mark.high.x + ui.px(10.0F), mark.low.y}, {touch.box.high.x - ui.px(10.0F), mark.high.y}}, text::show_clock(sighting.moments.front()), TextStyle::small, t.ink);
        at.y = mark.high.y + ui.px(4.0F);
        at.y += canvas.text_wrapped(at, width, says, TextStyle::strong, t.ink);
        canvas.text_wrapped(at, width, reason, TextStyle::small, t.ink);
    }

    Shell& shell_;
    Sitting sitting_;
    Problems problems_;
    std::unique_ptr<SideJob> job_;
    std::shared_ptr<Story> story_;
    std::vector<Happening> happenings_; ///< of the story, until the end
    std::optional<Playback> playback_;
    std::vector<Time> marks_;
    std::optional<SpottingScore> score_;
    ScreenState state_;
};

}

std::unique_ptr<Screen> spot_screen(Shell& shell, Sitting sitting) { return std::make_unique<SpotScreen>(shell, std::move(sitting)); }

}
