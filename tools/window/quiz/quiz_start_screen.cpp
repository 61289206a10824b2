#include "window/quiz/paper_shelf.hpp"
#include "window/quiz/practice_plan.hpp"
#include "window/quiz/practice_screen.hpp"
#include "window/shell/beside.hpp"
#include "window/shell/masthead.hpp"
#include "window/shell/screens.hpp"
#include "window/widgets/button.hpp"
#include "window/widgets/choice.hpp"
#include "window/widgets/field.hpp"
#include "window/widgets/panel.hpp"
#include "window/widgets/words.hpp"

#include "text/show.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <memory>

namespace flapdoor::window {

namespace {

using text::say;
using text::say_with;
using text::to_say;

constexpr std::uint64_t last_seed = 1'000'000'000;

/// Who, and what is due for that person; beside it which paper and how; papers that were left above.
class QuizStartScreen final : public Screen {
public:
    QuizStartScreen(Shell& shell, std::string who)
        : shell_(shell), papers_(read_papers(shell.places())), left_(left_sittings(shell.places())), who_(std::move(who)), plan_(shell.places())
    {
        take_fresh_seed();
    }

    void play(Ui& ui) override
    {
        take_drawn();
        take_keys_of_all_screens(ui, shell_.settings());
        Box rest = ui.screen();
        const Masthead head{.title = std::string(say("Questions")),
                            .lines = {std::string(say("A practice quiz. It is no certification, no clearance and no legal advice; local codes may ask for more.")),
                                      std::string(say("A practice quiz, no certification"))},
                            .has_way_back = true,
                            .back_hint = say("Back (Esc)")};
        if (masthead(ui, cut_top(rest, masthead_height(ui.screen(), ui.text_scale())), head, shell_.settings())) back();
        rest = {{rest.low.x + ui.px(14.0F), rest.low.y + ui.px(12.0F)}, {rest.high.x - ui.px(14.0F), rest.high.y - ui.px(12.0F)}};
        if (rest.width() >= ui.px(900.0F)) {
            const float both = std::min(rest.width(), ui.px(1320.0F));
            Box right{{rest.center().x - both * 0.5F, rest.low.y}, {rest.center().x + both * 0.5F, rest.high.y}};
            const Box left = cut_left(right, both * 0.46F);
            cut_left(right, ui.px(12.0F));
            panel(ui, "practice-plan", left, {.padding = 20.0F}, [&] { plan(ui); });
            panel(ui, "quiz-start", right, {.padding = 20.0F}, [&] { papers_part(ui); });
        }
        else {
            const float width = std::min(rest.width(), ui.px(680.0F));
            const Box middle{{rest.center().x - width * 0.5F, rest.low.y}, {rest.center().x + width * 0.5F, rest.high.y}};
            panel(ui, "quiz-start", middle, {.padding = 20.0F}, [&] { plan(ui), ui.gap(10.0F), rule(ui), papers_part(ui); });
        }
        if (!shell_.settings().shows_help && ui.shortcut(Key::escape)) back();
    }

    bool is_moving() const override { return drawing_ != nullptr || plan_.is_moving(); }

    std::vector<KeyLine> keys() const override
    {
        return {{to_say("Arrows"), to_say("from choice to choice")}, {to_say("Enter"), to_say("choose; begin")}, {to_say("Esc"), to_say("back")}};
    }

private:
    void back() { shell_.go_to(start_screen(shell_)); }
    const quiz::Blueprint* blueprint() const { return chosen_ < papers_.size() && papers_[chosen_].blueprint ? &*papers_[chosen_].blueprint : nullptr; }
    quiz::Feedback feedback() const { return manner_ == 0 ? quiz::Feedback::at_once : quiz::Feedback::after; }

    void take_fresh_seed()
    {
        if (blueprint() != nullptr) seed_text_ = std::to_string(fresh_seed(shell_.places(), blueprint()->id, feedback()));
    }

    std::optional<std::uint64_t> seed() const
    {
        std::uint64_t seed = 0;
        const auto [end, error] = std::from_chars(seed_text_.data(), seed_text_.data() + seed_text_.size(), seed);
        if (error != std::errc{} || end != seed_text_.data() + seed_text_.size() || seed < 1 || seed > last_seed) return std::nullopt;
        return seed;
    }

    void take_drawn()
    {
        if (!drawing_) return;
        auto paper = drawing_->take();
        if (!paper) return;
        drawing_.reset();
        if (!*paper) problems_ = paper->error();
        else shell_.go_to(sitting_screen(shell_, std::move((*paper)->paper), std::move((*paper)->sitting), std::move((*paper)->keep)));
    }

    void draw(PaperOrder order)
    {
        if (drawing_) return;
        problems_.clear();
        drawing_ = std::make_unique<Beside<Result<DrawnPaper>>>([places = shell_.places(), order = std::move(order)](const std::atomic<bool>&) { return drawn(places, order); });
    }

