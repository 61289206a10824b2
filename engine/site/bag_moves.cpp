#include "site/bag_moves.hpp"

#include "core/insist.hpp"
#include "text/language.hpp"

#include <algorithm>
#include <array>

namespace flapdoor::site {

namespace {

using text::to_say;

struct BagWords {
    std::string_view title, how;
};
constexpr std::array<BagWords, bag_move_count> bag_words{{
    {to_say("Press the air out gently"), to_say("Both arms round the bag, face turned away, slowly.")},
    {to_say("Squeeze the air out hard"), to_say("Lean on the bag until it is flat.")},
    {to_say("Draw the air out by HEPA vacuum"), to_say("Hose in the gathered mouth, until the film lies on the debris.")},
    {to_say("Gather and twist the neck"), to_say("Gather the mouth and turn the neck into a column of 8 to 10 in.")},
    {to_say("Fold the neck over"), to_say("Bend the column back on itself like the neck of a goose.")},
    {to_say("Tape the neck"), to_say("Wind tape round the neck as it stands.")},
    {to_say("Tape again below, leaving a loop"), to_say("A second band 2 to 3 in below the top of the fold: the loop is the handle.")},
    {to_say("Tie a knot"), to_say("Knot the mouth of the bag.")},
    {to_say("Vacuum the outside"), to_say("All of the bag, HEPA vacuum, before it leaves the work area.")},
}};

constexpr std::size_t index(BagMove move) { return static_cast<std::size_t>(move); }

/// Where a move stands among those done; past the end when it was left out.
std::size_t place(const BagInHand& bag, BagMove move)
{
    return static_cast<std::size_t>(std::find(bag.moves.begin(), bag.moves.end(), move) - bag.moves.begin());
}

bool is_made(const BagInHand& bag, BagMove move) { return place(bag, move) < bag.moves.size(); }

/// Both were made, the first one first.
bool comes_before(const BagInHand& bag, BagMove a, BagMove b) { return is_made(bag, b) && place(bag, a) < place(bag, b); }

constexpr std::array presses{BagMove::press_gently, BagMove::press_hard, BagMove::draw_air};

std::optional<BagMove> press_of(const BagInHand& bag)
{
    for (const BagMove move : presses)
        if (is_made(bag, move)) return move;
    return std::nullopt;
}

job::Press how_pressed(std::optional<BagMove> move, bool is_through_twist)
{
    if (!move) return job::Press::none;
    if (*move == BagMove::draw_air) return job::Press::by_vacuum;
    return *move == BagMove::press_hard || is_through_twist ? job::Press::hard : job::Press::gently;
}

}

std::string_view title_of(BagMove move) { return bag_words[index(move)].title; }
std::string_view how_to(BagMove move) { return bag_words[index(move)].how; }

std::vector<BagMove> taught_bag_moves()
{
    return {BagMove::press_gently, BagMove::twist, BagMove::fold, BagMove::tape, BagMove::loop, BagMove::vacuum_outside};
}

std::optional<std::string_view> why_not(const BagInHand& bag, BagMove move)
{
    if (is_made(bag, move)) return to_say("this is done already");
    const bool is_shut = is_made(bag, BagMove::tape) || is_made(bag, BagMove::knot);
    const bool is_press = std::find(presses.begin(), presses.end(), move) != presses.end();
    if (is_press && press_of(bag)) return to_say("the air is out already");
    if (is_press && is_shut) return to_say("the neck is shut: no air comes out any more");
    if (move == BagMove::draw_air && is_made(bag, BagMove::twist)) return to_say("the neck is twisted: the hose does not go in");
    if ((move == BagMove::twist || move == BagMove::fold || move == BagMove::knot) && is_shut) return to_say("the neck is shut: nothing can be changed at it any more");
    if (move == BagMove::knot && is_made(bag, BagMove::twist)) return to_say("a twisted neck takes no knot");
    if (move == BagMove::tape && is_made(bag, BagMove::knot)) return to_say("it is knotted");
    if (move == BagMove::loop && !is_made(bag, BagMove::tape)) return to_say("the neck is not taped yet: there is nothing to leave a loop of");
    return std::nullopt;
}

BagHandled handled(const BagInHand& bag, bool is_done)
{
    BagHandled result;
    const auto blame = [&](std::string_view what, std::string_view why) { result.faults.push_back({std::string(what), std::string(why)}); };
    const bool is_shut = is_made(bag, BagMove::tape) || is_made(bag, BagMove::knot);
    const bool is_twisted = is_made(bag, BagMove::twist);
    const std::optional<BagMove> press = press_of(bag);
    const bool is_through_twist = press && is_twisted && comes_before(bag, BagMove::twist, *press);
    const bool folds_a_column = is_made(bag, BagMove::fold) && comes_before(bag, BagMove::twist, BagMove::fold);

    job::CloseBag& card = result.card;
    card.press = how_pressed(press, is_through_twist);
    card.closure = is_made(bag, BagMove::knot) ? job::Closure::knot : is_twisted ? job::Closure::gooseneck : job::Closure::tape;
    if (!is_shut) card.closure = job::Closure::knot;       // left as it is, it does not seal either
    card.twist = !is_twisted || is_through_twist ? Length{} : bag.twist;
    card.is_folded = folds_a_column;
    card.has_loop = is_made(bag, BagMove::loop) && folds_a_column;
    result.closing = closing_of(card, bag.fill);
    const auto last_at_neck = [&](BagMove m) { return comes_before(bag, BagMove::vacuum_outside, m); };
    const bool is_vacuumed = is_made(bag, BagMove::vacuum_outside);
    result.is_vacuumed_before = is_vacuumed && (last_at_neck(BagMove::tape) || last_at_neck(BagMove::knot) || !is_shut || (press && last_at_neck(*press)));
    result.is_vacuumed_after = is_vacuumed && !result.is_vacuumed_before;

    if (bag.fill > fullest) blame(to_say("The bag is more than two thirds full."), to_say("No film is left to twist, and a full bag bursts more easily when it is lifted."));
    if (card.press == job::Press::hard && !is_through_twist) blame(to_say("The air was squeezed out hard."), to_say("All the dust that hung over the debris came out with it, toward the face."));
    if (is_through_twist) blame(to_say("The air was pressed out after the neck was twisted."), to_say("It bursts through the twist: all the hanging dust comes out, and the twist comes undone."));
    if (is_twisted && !is_through_twist && bag.twist < least_twist) blame(to_say("The twist is shorter than 8 in."), to_say("A short neck springs open when it is folded over."));
    if (is_made(bag, BagMove::fold) && !folds_a_column) blame(to_say("The neck was folded before it was twisted."), to_say("Loose film does not stay folded; only a twisted column does."));
    if (is_made(bag, BagMove::loop) && !folds_a_column) blame(to_say("There is no fold to leave a loop of."), to_say("The second band closes nothing and carries nothing."));
    if (result.is_vacuumed_before) blame(to_say("The outside was vacuumed before the bag was closed."), to_say("What closing stirs up settles on the bag again, and it carries that out of the room."));
    if (!is_done) return result;
    if (!press) blame(to_say("The air was left in."), to_say("A blown-up bag leaves little neck to twist, and pushes its dusty air out when it is set down."));
    if (!is_shut) blame(to_say("The bag is not shut."), to_say("It swaps air each time it is moved."));
    if (is_made(bag, BagMove::knot)) blame(to_say("Thick film was knotted."), to_say("A knot in thick plastic does not seal."));
    if (is_made(bag, BagMove::tape) && !is_twisted) blame(to_say("The neck was taped without a twist."), to_say("Gathered film leaves a channel in each pleat."));
    if (is_made(bag, BagMove::tape) && is_twisted && !is_made(bag, BagMove::fold)) blame(to_say("The neck was not folded over."), to_say("Straight up, it works itself open under the tape."));
    if (is_made(bag, BagMove::tape) && folds_a_column && !is_made(bag, BagMove::loop)) blame(to_say("No second band was wound."), to_say("Without the loop the fold pulls out from under one band when somebody lifts the bag by it."));
    if (!is_vacuumed) blame(to_say("The outside was not vacuumed."), to_say("Its skin carries the dust of the floor that it stood on."));
    return result;
}

}
