#pragma once

#include "window/shell/screens.hpp"

#include "quiz/practice/pool.hpp"

#include <memory>
#include <string>

namespace flapdoor::window {

/// What is due today for one person, question by question: each is chosen by the answers before it, and kept at once.
/// @param who  as for `practice_file`
std::unique_ptr<Screen> practice_screen(Shell& shell, std::string who, quiz::Practice practice, std::shared_ptr<const quiz::PracticePool> pool);

}
