#pragma once

#include "quiz/practice/attempt.hpp"

#include <vector>

namespace flapdoor::quiz {

/// How likely a person knows a topic, moved by each answer (Corbett & Anderson 1995, UMUAI 4, 253-278). The figures cannot be
/// told apart from a short log, so they are fixed; the result chooses the next question and never passes anybody.
struct Tracing {
    double at_first = 0.20;     ///< knows it before the first question
    double learns = 0.15;       ///< from one question
    double slips = 0.10;        ///< wrong although it is known
};

/// After one more answer. @param guess  right although it is not known
double knowledge_after(double before, bool is_right, double guess, const Tracing& tracing = {});

/// How likely the next answer is right.
double chance_of_right(double knowledge, double guess, const Tracing& tracing = {});

/// After all answers in a topic.
double knowledge_of(const std::vector<Attempt>& attempts, Topic topic);

}
