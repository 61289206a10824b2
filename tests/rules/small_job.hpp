#pragma once

#include "job/run_log.hpp"
#include "job/scenario.hpp"
#include "job/work_plan.hpp"

#include <string>
#include <string_view>
#include <vector>

/// A small invented job and its run log, written by hand the way a site writes it, for tests of rules without a site.
namespace flapdoor::rules {

/// One room with a window, a sill, a counter, a return register, a closet door and a door to the hall; a table; Ana
/// (certified renovator) and Ben (trained worker).
job::Scenario small_scenario();

/// One act of a job and what it does to states and measures.
struct Act {
    std::string label;
    job::Step step;
    std::vector<std::string> by{"ben"};
    std::vector<job::StateChange> states = {};  ///< set when the act ends (`at` is filled in)
    std::vector<job::Measure> measured = {};
    double minutes = 5.0;
    job::Outcome outcome = job::Outcome::done;
    double starts_at = -1.0;                    ///< minute of the day; -1: when the act before has ended
};

/// A day's acts in order, to be changed by a test and turned into a log.
class SmallJob {
public:
    SmallJob& add(Act act);
    SmallJob& without(std::string_view label);
    SmallJob& move_before(std::string_view label, std::string_view other);
    SmallJob& move_after(std::string_view label, std::string_view other);
    SmallJob& add_before(std::string_view other, Act act);
    SmallJob& add_after(std::string_view other, Act act);
    Act& at(std::string_view label);

    /// The step of an act, to be changed.
    template <class Step>
    Step& step(std::string_view label) { return std::get<Step>(at(label).step); }

    /// Acts one after the other from 8:00; the state `containment-whole` follows from the others.
    job::RunLog log() const;

private:
    std::size_t index(std::string_view label) const;
    std::vector<Act> acts_;
};

/// Everything in one good order: keeps every rule of the federal book.
SmallJob good_job();

job::StateChange begins(std::string state, std::string object = {});
job::StateChange ends(std::string state, std::string object = {});
job::Measure truth(std::string name, std::string object, bool value);
job::Measure number(std::string name, std::string object, double value);
job::Measure length(std::string name, std::string object, Length value);
job::Measure area(std::string name, std::string object, Area value);
job::Measure duration(std::string name, std::string object, Time value);

/// What working on the casing measures.
std::vector<job::Measure> worked_on(Length reach, bool has_debris_beyond = false);

// Cards with what they are about; the rest is as usual.
job::CloseBag closed(const char* bag);
job::VacuumSurfaces vacuumed(job::Target target);
job::MopFloor mopped();

}
