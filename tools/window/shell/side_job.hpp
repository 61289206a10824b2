#pragma once

#include "window/run/story.hpp"
#include "window/shell/beside.hpp"

#include <atomic>
#include <cstddef>
#include <cstdint>
#include <memory>
#include <optional>

namespace flapdoor::window {

/// A plan carried out beside the window. Letting it go never waits; it stops at its next card.
class SideJob {
public:
    SideJob(debrief::Inputs inputs, std::uint64_t seed);

    /// The story once it is there; then never again. Never waits.
    std::optional<Story> take() { return story_.take(); }
    std::size_t cards_done() const { return *cards_done_; }

private:
    std::shared_ptr<std::atomic<std::size_t>> cards_done_;
    Beside<Story> story_;
};

}
