#include "quiz/making/moment.hpp"

#include "rules/things.hpp"
#include "rules/vocabulary.hpp"

#include <algorithm>

namespace flapdoor::quiz {

Phrase card_phrase(const job::LogEntry& entry, const job::Scenario& scenario)
{
    const Phrase title = phrase(rules::title_of(entry.step));
    std::string thing;
    for (const char* parameter : {"opening", "object", "component", "sill", "counter", "worker", "bag"})
        if (thing.empty()) thing = job::parameter(entry, parameter);
    if (thing.empty()) return title;
    Phrase both{"{step} ({thing})", "{step} ({thing})", {}, {}};
    both.blanks["step"] = title;
    both.blanks["thing"] = phrase(rules::title_of_thing(thing, scenario));
    return both;
}

std::vector<CardFault> card_faults(const Played& played)
{
    std::vector<CardFault> faults;
    for (const auto* list : {&played.sheet.broken, &played.sheet.lines})
        for (const rules::SheetRule& rule : *list)
            for (const rules::Fault& fault : rule.faults)
                if (const int entry = fault.second >= 0 ? fault.second : fault.first; entry >= 0 && rule.weight > 0) faults.push_back({entry, &rule});
    std::stable_sort(faults.begin(), faults.end(), [](const CardFault& a, const CardFault& b) { return a.entry < b.entry; });
    return faults;
}

}
