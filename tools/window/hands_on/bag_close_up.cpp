#include "window/hands_on/bag_close_up.hpp"

#include "window/hands_on/bag_picture.hpp"
#include "window/widgets/handle.hpp"
#include "window/widgets/panel.hpp"
#include "window/widgets/slider.hpp"
#include "window/widgets/words.hpp"

#include "text/language.hpp"
#include "text/show.hpp"
#include "text/unit_sizes.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace flapdoor::window {

namespace {

using site::BagMove;
using text::say;
using text::say_with;

constexpr std::array<std::string_view, site::bag_move_count> bag_move_names{"press-gently", "press-hard", "draw-air", "twist", "fold",
                                                                             "tape",         "loop",       "knot",     "vacuum-outside"};

MoveFace face_of(const site::BagInHand& in_hand, BagMove move)
{
    const auto refusal = site::why_not(in_hand, move);
    return {std::string(bag_move_names[static_cast<std::size_t>(move)]), std::string(say(site::title_of(move))), std::string(say(site::how_to(move))),
            refusal ? std::string(say(*refusal)) : std::string{}, false};
}

std::string_view neck_word(const site::BagInHand& bag, dust::Neck neck)
{
    const bool is_shut = neck != dust::Neck::open;
    if (neck == dust::Neck::gooseneck) return say("gooseneck: leaks none");
    if (is_shut) return say("taped: leaks a little each time it is moved");
    return std::find(bag.moves.begin(), bag.moves.end(), BagMove::knot) != bag.moves.end() ? say("knotted: open") : say("open");
}

/// 10, 30, 100 %: chances and shares that are judgment are told to one digit.
std::string coarse_percent(double share) { return say_with("{} %", text::show_number(share * 100.0, 1)); }

}

BagCloseUp::BagCloseUp(const job::CloseBag& card, double fill, bool can_fill) : card_(card), can_fill_(can_fill)
{
    in_hand_.fill = fill;
    in_hand_.twist = card.twist > Length{} ? card.twist : job::CloseBag{}.twist;
}

job::CloseBag BagCloseUp::card() const
{
    job::CloseBag made = site::handled(in_hand_, true).card;
    made.bag = card_.bag;
    made.vacuum = card_.vacuum;
    return made;
}

bool BagCloseUp::vacuums_outside() const
{
    const site::BagHandled handled = site::handled(in_hand_, true);
    return handled.is_vacuumed_after || handled.is_vacuumed_before;
}

bool BagCloseUp::vacuums_too_early() const { return site::handled(in_hand_, true).is_vacuumed_before; }

void BagCloseUp::drawing(Ui& ui, const Box& box)
{
    const site::BagHandled handled = site::handled(in_hand_, false);
    draw_bag_in_hand(ui.canvas(), ui, box, in_hand_, handled);
    const bool is_begun = !in_hand_.moves.empty();
    if (!can_fill_ || is_begun) return;
    const BagDrawing parts = bag_drawing(ui, box, in_hand_.fill);
    const HandleMove move = handle(ui, "bag/fill", {parts.body.high.x, parts.fill_y},
                                   {.label = say("How full the bag is"), .value = say_with("{} full", text::show_percent(in_hand_.fill)), .way = HandleWay::upright, .hint = say("Drag, or arrow up and down")});
    double fill = in_hand_.fill;
    if (move.touch.is_held) fill = static_cast<double>((parts.body.high.y - ui.input().mouse.y) / parts.body.height());
    if (move.touch.is_held || move.up != 0) in_hand_.fill = std::clamp(std::round(fill / fill_step) * fill_step + fill_step * move.up, fill_step, 1.0);
}

