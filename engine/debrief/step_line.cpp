#include "debrief/step_line.hpp"

#include "rules/vocabulary.hpp"

namespace flapdoor::debrief {

namespace {

StepLine line_of(const job::LogEntry& entry, const job::Scenario& scenario)
{
    StepLine line{entry.card + 1, std::string(rules::title_of(entry.step)), job::Phase::work, {}, entry.outcome, entry.reason, entry.start, entry.end, {}};
    if (const rules::StepWords* words = rules::find_step(entry.step)) line.phase = words->phase;
    for (const job::PersonId& id : entry.by) {
        const job::Person* person = find_by_id(scenario.crew, id);
        line.by.push_back(person ? person->title : id.name);
    }
    return line;
}

}

std::vector<StepLine> step_lines(const job::RunLog& log, const job::Scenario& scenario, const std::vector<FaultLine>& faults)
{
    std::vector<StepLine> lines;
    for (const job::LogEntry& entry : log.entries) lines.push_back(line_of(entry, scenario));
    for (const FaultLine& fault : faults)
        for (const int step : fault.steps) lines.at(static_cast<std::size_t>(step)).faults.push_back(fault.number);
    return lines;
}

}
