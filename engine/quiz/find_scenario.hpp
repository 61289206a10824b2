#pragma once

#include "core/result.hpp"
#include "job/scenario.hpp"

#include <functional>
#include <memory>
#include <string>

namespace flapdoor::quiz {

/// Gives the scenario of that id, read and checked; the problems of its file; or null when there is none of that id.
using FindScenario = std::function<Result<std::shared_ptr<const job::Scenario>>(const std::string& id)>;

/// Scenarios in the folders of one folder, each read once; a folder is named as its scenario.
FindScenario scenarios_in(const std::string& folder);

}
