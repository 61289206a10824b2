#include "window/quiz/practice_screen.hpp"

#include "window/quiz/learners.hpp"
#include "window/quiz/quiz_screen.hpp"
#include "window/shell/beside.hpp"
#include "window/shell/masthead.hpp"
#include "window/widgets/panel.hpp"
#include "window/widgets/words.hpp"

#include "quiz/practice/practice_file.hpp"
#include "quiz/practice/session.hpp"
#include "text/language.hpp"

#include <optional>
#include <utility>
#include <vector>

namespace flapdoor::window {

namespace {

using text::say;
using text::say_with;
using text::to_say;

quiz::Paper empty_paper()
{
    quiz::Paper paper;
    paper.feedback = quiz::Feedback::at_once;
    return paper;
}

class PracticeScreen final : public Screen {
public:
    PracticeScreen(Shell& shell, std::string who, quiz::Practice practice, std::shared_ptr<const quiz::PracticePool> pool)
        : shell_(shell), who_(std::move(who)), practice_(std::move(practice)), pool_(std::move(pool)), today_(today_of(shell.places())),
          workshop_(std::make_shared<quiz::Workshop>(shell.places().scenarios.string())),
          screen_(empty_paper(), quiz::SittingResult{}, [this](const quiz::SittingResult& now) { take_answer(now.answers.back().response); })
    {
        keep();
        look_ahead();
    }

    void play(Ui& ui) override
    {
        take_next();
        Box rest = ui.screen();
        const Masthead head{.title = std::string(say("Practise what is due")),
                            .lines = {say_with("{}, {}: each answer is told at once and kept", who_, quiz::text_of(today_)), who_},
                            .mark = screen_.progress(),
                            .has_way_back = true,
                            .back_hint = say("Stop; what you have answered is kept (Esc)")};
        const bool is_back = masthead(ui, cut_top(rest, masthead_height(ui.screen(), ui.text_scale())), head, shell_.settings());
        if (!notice_.empty()) {
            const std::string told = notice_.said();
            const float height = ui.canvas().measure_wrapped(rest.width() - ui.px(60.0F), told, TextStyle::body).y + ui.px(24.0F);
            panel(ui, "practice-notice", cut_top(rest, height).inset(ui.px(4.0F)), {.can_scroll = false, .padding = 8.0F}, [&] { words(ui, told); });
        }
        if (screen_.is_through() && next_) wait(ui, rest);
        else screen_.play(ui, rest);
        take_keys_of_all_screens(ui, shell_.settings());
        if (is_back || screen_.wants_to_quit() || (!shell_.settings().shows_help && ui.shortcut(Key::escape))) shell_.go_to(quiz_start_screen(shell_, who_));
    }

    bool is_moving() const override { return next_ != nullptr; }

    std::vector<KeyLine> keys() const override
    {
        return {{to_say("A, B, C ..."), to_say("choose an answer")},
                {to_say("Enter"), to_say("give the answer; go on; write on a line")},
                {to_say("Alt + arrows"), to_say("move a card up or down")},
                {to_say("Esc"), to_say("stop; what is answered is kept")}};
    }

private:
    using Asked = std::optional<quiz::PracticeQuestion>;

    /// The next question is posed beside the window: it may be about a run, which is carried out first.
    void look_ahead()
    {
        const std::optional<quiz::Topic> topic = quiz::next_topic(practice_, pool_->topics, today_);
        screen_.expect(asked_.size() + (topic ? quiz::questions_left(practice_, pool_->topics, today_) : 0));
        if (!topic) return;
        topic_ = *topic;
        next_ = std::make_unique<Beside<Asked>>([practice = practice_, pool = pool_, topic = *topic, workshop = workshop_](const std::atomic<bool>&) {
            return quiz::question_of(practice, pool->items, topic, *workshop);
        });
    }

    void take_next()
    {
        if (!next_) return;
        auto asked = next_->take();
        if (!asked) return;
        next_.reset();
        if (!*asked) {
            notice_ = text::sentence("No question of {} can be asked.", std::string(quiz::title_of(topic_)));
            screen_.expect(asked_.size());
            return;
        }
        asked_.push_back(std::move(**asked));
        screen_.add(asked_.back().item);
    }

    void take_answer(const quiz::Response& response)
    {
        const quiz::PracticeQuestion& asked = asked_.back();
        practice_.attempts.push_back(quiz::attempt_of(asked.from, asked.item.question, asked.item.seed, response, today_));
        keep();
        look_ahead();
    }

    void keep()
    {
        const std::filesystem::path file = practice_file(shell_.places(), who_);
        std::error_code told_by_the_save;
        std::filesystem::create_directories(file.parent_path(), told_by_the_save);
        const Result<void> saved = quiz::save_practice(practice_, file.string());
        notice_ = saved ? text::Sentence() : text::sentence("The answers cannot be kept: {}", describe(saved.error().front()));
    }

    void wait(Ui& ui, const Box& box)
    {
        panel(ui, "practice-wait", box.inset(ui.px(12.0F)), {.padding = 20.0F}, [&] {
            aside(ui, say(quiz::title_of(topic_)));
            strong(ui, say("The next question is being made ..."));
            words(ui, say("A question about a run carries it out first; that takes seconds."));
        });
    }

    Shell& shell_;
    std::string who_;
    quiz::Practice practice_;
    std::shared_ptr<const quiz::PracticePool> pool_;
    quiz::Day today_;
    std::shared_ptr<quiz::Workshop> workshop_;      ///< of the one thread that poses questions
    std::vector<quiz::PracticeQuestion> asked_;
    quiz::Topic topic_ = quiz::Topic::other;        ///< of the question that is being made
    std::unique_ptr<Beside<Asked>> next_;
    text::Sentence notice_;
    QuizScreen screen_;
};

}

std::unique_ptr<Screen> practice_screen(Shell& shell, std::string who, quiz::Practice practice, std::shared_ptr<const quiz::PracticePool> pool)
{
    return std::make_unique<PracticeScreen>(shell, std::move(who), std::move(practice), std::move(pool));
}

}
