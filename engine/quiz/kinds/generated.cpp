#include "quiz/kinds/generated.hpp"

#include "core/insist.hpp"
#include "quiz/complaints.hpp"
#include "quiz/making/generator.hpp"
#include "text/quote.hpp"

#include <algorithm>

namespace flapdoor::quiz {

Mark mark(const Generated&, const Response&)
{
    insist(false, "a template is made into a question before it is answered");
    return {};
}

void check(const Generated& asked, const Place& where, Complaints& complaints)
{
    std::vector<rules::Marked> names;
    for (const Misled& misled : asked.wrong) names.push_back(misled.misconception);
    complaints.must_differ("a misconception", names);
    const Generator* generator = find_generator(asked.by.text);
    if (generator == nullptr) {
        std::vector<std::string> known;
        for (const Generator& one : generators()) known.emplace_back(one.name);
        return complaints.unknown(asked.by, "generator", known);
    }
    const std::vector<std::string> mistakes(generator->mistakes.begin(), generator->mistakes.end());
    for (const rules::Marked& name : names)
        if (std::find(mistakes.begin(), mistakes.end(), name.text) == mistakes.end()) complaints.unknown(name, "misconception of that generator", mistakes);
    for (const std::string& mistake : mistakes)
        if (std::none_of(names.begin(), names.end(), [&](const rules::Marked& name) { return name.text == mistake; }))
            complaints.add(where, "a `wrong` table for the misconception " + text::quoted(mistake), "none");
}

}
