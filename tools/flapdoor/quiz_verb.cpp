#include "verbs.hpp"

#include "places.hpp"

#include "quiz/blueprint.hpp"
#include "quiz/print/pages.hpp"
#include "quiz/sitting.hpp"
#include "quiz/terminal/asking.hpp"
#include "records/now.hpp"
#include "text/atomic_file.hpp"
#include "text/language.hpp"
#include "text/show.hpp"

#ifdef FLAPDOOR_HAS_WINDOW
#include "window/show.hpp"
#endif

#include <fmt/format.h>

#include <unistd.h>

#include <chrono>
#include <filesystem>
#include <iostream>
#include <optional>
#include <string>

namespace flapdoor::command {

namespace {

using text::say;
using text::say_with;
using Clock = std::chrono::steady_clock;

/// Whole seconds, as a kept sitting names them.
Time since(Clock::time_point begin) { return {static_cast<double>(std::chrono::round<std::chrono::seconds>(Clock::now() - begin).count())}; }

/// Writes paper, answer sheet and key.
int print_paper(const quiz::Paper& paper, const std::string& folder)
{
    std::error_code error;
    std::filesystem::create_directories(folder, error);
    const std::string stem = (std::filesystem::path(folder) / fmt::format("{}-{}", file_name_from(paper.blueprint), paper.seed)).string();
    for (const auto& [name, page] : {std::pair{"paper", quiz::paper_page(paper)}, std::pair{"answers", quiz::answer_page(paper)}, std::pair{"key", quiz::key_page(paper)}}) {
        const std::string path = fmt::format("{}-{}.html", stem, name);
        if (const Result<void> saved = text::save_atomically(path, page); !saved) {
            tell(saved.error());
            return bad_file;
        }
        fmt::print("{}\n", path);
    }
    return fine;
}

/// One sitting on a terminal or through a pipe.
class Sitter {
public:
    Sitter(const quiz::Paper& paper, quiz::SittingResult sitting, std::string file, std::size_t width)
        : paper_(paper), sitting_(std::move(sitting)), file_(std::move(file)), width_(width), is_shown_(isatty(STDIN_FILENO) != 0)
    {
    }

    int sit()
    {
        fmt::print("{}", quiz::heading_text(paper_, width_));
        if (!sitting_.answers.empty()) fmt::print("{}\n", say_with("Going on after question {}.", sitting_.answers.size()));
        for (const quiz::Answered& answer : sitting_.answers) used_ += answer.took;
        while (sitting_.answers.size() < paper_.items.size()) {
            if (is_late()) {
                leave_the_rest_out();
                break;
            }
            if (!ask()) return stop();
            if (!save()) return bad_file;
        }
        sitting_.is_finished = true;
        if (!save()) return bad_file;
        fmt::print("{}", quiz::result_text(paper_, sitting_, width_));
        fmt::print("{}\n", say_with("Kept in {}.", file_));
        return fine;
    }

private:
    bool is_late() const { return paper_.limit && used_ >= *paper_.limit; }

    /// Asks until there is an answer. @return  false when somebody stops
    bool ask()
    {
        const quiz::PaperItem& item = paper_.items[sitting_.answers.size()];
        fmt::print("{}{}\n", quiz::question_text(item, sitting_.answers.size() + 1, paper_.items.size(), width_), quiz::wanted_text(item.question));
        const auto begin = Clock::now();
        for (;;) {
            if (is_shown_) fmt::print("> ");
            std::fflush(stdout);
            std::string line;
            if (!std::getline(std::cin, line)) return false;
            if (line.ends_with('\r')) line.pop_back();
            if (line == "stop") return false;
            auto response = quiz::read_answer(item.question, line);
            if (!response) {
                fmt::print("{} {}\n", response.error(), quiz::wanted_text(item.question));
                continue;
            }
            const Time took = since(begin);
            used_ += took;
            if (paper_.limit && used_ > *paper_.limit) {
                fmt::print("{}\n", say("The time is over: this answer no longer counts."));
                response = quiz::LeftOut{};
            }
            sitting_.answers.push_back(quiz::answered(item, *response, took));
            if (paper_.feedback == quiz::Feedback::at_once) fmt::print("{}", quiz::feedback_text(item.question, *response, width_));
            return true;
        }
    }

    void leave_the_rest_out()
    {
        fmt::print("{}\n", say("The time is over. What is not answered counts as left out."));
        while (sitting_.answers.size() < paper_.items.size()) sitting_.answers.push_back(quiz::answered(paper_.items[sitting_.answers.size()], quiz::LeftOut{}, {}));
    }

    int stop()
    {
        if (!save()) return bad_file;
        fmt::print("\n{}\n", say_with("Stopped after {0} of {1} questions; the same command goes on. Kept in {2}.", sitting_.answers.size(), paper_.items.size(), file_));
        return fine;
    }

    bool save() const
    {
        const Result<void> saved = quiz::save_sitting(sitting_, file_);
        if (!saved) tell(saved.error());
        return saved.has_value();
    }

    const quiz::Paper& paper_;
    quiz::SittingResult sitting_;
    std::string file_;
    std::size_t width_;
    bool is_shown_;
    Time used_{};
};

}

int sit_quiz(const QuizChoice& choice)
{
    quiz::Workshop workshop(scenario_folder());
    const auto files = quiz::load_blueprint(paper_path(choice.blueprint), workshop.find());
    if (!files) {
        tell(files.error());
        return bad_file;
    }
    Result<quiz::Paper> paper = quiz::draw_paper(*files, workshop, choice.seed);
    if (!paper) {
        tell(paper.error());
        return bad_file;
    }
    if (choice.is_practice) paper->feedback = quiz::Feedback::at_once;
    if (choice.is_untimed) paper->limit.reset();
    if (!choice.print.empty()) return print_paper(*paper, choice.print);
    const std::string file = choice.save.empty() ? fmt::format("quiz-{}-{}.toml", file_name_from(paper->blueprint), paper->seed) : choice.save;
    Result<quiz::SittingResult> sitting = quiz::kept_or_begun(*paper, file, choice.person, records::now_utc());
    if (!sitting) {
        tell(sitting.error());
        return bad_file;
    }
#ifdef FLAPDOOR_HAS_WINDOW
    if (choice.is_in_window) return window::show_quiz({scenario_folder(), own_folder(), "federal"}, std::move(*paper), std::move(*sitting), file);
#endif
    return Sitter(*paper, std::move(*sitting), file, terminal_width(choice.width)).sit();
}

}
