#pragma once

#include <cstddef>
#include <functional>
#include <mutex>

namespace flapdoor::debrief {

/// Calls `work(i)` for every i below `count`, several at a time. What one call writes no other may touch. An exception of one ends all and
/// comes out here.
void work_off(std::size_t count, unsigned threads, const std::function<void(std::size_t)>& work);

/// Counts what is done, from any thread.
class Progress {
public:
    Progress(std::function<void(std::size_t done, std::size_t of)> told, std::size_t of) : told_(std::move(told)), of_(of) {}

    void step()
    {
        const std::lock_guard lock(mutex_);
        ++done_;
        if (told_) told_(done_, of_);
    }

private:
    std::function<void(std::size_t, std::size_t)> told_;
    std::size_t of_;
    std::size_t done_ = 0;
    std::mutex mutex_;
};

}
