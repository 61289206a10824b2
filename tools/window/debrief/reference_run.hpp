#pragma once

#include "window/shell/side_job.hpp"

#include <cstdint>
#include <memory>

namespace flapdoor::window {

/// The careful plan of the same drill on the same seed, carried out beside the window the first time somebody asks for it.
class ReferenceRun {
public:
    /// @param careful  of the same scenario as the run it is laid beside
    ReferenceRun(debrief::Inputs careful, std::uint64_t seed) : careful_(std::move(careful)), seed_(seed) {}

    /// The run, or null while it is being carried out.
    const std::shared_ptr<const Story>& story();
    const debrief::Inputs& inputs() const { return careful_; }
    bool is_under_way() const { return job_ != nullptr; }
    void wait(); ///< for tests and pictures

private:
    debrief::Inputs careful_;
    std::uint64_t seed_;
    std::unique_ptr<SideJob> job_;
    std::shared_ptr<const Story> story_;
};

}
