#include "window/shell/screens.hpp"

namespace flapdoor::window {

std::unique_ptr<Screen> screen_of(Shell& shell, Sitting sitting)
{
    switch (sitting.mode) {
        case Mode::step_by_step:
        case Mode::marked:
            return brief_screen(shell, std::move(sitting));
        case Mode::order_first:
            return order_screen(shell, std::move(sitting));
        case Mode::spot_the_fault:
            return spot_screen(shell, std::move(sitting));
        case Mode::for_a_class:
            break;
    }
    return class_screen(shell, std::move(sitting));
}

}
