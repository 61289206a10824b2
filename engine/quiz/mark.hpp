#pragma once

#include "quiz/phrase.hpp"
#include "rules/fraction.hpp"

#include <string>
#include <vector>

namespace flapdoor::quiz {

class Complaints;

/// What an answer is worth and what is told about it.
struct Mark {
    rules::Fraction share{0, 1};    ///< of the question's points: 0 to 1, exact
    int of = 1;                     ///< points the question is worth
    bool is_right = false;          ///< all of it
    std::vector<std::string> misconceptions;    ///< names of those the answer shows
    std::vector<Phrase> told;       ///< what to say about this answer, before the question's own reason
};

/// Share times points.
double points(const Mark& mark);

}
