#pragma once

#include "debrief/outcome.hpp"
#include "debrief/trace.hpp"
#include "drill/film.hpp"
#include "drill/run_file.hpp"
#include "rules/marking_sheet.hpp"

#include <functional>
#include <string>
#include <vector>

namespace flapdoor::debrief {

/// All that a run is made from, read and checked: scenario, work plan and rule book with the texts they came from.
struct Inputs {
    job::Scenario scenario;
    job::WorkPlan plan;
    rules::RuleBook book;
    drill::InputText scenario_text, plan_text, book_text;
};

/// Reads the files; every problem of all of them.
/// @param book_paths  the lowest book first, each further one lying on what is below it. Several are kept as the one book
///                    they make together, so that a run file stands alone
Result<Inputs> read_inputs(const std::string& scenario_path, const std::string& plan_path, const std::vector<std::string>& book_paths);

/// A run with its marks and its dust.
struct Job {
    drill::Run run;
    rules::MarkingSheet sheet;
    Outcome outcome;
    drill::Film film;       ///< empty unless asked for
    Trace trace;            ///< which card let loose what got out and what was left
};

/// The main job: scenario + work plan + seed -> run -> marking sheet and outcome. The same in the window, on the command
/// line and in tests.
/// @param after_card  called after each card, e.g. to measure or to show progress
Job carry_through(const Inputs& inputs, std::uint64_t seed, bool with_film, unsigned threads = 1, const std::function<void(const site::Site&)>& after_card = {});

/// What of a job is kept on disk.
drill::RunFile run_file(const Inputs& inputs, const Job& job);

/// A kept run carried out and marked again.
struct Check {
    Inputs inputs;
    Job job;
    std::optional<int> first_difference;    ///< card after which the site differs from the file's
    bool has_same_marks = false;
    bool has_same_ledger = false;

    bool is_same() const { return !first_difference && has_same_marks && has_same_ledger; }
};

/// Carries a kept run out again and compares hashes card by card, the ledger and the marks. Claims that do not follow from
/// the kept inputs are found here.
Result<Check> check(const drill::RunFile& file, unsigned threads = 1);

}
