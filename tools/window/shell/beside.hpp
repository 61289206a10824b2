#pragma once

#include "window/shell/left_threads.hpp"

#include <atomic>
#include <exception>
#include <memory>
#include <mutex>
#include <optional>
#include <thread>
#include <utility>

namespace flapdoor::window {

/// Thrown by work that nobody wants any more, to leave it from wherever it is.
struct LetGo {};

/// Work done in a thread of its own beside the window. Letting it go tells it to stop and waits for nothing: what it was given it
/// owns, what it made goes with it.
template <class T>
class Beside {
public:
    /// @param work  gets a `const std::atomic<bool>&` that becomes true when it is let go, and gives a T. It may look at it, and throw LetGo
    template <class Work>
    explicit Beside(Work work) : desk_(std::make_shared<Desk>())
    {
        thread_ = std::thread([desk = desk_, work = std::make_unique<Work>(std::move(work))]() mutable {
            try {
                T result = (*work)(std::as_const(desk->is_let_go));
                const std::scoped_lock lock(desk->door);
                desk->result = std::move(result);
            }
            catch (const LetGo&) {
            }
            catch (...) {
                const std::scoped_lock lock(desk->door);
                desk->broken = std::current_exception();
            }
            work.reset();
            *desk->is_over = true;
        });
    }
    ~Beside()
    {
        desk_->is_let_go = true;
        leave_behind(std::move(thread_), desk_->is_over);
    }
    Beside(const Beside&) = delete;
    Beside& operator=(const Beside&) = delete;

    bool is_over() const { return *desk_->is_over; }

    /// What came of it once it is there; then never again. Never waits. Throws what the work threw.
    std::optional<T> take()
    {
        if (!is_over()) return std::nullopt;
        const std::scoped_lock lock(desk_->door);
        if (desk_->broken) std::rethrow_exception(std::exchange(desk_->broken, nullptr));
        return std::exchange(desk_->result, std::nullopt);
    }

private:
    struct Desk {
        std::atomic<bool> is_let_go = false;
        std::shared_ptr<std::atomic<bool>> is_over = std::make_shared<std::atomic<bool>>(false);
        std::mutex door;                ///< guards what follows
        std::optional<T> result;
        std::exception_ptr broken;
    };

    std::shared_ptr<Desk> desk_;
    std::thread thread_;
};

}
