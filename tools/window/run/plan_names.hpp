#pragma once

#include "window/drawing/board.hpp"
#include "window/drawing/name_places.hpp"
#include "window/run/moment.hpp"

#include <functional>
#include <vector>

namespace flapdoor::window {

/// People with their names beside them, where no other name stands. A name that had to go far has a line to its figure.
void draw_people(Board& board, NamePlaces& places, const Story& story, const Moment& moment);

/// What a thing is called, on a label, when there is room on it.
void draw_thing_name(Board& board, NamePlaces& places, const job::Object& object);

/// Rooms by their titles, each with what else is to be told of it; upright where that fits, turned in a narrow room. What has no
/// room without lying on another name is left out: first what else is told, then the title; the work room's then stands beside it.
/// @param more  a further line for a zone; may be empty
void draw_room_names(Board& board, NamePlaces& places, const Box& window, const std::vector<job::Zone>& zones,
                     const std::function<std::string(std::size_t zone)>& more = {});

}
