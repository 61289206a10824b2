#include "window/quiz/quiz_screen.hpp"
#include "window/shell/masthead.hpp"
#include "window/shell/screens.hpp"
#include "window/widgets/panel.hpp"
#include "window/widgets/words.hpp"

#include <chrono>

namespace flapdoor::window {

namespace {

using text::say;
using text::say_with;
using text::to_say;

/// A paper in the shell: the head that all screens have, the questions below it, answers kept after each one.
class SittingScreen final : public Screen {
public:
    SittingScreen(Shell& shell, quiz::Paper paper, quiz::SittingResult sitting, std::filesystem::path file)
        : shell_(shell), title_(paper.title), number_(paper.seed), who_(sitting.person == "-" ? std::string() : sitting.person), is_practice_(paper.feedback == quiz::Feedback::at_once), file_(std::move(file)),
          screen_(std::move(paper), std::move(sitting), [this](const quiz::SittingResult& now) { keep(now); })
    {
    }

    void play(Ui& ui) override
    {
        Box rest = ui.screen();
        const Masthead head{.title = quiz::shown(title_),
                            .lines = {is_practice_ ? say_with("Paper {}, to practice: each answer is told at once", number_) : say_with("Paper {}, as a sitting: nothing is told before the end", number_), say_with("Paper {}", number_)},
                            .mark = screen_.progress(),
                            .has_way_back = true,
                            .back_hint = say("Stop; what you have answered is kept (Esc)")};
        const bool is_back = masthead(ui, cut_top(rest, masthead_height(ui.screen(), ui.text_scale())), head, shell_.settings());
        if (!notice_.empty()) {
            const float height = ui.canvas().measure_wrapped(rest.width() - ui.px(60.0F), notice_, TextStyle::body).y + ui.px(24.0F);
            panel(ui, "sitting-notice", cut_top(rest, height).inset(ui.px(4.0F)), {.can_scroll = false, .padding = 8.0F}, [&] { words(ui, notice_); });
        }
        count_idle_time(static_cast<double>(ui.input().seconds));
        screen_.play(ui, rest);
        take_keys_of_all_screens(ui, shell_.settings());
        if (is_back || screen_.wants_to_quit() || (!shell_.settings().shows_help && ui.shortcut(Key::escape))) shell_.go_to(quiz_start_screen(shell_, who_));
    }

    bool is_moving() const override { return screen_.has_clock(); }

    std::vector<KeyLine> keys() const override
    {
        return {{to_say("A, B, C ..."), to_say("choose an answer")},
                {to_say("Enter"), to_say("give the answer; go on; write on a line")},
                {to_say("Alt + arrows"), to_say("move a card up or down")},
                {to_say("Esc"), to_say("stop; what is answered is kept")}};
    }

private:
    /// While somebody thinks nothing moves and no frame is drawn, and the frame after it does not tell how long that was.
    void count_idle_time(double told)
    {
        const auto now = std::chrono::steady_clock::now();
        const double passed = std::chrono::duration<double>(now - before_).count();
        before_ = now;
        if (passed > told + 0.1) screen_.pass(Time{passed - told});
    }

    void keep(const quiz::SittingResult& now)
    {
        const Result<void> saved = quiz::save_sitting(now, file_.string());
        notice_ = saved ? std::string() : say_with("The answers cannot be kept: {}", describe(saved.error().front()));
    }

    Shell& shell_;
    quiz::Phrase title_;
    std::uint64_t number_;
    std::string who_;
    bool is_practice_;
    std::filesystem::path file_;
    std::string notice_;
    QuizScreen screen_;
    std::chrono::steady_clock::time_point before_ = std::chrono::steady_clock::now();
};

}

std::unique_ptr<Screen> sitting_screen(Shell& shell, quiz::Paper paper, quiz::SittingResult sitting, std::filesystem::path file)
{
    return std::make_unique<SittingScreen>(shell, std::move(paper), std::move(sitting), std::move(file));
}

}
