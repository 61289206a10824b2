#pragma once

#include "mechanics/flap_swing.hpp"

#include <map>
#include <utility>
#include <vector>

namespace flapdoor::mechanics {

/// What is already known of flap doors, so that a run works each of them out once. Copies know what the original knew.
class FlapBook {
public:
    const FlapSwing& swing(const FlapDoor& door, Heading heading);
    const std::vector<Lean>& leans(const FlapDoor& door);

    /// How many swings and settlings were worked out so far.
    std::size_t worked_out() const { return swings_.size() + leans_.size(); }

private:
    std::map<std::pair<FlapDoor, Heading>, FlapSwing> swings_;
    std::map<FlapDoor, std::vector<Lean>> leans_;
};

}
