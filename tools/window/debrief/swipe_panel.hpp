#pragma once

#include "window/run/dust_pictures.hpp"
#include "window/run/moment.hpp"
#include "window/run/screen_state.hpp"
#include "window/stage/ui.hpp"

#include <array>
#include <string>
#include <vector>

namespace flapdoor::window {

/// A moment of a run that is worth a look at the floor.
struct FloorMoment {
    std::string name;   ///< stable, "as-found"
    std::string title;  ///< in the language in force
    Time at{};
};

/// As found, before the cleaning (when paint was worked on), at the end.
std::vector<FloorMoment> floor_moments(const Story& story);

/// Two moments of one run on the plan, a divider between them: left of it the earlier one, right of it the later. Dragged,
/// or moved by the arrow keys; each side says its moment.
class SwipePanel {
public:
    void play(Ui& ui, const Box& box, const Story& story, ViewKind view, bool keeps_still);

    double divider() const { return divider_; } ///< share of the width, 0 to 1
    std::array<std::size_t, 2> chosen() const { return chosen_; }

private:
    void choice(Ui& ui, const Story& story, const Box& head);

    double divider_ = 0.5;
    std::array<std::size_t, 2> chosen_{0, 99};  ///< in floor_moments; beyond the last: the last
    std::array<DustPictures, 2> dust_;
};

}
