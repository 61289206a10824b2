#include "window/run/waiting_screen.hpp"
#include "window/shell/screens.hpp"
#include "window/shell/side_job.hpp"
#include "window/stage/ui.hpp"

namespace flapdoor::window {

namespace {

/// Carries a plan out and shows the place as found meanwhile.
class WatchScreen final : public Screen {
public:
    WatchScreen(Shell& shell, debrief::Inputs inputs, std::uint64_t seed, std::optional<debrief::Inputs> careful)
        : shell_(shell), inputs_(std::move(inputs)), careful_(std::move(careful)), seed_(seed), job_(inputs_, seed)
    {
        state_.has_way_back = true;
    }

    void play(Ui& ui) override
    {
        seconds_ += static_cast<double>(ui.input().seconds);
        Settings& shared = state_;
        shared = shell_.settings();
        waiting_screen(ui, inputs_, seed_, seconds_, state_);
        const bool leaves = std::exchange(shared.wants_to_quit, false);
        shell_.settings() = shared;
        if (leaves) return shell_.go_to(start_screen(shell_));
        if (auto story = job_.take()) shell_.go_to(debrief_screen(shell_, std::make_shared<const Story>(std::move(*story)), std::move(careful_)));
    }
    bool is_moving() const override { return true; }

private:
    Shell& shell_;
    debrief::Inputs inputs_;
    std::optional<debrief::Inputs> careful_;
    std::uint64_t seed_;
    SideJob job_;
    ScreenState state_;
    double seconds_ = 0.0;
};

}

std::unique_ptr<Screen> watch_screen(Shell& shell, debrief::Inputs inputs, std::uint64_t seed, std::optional<debrief::Inputs> careful)
{
    return std::make_unique<WatchScreen>(shell, std::move(inputs), seed, std::move(careful));
}

}
