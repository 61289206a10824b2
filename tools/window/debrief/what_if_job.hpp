#pragma once

#include "debrief/report.hpp"
#include "text/language.hpp"
#include "window/shell/beside.hpp"

#include <atomic>
#include <cstdint>
#include <memory>
#include <optional>

namespace flapdoor::window {

/// What each mistake of a run did, worked out beside the window when somebody asks for it. Letting it go never waits; it stops
/// before its next run.
class WhatIfJob {
public:
    /// Begins, unless it is under way or done already.
    /// @param reference  the careful plan of the same scenario, from which missing cards are taken; nothing: none is
    void start(debrief::Inputs inputs, std::optional<job::WorkPlan> reference, const debrief::Report& report);
    void stop();

    bool is_under_way() const { return work_ != nullptr; }
    std::size_t done() const { return count_ ? count_->done.load() : 0; }
    std::size_t of() const { return count_ ? count_->of.load() : 0; }       ///< 0 until it is known

    /// The report of the run with its what-ifs once they are there, told in the language spoken; null before. Never waits.
    const debrief::Report* report();
    void wait(); ///< for tests and pictures

private:
    struct Count {
        std::atomic<std::size_t> done = 0, of = 0;
    };
    void tell_again();

    std::shared_ptr<Count> count_;
    std::unique_ptr<Beside<debrief::WhatIfs>> work_;
    std::optional<debrief::Report> report_;
    job::WorkPlan plan_;                        ///< the run's, which the edits of repairs are about
    std::optional<job::WorkPlan> reference_;    ///< which mistakes are put into
    text::Language told_in_ = text::Language::english;
};

}
