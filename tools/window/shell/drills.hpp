#pragma once

#include "debrief/main_job.hpp"

#include <filesystem>
#include <memory>
#include <string>
#include <vector>

namespace flapdoor::window {

/// A shipped drill, read: its scenario, the careful plan to learn from, and faulty plans to find the faults of.
struct Drill {
    std::string id;                             ///< of its scenario
    debrief::Inputs careful;                    ///< scenario, rule book, and the plan `good.toml`
    std::vector<std::filesystem::path> faulty;  ///< the other plans in its folder, by name
};

/// A drill that does not read: told on its card, and nothing else stops.
struct BrokenDrill {
    std::string folder;
    Problems problems;
};

/// All drills of a folder, by the names of their folders.
struct DrillShelf {
    std::vector<std::shared_ptr<const Drill>> drills;
    std::vector<BrokenDrill> broken;

    std::shared_ptr<const Drill> find(const std::string& id) const; ///< null when it is not there
};

/// @param book  name of the rule book in `scenarios/rules`
DrillShelf read_drills(const std::filesystem::path& scenarios, const std::string& book);

}
