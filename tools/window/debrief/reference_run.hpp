#pragma once

#include "window/run/story.hpp"

#include <cstdint>
#include <future>
#include <memory>

namespace flapdoor::window {

/// The careful plan of the same drill on the same seed, carried out beside the window the first time somebody asks for it.
class ReferenceRun {
public:
    /// @param careful  of the same scenario as the run it is laid beside
    ReferenceRun(debrief::Inputs careful, std::uint64_t seed);

    /// The run, or null while it is being carried out.
    const std::shared_ptr<const Story>& story();
    bool is_under_way() const { return job_.valid(); }
    void wait(); ///< for tests and pictures

private:
    std::shared_ptr<const debrief::Inputs> careful_;
    std::uint64_t seed_;
    std::future<std::shared_ptr<const Story>> job_;
    std::shared_ptr<const Story> story_;
};

}