    void plan(Ui& ui)
    {
        if (plan_.play(ui, who_)) shell_.go_to(practice_screen(shell_, who_, plan_.practice(), plan_.pool()));
    }

    void papers_part(Ui& ui)
    {
        left_behind(ui);
        papers(ui);
        rule(ui);
        manner(ui);
    }

    void left_behind(Ui& ui)
    {
        for (std::size_t i = 0; i < left_.size(); ++i) {
            const LeftSitting& left = left_[i];
            if (!left.sitting) {
                words(ui, say_with("Answers that were kept do not read any more. Their file stays where it is: {}", describe(left.sitting.error().front())));
                continue;
            }
            const auto paper = std::find_if(papers_.begin(), papers_.end(), [&](const ShelvedPaper& p) { return p.blueprint && p.blueprint->id == left.sitting->blueprint; });
            if (paper == papers_.end()) continue; // sat from a file of their own: the command goes on with it
            const std::string told = text::say_number("{1}, paper {2}: left after {0} answer", "{1}, paper {2}: left after {0} answers", left.sitting->answers.size(),
                                                      quiz::shown(paper->blueprint->title), left.sitting->seed);
            words(ui, left.sitting->person.empty() || left.sitting->person == "-" ? told : left.sitting->person + ": " + told);
            if (button(ui, "go-on-" + std::to_string(i), say("Go on with it"), {.icon = Icon::play, .is_enabled = drawing_ == nullptr}))
                draw({paper->file, left.sitting->seed, left.sitting->feedback, left.sitting->person, left.file});
            rule(ui);
        }
    }

    void papers(Ui& ui)
    {
        strong(ui, say("Which paper?"));
        std::vector<Option> options;
        for (const ShelvedPaper& paper : papers_) {
            if (!paper.blueprint) {
                options.push_back({.name = paper.file.stem().string(), .label = paper.file.filename().string(), .is_enabled = false, .note = describe(paper.blueprint.error().front())});
                continue;
            }
            std::string note = text::say_number("{} question", "{} questions", static_cast<unsigned long>(questions_of(*paper.blueprint)));
            if (paper.blueprint->limit) note += "  \xC2\xB7  " + say_with("{} when sat", text::show(*paper.blueprint->limit));
            options.push_back({.name = paper.blueprint->id, .label = quiz::shown(paper.blueprint->title), .note = note});
        }
        std::optional<std::size_t> chosen = chosen_;
        if (choose_one(ui, "paper", options, chosen) && chosen) chosen_ = *chosen, take_fresh_seed();
        text_field(ui, "seed", say("Number of the paper: the same one draws the same questions and figures, here, on paper and at every desk"), seed_text_, {.problem = seed() ? std::string_view() : say("a whole number from 1 to 1 000 000 000"), .width = 220.0F});
    }

    void manner(Ui& ui)
    {
        strong(ui, say("How do you take it?"));
        const std::vector<Option> options{{.name = "practice", .label = std::string(say("To practice")), .note = std::string(say("Each answer is told at once, with the reason. No time limit."))},
                                          {.name = "sitting", .label = std::string(say("As a sitting")), .note = std::string(say("Nothing is told before the end, and the clock runs."))}};
        std::optional<std::size_t> manner = manner_;
        if (choose_one(ui, "manner", options, manner) && manner) manner_ = *manner, take_fresh_seed();
        ui.gap(8.0F);
        if (drawing_) return words(ui, say("The paper is being drawn; its figures are worked out ..."));
        const bool can_begin = blueprint() != nullptr && seed().has_value();
        if (button(ui, "begin", say("Begin"), {.emphasis = Emphasis::primary, .icon = Icon::forward, .width = -1.0F, .is_enabled = can_begin}) && can_begin)
            draw({papers_[chosen_].file, *seed(), feedback(), who_.empty() ? "-" : who_, sitting_file(shell_.places(), blueprint()->id, *seed(), feedback())});
        for (const Problem& problem : problems_) words(ui, describe(problem));
        ui.gap(6.0F);
        aside(ui, say_with("Answers are kept after each question in {}; what is left can be gone on with.", (shell_.places().own / "sittings").string()));
    }

    Shell& shell_;
    std::vector<ShelvedPaper> papers_;
    std::vector<LeftSitting> left_;
    std::size_t chosen_ = 0;
    std::size_t manner_ = 0;
    std::string who_, seed_text_ = "1";
    std::unique_ptr<Beside<Result<DrawnPaper>>> drawing_;
    PracticePlan plan_;
    Problems problems_;
};

}

std::unique_ptr<Screen> quiz_start_screen(Shell& shell, std::string who) { return std::make_unique<QuizStartScreen>(shell, std::move(who)); }

}
