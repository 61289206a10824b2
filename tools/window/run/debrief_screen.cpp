#include "window/run/run_screen.hpp"
#include "window/shell/screens.hpp"

namespace flapdoor::window {

namespace {

/// A finished run in the shell: what holds for all screens goes in before each frame and comes out after it.
class DebriefScreen final : public Screen {
public:
    DebriefScreen(Shell& shell, std::shared_ptr<const Story> story, std::optional<debrief::Inputs> careful) : shell_(shell), screen_(std::move(story))
    {
        screen_.state().has_way_back = true;
        // Beside itself the careful run shows nothing.
        if (careful && careful->plan_text.hash != screen_.story().inputs.plan_text.hash) screen_.offer_reference(std::move(*careful));
    }

    void play(Ui& ui) override
    {
        Settings& shared = screen_.state();
        shared = shell_.settings();
        screen_.play(ui);
        const bool leaves = std::exchange(shared.wants_to_quit, false);
        shell_.settings() = shared;
        if (leaves) shell_.go_to(start_screen(shell_));
    }
    bool is_moving() const override { return screen_.is_moving(); }

private:
    Shell& shell_;
    RunScreen screen_;
};

}

std::unique_ptr<Screen> debrief_screen(Shell& shell, std::shared_ptr<const Story> story, std::optional<debrief::Inputs> careful)
{
    return std::make_unique<DebriefScreen>(shell, std::move(story), std::move(careful));
}

}
