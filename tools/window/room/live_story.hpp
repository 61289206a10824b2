#pragma once

#include "window/run/story.hpp"

#include "debrief/faults_so_far.hpp"
#include "drill/attempt.hpp"

#include <memory>

namespace flapdoor::window {

/// The story of a run that is still being decided: the same panels show it as show a finished one.
class LiveStory {
public:
    /// @param tells_faults  false: faults stay unknown until the end
    LiveStory(debrief::Inputs inputs, const drill::Attempt& attempt, bool tells_faults);

    /// After news from the attempt, and after something was taken back. @return faults that were not there before
    std::vector<debrief::FaultLine> follow(const drill::Attempt& attempt);

    const std::shared_ptr<Story>& story() const { return story_; }

private:
    void add_card_in_play(const drill::Attempt& attempt);

    std::shared_ptr<Story> story_;
    bool tells_faults_;
    std::size_t cards_judged_ = 0;
    std::uint64_t edition_ = 0;
};

}
