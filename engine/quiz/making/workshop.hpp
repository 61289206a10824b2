#pragma once

#include "core/result.hpp"
#include "debrief/main_job.hpp"
#include "quiz/find_scenario.hpp"

#include <cstdint>
#include <map>
#include <memory>
#include <string>
#include <tuple>

namespace flapdoor::quiz {

/// A plan that was carried out for a question.
struct Played {
    std::shared_ptr<const debrief::Inputs> inputs;
    job::RunLog log;
    rules::MarkingSheet sheet;
    debrief::Outcome outcome;
};

/// What questions are made from: drills, the federal rule book, and runs of plans. Each run is carried out once, with the
/// share of parcels that studies take, so the same seed gives the same question.
class Workshop {
public:
    /// @param folder  with the drills, and the rule books in its folder `rules`
    explicit Workshop(const std::string& folder) : find_(folder) {}

    const FindScenario& find() const { return find_; }

    /// Scenario, plan and book, read and checked; every problem of the three files.
    Result<std::shared_ptr<const debrief::Inputs>> inputs(const std::string& drill, const std::string& plan);

    Result<std::shared_ptr<const Played>> play(const std::string& drill, const std::string& plan, std::uint64_t seed);

private:
    FindScenario find_;
    std::map<std::pair<std::string, std::string>, std::shared_ptr<const debrief::Inputs>> read_;
    std::map<std::tuple<std::string, std::string, std::uint64_t>, std::shared_ptr<const Played>> played_;
};

}
