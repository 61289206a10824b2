#include "window/hands_on/flap_close_up.hpp"

#include "window/drawing/dimension.hpp"
#include "window/hands_on/flap_picture.hpp"
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

using site::FlapMove;
using text::say;
using text::say_with;

constexpr std::array<std::string_view, site::flap_move_count> flap_move_names{"fold-slack", "tape-first", "cut-slit", "hang-second", "put-in-dowel"};

constexpr double most_gap = 30.0;   // in
constexpr double most_foot = 24.0;
constexpr double gap_step = 1.0;

MoveFace face_of(const site::FlapInHand& in_hand, FlapMove move)
{
    const auto refusal = site::why_not(in_hand, move);
    return {std::string(flap_move_names[static_cast<std::size_t>(move)]), std::string(say(site::title_of(move))), std::string(say(site::how_to(move))),
            refusal ? std::string(say(*refusal)) : std::string{}, false};
}

double whole_inches(Length length) { return std::round(length.si / text::inch); }

}

FlapCloseUp::FlapCloseUp(const job::Opening& doorway, const job::HangFlap& card) : doorway_(doorway), card_(card)
{
    in_hand_.gap = card.gap;
    in_hand_.slit_foot = card.slit_foot;
}

job::HangFlap FlapCloseUp::card() const
{
    job::HangFlap made = site::handled(in_hand_, true).card;
    made.opening = card_.opening;
    made.sheeting = card_.sheeting;
    return made;
}

mechanics::FlapDoor FlapCloseUp::door() const { return site::hung_door(site::flap_of(card()), doorway_); }

void FlapCloseUp::drawing(Ui& ui, const Box& box)
{
    const mechanics::FlapDoor made = door();
    const site::FlapHandled handled = site::handled(in_hand_, false);
    const PaperBox part{{-0.18, -0.10}, {made.width.si + 0.18, made.height.si + 0.20}};
    {
        Canvas canvas = ui.canvas();
        const auto clip = canvas.clipped_to(box);
        Board board{ui.canvas(), PaperView::fit(part, box, ui.px(4.0F)), ui};
        draw_flap_face(board, in_hand_, made, !in_hand_.moves.empty(), handled.can_pass);
    }
    const PaperView view = PaperView::fit(part, box, ui.px(4.0F));
    // The hem is dragged up and down: how high the dowel hangs above the floor.
    if (made.sheets >= 2) {
        const Point at = view.at(PaperPoint{made.width.si * 0.5, in_hand_.gap.si});
        const std::string value = say_with("{} in", text::show_number(whole_inches(in_hand_.gap), 3));
        const HandleMove move = handle(ui, "flap/hem", at,
                                       {.label = say("Hem of the second sheet above the floor"), .value = value, .way = HandleWay::upright, .hint = say("Drag, or arrow up and down: one inch")});
        double inches = whole_inches(in_hand_.gap);
        if (move.touch.is_held) inches = std::round(view.paper(ui.input().mouse).y / text::inch);
        inches = std::clamp(inches + gap_step * move.up, 0.0, most_gap);
        if (inches != whole_inches(in_hand_.gap)) in_hand_.gap = Length{inches * text::inch};
    }
}

CloseUpEnd FlapCloseUp::sheet(Ui& ui, const Box& box)
{
    CloseUpEnd end = CloseUpEnd::goes_on;
    panel(ui, "flap-moves", box, {.padding = 14.0F}, [&] {
        strong(ui, say("Hang the flap door, move by move"));
        const site::FlapHandled handled = site::handled(in_hand_, is_looked_over_);
        fault_notes(ui, handled.faults);
        if (is_looked_over_ && handled.faults.empty()) mark(ui, Standing::good, say("Hung as taught"));
        if (make_a_move(ui, in_hand_.moves, site::flap_move_count, [&](auto move) { return face_of(in_hand_, move); })) is_looked_over_ = false;
        double foot = whole_inches(in_hand_.slit_foot);
        if (slider(ui, "flap/slit-foot", say("Slit ends above the floor"), foot,
                   {.most = most_foot, .step = 1.0, .show = [](double in) { return say_with("{} in", text::show_number(in, 3)); }}))
            in_hand_.slit_foot = Length{foot * text::inch};
        double gap = whole_inches(in_hand_.gap);
        if (slider(ui, "flap/gap", say("Dowel above the floor"), gap,
                   {.most = most_gap, .step = gap_step, .show = [](double in) { return say_with("{} in", text::show_number(in, 3)); }}))
            in_hand_.gap = Length{gap * text::inch};
        end = play_buttons(ui, in_hand_.moves, is_looked_over_, say("Use it so"));
    });
    return end;
}

CloseUpEnd FlapCloseUp::play(Ui& ui, const Box& box, bool keeps_still)
{
    Box rest = box;
    const bool is_wide = box.width() >= ui.px(900.0F);
    const float gap = ui.px(10.0F);
    Box right = is_wide ? cut_right(rest, std::max(ui.px(360.0F), box.width() * 0.33F)) : cut_bottom(rest, box.height() * 0.5F);
    if (is_wide) cut_right(rest, gap);
    else cut_bottom(rest, gap);
    const bool has_first = !in_hand_.moves.empty();
    const bool can_pass = site::handled(in_hand_, false).can_pass && has_first;
    panel(ui, "flap-door", rest, {.can_scroll = false, .padding = 0.0F}, [&] {
        Box inner = rest.inset(ui.px(12.0F));
        // On a broad sheet the doorway's face stands left of the cut; on a narrow one above it, when there is room.
        const bool is_broad = inner.width() >= ui.px(760.0F);
        Box face = is_broad ? cut_left(inner, inner.width() * 0.32F) : cut_top(inner, inner.height() * 0.45F);
        ui.canvas().text_in(cut_top(face, ui.px(24.0F)), say("From the work side"), TextStyle::small, ui.theme().muted);
        drawing(ui, face);
        if (is_broad) cut_left(inner, ui.px(12.0F));
        view_.play(ui, inner, {.door = door(), .can_pass = can_pass, .keeps_still = keeps_still});
    });
    return sheet(ui, right);
}

}
