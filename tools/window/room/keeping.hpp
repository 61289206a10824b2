#pragma once

#include "window/shell/screens.hpp"

#include "drill/attempt.hpp"

#include <vector>

namespace flapdoor::window {

/// A drill that was left before its end, or a file that should hold one and does not read. Such a file stays where it is.
struct LeftDrill {
    std::filesystem::path file;
    Result<drill::Resumed> drill;
};

/// All drills in progress, the latest first.
std::vector<LeftDrill> left_drills(const Places& places);

/// File that a drill in progress is kept in.
std::filesystem::path unfinished_file(const Places& places, const std::string& drill);

/// A drill as it stands, to be kept. Insists that no card is in play.
drill::Unfinished as_it_stands(const Sitting& sitting, const drill::Attempt& attempt);

/// The run as the main job would have made it: marked, with its dust and its pictures.
debrief::Job as_job(const debrief::Inputs& inputs, const drill::Attempt& attempt, const std::string& title);

/// The inputs of a run that was decided card by card: texts written anew, so that its run file stands alone.
debrief::Inputs inputs_of(const debrief::Inputs& drill, const job::Scenario& taken, job::WorkPlan plan);

/// Keeps a finished run in a file of its own. @return where
Result<std::filesystem::path> keep_run(const Places& places, const debrief::Inputs& inputs, const debrief::Job& job);

}
