#include "quiz/kinds/predict.hpp"

#include "quiz/complaints.hpp"
#include "quiz/kinds/choose_one.hpp"

namespace flapdoor::quiz {

Mark mark(const Predict& asked, const Response& response) { return mark(ChooseOne{asked.options}, response); }

/// Whether scenario and plans are there is told when they are carried out.
void check(const Predict& asked, const Place& where, Complaints& complaints)
{
    const std::size_t wanted = asked.what == Foretold::main_pathway ? 1 : 2;
    const bool is_fit = asked.what == Foretold::main_pathway || asked.what == Foretold::times_outside ? asked.plans.size() == wanted : asked.plans.size() >= wanted;
    if (!is_fit) complaints.add(where, wanted == 1 ? "one plan" : "two plans to compare", std::to_string(asked.plans.size()));
    if (asked.plans.size() > 4) complaints.add(where, "at most four plans", std::to_string(asked.plans.size()));
    complaints.must_differ("a plan", asked.plans);
}

}
