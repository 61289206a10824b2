#pragma once

#include "quiz/making/workshop.hpp"
#include "quiz/question.hpp"

#include <optional>
#include <string>

/// Answers that a run gives.
namespace flapdoor::quiz {

/// Plays the run and fills in the cards that are shown and which of them is right; `why` gets the blanks {rule}, {reason}
/// and {cite} of the rule. What stands in the way: files with problems, a rule that the run does not break.
Result<void> play(Question& question, SpotFault& asked, Workshop& workshop);

/// Carries the plans out and fills in options and reveal. In the way, besides files: outcomes too much alike to be foretold.
Result<void> play(Question& question, Predict& asked, Workshop& workshop);

/// A way out as people call it: "the return air", in English; a catalog holds it.
std::string_view way_text(dust::Pathway pathway);

}
