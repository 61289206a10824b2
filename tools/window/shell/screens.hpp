#pragma once

#include "drill/unfinished.hpp"
#include "quiz/paper.hpp"
#include "quiz/sitting.hpp"
#include "window/run/story.hpp"
#include "window/shell/drills.hpp"
#include "window/shell/shell.hpp"

#include <cstdint>
#include <filesystem>
#include <memory>
#include <optional>
#include <string>

// The screens and how one asks for them: `shell.go_to(watch_screen(shell, inputs, 1))`.
namespace flapdoor::window {

/// How a drill is taken.
enum class Mode : int {
    step_by_step,   ///< cards are decided one by one; faults are told when they happen
    marked,         ///< the same; nothing is told before the end, nothing is taken back
    order_first,    ///< the cards of the careful plan are put in order, then watched
    spot_the_fault, ///< a faulty plan is played; moments are marked
    for_a_class     ///< on the wall: freeze and ask
};

/// Who takes which drill, and how.
struct Sitting {
    std::shared_ptr<const Drill> drill;
    Mode mode = Mode::step_by_step;
    std::uint64_t seed = 1;
    std::string who; ///< kept in the run file and nowhere else; may be empty
};

/// Choose a drill, a mode, a language; go on with one that was left.
std::unique_ptr<Screen> start_screen(Shell& shell);

/// The first screen of a sitting.
std::unique_ptr<Screen> screen_of(Shell& shell, Sitting sitting);

/// The job, the place, the crew, what is asked; and what is taken along.
std::unique_ptr<Screen> brief_screen(Shell& shell, Sitting sitting);

/// The drill itself, card by card. @param taken  the scenario with only what was taken along
std::unique_ptr<Screen> room_screen(Shell& shell, Sitting sitting, job::Scenario taken);

/// The same, gone on with where it was left. Insists that the sitting's drill is the one that was left.
std::unique_ptr<Screen> resumed_room(Shell& shell, Sitting sitting, drill::Resumed resumed);

/// Cards of the careful plan to be put in order, then watched.
std::unique_ptr<Screen> order_screen(Shell& shell, Sitting sitting);

/// A faulty plan is played; moments are marked.
std::unique_ptr<Screen> spot_screen(Shell& shell, Sitting sitting);

/// Choose whose run the class watches; freeze and ask, votes, reveal, then play.
std::unique_ptr<Screen> class_screen(Shell& shell, Sitting sitting);

/// Carries a plan out meanwhile, then shows its debrief.
/// @param careful  as for the debrief
std::unique_ptr<Screen> watch_screen(Shell& shell, debrief::Inputs inputs, std::uint64_t seed, std::optional<debrief::Inputs> careful = {});

/// A finished run: film, marks, faults, dust, and what each mistake did.
/// @param careful  the careful plan of the same drill, which the run can be laid beside and its repairs are taken from
std::unique_ptr<Screen> debrief_screen(Shell& shell, std::shared_ptr<const Story> story, std::optional<debrief::Inputs> careful = {});

/// Practise what is due, choose a paper of questions, or go on with one that was left. @param who  whose plan is shown; may be empty
std::unique_ptr<Screen> quiz_start_screen(Shell& shell, std::string who = {});

/// One person sits a paper. @param file  keeps the answers after each one
std::unique_ptr<Screen> sitting_screen(Shell& shell, quiz::Paper paper, quiz::SittingResult sitting, std::filesystem::path file);

}
