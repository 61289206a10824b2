#include "window/debrief/reference_run.hpp"

#include <chrono>
#include <thread>

namespace flapdoor::window {

const std::shared_ptr<const Story>& ReferenceRun::story()
{
    if (!story_ && !job_) job_ = std::make_unique<SideJob>(careful_, seed_);
    if (!job_) return story_;
    if (auto story = job_->take()) {
        story_ = std::make_shared<const Story>(std::move(*story));
        job_.reset();
    }
    return story_;
}

void ReferenceRun::wait()
{
    while (!story()) std::this_thread::sleep_for(std::chrono::milliseconds(2));
}

}
