#include "window/stage/ui.hpp"

#include "core/insist.hpp"
#include "window/stage/imgui_words.hpp"
#include "window/stage/raster.hpp"
#include "window/stage/style.hpp"

#include <imgui_stdlib.h>

#include <algorithm>
#include <cmath>

namespace flapdoor::window {

namespace {

constexpr float least_target = 24.0F; // WCAG 2.2, 2.5.8
constexpr float hint_delay = 0.45F;   // seconds the pointer rests
constexpr ImGuiWindowFlags bare = ImGuiWindowFlags_NoDecoration | ImGuiWindowFlags_NoMove | ImGuiWindowFlags_NoSavedSettings |
                                  ImGuiWindowFlags_NoBackground | ImGuiWindowFlags_NoNav | ImGuiWindowFlags_NoBringToFrontOnFocus;

const char* text_of(std::string& holder, std::string_view text)
{
    holder.assign(text);
    return holder.c_str();
}

}

// --- life ---------------------------------------------------------------------------------------------------------------

Ui::Ui(const Theme& theme, float text_scale)
    : theme_(theme), text_scale_(std::clamp(text_scale, 1.0F, 2.0F)), wanted_scale_(text_scale_), context_(ImGui::CreateContext())
{
    ImGui::SetCurrentContext(context_);
    ImGuiIO& io = ImGui::GetIO();
    io.IniFilename = nullptr;
    io.LogFilename = nullptr;
    io.BackendFlags |= ImGuiBackendFlags_RendererHasVtxOffset;
    io.ConfigInputTextCursorBlink = false;
    io.ConfigMacOSXBehaviors = false;
    const auto listen = [&](ImGuiKey theirs, Key ours) { io.KeyMap[theirs] = static_cast<int>(ours); }; // Tab stays ours
    listen(ImGuiKey_LeftArrow, Key::left);
    listen(ImGuiKey_RightArrow, Key::right);
    listen(ImGuiKey_UpArrow, Key::up);
    listen(ImGuiKey_DownArrow, Key::down);
    listen(ImGuiKey_Home, Key::home);
    listen(ImGuiKey_End, Key::end);
    listen(ImGuiKey_Insert, Key::insert);
    listen(ImGuiKey_Delete, Key::erase);
    listen(ImGuiKey_Backspace, Key::backspace);
    listen(ImGuiKey_Enter, Key::enter);
    listen(ImGuiKey_Escape, Key::escape);
    listen(ImGuiKey_A, Key::a);
    listen(ImGuiKey_C, Key::c);
    listen(ImGuiKey_V, Key::v);
    listen(ImGuiKey_X, Key::x);
    listen(ImGuiKey_Y, Key::y);
    listen(ImGuiKey_Z, Key::z);
    use_clipboard([this] { return clipboard_; }, [this](const std::string& text) { clipboard_ = text; });
}

Ui::~Ui() { ImGui::DestroyContext(context_); }

Result<std::unique_ptr<Ui>> Ui::open(const FontFiles& fonts, const Theme& theme, float text_scale)
{
    std::unique_ptr<Ui> ui(new Ui(theme, text_scale));
    if (auto baked = ui->bake(fonts); !baked) return failed(baked.error());
    return ui;
}

Result<FontFiles> Ui::bake(const FontFiles& files)
{
    auto fonts = Fonts::bake(files, text_scale_);
    if (!fonts) return failed(fonts.error());
    fonts_ = *fonts;
    font_files_ = files;
    if (pictures_.find(atlas_) == nullptr)
        atlas_ = pictures_.add(Fonts::atlas_picture());
    else
        pictures_.replace(atlas_, Fonts::atlas_picture());
    ImGui::GetIO().Fonts->SetTexID(texture(atlas_));
    ImGui::GetIO().Fonts->ClearTexData();
    dress(theme_, text_scale_);
    return files;
}

void Ui::use_clipboard(ReadClipboard read, WriteClipboard write)
{
    read_clipboard_ = std::move(read);
    write_clipboard_ = std::move(write);
    ImGui::SetCurrentContext(context_);
    ImGuiIO& io = ImGui::GetIO();
    io.ClipboardUserData = this;
    io.GetClipboardTextFn = [](void* self) -> const char* {
        Ui& ui = *static_cast<Ui*>(self);
        ui.clipboard_ = ui.read_clipboard_();
        return ui.clipboard_.c_str();
    };
    io.SetClipboardTextFn = [](void* self, const char* text) { static_cast<Ui*>(self)->write_clipboard_(text); };
}

void Ui::set_text_scale(float scale) { wanted_scale_ = std::clamp(scale, 1.0F, 2.0F); }

// --- frame --------------------------------------------------------------------------------------------------------------

void Ui::pass_on(const FrameInput& input)
{
    ImGuiIO& io = ImGui::GetIO();
    io.DisplaySize = vec(input.size);
    io.DeltaTime = input.seconds;
    io.MousePos = input.has_mouse ? vec(input.mouse) : ImVec2(-FLT_MAX, -FLT_MAX);
    for (std::size_t i = 0; i < input.buttons_down.size(); ++i) io.MouseDown[i] = input.buttons_down[i];
    io.MouseWheel = input.wheel;
    for (std::size_t i = 0; i < key_count; ++i) io.KeysDown[i] = input.keys_down[i];
    io.KeyShift = input.modifiers.shift;
    io.KeyCtrl = input.modifiers.control;
    io.KeyAlt = input.modifiers.alt;
    for (const char32_t c : input.typed) io.AddInputCharacter(static_cast<unsigned>(c));
}

void Ui::begin_frame(const FrameInput& input)
{
    insist(!is_in_frame_, "a frame ends before the next begins");
    is_in_frame_ = true;
    ImGui::SetCurrentContext(context_);
    if (std::abs(wanted_scale_ - text_scale_) > 1e-3F) {
        text_scale_ = wanted_scale_;
        insist(bake(font_files_).has_value(), "fonts that were baked once can be baked again");
    }
    mouse_before_ = input_.has_mouse ? input_.mouse : input.mouse;
    input_ = input;
    keys_left_ = input.pressed;
    pass_on(input);
    ImGui::NewFrame();
    is_writing_ = ImGui::GetIO().WantTextInput;

    stops_before_ = std::move(stops_);
    stops_.clear();
    spots_.clear();
    cut_words_.clear();
    drawn_words_.clear();
    ring_ = {};
    hint_.clear();
    top_layer_ = top_layer_seen_;
    top_layer_seen_ = 0;
    layer_ = 0;
    hovered_before_ = std::move(hovered_);
    hovered_.clear();
    walk_focus();

    ImGui::SetNextWindowPos({0.0F, 0.0F});
    ImGui::SetNextWindowSize(vec(input.size));
    ImGui::PushStyleVar(ImGuiStyleVar_WindowPadding, ImVec2(0.0F, 0.0F));
    ImGui::Begin("stage", nullptr, bare | ImGuiWindowFlags_NoScrollWithMouse);
    ImGui::PopStyleVar(); // the paper behind everything is laid by whoever paints the frame
}

void Ui::end_frame()
{
    insist(is_in_frame_ && layer_ == 0, "every layer is closed within its frame");
    draw_focus_ring();
    if (!hint_.empty()) draw_hint(overlay(), *this, hint_, hint_beside_);
    ImGui::End();
    ImGui::Render();
    hover_seconds_ = !hovered_.empty() && hovered_ == hovered_before_ ? hover_seconds_ + input_.seconds : 0.0F;
    has_focus_moved_ = false;
    is_in_frame_ = false;
}

const ImDrawData& Ui::drawn() const
{
    ImGui::SetCurrentContext(context_);
    const ImDrawData* data = ImGui::GetDrawData();
    insist(data != nullptr, "something is drawn only after a whole frame");
    return *data;
}

Picture Ui::picture_of_frame() const { return painted(drawn(), pictures_, theme_.paper); }

// --- place --------------------------------------------------------------------------------------------------------------

Point Ui::cursor() const { return point(ImGui::GetCursorScreenPos()); }
void Ui::go_to(Point low) { ImGui::SetCursorScreenPos(vec(low)); }
float Ui::width_left() const { return std::max(ImGui::GetContentRegionAvail().x, 1.0F); }

Box Ui::place(Point size)
{
    const Point low = cursor();
    ImGui::Dummy(vec(size));
    return box_at(low, size);
}

void Ui::beside(float gap_at_100_percent) { ImGui::SameLine(0.0F, px(gap_at_100_percent)); }
void Ui::gap(float height_at_100_percent) { ImGui::SetCursorScreenPos(vec(cursor() + Point{0.0F, px(height_at_100_percent)})); }
Canvas Ui::canvas() { return {*ImGui::GetWindowDrawList(), fonts_, &cut_words_, keeps_drawn_words_ ? &drawn_words_ : nullptr}; }
Canvas Ui::overlay() { return {*ImGui::GetForegroundDrawList(), fonts_, &cut_words_, keeps_drawn_words_ ? &drawn_words_ : nullptr}; }

void Ui::open_panel(std::string_view name, const Box& box, float padding, bool can_scroll)
{
    std::string id;
    ImGui::SetCursorScreenPos(vec(box.low));
    ImGui::PushStyleVar(ImGuiStyleVar_WindowPadding, ImVec2(px(padding), px(padding)));
    const bool holds_wheel = !can_scroll || !takes_part();
    ImGui::BeginChild(text_of(id, name), vec({std::max(box.width(), 1.0F), std::max(box.height(), 1.0F)}), false,
                      ImGuiWindowFlags_AlwaysUseWindowPadding | ImGuiWindowFlags_NoNav | ImGuiWindowFlags_NoBackground |
                          (can_scroll ? 0 : ImGuiWindowFlags_NoScrollbar) | (holds_wheel ? ImGuiWindowFlags_NoScrollWithMouse : 0));
    ImGui::PopStyleVar();
}

void Ui::close_panel() { ImGui::EndChild(); }

bool Ui::is_in_view(const Box& box) const
{
    return ImGui::IsRectVisible(vec(box.low - Point{px(8.0F), px(8.0F)}), vec(box.high + Point{px(8.0F), px(8.0F)}));
}

void Ui::scroll_to(const Box& box) { ImGui::SetScrollFromPosY(box.low.y - ImGui::GetWindowPos().y, 0.25F); }

void Ui::open_layer(std::string_view name, const Box& box, float padding)
{
    ++layer_;
    top_layer_seen_ = std::max(top_layer_seen_, layer_);
    std::string id;
    // The veil and the sheet are one window, so that neither can be raised without the other.
    ImGui::SetNextWindowPos({0.0F, 0.0F});
    ImGui::SetNextWindowSize(vec(input_.size));
    ImGui::SetNextWindowFocus();
    ImGui::PushStyleVar(ImGuiStyleVar_WindowPadding, ImVec2(0.0F, 0.0F));
    ImGui::Begin(text_of(id, name), nullptr, (bare & ~ImGuiWindowFlags_NoBringToFrontOnFocus) | ImGuiWindowFlags_NoScrollWithMouse);
    ImGui::PopStyleVar();
    canvas().fill_box(screen(), faded(theme_.ink, 0.45));
    canvas().fill_box(box, theme_.sheet, px(8.0F));
    open_panel(std::string(name) + "/sheet", box, padding, true);
}

void Ui::close_layer()
{
    insist(layer_ > 0, "only an open layer is closed");
    close_panel();
    ImGui::End();
    --layer_;
}

// --- press and keyboard -------------------------------------------------------------------------------------------------

void Ui::record(const TouchAsk& ask, const Box& box, bool is_enabled)
{
    insist(!ask.name.empty() && find(ask.name) == nullptr, "every widget has a name of its own");
    if (is_enabled && ask.is_stop) stops_.push_back({std::string(ask.name), layer_});
    spots_.push_back({std::string(ask.name), ask.role, std::string(ask.label), std::string(ask.value), box, is_enabled, ask.is_on,
                      is_enabled && focus_ == ask.name});
}

/// Scrolls the panel to what the keyboard just reached, and notes where the ring goes.
void Ui::follow_focus(const Box& box, float rounding)
{
    const Box clip = box_at(point(ImGui::GetWindowPos()), point(ImGui::GetWindowSize()));
    if (has_focus_moved_ && ImGui::GetScrollMaxY() > 0.0F && (box.low.y < clip.low.y || box.high.y > clip.high.y))
        ImGui::SetScrollFromPosY(box.center().y - clip.low.y, 0.5F);
    if (is_focus_shown_) ring_ = {true, box, clip.inset(-px(6.0F)), rounding};
}

Touch Ui::touch(const TouchAsk& ask)
{
    const bool is_enabled = ask.is_enabled && takes_part();
    const Point size{std::max(ask.size.x, least_target), std::max(ask.size.y, least_target)};
    Touch touch;
    touch.box = box_at(cursor(), size);
    record(ask, touch.box, is_enabled);

    ImGui::PushID(ask.name.data(), ask.name.data() + ask.name.size());
    const bool is_released_here = ImGui::InvisibleButton("##touch", vec(size));
    if (ask.lets_others_on_top) ImGui::SetItemAllowOverlap();
    const bool is_over = ImGui::IsItemHovered();
    const bool is_active = ImGui::IsItemActive();
    const bool goes_down = ImGui::IsItemActivated();
    ImGui::PopID();

    if (is_enabled) {
        touch.is_hovered = is_over;
        touch.is_held = is_active;
        touch.is_clicked = is_released_here;
        if (goes_down && ask.is_stop) {
            focus_ = ask.name;
            is_focus_shown_ = false;
        }
        touch.has_focus = focus_ == ask.name && is_focus_shown_;
        if (touch.has_focus) {
            follow_focus(touch.box, px(ask.ring_rounding));
            if (ask.is_pressed_by_keys && (take_key(Key::enter) || take_key(Key::space))) touch.is_clicked = true;
        }
    }
    if (is_over) hovered_ = ask.name;
    last_touch_ = touch;
    return touch;
}

bool Ui::edit_line(const TouchAsk& ask, std::string& text)
{
    const bool is_enabled = ask.is_enabled && takes_part();
    const Box box = box_at(cursor(), ask.size);
    record(ask, box, is_enabled);
    const bool has_focus = is_enabled && focus_ == ask.name;
    if (has_focus && has_focus_moved_) ImGui::SetKeyboardFocusHere();

    ImGui::PushID(ask.name.data(), ask.name.data() + ask.name.size());
    ImGui::PushStyleVar(ImGuiStyleVar_FramePadding, ImVec2(px(10.0F), (ask.size.y - ImGui::GetFontSize()) * 0.5F));
    ImGui::SetNextItemWidth(ask.size.x);
    ImGui::BeginDisabled(!is_enabled);
    const std::string before = text;
    bool has_changed = ImGui::InputText("##line", &text);
    // The library puts back on Escape what stood there when the writing began; here Escape leaves, and what is written stays.
    const bool is_escaped = std::any_of(input_.pressed.begin(), input_.pressed.end(), [](const KeyPress& press) { return press.key == Key::escape; });
    if (has_changed && is_escaped && ImGui::IsItemDeactivated()) text = before, has_changed = false;
    ImGui::EndDisabled();
    const bool is_writing_here = ImGui::IsItemActive();
    const bool goes_down = ImGui::IsItemActivated();
    last_touch_ = {box, ImGui::IsItemHovered(), is_writing_here, false, has_focus};
    ImGui::PopStyleVar();
    ImGui::PopID();

    if (goes_down && !has_focus) {
        focus_ = ask.name;
        is_focus_shown_ = true; // where letters go is always shown
    }
    if (has_focus) follow_focus(box, px(ask.ring_rounding));
    if (has_focus && !is_writing_here && !has_focus_moved_ && take_key(Key::enter)) ImGui::SetKeyboardFocusHere(-1);
    return has_changed;
}

bool Ui::take_key(Key key, Modifiers with)
{
    const auto found = std::find(keys_left_.begin(), keys_left_.end(), KeyPress{key, with});
    if (found == keys_left_.end()) return false;
    keys_left_.erase(found);
    return true;
}

bool Ui::shortcut(Key key, Modifiers with) { return !is_writing_ && takes_part() && take_key(key, with); }

void Ui::walk_focus()
{
    if (!wanted_focus_.empty()) {
        focus_ = std::move(wanted_focus_);
        wanted_focus_.clear();
        is_focus_shown_ = true;
        has_focus_moved_ = true;
    }
    const auto is_in_layer = [&](const Stop& stop) { return stop.layer == top_layer_; };
    const auto has_focus = [&](const Stop& stop) { return is_in_layer(stop) && stop.name == focus_; };
    if (top_layer_ > 0 && std::any_of(stops_before_.begin(), stops_before_.end(), is_in_layer) &&
        std::none_of(stops_before_.begin(), stops_before_.end(), has_focus))
    { // a layer came up: the keyboard goes into it
        focus_under_layer_ = focus_;
        focus_.clear();
        step_focus(+1);
    }
    if (top_layer_ == 0 && !focus_under_layer_.empty()) { // and back when it is gone
        focus_ = std::move(focus_under_layer_);
        focus_under_layer_.clear();
    }
    while (take_key(Key::tab)) step_focus(+1);
    while (take_key(Key::tab, {.shift = true})) step_focus(-1);
}

void Ui::step_focus(int by)
{
    std::vector<std::size_t> open;
    for (std::size_t i = 0; i < stops_before_.size(); ++i)
        if (stops_before_[i].layer == top_layer_) open.push_back(i);
    if (open.empty()) return;

    const auto here = std::find_if(open.begin(), open.end(), [&](std::size_t i) { return stops_before_[i].name == focus_; });
    const auto count = static_cast<int>(open.size());
    int place = 0;
    if (here != open.end())
        place = (static_cast<int>(here - open.begin()) + by + count) % count;
    else if (focus_.empty())
        place = by > 0 ? 0 : count - 1;
    else
        place = std::min(static_cast<int>(focus_place_), count - 1); // what had it is gone: go on from there
    focus_place_ = static_cast<std::size_t>(place);
    if (is_writing_) ImGui::SetWindowFocus(nullptr); // the field lets go
    is_writing_ = false;
    focus_ = stops_before_[open[static_cast<std::size_t>(place)]].name;
    is_focus_shown_ = true;
    has_focus_moved_ = true;
}

void Ui::focus_on(std::string_view name) { wanted_focus_ = name; }

void Ui::draw_focus_ring()
{
    if (!ring_.is_shown) return;
    Canvas over = overlay();
    const auto clip = over.clipped_to(ring_.clip);
    over.frame_box(ring_.box.inset(-px(1.0F)), theme_.focus_gap, px(2.0F), ring_.rounding + px(1.0F));
    over.frame_box(ring_.box.inset(-px(3.5F)), theme_.focus, px(3.0F), ring_.rounding + px(3.5F));
}

Point Ui::drag() const { return input_.has_mouse ? input_.mouse - mouse_before_ : Point{}; }

float Ui::wheel_over(const Box& box)
{
    if (!takes_part() || !input_.has_mouse || !box.contains(input_.mouse)) return 0.0F;
    const float notches = input_.wheel;
    input_.wheel = 0.0F;
    return notches;
}

void Ui::hint(std::string_view text)
{
    const bool rests = last_touch_.is_hovered && hover_seconds_ > hint_delay && !last_touch_.is_held;
    if (text.empty() || !(rests || last_touch_.has_focus)) return;
    hint_ = text;
    hint_beside_ = last_touch_.box;
}

// --- tests --------------------------------------------------------------------------------------------------------------

const Spot* Ui::find(std::string_view name) const
{
    const auto found = std::find_if(spots_.begin(), spots_.end(), [&](const Spot& s) { return s.name == name; });
    return found == spots_.end() ? nullptr : &*found;
}

std::vector<std::string> Ui::tab_order() const
{
    std::vector<std::string> names;
    for (const Stop& stop : stops_)
        if (stop.layer == top_layer_) names.push_back(stop.name);
    return names;
}

}
