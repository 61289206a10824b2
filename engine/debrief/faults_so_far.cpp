#include "debrief/faults_so_far.hpp"

#include "rules/evaluate.hpp"
#include "rules/mending.hpp"

#include <algorithm>

namespace flapdoor::debrief {

std::vector<FaultLine> faults_so_far(const rules::RuleBook& book, const job::Scenario& scenario, const job::RunLog& log)
{
    if (log.entries.empty()) return {};
    const Time end = log.entries.back().end;
    std::vector<rules::Verdict> verdicts = rules::evaluate(book, scenario, log);
    for (std::size_t i = 0; i < verdicts.size(); ++i) {
        rules::Verdict& verdict = verdicts[i];
        if (verdict.ruling != rules::Ruling::broken && verdict.ruling != rules::Ruling::consequence) continue;
        std::erase_if(verdict.faults, [&](const rules::Fault& fault) { return rules::can_be_mended(book.rules[i].when, fault, end); });
        if (verdict.faults.empty()) verdict.ruling = rules::Ruling::not_applicable;
    }
    return fault_lines(rules::marking_sheet(book, verdicts, log));
}

}
