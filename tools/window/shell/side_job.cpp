#include "window/shell/side_job.hpp"

namespace flapdoor::window {

SideJob::SideJob(debrief::Inputs inputs, std::uint64_t seed)
    : cards_done_(std::make_shared<std::atomic<std::size_t>>(0)),
      story_([inputs = std::move(inputs), seed, done = cards_done_](const std::atomic<bool>& is_let_go) {
          debrief::Job job = debrief::carry_through(inputs, seed, true, 1, [&](const site::Site&) {
              ++*done;
              if (is_let_go) throw LetGo{};
          });
          return tell(inputs, std::move(job));
      })
{
}

}
