#include "window/shell/shell.hpp"

#include "core/insist.hpp"
#include "window/shell/keys_sheet.hpp"
#include "window/shell/left_threads.hpp"
#include "window/stage/ui.hpp"

namespace flapdoor::window {

Shell::Shell(Places places, Settings settings) : places_(std::move(places)), settings_(settings) {}

Shell::~Shell()
{
    next_.reset();
    screen_.reset();
    wait_for_those_left();
}

void Shell::go_to(std::unique_ptr<Screen> screen)
{
    insist(screen != nullptr, "there is a screen to go to");
    next_ = std::move(screen);
    settings_.shows_help = false;
}

void Shell::play(Ui& ui)
{
    if (next_) screen_ = std::move(next_);
    insist(screen_ != nullptr, "a window shows a screen");
    screen_->play(ui);
    const std::vector<KeyLine> keys = screen_->keys();
    if (keys.empty()) return;
    const bool asks = !ui.is_writing() && ui.input().typed.find(U'?') != std::u32string::npos;
    if (!settings_.shows_help && (asks || ui.shortcut(Key::f1))) settings_.shows_help = true;
    if (settings_.shows_help) settings_.shows_help = keys_sheet(ui, keys, settings_);
}

}
