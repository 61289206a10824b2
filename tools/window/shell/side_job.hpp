#pragma once

#include "window/run/story.hpp"

#include <atomic>
#include <future>
#include <memory>
#include <optional>

namespace flapdoor::window {

/// A plan carried out beside the window. Letting it go stops it at the next card.
class SideJob {
public:
    SideJob(debrief::Inputs inputs, std::uint64_t seed);
    ~SideJob();

    /// The story once it is there; then never again. Never waits.
    std::optional<Story> take();
    std::size_t cards_done() const { return *cards_done_; }

private:
    std::shared_ptr<std::atomic<bool>> is_let_go_;
    std::shared_ptr<std::atomic<std::size_t>> cards_done_;
    std::future<Story> story_;
};

}
