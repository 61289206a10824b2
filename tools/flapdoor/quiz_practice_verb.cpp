#include "quiz_verbs.hpp"

#include "quiz_files.hpp"

#include "quiz/practice/outlook.hpp"
#include "quiz/practice/pool.hpp"
#include "quiz/practice/practice_file.hpp"
#include "quiz/practice/session.hpp"
#include "quiz/terminal/asking.hpp"
#include "records/now.hpp"
#include "text/language.hpp"

#include <fmt/format.h>

#include <unistd.h>

#include <algorithm>
#include <filesystem>
#include <iostream>
#include <optional>

namespace flapdoor::command {

namespace {

namespace fs = std::filesystem;
using text::say;
using text::say_with;

Result<quiz::Day> day_named(const std::string& text, std::string_view option)
{
    if (const auto day = quiz::parse_day(text)) return *day;
    return failed(problem_with(std::string(option), "a date such as 2026-12-06", fmt::format("\"{}\"", text)));
}

/// What was kept, or a new beginning, with what the command line changes.
Result<quiz::Practice> begun_or_new(const QuizPracticeChoice& choice, quiz::Day today)
{
    quiz::Practice practice;
    practice.begun = today;
    if (std::error_code error; fs::exists(choice.file, error)) {
        Result<quiz::Practice> kept = quiz::load_practice(choice.file);
        if (!kept) return kept;
        practice = std::move(*kept);
    }
    if (!choice.field_day.empty()) {
        const auto day = day_named(choice.field_day, "--field-day");
        if (!day) return failed(day.error());
        if (*day < practice.begun) return failed(problem_with("--field-day", "a day not before the first, " + quiz::text_of(practice.begun), quiz::text_of(*day)));
        practice.field_day = *day;
    }
    if (choice.each > 0) practice.each = choice.each;
    practice.is_refreshed = practice.is_refreshed || choice.is_refreshed;
    const quiz::Day last = practice.attempts.empty() ? practice.begun : practice.attempts.back().day;
    if (today < last) return failed(problem_with(choice.file, "practice before today, " + quiz::text_of(today), "answers of " + quiz::text_of(last) + ": look at the computer's date"));
    return practice;
}

class Practitioner {
public:
    Practitioner(quiz::Practice practice, quiz::PracticePool pool, quiz::Workshop& workshop, std::string file, quiz::Day today, std::size_t width)
        : practice_(std::move(practice)), pool_(std::move(pool)), workshop_(workshop), file_(std::move(file)), today_(today), width_(width)
    {
    }

    void show() const { fmt::print("{}", quiz::practice_sheet(practice_, pool_.topics, today_, width_)); }

    int go()
    {
        show();
        while (const auto topic = quiz::next_topic(practice_, pool_.topics, today_)) {
            const auto asked = quiz::question_of(practice_, pool_.items, *topic, workshop_);
            if (!asked) {
                fmt::print("{}\n", say_with("No question of {} can be asked.", say(quiz::title_of(*topic))));
                return bad_file;
            }
            const bool goes_on = ask(*asked);
            if (!save()) return bad_file;
            if (!goes_on) return fine;
        }
        fmt::print("\n{}\n\n", say("Done for today."));
        show();
        return save() ? fine : bad_file;
    }

    bool save() const
    {
        const Result<void> saved = quiz::save_practice(practice_, file_);
        if (!saved) tell(saved.error());
        return saved.has_value();
    }

private:
    bool ask(const quiz::PracticeQuestion& asked)
    {
        const auto before = static_cast<std::size_t>(std::count_if(practice_.attempts.begin(), practice_.attempts.end(), [&](const quiz::Attempt& attempt) { return attempt.day == today_; }));
        // As many as there will be when all that follow are right.
        const std::size_t all = before + quiz::questions_left(practice_, pool_.topics, today_);
        fmt::print("{}{}\n", quiz::question_text(asked.item, before + 1, all, width_), quiz::wanted_text(asked.item.question));
        for (std::string line;;) {
            if (isatty(STDIN_FILENO) != 0) fmt::print("> ");
            std::fflush(stdout);
            if (!std::getline(std::cin, line)) return stopped();
            if (line.ends_with('\r')) line.pop_back();
            if (line == "stop") return stopped();
            const auto response = quiz::read_answer(asked.item.question, line);
            if (!response) {
                fmt::print("{} {}\n", response.error(), quiz::wanted_text(asked.item.question));
                continue;
            }
            practice_.attempts.push_back(quiz::attempt_of(asked.from, asked.item.question, asked.item.seed, *response, today_));
            fmt::print("{}", quiz::feedback_text(asked.item.question, *response, width_));
            return true;
        }
    }

    bool stopped() const
    {
        fmt::print("\n{}\n", say_with("Stopped; the same command goes on. Kept in {}.", file_));
        return false;
    }

    quiz::Practice practice_;
    quiz::PracticePool pool_;
    quiz::Workshop& workshop_;
    std::string file_;
    quiz::Day today_;
    std::size_t width_;
};

}

int quiz_practice(const QuizPracticeChoice& choice)
{
    const Result<quiz::Day> today = choice.day.empty() ? Result<quiz::Day>(*quiz::parse_day(records::today_here())) : day_named(choice.day, "--day");
    if (!today) {
        tell(today.error());
        return bad_use;
    }
    quiz::Workshop workshop(scenario_folder());
    Result<quiz::Practice> practice = begun_or_new(choice, *today);
    auto banks = read_banks(choice.banks, choice.banks.empty(), workshop.find());
    if (!practice) tell(practice.error());
    if (!banks) tell(banks.error());
    if (!practice || !banks) return bad_file;
    Practitioner practitioner(std::move(*practice), quiz::PracticePool(std::move(*banks)), workshop, choice.file, *today, terminal_width(choice.width));
    if (!choice.only_shows) return practitioner.go();
    practitioner.show();
    return fine;
}

}
