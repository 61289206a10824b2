#pragma once

#include <atomic>
#include <memory>
#include <thread>

namespace flapdoor::window {

/// Takes over a thread whose work nobody wants any more, so that nobody waits for it. It has been told to stop; it is joined when
/// it is over. Threads belong to the process, and so does the one list of these.
/// @param is_over  set by the thread as the last thing it does
void leave_behind(std::thread thread, std::shared_ptr<const std::atomic<bool>> is_over);

/// Joins all that were left behind: before the program ends, when no window is there any more.
void wait_for_those_left();

}
