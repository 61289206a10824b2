#pragma once

#include "core/result.hpp"
#include "job/scenario.hpp"

#include <map>
#include <memory>
#include <string>
#include <vector>

namespace flapdoor::quiz {

/// Finds the scenarios that lie in the folders of one folder; a folder is named as its scenario. Each is read once. Copies
/// share what was read.
class FindScenario {
public:
    using Found = Result<std::shared_ptr<const job::Scenario>>;

    explicit FindScenario(std::string folder);

    /// The scenario of that id, read and checked; the problems of its file; or null when there is none of that id.
    Found operator()(const std::string& id) const;

    /// Ids of all of them, in order.
    std::vector<std::string> all() const;

    /// Names of the work plans beside a scenario, in order; none for an unknown one.
    std::vector<std::string> plans(const std::string& id) const;

    const std::string& folder() const { return folder_; }

private:
    std::string folder_;
    std::shared_ptr<std::map<std::string, Found>> read_;
};

FindScenario scenarios_in(const std::string& folder);

}
