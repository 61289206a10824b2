#include "debrief/worklist.hpp"

#include <algorithm>
#include <atomic>
#include <exception>
#include <thread>
#include <vector>

namespace flapdoor::debrief {

void work_off(std::size_t count, unsigned threads, const std::function<void(std::size_t)>& work)
{
    std::atomic<std::size_t> next = 0;
    std::mutex mutex;
    std::exception_ptr failure;
    const auto take = [&] {
        try {
            for (std::size_t i = next++; i < count; i = next++) work(i);
        }
        catch (...) {
            const std::lock_guard lock(mutex);
            if (!failure) failure = std::current_exception();
            next = count;
        }
    };
    std::vector<std::thread> helpers;
    for (std::size_t i = 1; i < std::min<std::size_t>(std::max(1U, threads), count); ++i) helpers.emplace_back(take);
    take();
    for (std::thread& helper : helpers) helper.join();
    if (failure) std::rethrow_exception(failure);
}

}
