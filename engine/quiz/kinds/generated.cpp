#include "quiz/kinds/generated.hpp"

#include "core/insist.hpp"
#include "quiz/complaints.hpp"

namespace flapdoor::quiz {

Mark mark(const Generated&, const Response&)
{
    insist(false, "a template is made into a question before it is answered");
    return {};
}

void check(const Generated& asked, const Place&, Complaints& complaints)
{
    std::vector<rules::Marked> names;
    for (const Misled& misled : asked.wrong) names.push_back(misled.misconception);
    complaints.must_differ("a misconception", names);
}

}
