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

/// A plan of a study: one that was asked about, or one of those with one of its faults repaired.
struct StudyPlan : StudyInput {
    std::string repaired_from;      ///< name of the plan in which the fault stood; empty for a plan asked about
    std::vector<int> faults;        ///< those repaired, as numbered on that plan's marking sheet; its title is the rule that the first one broke

    bool is_repaired() const { return !repaired_from.empty(); }
    friend bool operator==(const StudyPlan&, const StudyPlan&) = default;
};

/// What a study was made from. Two studies fit together when theirs are the same.
struct StudyBasis {
    std::string program;                ///< version of the program
    double detail = 1.0;                ///< share of the usual number of parcels
    StudyInput scenario, book;
    std::vector<StudyPlan> plans;       ///< each with a name of its own; repaired ones behind those asked about
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

/// A plan with one of its faults repaired.
struct RepairedPlan {
    std::size_t from = 0;           ///< the plan with the fault, of those that are studied
    std::string rule;               ///< that the first fault broke, in English
    std::vector<int> faults;        ///< on the marking sheet of the plan with the fault
    Inputs inputs;                  ///< the changed plan
};

/// Nothing run yet. Insists that there is a plan and that all inputs have one scenario and one book.
/// @param plans     asked about
/// @param repaired  of these, carried out beside them
Study begin_study(const std::vector<Inputs>& plans, const std::string& program, double detail = light_detail, const std::vector<RepairedPlan>& repaired = {});

/// Numbers of the plans asked about: they stand before the repaired ones.
std::vector<std::size_t> plans_asked_about(const Study& study);

/// The inputs of all plans of a study, in its order.
std::vector<Inputs> all_inputs(std::vector<Inputs> plans, const std::vector<RepairedPlan>& repaired);

/// Carries out what the study does not have yet. The result is the same for every number of threads, and the same whether it
/// was made in one go or in pieces. Insists that the study was begun with these inputs.
/// @param plans  all of the study, repaired ones too
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
