#include "quiz_verbs.hpp"

#include <CLI/CLI.hpp>

namespace flapdoor::command {

QuizVerbs::QuizVerbs(CLI::App& app)
{
    CLI::App* stats = app.add_subcommand("quiz-stats", "Judge questions and paper by a group's answers: how hard, how telling, which wrong answers, which key to look at");
    stats->add_option("sittings", stats_.sittings, "files with finished sittings, or folders of them")->required();
    stats->add_option("--bank", stats_.banks, "question bank whose texts are shown, besides the shipped ones: a file; may be given again")->allow_extra_args(false);
    stats->add_option("--title", stats_.title, "title of the report");
    stats->add_option("--page", stats_.page, "write the report as a page to this HTML file as well");
    stats->add_flag("--early", stats_.shows_early, "show figures that mean little for so few people");
    stats->add_option("--width", stats_.width, "columns of the text (default: the terminal's)")->check(CLI::Range(60, 400));
    verbs_.push_back({stats, [this] { return quiz_stats(stats_); }});

    CLI::App* practice = app.add_subcommand("quiz-practice", "Practise toward a date: asks what is due today, topic by topic, and says what is mastered. Goes on where it was stopped");
    practice->add_option("file", practice_.file, "file that keeps what was practised; begun when it is not there")->required();
    practice->add_option("--field-day", practice_.field_day, "the day to be ready for, such as 2026-12-06; kept in the file");
    practice->add_option("--each", practice_.each, "questions of a topic in a session; kept in the file (default 3)")->check(CLI::Range(1, 20));
    practice->add_flag("--refresh", practice_.is_refreshed, "ask again 30, 90 and 180 days after the field day; kept in the file");
    practice->add_option("--bank", practice_.banks, "bank to practise: a file or a shipped name; may be given again (default: all shipped ones)")->allow_extra_args(false);
    practice->add_flag("--plan", practice_.only_shows, "show plan and standing only");
    practice->add_option("--day", practice_.day, "the day taken for today (default: the computer's date)");
    practice->add_option("--width", practice_.width, "columns of the text (default: the terminal's)")->check(CLI::Range(60, 400));
    verbs_.push_back({practice, [this] { return quiz_practice(practice_); }});

    CLI::App* out = app.add_subcommand("quiz-export", "Write a bank or a paper as a package of Question and Test Interoperability 3.0, the open standard");
    auto* bank = out->add_option("bank", export_.bank, "a bank: a file, or a shipped name; all its questions");
    out->add_option("--paper", export_.paper, "instead: a paper by its blueprint, a file or a shipped name")->excludes(bank);
    out->add_option("--seed", export_.seed, "of the paper, and of what is drawn and played")->check(CLI::Range(std::uint64_t{1}, std::uint64_t{1'000'000'000}))->capture_default_str();
    out->add_option("--out", export_.out, "folder for the package")->required();
    verbs_.push_back({out, [this] { return quiz_export(export_); }});

    CLI::App* in = app.add_subcommand("quiz-import", "Make a question bank of items of the open standard (3.0, 2.2, 2.1); says what does not come along");
    in->add_option("files", import_.files, "item files, or folders with them")->required();
    in->add_option("--out", import_.out, "bank to write")->required();
    in->add_option("--id", import_.id, "id of the bank")->capture_default_str();
    in->add_option("--title", import_.title, "title of the bank")->capture_default_str();
    verbs_.push_back({in, [this] { return quiz_import(import_); }});
}

int QuizVerbs::run() const
{
    for (const Verb& verb : verbs_)
        if (verb.app->parsed()) return verb.run();
    return -1;
}

}
