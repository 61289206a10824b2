#include "mechanics/flap_book.hpp"

namespace flapdoor::mechanics {

const FlapSwing& FlapBook::swing(const FlapDoor& door, Heading heading)
{
    const std::pair key{door, heading};
    auto found = swings_.find(key);
    if (found == swings_.end()) found = swings_.emplace(key, mechanics::swing(door, heading)).first;
    return found->second;
}

const std::vector<Lean>& FlapBook::leans(const FlapDoor& door)
{
    auto found = leans_.find(door);
    if (found == leans_.end()) found = leans_.emplace(door, mechanics::leans(door)).first;
    return found->second;
}

}
