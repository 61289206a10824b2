#include "window/shell/side_job.hpp"

#include <chrono>

namespace flapdoor::window {

namespace {

struct LetGo {};

}

SideJob::SideJob(debrief::Inputs inputs, std::uint64_t seed)
    : is_let_go_(std::make_shared<std::atomic<bool>>(false)), cards_done_(std::make_shared<std::atomic<std::size_t>>(0)),
      story_(std::async(std::launch::async, [inputs = std::move(inputs), seed, stop = is_let_go_, done = cards_done_] {
          debrief::Job job = debrief::carry_through(inputs, seed, true, 1, [&](const site::Site&) {
              ++*done;
              if (*stop) throw LetGo{};
          });
          return tell(inputs, std::move(job));
      }))
{
}

SideJob::~SideJob() { *is_let_go_ = true; } // the future waits for the card under way, no longer

std::optional<Story> SideJob::take()
{
    if (!story_.valid() || story_.wait_for(std::chrono::seconds(0)) != std::future_status::ready) return std::nullopt;
    return story_.get();
}

}
