#include "window/stage/style.hpp"

#include "window/stage/imgui_words.hpp"
#include "window/stage/ui.hpp"

namespace flapdoor::window {

void dress(const Theme& theme, float scale)
{
    ImGuiStyle style; // fresh, so that scaling does not add up
    style.WindowBorderSize = 0.0F;
    style.ChildBorderSize = 0.0F;
    style.FrameBorderSize = 1.0F;
    style.FrameRounding = 4.0F;
    style.ItemSpacing = {8.0F, 8.0F};
    style.ScrollbarSize = 12.0F;
    style.ScrollbarRounding = 6.0F;
    style.CircleTessellationMaxError = 0.2F;
    style.ScaleAllSizes(scale);
    style.DisabledAlpha = 0.55F;

    const auto set = [&](ImGuiCol what, Color c) { style.Colors[what] = ImGui::ColorConvertU32ToFloat4(packed(c)); };
    const Color clear{0, 0, 0, 0};
    set(ImGuiCol_Text, theme.ink);
    set(ImGuiCol_TextDisabled, theme.muted);
    set(ImGuiCol_WindowBg, clear);
    set(ImGuiCol_ChildBg, clear);
    set(ImGuiCol_Border, theme.line);
    set(ImGuiCol_FrameBg, theme.field);
    set(ImGuiCol_FrameBgHovered, theme.field);
    set(ImGuiCol_FrameBgActive, theme.field);
    set(ImGuiCol_TextSelectedBg, faded(theme.accent, 0.25));
    set(ImGuiCol_ScrollbarBg, clear);
    set(ImGuiCol_ScrollbarGrab, theme.line);
    set(ImGuiCol_ScrollbarGrabHovered, theme.muted);
    set(ImGuiCol_ScrollbarGrabActive, theme.ink);
    set(ImGuiCol_NavHighlight, clear); // the ring is ours
    ImGui::GetStyle() = style;
}

void draw_hint(Canvas canvas, const Ui& ui, std::string_view text, const Box& beside)
{
    const float pad = ui.px(8.0F);
    const Point words = canvas.measure_wrapped(ui.px(300.0F), text, TextStyle::small);
    const Point size = words + Point{2.0F * pad, 2.0F * pad};
    const Box screen = ui.screen().inset(ui.px(4.0F));
    float x = std::clamp(beside.low.x, screen.low.x, std::max(screen.low.x, screen.high.x - size.x));
    float y = beside.high.y + ui.px(8.0F);
    if (y + size.y > screen.high.y) y = beside.low.y - ui.px(8.0F) - size.y;
    const Box slip = box_at({x, std::max(y, screen.low.y)}, size);
    canvas.fill_box(slip, ui.theme().ink, ui.px(4.0F));
    canvas.text_wrapped(slip.low + Point{pad, pad}, words.x + 1.0F, text, TextStyle::small, ui.theme().sheet);
}

}
