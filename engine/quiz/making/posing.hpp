#pragma once

#include "core/result.hpp"
#include "quiz/making/workshop.hpp"
#include "quiz/question.hpp"

#include <cstdint>
#include <string>
#include <vector>

namespace flapdoor::quiz {

/// Makes a bank's question ready to be asked: a template is filled in, a run is played, options, cards and places are put in
/// an order of their own. The same question, drills and seed give the same, always.
/// @param drills  whose figures a template takes, by the seed; where one is no good for it, the next is tried. Not empty; insists
/// @return        problems of files that it needs, or that none of the drills will do
Result<Question> pose(const Question& question, Workshop& workshop, const std::vector<std::string>& drills, std::uint64_t seed);

}
