#include "window/debrief/reference_run.hpp"

#include <chrono>

namespace flapdoor::window {

ReferenceRun::ReferenceRun(debrief::Inputs careful, std::uint64_t seed) : careful_(std::make_shared<const debrief::Inputs>(std::move(careful))), seed_(seed) {}

const std::shared_ptr<const Story>& ReferenceRun::story()
{
    if (!story_ && !job_.valid())
        job_ = std::async(std::launch::async, [careful = careful_, seed = seed_] {
            return std::make_shared<const Story>(tell(*careful, debrief::carry_through(*careful, seed, true)));
        });
    if (job_.valid() && job_.wait_for(std::chrono::seconds(0)) == std::future_status::ready) story_ = job_.get();
    return story_;
}

void ReferenceRun::wait()
{
    story();
    if (job_.valid()) story_ = job_.get();
}

}
