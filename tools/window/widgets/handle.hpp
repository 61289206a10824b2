#pragma once

#include "window/stage/ui.hpp"

#include <string_view>

namespace flapdoor::window {

enum class HandleWay : int { sideways, upright, any };

/// A grip on a drawing that is dragged, or moved by the arrow keys while the keyboard is on it.
struct HandleLook {
    std::string_view label = {};
    std::string_view value = {}; ///< as shown beside it while it is held or has the keyboard
    HandleWay way = HandleWay::any;
    std::string_view hint = {};
};

/// What came of it: where the pointer holds it, or by how many steps the keys moved it.
struct HandleMove {
    Touch touch;
    Point drag;     ///< since the frame before, pixels
    int right = 0;  ///< steps by keys; up counts as positive in `up`
    int up = 0;
};

HandleMove handle(Ui& ui, std::string_view name, Point at, const HandleLook& look);

}
