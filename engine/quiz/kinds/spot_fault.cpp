#include "quiz/kinds/spot_fault.hpp"

#include "quiz/kinds/choose_one.hpp"

namespace flapdoor::quiz {

Mark mark(const SpotFault& asked, const Response& response) { return mark(ChooseOne{asked.moments}, response); }

/// Whether scenario, plan and rule are there is told when the run is played.
void check(const SpotFault&, const Place&, Complaints&) {}

}
