#pragma once

#include "debrief/main_job.hpp"
#include "debrief/study_column.hpp"

#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace flapdoor::debrief {

/// A file that a study was made from.
struct StudyInput {
    std::string name;           ///< of a plan its file's, without folder and ending; of scenario and book their id
    std::uint64_t hash = 0;     ///< of its text
    std::string title;

    friend bool operator==(const StudyInput&, const StudyInput&) = default;
};

/// What a study was made from. Two studies fit together when theirs are the same.
struct StudyBasis {
    std::string program;                ///< version of the program
    double detail = 1.0;                ///< share of the usual number of parcels
    StudyInput scenario, book;
    std::vector<StudyInput> plans;      ///< each with a name of its own
    std::vector<StudyColumn> columns;

    friend bool operator==(const StudyBasis&, const StudyBasis&) = default;
};

/// What came of one plan with one seed.
struct StudyRow {
    std::uint64_t seed = 1;
    std::size_t plan = 0;                       ///< in the basis
    std::uint64_t hash = 0;                     ///< of the site at the end; 0 for a plan without cards
    std::vector<std::optional<double>> values;  ///< [column]

    friend bool operator==(const StudyRow&, const StudyRow&) = default;
};

/// Plans of one scenario carried out with many seeds, every plan with the same ones: what differs between plans is then the
/// plans' doing more often than luck's.
struct Study {
    StudyBasis basis;
    std::vector<StudyRow> rows;     ///< by seed, then plan; each pair once

    friend bool operator==(const Study&, const Study&) = default;
};

/// Share of the usual number of parcels that a study takes unless asked otherwise. Amounts are shared among fewer, larger
/// parcels; what is uncertain about the model is far larger than what is lost by that.
inline constexpr double light_detail = 0.125;

/// How a study is to be made.
struct StudyOrder {
    std::vector<std::uint64_t> seeds;
    unsigned threads = 1;                       ///< runs at a time; changes no result
    /// After each run, one call at a time, from any thread: the study so far, and how many of its runs are still to come.
    std::function<void(const Study&, std::size_t)> after_run = {};
    /// Asked before each run, from any thread; true ends the study with what it has.
    std::function<bool()> should_stop = {};
};

/// Nothing run yet. Insists that there is a plan and that all inputs have one scenario and one book.
Study begin_study(const std::vector<Inputs>& plans, const std::string& program, double detail = light_detail);

/// Carries out what the study does not have yet. The result is the same for every number of threads, and the same whether it
/// was made in one go or in pieces. Insists that the study was begun with these inputs.
Study carry_on(const std::vector<Inputs>& plans, Study study, const StudyOrder& order);

/// One run of a study, as `carry_on` makes it.
/// @param flaps  what earlier runs worked out of flap doors, and what this one adds; changes no result
StudyRow study_row(const Inputs& inputs, const StudyBasis& basis, std::size_t plan, std::uint64_t seed, mechanics::FlapBook& flaps);

/// Part `part` of `parts` of the seeds: every parts-th one. @param part  1 to parts; insists
std::vector<std::uint64_t> part_of(const std::vector<std::uint64_t>& seeds, std::size_t part, std::size_t parts);

/// What the second has is put into the first. Nothing when both have the same basis and the same results where they have the
/// same runs; otherwise what differs, in words, and the first is left as it was.
std::optional<std::string> pool(Study& into, const Study& more);

/// What differs between two bases, in words, the first difference only; nothing when they are the same.
std::optional<std::string> difference(const StudyBasis& a, const StudyBasis& b);

}