void BagCloseUp::figures(Ui& ui, const site::BagHandled& handled)
{
    const site::BagClosing& closing = handled.closing;
    const bool is_pressed = closing.pressed_out + closing.drawn_off > 0.0;
    const auto line = [&](std::string_view what, std::string value) {
        Canvas canvas = ui.canvas();
        const float width = canvas.measure(value, TextStyle::strong).x;
        const bool is_one_line = width + canvas.measure(what, TextStyle::small).x + ui.px(12.0F) <= ui.width_left();
        if (is_one_line) {
            const Box box = ui.place({ui.width_left(), ui.px(22.0F)});
            canvas.text_in(box, what, TextStyle::small, ui.theme().ink);
            canvas.text_in(box, value, TextStyle::strong, ui.theme().ink, Align::right);
            return;
        }
        aside(ui, what);
        strong(ui, value);
    };
    strong(ui, say("What it does to the dust"));
    line(say("Air got out of the bag"), is_pressed ? text::show(closing.air_out) : std::string(say("none yet")));
    line(say("Of the dust hanging over the debris, at the face"), coarse_percent(closing.pressed_out));
    line(say("Neck"), std::string(neck_word(in_hand_, closing.neck)));
    const Volume swapped = dust::swapped_per_move(closing.neck);
    line(say("Air let out each time it is moved"), swapped > Volume{} ? text::show(swapped) : std::string(say("none")));
    line(say("Chance that it bursts when lifted"), coarse_percent(closing.burst));
    line(say("Outside"), std::string(handled.is_vacuumed_after ? say("vacuumed") : say("dusty")));
    aside(ui, say("Judgment within ten either way: told as \"possible\", never as a measured share. Training model, not a clearance prediction."));
}

CloseUpEnd BagCloseUp::sheet(Ui& ui, const Box& box)
{
    CloseUpEnd end = CloseUpEnd::goes_on;
    panel(ui, "bag-moves", box, {.padding = 14.0F}, [&] {
        strong(ui, say("Close the bag, move by move"));
        const site::BagHandled handled = site::handled(in_hand_, is_looked_over_);
        fault_notes(ui, handled.faults);
        if (is_looked_over_ && handled.faults.empty()) mark(ui, Standing::good, say("Closed as taught"));
        if (make_a_move(ui, in_hand_.moves, site::bag_move_count, [&](auto move) { return face_of(in_hand_, move); })) is_looked_over_ = false;
        double twist = std::round(in_hand_.twist.si / text::inch);
        const bool is_taped = std::find(in_hand_.moves.begin(), in_hand_.moves.end(), BagMove::tape) != in_hand_.moves.end();
        if (slider(ui, "bag/twist", say("Twisted neck"), twist,
                   {.least = 2.0, .most = 14.0, .step = 1.0, .is_enabled = !is_taped, .show = [](double in) { return say_with("{} in", text::show_number(in, 3)); }}))
            in_hand_.twist = Length{twist * text::inch};
        end = play_buttons(ui, in_hand_.moves, is_looked_over_, say("Use it so"));
    });
    return end;
}

CloseUpEnd BagCloseUp::play(Ui& ui, const Box& box)
{
    Box rest = box;
    const bool is_wide = box.width() >= ui.px(900.0F);
    Box right = is_wide ? cut_right(rest, std::max(ui.px(380.0F), box.width() * 0.36F)) : cut_bottom(rest, box.height() * 0.5F);
    if (is_wide) cut_right(rest, ui.px(10.0F));
    else cut_bottom(rest, ui.px(10.0F));
    const site::BagHandled handled = site::handled(in_hand_, false);
    panel(ui, "bag", rest, {.can_scroll = true, .padding = 12.0F}, [&] {
        const float width = ui.width_left();
        const bool is_broad = width >= ui.px(620.0F);
        const Point low = ui.cursor();
        const float height = std::max(ui.px(240.0F), rest.height() - ui.px(is_broad ? 28.0F : 260.0F));
        const Box field = ui.place({is_broad ? width * 0.55F : width, height});
        drawing(ui, field);
        if (is_broad) {
            ui.open_panel("bag/figures", {{low.x + width * 0.55F + ui.px(14.0F), low.y}, {low.x + width, low.y + height}}, 0.0F, true);
            figures(ui, handled);
            ui.close_panel();
        }
        else figures(ui, handled);
    });
    return sheet(ui, right);
}

}
