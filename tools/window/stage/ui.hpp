#pragma once

#include "core/result.hpp"
#include "window/base/assets.hpp"
#include "window/base/picture.hpp"
#include "window/base/theme.hpp"
#include "window/stage/canvas.hpp"
#include "window/stage/fonts.hpp"
#include "window/stage/input.hpp"

#include <functional>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

struct ImDrawData;
struct ImGuiContext;

namespace flapdoor::window {

/// What kind of thing a spot is, for tests and for reading aloud.
enum class Role : int { button, toggle, slider, choice, card, row, text_field, drawing, panel, text };

/// A thing on the screen, as the last frame showed it.
struct Spot {
    std::string name; ///< stable, the same in every language, e.g. "check-order"
    Role role = Role::text;
    std::string label; ///< as shown
    std::string value; ///< of a slider or field, as shown
    Box box;
    bool is_enabled = true;
    bool is_on = false; ///< pressed in, chosen, ticked
    bool has_focus = false;
};

/// What a widget asks of the stage: a piece of the screen that can be pressed.
struct TouchAsk {
    std::string_view name = {};
    Role role = Role::button;
    std::string_view label = {};
    std::string_view value = {};
    Point size = {}; ///< grows to the least target size of 24 px
    bool is_enabled = true;
    bool is_on = false;
    bool is_stop = true;             ///< the Tab key stops here
    bool is_pressed_by_keys = true;  ///< Space and Enter press it
    bool lets_others_on_top = false; ///< a later touch inside this one gets the pointer
    float ring_rounding = 6.0F;
};

/// What came of it.
struct Touch {
    Box box;
    bool is_hovered = false;
    bool is_held = false;    ///< the button went down here and is down
    bool is_clicked = false; ///< by mouse or by key, this frame
    bool has_focus = false;  ///< the keyboard is here: take the keys it answers to
};

/// The stage a screen is played on: one frame at a time, `begin_frame`, widgets in the order the Tab key walks them,
/// `end_frame`. Owns the control library's state, so that nothing is global; needs no display.
class Ui {
public:
    /// Bakes the fonts. @param text_scale  1 to 2
    static Result<std::unique_ptr<Ui>> open(const FontFiles& fonts, const Theme& theme, float text_scale = 1.0F);
    ~Ui();
    Ui(const Ui&) = delete;
    Ui& operator=(const Ui&) = delete;

    // The frame.
    void begin_frame(const FrameInput& input);
    void end_frame();
    const ImDrawData& drawn() const;  ///< after end_frame, until the next begin_frame
    Picture picture_of_frame() const; ///< the same, painted by the processor; slow (tens of ms)

    // Look.
    const Theme& theme() const { return theme_; }
    const Fonts& fonts() const { return fonts_; }
    float text_scale() const { return text_scale_; }
    void set_text_scale(float scale); ///< from the next frame on; clamped to 1..2
    float px(float at_100_percent) const { return at_100_percent * text_scale_; }
    PictureShelf& pictures() { return pictures_; }
    const PictureShelf& pictures() const { return pictures_; }

    // Where the next widget goes. Inside a panel widgets flow downwards.
    Box screen() const { return {{0.0F, 0.0F}, input_.size}; }
    Point cursor() const;
    void go_to(Point low);
    float width_left() const;
    Box place(Point size);                        ///< takes room for something that cannot be pressed
    void beside(float gap_at_100_percent = 8.0F); ///< the next widget goes to the right of the one before
    void gap(float height_at_100_percent);
    Canvas canvas();  ///< of the panel under way
    Canvas overlay(); ///< above everything

    /// Opens a piece of the screen with its own flow; it scrolls when what is in it is taller. Every open needs a close.
    void open_panel(std::string_view name, const Box& box, float padding, bool can_scroll);
    void close_panel();
    /// Scrolls the panel under way so that `box`, which has just been drawn in it, comes to stand in its upper third.
    void scroll_to(const Box& box);
    /// False when nothing of the box can be seen in the panel under way: its drawing may be left out.
    bool is_in_view(const Box& box) const;
    /// Opens a layer that takes all input while it is there. Every open needs a close.
    void open_layer(std::string_view name, const Box& box, float padding);
    void close_layer();

