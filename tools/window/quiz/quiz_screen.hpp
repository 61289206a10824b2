#pragma once

#include "quiz/paper.hpp"
#include "quiz/sitting.hpp"
#include "window/quiz/answer_in_hand.hpp"
#include "window/stage/ui.hpp"

#include <functional>
#include <optional>

namespace flapdoor::window {

/// The screen on which one person sits a paper. Goes on after the answers that the sitting has already.
class QuizScreen {
public:
    /// @param keep  called after each answer with all of them, to save
    QuizScreen(quiz::Paper paper, quiz::SittingResult sitting, std::function<void(const quiz::SittingResult&)> keep);

    /// One frame in a part of the screen, below a head that tells the progress; goes between Ui::begin_frame and Ui::end_frame.
    void play(Ui& ui, const Box& box);

    /// One more question, asked after the others: of a paper that is made while it is sat.
    void add(quiz::PaperItem item);
    /// So many questions there will be when no more is added than is known now.
    void expect(std::size_t questions) { expected_ = questions; }
    /// Every question that is there is answered, and what was said about it read.
    bool is_through() const { return sitting_.answers.size() >= paper_.items.size() && !told_; }

    /// Time on the question that passed while nothing was drawn.
    void pass(Time time);

    /// "3 / 10", and how much time is left; "done" after the last answer. In the language in force.
    std::string progress() const;
    /// True while a clock runs that is shown.
    bool has_clock() const { return paper_.limit && !is_through() && !told_; }
    bool wants_to_quit() const { return wants_to_quit_; }
    const quiz::SittingResult& sitting() const { return sitting_; }
    Time time_used() const { return used_; }

private:
    const quiz::PaperItem& item() const { return paper_.items[at_]; }
    void answer(quiz::Response response);
    void go_on();
    void run_out_of_time();

    void question(Ui& ui, const Box& box);
    void feedback(Ui& ui);
    void buttons(Ui& ui, const Box& box);
    void results(Ui& ui, const Box& box);

    quiz::Paper paper_;
    quiz::SittingResult sitting_;
    std::function<void(const quiz::SittingResult&)> keep_;
    std::size_t at_ = 0;                    ///< question that is shown
    std::size_t expected_ = 0;              ///< questions, those to come among them
    AnswerInHand draft_;
    std::optional<quiz::Response> told_;    ///< practice: the answer whose feedback is shown
    bool is_newly_told_ = false;            ///< its feedback is brought into view
    Time used_{};                           ///< on answering, feedback left out
    Time on_this_{};
    bool wants_to_quit_ = false;
};

}
