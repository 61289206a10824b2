#include "window/shell/left_threads.hpp"

#include <algorithm>
#include <mutex>
#include <utility>
#include <vector>

namespace flapdoor::window {

namespace {

struct Left {
    std::thread thread;
    std::shared_ptr<const std::atomic<bool>> is_over;
};

/// Whoever ends the program without asking waits here at the latest.
struct LeftThreads {
    std::mutex door;
    std::vector<Left> list;

    ~LeftThreads()
    {
        for (Left& left : list) left.thread.join();
    }
};

LeftThreads& left_threads()
{
    static LeftThreads threads;
    return threads;
}

}

void leave_behind(std::thread thread, std::shared_ptr<const std::atomic<bool>> is_over)
{
    LeftThreads& threads = left_threads();
    const std::scoped_lock lock(threads.door);
    threads.list.push_back({std::move(thread), std::move(is_over)});
    const auto first_over = std::partition(threads.list.begin(), threads.list.end(), [](const Left& left) { return !left.is_over->load(); });
    std::for_each(first_over, threads.list.end(), [](Left& left) { left.thread.join(); }); // over: nothing is waited for
    threads.list.erase(first_over, threads.list.end());
}

void wait_for_those_left()
{
    LeftThreads& threads = left_threads();
    std::vector<Left> list;
    {
        const std::scoped_lock lock(threads.door);
        list = std::exchange(threads.list, {});
    }
    for (Left& left : list) left.thread.join();
}

}
