#include "window/shell/settings.hpp"

#include "window/stage/ui.hpp"

#include <algorithm>

namespace flapdoor::window {

namespace {

constexpr float projected_scale = 1.5F;

}

void project(Ui& ui, Settings& settings, bool is_projected)
{
    if (is_projected == settings.is_projected) return;
    settings.is_projected = is_projected;
    if (is_projected) settings.scale_at_desk = ui.text_scale();
    ui.set_text_scale(is_projected ? std::max(projected_scale, settings.scale_at_desk) : settings.scale_at_desk);
}

void change_language() { text::speak(text::spoken() == text::Language::english ? text::Language::spanish : text::Language::english); }

}
