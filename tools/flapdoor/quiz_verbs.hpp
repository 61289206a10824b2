#pragma once

#include "places.hpp"

#include <cstdint>
#include <functional>
#include <string>
#include <vector>

namespace CLI {
class App;
}

// What can be done around the quiz: statistics, practice, the open standard. One file each.
namespace flapdoor::command {

struct QuizStatsChoice {
    std::vector<std::string> sittings;      ///< files, or folders of them
    std::vector<std::string> banks;         ///< besides the shipped ones
    std::string title;                      ///< of the report; empty: the blueprint
    std::string page;                       ///< HTML file to write as well; empty: none
    bool shows_early = false;
    int width = 0;
};
/// Judges questions and paper by the answers of a group.
int quiz_stats(const QuizStatsChoice& choice);

struct QuizImportChoice {
    std::vector<std::string> files;         ///< items, or folders of a package
    std::string out;                        ///< bank to write
    std::string id = "imported";
    std::string title = "Imported questions";
};
/// Makes a bank of items of the open standard.
int quiz_import(const QuizImportChoice& choice);

struct QuizExportChoice {
    std::string bank;                       ///< all questions of a bank ...
    std::string paper;                      ///< ... or a paper by its blueprint
    std::string out;                        ///< folder for the package
    std::uint64_t seed = 1;
};
/// Writes a bank or a paper as a package of the open standard.
int quiz_export(const QuizExportChoice& choice);

struct QuizPracticeChoice {
    std::string file;                       ///< that keeps what was practised
    std::vector<std::string> banks;         ///< none: the shipped ones
    std::string field_day;                  ///< "2026-12-06"; empty: as kept
    std::string day;                        ///< taken for today; empty: ask the clock
    int each = 0;                           ///< questions of a topic in a session; 0: as kept
    bool is_refreshed = false;
    bool only_shows = false;                ///< the plan, without asking
    int width = 0;
};
/// Asks what is due today and keeps it; goes on where it was stopped.
int quiz_practice(const QuizPracticeChoice& choice);

/// The verbs on the command line.
class QuizVerbs {
public:
    explicit QuizVerbs(CLI::App& app);

    /// The one that was asked for, and its exit code; negative when it was none of these.
    int run() const;

private:
    struct Verb {
        CLI::App* app;
        std::function<int()> run;
    };

    QuizStatsChoice stats_;
    QuizImportChoice import_;
    QuizExportChoice export_;
    QuizPracticeChoice practice_;
    std::vector<Verb> verbs_;
};

}
