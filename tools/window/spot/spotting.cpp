#include "window/spot/spotting.hpp"

#include <algorithm>
#include <cmath>

namespace flapdoor::window {

namespace {

bool counts(const Story& story, const Happening& happening, Time mark)
{
    if (mark >= happening.at && mark <= happening.at + spotting_patience) return true;
    if (happening.card < 0) return false;
    const job::LogEntry& card = story.log.entries[static_cast<std::size_t>(happening.card)];
    return mark >= card.start && mark <= card.end + spotting_patience;
}

}

SpottingScore scored(const Story& story, std::vector<Time> marks)
{
    SpottingScore score;
    for (const Happening& happening : story.happenings) {
        if (!story.report.faults[happening.fault].is_weighed()) continue;
        const auto known = std::find_if(score.sightings.begin(), score.sightings.end(), [&](const Sighting& s) { return s.fault == happening.fault; });
        if (known == score.sightings.end()) score.sightings.push_back({happening.fault, {happening.at}, false});
        else known->moments.push_back(happening.at);
    }
    std::sort(marks.begin(), marks.end());
    for (const Time mark : marks) {
        Sighting* best = nullptr;
        double nearest = 0.0;
        for (Sighting& sighting : score.sightings) {
            if (sighting.is_spotted) continue;
            for (const Happening& happening : story.happenings) {
                if (happening.fault != sighting.fault || !counts(story, happening, mark)) continue;
                const double apart = std::abs((mark - happening.at).si);
                if (best == nullptr || apart < nearest) best = &sighting, nearest = apart;
            }
        }
        score.marks.push_back({mark, best ? std::optional(best->fault) : std::nullopt});
        if (best) best->is_spotted = true, ++score.spotted;
        else ++score.idle;
    }
    return score;
}

}