    // Press and keyboard.
    Touch touch(const TouchAsk& ask);            ///< insists that no name comes twice in a frame
    bool take_key(Key key, Modifiers with = {}); ///< true once a press; then nobody else gets it
    bool shortcut(Key key, Modifiers with = {}); ///< the same, but not while somebody writes or a layer lies above
    void focus_on(std::string_view name);        ///< from the next frame on, ring shown
    const std::string& focused() const { return focus_; }
    bool is_writing() const { return is_writing_; }
    const FrameInput& input() const { return input_; }
    Point drag() const;               ///< the mouse's way since the frame before
    float wheel_over(const Box& box); ///< notches, taken so that the panel does not scroll as well

    /// One line of writing on the control library's own field, which knows cursor, selection, undo and clipboard.
    bool edit_line(const TouchAsk& ask, std::string& text);
    /// Words that come up beside the last touch, when the pointer rests on it or the keyboard is there.
    void hint(std::string_view text);

    // For tests and for reading aloud.
    void note(Spot spot) { spots_.push_back(std::move(spot)); }
    const std::vector<Spot>& spots() const { return spots_; } ///< of the frame under way, or the last one
    const Spot* find(std::string_view name) const;
    std::vector<std::string> tab_order() const;                              ///< names, as the Tab key walks them
    const std::vector<std::string>& cut_words() const { return cut_words_; } ///< texts that had no room, in full

    void keep_drawn_words() { keeps_drawn_words_ = true; }
    const std::vector<std::string>& drawn_words() const { return drawn_words_; } ///< every text of the frame, in full; empty unless kept

    using ReadClipboard = std::function<std::string()>;
    using WriteClipboard = std::function<void(const std::string&)>;
    void use_clipboard(ReadClipboard read, WriteClipboard write);

private:
    struct Stop {
        std::string name;
        int layer;
    };
    struct FocusRing {
        bool is_shown = false;
        Box box;
        Box clip;
        float rounding = 0.0F;
    };

    Ui(const Theme& theme, float text_scale);
    Result<FontFiles> bake(const FontFiles& files);
    void pass_on(const FrameInput& input);
    void walk_focus();
    void step_focus(int by);
    void draw_focus_ring();
    bool takes_part() const { return layer_ == top_layer_; }
    void record(const TouchAsk& ask, const Box& box, bool is_enabled);
    void follow_focus(const Box& box, float rounding);

    Theme theme_;
    FontFiles font_files_;
    Fonts fonts_;
    float text_scale_ = 1.0F;
    float wanted_scale_ = 1.0F;
    PictureShelf pictures_;
    PictureId atlas_{};
    ImGuiContext* context_ = nullptr;
    FrameInput input_;
    Point mouse_before_;
    std::vector<KeyPress> keys_left_;
    std::vector<Spot> spots_;
    std::vector<std::string> cut_words_;
    std::vector<std::string> drawn_words_;
    bool keeps_drawn_words_ = false;
    std::vector<Stop> stops_;
    std::vector<Stop> stops_before_;
    std::string focus_;
    std::string wanted_focus_;
    std::string focus_under_layer_;
    std::size_t focus_place_ = 0;
    bool is_focus_shown_ = false;
    bool has_focus_moved_ = false;
    bool is_writing_ = false;
    bool is_in_frame_ = false;
    int layer_ = 0;
    int top_layer_ = 0;
    int top_layer_seen_ = 0;
    FocusRing ring_;
    Touch last_touch_;
    std::string hovered_before_;
    std::string hovered_;
    float hover_seconds_ = 0.0F;
    std::string hint_;
    Box hint_beside_;
    ReadClipboard read_clipboard_;
    WriteClipboard write_clipboard_;
    std::string clipboard_;
};

}
