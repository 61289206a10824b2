#include "window/quiz/quiz_screen.hpp"

#include "quiz/lettered.hpp"
#include "text/language.hpp"
#include "text/show.hpp"
#include "window/quiz/answer_panel.hpp"
#include "window/run/phrases.hpp"
#include "window/widgets/button.hpp"
#include "window/widgets/panel.hpp"
#include "window/widgets/words.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <utility>

namespace flapdoor::window {

using text::say;
using text::say_with;

namespace {

constexpr float column = 820.0F;    // of reading, at 100 %

/// A column in the middle of a strip.
Box middle_of(const Ui& ui, const Box& box)
{
    const float width = std::min(box.width(), ui.px(column));
    return {{box.center().x - width * 0.5F, box.low.y}, {box.center().x + width * 0.5F, box.high.y}};
}

Standing standing_of(const quiz::Mark& mark) { return mark.is_right ? Standing::good : Standing::caution; }

std::string mark_word(const quiz::Mark& mark)
{
    if (mark.is_right) return std::string(say("Right."));
    if (mark.share.numerator > 0) return say_with("Partly right: {} of the points.", rules::percent_text(mark.share));
    return std::string(say("Not right."));
}

/// What is said about an answer: the mark, the mistakes behind it, the right answer, why, and where it is written.
void tell(Ui& ui, const quiz::Question& question, const quiz::Response& response)
{
    const quiz::Mark marked = quiz::mark(question, response);
    mark(ui, standing_of(marked), mark_word(marked));
    ui.gap(6.0F);
    for (const quiz::Phrase& told : marked.told) words(ui, with_signs(quiz::shown(told)));
    if (!marked.is_right) strong(ui, with_signs(say_with("Right: {}", quiz::key_text(question))));
    if (const auto* predict = std::get_if<quiz::Predict>(&question.kind)) words(ui, with_signs(quiz::shown(predict->reveal)));
    words(ui, with_signs(quiz::shown(question.why)));
    aside(ui, say(question.cite));
}

}

QuizScreen::QuizScreen(quiz::Paper paper, quiz::SittingResult sitting, std::function<void(const quiz::SittingResult&)> keep)
    : paper_(std::move(paper)), sitting_(std::move(sitting)), keep_(std::move(keep)), at_(sitting_.answers.size()), expected_(paper_.items.size())
{
    for (const quiz::Answered& answer : sitting_.answers) used_ += answer.took;
    if (at_ < paper_.items.size()) draft_ = blank_draft(item().question);
}

void QuizScreen::add(quiz::PaperItem item)
{
    paper_.items.push_back(std::move(item));
    expected_ = std::max(expected_, paper_.items.size());
    if (at_ + 1 == paper_.items.size()) draft_ = blank_draft(paper_.items[at_].question);
}

void QuizScreen::answer(quiz::Response response)
{
    if (paper_.feedback == quiz::Feedback::at_once) told_ = response, is_newly_told_ = true;
    sitting_.answers.push_back(quiz::answered(item(), std::move(response), on_this_));
    on_this_ = {};
    sitting_.is_finished = sitting_.answers.size() == paper_.items.size();
    if (keep_) keep_(sitting_);
    if (!told_) go_on();
}

void QuizScreen::go_on()
{
    told_.reset();
    at_ = sitting_.answers.size();
    if (at_ < paper_.items.size()) draft_ = blank_draft(item().question);
}

void QuizScreen::run_out_of_time()
{
    while (sitting_.answers.size() < paper_.items.size()) {
        sitting_.answers.push_back(quiz::answered(paper_.items[sitting_.answers.size()], quiz::LeftOut{}, on_this_));
        on_this_ = {};
    }
    sitting_.is_finished = true;
    if (keep_) keep_(sitting_);
    go_on();
}

std::string QuizScreen::progress() const
{
    if (is_through() && paper_.items.size() >= expected_) return std::string(say("done"));
    std::string told = fmt::format("{} / {}", at_ + 1, expected_);
    if (paper_.limit) told += "  \xC2\xB7  " + say_with("{} left", text::show(1.0_min * std::ceil((*paper_.limit - used_) / 1.0_min - 1e-9)));
    return told;
}

void QuizScreen::feedback(Ui& ui)
{
    ui.gap(12.0F);
    rule(ui);
    ui.gap(8.0F);
    const Point low = ui.cursor();
    tell(ui, item().question, *told_);
    if (std::exchange(is_newly_told_, false)) ui.scroll_to({low, ui.cursor()}); // long answers end below the window
}

void QuizScreen::question(Ui& ui, const Box& box)
{
    const quiz::Question& asked = item().question;
    panel(ui, fmt::format("question-{}", at_ + 1), middle_of(ui, box), {.padding = 20.0F}, [&] {
        aside(ui, fmt::format("{}  \xC2\xB7  {}", say(quiz::title_of(asked.topic)), text::say_number("{} point", "{} points", static_cast<unsigned long>(asked.points))));
        strong(ui, with_signs(quiz::shown(asked.text)));
        aside(ui, say(quiz::how_to_answer(asked)));
        ui.gap(10.0F);
        answer_panel(ui, asked, draft_, told_ ? &*told_ : nullptr);
        if (told_) feedback(ui);
    });
}

void QuizScreen::buttons(Ui& ui, const Box& box)
{
    const Box line = middle_of(ui, box);
    ui.go_to({line.low.x, line.center().y - ui.px(20.0F)});
    // Enter answers from anywhere, but presses a button that the keyboard is on.
    if (told_) {
        const bool is_last = sitting_.answers.size() >= expected_;
        if (button(ui, "go-on", is_last ? say("Result") : say("Go on"), {.emphasis = Emphasis::primary, .hint = say("Enter")}) || ui.shortcut(Key::enter)) go_on();
        return;
    }
    const auto response = response_of(item().question, draft_);
    const bool gives = button(ui, "give", say("Answer"), {.emphasis = Emphasis::primary, .is_enabled = response.has_value(), .hint = say("Enter")});
    ui.beside(12.0F);
    const bool leaves_out = button(ui, "leave-out", say("Leave it out"), {.hint = say("Counts as not answered")});
    ui.beside(12.0F);
    wants_to_quit_ = button(ui, "stop", say("Stop"), {.emphasis = Emphasis::quiet, .hint = say("What you have answered is kept")}) || wants_to_quit_;
    if (leaves_out) return answer(quiz::LeftOut{});
    if (response && (gives || ui.shortcut(Key::enter))) answer(*response);
}

void QuizScreen::results(Ui& ui, const Box& box)
{
    const quiz::Points points = quiz::points_of(sitting_);
    panel(ui, "results", middle_of(ui, box), {.padding = 20.0F}, [&] {
        title(ui, say_with("{0} of {1} points", text::show_number(points.reached), points.of));
        words(ui, say("A practice quiz. It is no certification, no clearance and no legal advice; local codes may ask for more."));
        ui.gap(8.0F);
        for (std::size_t i = 0; i < sitting_.answers.size(); ++i) {
            const quiz::Question& asked = paper_.items[i].question;
            rule(ui);
            ui.gap(6.0F);
            strong(ui, fmt::format("{}  {}", i + 1, with_signs(quiz::shown(asked.text))));
            aside(ui, with_signs(say_with("Your answer: {}", quiz::response_text(asked, sitting_.answers[i].response))));
            tell(ui, asked, sitting_.answers[i].response);
            ui.gap(6.0F);
        }
        if (button(ui, "close", say("Close"), {.emphasis = Emphasis::primary})) wants_to_quit_ = true;
    });
}

void QuizScreen::pass(Time time)
{
    if (is_through() || told_) return;
    used_ += time;
    on_this_ += time;
    if (paper_.limit && used_ >= *paper_.limit) run_out_of_time();
}

void QuizScreen::play(Ui& ui, const Box& box)
{
    Box rest = box.inset(ui.px(12.0F));
    pass(1.0_s * static_cast<double>(ui.input().seconds));
    if (is_through()) return results(ui, rest);
    const Box foot = cut_bottom(rest, ui.px(64.0F));
    question(ui, rest);
    buttons(ui, foot);
}

}
