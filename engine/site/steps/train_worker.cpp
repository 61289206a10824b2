#include "site/hands.hpp"

#include <algorithm>

namespace flapdoor::site {

Refusal why_not(const Site& site, const job::TrainWorker& step, const Team& by)
{
    if (!is_certified(site, by)) return to_say("only a certified renovator trains workers for the job");
    if (std::find(by.begin(), by.end(), step.worker) != by.end()) return to_say("nobody trains himself");
    return std::nullopt;
}

Done carry_out(Site& site, const job::TrainWorker& step, const Team&)
{
    spend(site, job::TrainWorker::takes);
    worker(site, step.worker).is_trained = true;
    return {};
}

}
