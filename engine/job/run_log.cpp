#include "job/run_log.hpp"

namespace flapdoor::job {

bool holds(const RunLog& log, const std::string& state, const std::string& object, Time at)
{
    bool is_holding = false;
    for (const StateChange& change : log.states) {
        if (change.at > at) break;
        if (change.state == state && change.object == object) is_holding = change.holds;
    }
    return is_holding;
}

const Measure* find_measure(const LogEntry& entry, const std::string& name, const std::string& object)
{
    for (const Measure& measure : entry.measured)
        if (measure.name == name && (object.empty() || measure.object == object)) return &measure;
    return nullptr;
}

std::string parameter(const LogEntry& entry, const std::string& name)
{
    for (const Parameter& p : entry.with)
        if (p.name == name) return p.value;
    return {};
}

}
