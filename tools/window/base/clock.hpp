#pragma once

#include <chrono>

namespace flapdoor::window {

/// Of a clock that never goes back; only differences mean something.
inline double seconds_now() { return std::chrono::duration<double>(std::chrono::steady_clock::now().time_since_epoch()).count(); }

}
