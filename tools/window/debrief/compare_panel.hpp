#pragma once

#include "window/run/dust_pictures.hpp"
#include "window/run/moment.hpp"
#include "window/run/screen_state.hpp"
#include "window/stage/ui.hpp"

#include <array>

namespace flapdoor::window {

/// Two runs of one drill beside each other at the same time of day: plans above, lead outside over the day below.
class ComparePanel {
public:
    /// @param other  the reference run; null while it is being carried out
    void play(Ui& ui, const Box& box, const Story& own, const Story* other, Time now, const ScreenState& state);

private:
    std::array<DustPictures, 2> dust_;
};

/// What both are worth and where their dust is: marks and figures side by side.
void compare_sheet(Ui& ui, const Box& box, const Story& own, const Story* other, Time now);

}
