#include "quiz/practice/knowledge.hpp"

namespace flapdoor::quiz {

double chance_of_right(double knowledge, double guess, const Tracing& tracing) { return knowledge * (1.0 - tracing.slips) + (1.0 - knowledge) * guess; }

double knowledge_after(double before, bool is_right, double guess, const Tracing& tracing)
{
    const double right = chance_of_right(before, guess, tracing);
    const double now = is_right ? before * (1.0 - tracing.slips) / right : before * tracing.slips / (1.0 - right);
    return now + (1.0 - now) * tracing.learns;
}

double knowledge_of(const std::vector<Attempt>& attempts, Topic topic)
{
    double knowledge = Tracing{}.at_first;
    for (const Attempt& attempt : attempts)
        if (attempt.topic == topic) knowledge = knowledge_after(knowledge, attempt.is_right, attempt.guess);
    return knowledge;
}

}
