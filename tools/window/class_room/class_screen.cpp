#include "window/class_room/class_room.hpp"
#include "window/run/phrases.hpp"
#include "window/run/waiting_screen.hpp"
#include "window/shell/masthead.hpp"
#include "window/shell/screens.hpp"
#include "window/shell/side_job.hpp"
#include "window/widgets/button.hpp"
#include "window/widgets/choice.hpp"
#include "window/widgets/panel.hpp"
#include "window/widgets/words.hpp"

#include <memory>
#include <optional>
#include <vector>

namespace flapdoor::window {

namespace {

using text::say;
using text::say_with;
using text::to_say;

/// A run on the wall: whose is chosen first, then it is carried out, then the class is asked.
class ClassScreen final : public Screen {
public:
    ClassScreen(Shell& shell, Sitting sitting) : shell_(shell), sitting_(std::move(sitting))
    {
        const debrief::Inputs& careful = sitting_.drill->careful;
        for (const std::filesystem::path& plan : sitting_.drill->faulty)
            if (auto faulty = debrief::read_inputs(careful.scenario_text.name, plan.string(), {careful.book_text.name})) crews_.push_back(std::move(*faulty));
        crews_.push_back(careful);
    }

    void play(Ui& ui) override
    {
        if (!is_sized_) { // large type while it lasts
            is_sized_ = true;
            was_projected_ = shell_.settings().is_projected;
            project(ui, shell_.settings(), true);
        }
        if (job_)
            if (auto story = job_->take()) begin(std::move(*story));
        if (job_) return wait(ui);
        Box rest = ui.screen();
        const Masthead head{.title = std::string(say(sitting_.drill->careful.scenario.title)),
                            .lines = {std::string(say("With a class: stop, ask, vote, and look"))},
                            .caution = say(model_caution),
                            .has_way_back = true,
                            .back_hint = say("Back (Esc)")};
        const bool is_back = masthead(ui, cut_top(rest, masthead_height(ui.screen(), ui.text_scale())), head, shell_.settings());
        rest = {{rest.low.x + ui.px(14.0F), rest.low.y + ui.px(10.0F)}, {rest.high.x - ui.px(14.0F), rest.high.y - ui.px(10.0F)}};
        if (room_) lesson(ui, rest);
        else choose(ui, rest);
        take_keys_of_all_screens(ui, shell_.settings());
        if (is_back || (!shell_.settings().shows_help && ui.shortcut(Key::escape))) leave(ui);
    }

    bool is_moving() const override { return job_ != nullptr || (room_ && room_->is_moving()); }

    std::vector<KeyLine> keys() const override
    {
        return {{to_say("Space"), to_say("play, pause")},
                {to_say("N"), to_say("freeze and ask: what next?")},
                {to_say("W"), to_say("freeze and ask: where will it go?")},
                {to_say("1 to 9"), to_say("one more vote for an answer; with Shift one less")},
                {to_say("V"), to_say("vote again after talking it over")},
                {to_say("R"), to_say("reveal")},
                {to_say("Page Up, Page Down"), to_say("card before, next card")},
                {to_say("S"), to_say("next speed")},
                {to_say("Esc"), to_say("take the question away; back")}};
    }

private:
    void choose(Ui& ui, const Box& box)
    {
        const float width = std::min(box.width(), ui.px(720.0F));
        const std::string_view how = say("Play the day and stop it where you like. Ask what may come next, or where the dust will go; count votes by clicking or typing; reveal; play on.");
        const float told = ui.canvas().measure_wrapped(width - ui.px(56.0F), how, TextStyle::body).y;
        const float height = std::min(box.height(), told + ui.px(150.0F + 60.0F * static_cast<float>(crews_.size())));
        panel(ui, "class-crew", box_at({box.center().x - width * 0.5F, box.low.y}, {width, height}), {.padding = 24.0F}, [&] {
            strong(ui, say("Which crew does the class watch?"));
            std::vector<Option> options;
            for (std::size_t i = 0; i < crews_.size(); ++i)
                options.push_back({.name = std::to_string(i),
                                   .label = std::string(say(crews_[i].plan.title)),
                                   .note = std::string(i + 1 == crews_.size() ? say("keeps every rule") : say("breaks rules; the dust shows what comes of it"))});
            std::optional<std::size_t> crew = crew_;
            choose_one(ui, "crew", options, crew);
            crew_ = crew.value_or(crew_);
            ui.gap(8.0F);
            words(ui, how);
            ui.gap(8.0F);
            if (button(ui, "begin", say("Begin"), {.emphasis = Emphasis::primary, .icon = Icon::forward, .width = -1.0F})) job_ = std::make_unique<SideJob>(crews_[crew_], sitting_.seed);
        });
    }

    void wait(Ui& ui)
    {
        seconds_ += static_cast<double>(ui.input().seconds);
        Settings& shared = waiting_;
        shared = shell_.settings();
        waiting_.has_way_back = true;
        waiting_screen(ui, crews_[crew_], sitting_.seed, seconds_, waiting_);
        const bool leaves = std::exchange(shared.wants_to_quit, false);
        shell_.settings() = shared;
        if (leaves) job_.reset(); // to the choice of the crew
    }

    void begin(Story story)
    {
        job_.reset();
        story_ = std::make_shared<const Story>(std::move(story));
        room_ = std::make_unique<ClassRoom>(story_, sitting_.drill->careful, sitting_.seed);
    }

    void lesson(Ui& ui, const Box& box)
    {
        room_->play(ui, box, shell_.settings().keeps_still);
        if (!room_->wants_debrief()) return;
        project(ui, shell_.settings(), was_projected_);
        shell_.go_to(debrief_screen(shell_, story_, sitting_.drill->careful));
    }

    void leave(Ui& ui)
    {
        if (room_ && room_->drop_question()) return;
        if (room_) {
            room_.reset();
            return;
        }
        project(ui, shell_.settings(), was_projected_);
        shell_.go_to(start_screen(shell_));
    }

    Shell& shell_;
    Sitting sitting_;
    std::vector<debrief::Inputs> crews_;    ///< faulty plans first, the careful one last
    std::size_t crew_ = 0;
    std::unique_ptr<SideJob> job_;
    std::shared_ptr<const Story> story_;
    std::unique_ptr<ClassRoom> room_;
    ScreenState waiting_;
    double seconds_ = 0.0;
    bool is_sized_ = false, was_projected_ = false;
};

}

std::unique_ptr<Screen> class_screen(Shell& shell, Sitting sitting) { return std::make_unique<ClassScreen>(shell, std::move(sitting)); }

}
