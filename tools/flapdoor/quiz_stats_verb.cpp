#include "quiz_verbs.hpp"

#include "quiz_files.hpp"

#include "quiz/sitting.hpp"
#include "quiz/statistics/group_report.hpp"
#include "quiz/statistics/sitting_table.hpp"
#include "text/atomic_file.hpp"
#include "text/language.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace flapdoor::command {

namespace {

/// Every sitting that can be read; the others are told.
std::vector<quiz::SittingResult> read_sittings(const std::vector<std::string>& files, bool& is_any_bad)
{
    std::vector<quiz::SittingResult> sittings;
    for (const std::string& file : files) {
        Result<quiz::SittingResult> sitting = quiz::load_sitting(file);
        if (sitting) sittings.push_back(std::move(*sitting));
        else {
            tell(sitting.error());
            is_any_bad = true;
        }
    }
    return sittings;
}

}

int quiz_stats(const QuizStatsChoice& choice)
{
    const auto files = files_in(choice.sittings, ".toml");
    if (!files) {
        tell(files.error());
        return bad_file;
    }
    const auto banks = read_banks(choice.banks, true, quiz::scenarios_in(scenario_folder()));
    if (!banks) {
        tell(banks.error());
        return bad_file;
    }
    bool is_any_bad = false;
    const std::vector<quiz::SittingResult> sittings = read_sittings(*files, is_any_bad);
    quiz::AnswerTable table = quiz::table_of(sittings, *banks);
    if (table.rows.empty()) {
        tell({problem_with(choice.sittings.front(), "at least one finished sitting", "none")});
        return bad_file;
    }
    table.title = choice.title.empty() ? sittings.front().blueprint : choice.title;
    const quiz::GroupReport report = quiz::group_report(table, choice.shows_early);
    fmt::print("{}", quiz::group_sheet(report, terminal_width(choice.width)));
    const auto unfinished = static_cast<unsigned long>(std::count_if(sittings.begin(), sittings.end(), [](const quiz::SittingResult& sitting) { return !sitting.is_finished; }));
    if (unfinished > 0) fmt::print("\n{}\n", text::say_number("{} sitting is not finished and was left out.", "{} sittings are not finished and were left out.", unfinished));
    if (!choice.page.empty()) {
        if (const Result<void> saved = text::save_atomically(choice.page, quiz::group_page(report)); !saved) {
            tell(saved.error());
            return bad_file;
        }
        fmt::print("{}\n", choice.page);
    }
    return is_any_bad ? bad_file : fine;
}

}
