#include "site/flap_moves.hpp"

#include "text/language.hpp"

#include <algorithm>
#include <array>

namespace flapdoor::site {

namespace {

using text::to_say;

struct FlapWords {
    std::string_view title, how;
};
constexpr std::array<FlapWords, flap_move_count> flap_words{{
    {to_say("Fold slack in at top and bottom"), to_say("An S-fold at the head and one at the foot of the first sheet: play for whoever steps through.")},
    {to_say("Tape the first sheet all round"), to_say("Sides, head and foot to the frame, without a gap.")},
    {to_say("Mark and cut the slit"), to_say("A straight line down the middle of the first sheet, ending above the floor.")},
    {to_say("Hang the second sheet"), to_say("On the work side, taped along its upper edge only, so that it falls over the slit.")},
    {to_say("Roll the dowel into its hem"), to_say("The weight pulls the second sheet straight and back over the slit.")},
}};

constexpr std::size_t index(FlapMove move) { return static_cast<std::size_t>(move); }

std::size_t place(const FlapInHand& door, FlapMove move)
{
    return static_cast<std::size_t>(std::find(door.moves.begin(), door.moves.end(), move) - door.moves.begin());
}

bool is_made(const FlapInHand& door, FlapMove move) { return place(door, move) < door.moves.size(); }
bool comes_before(const FlapInHand& door, FlapMove a, FlapMove b) { return is_made(door, a) && is_made(door, b) && place(door, a) < place(door, b); }

constexpr Length most_gap = 4.0_in;     // about 3 in is taught
constexpr Length least_foot = 3.0_in;   // film below the slit that holds it together (judgment)

}

std::string_view title_of(FlapMove move) { return flap_words[index(move)].title; }
std::string_view how_to(FlapMove move) { return flap_words[index(move)].how; }

std::vector<FlapMove> taught_flap_moves()
{
    return {FlapMove::fold_slack, FlapMove::tape_first, FlapMove::cut_slit, FlapMove::hang_second, FlapMove::put_in_dowel};
}

std::optional<std::string_view> why_not(const FlapInHand& door, FlapMove move)
{
    if (is_made(door, move)) return to_say("this is done already");
    if (move == FlapMove::put_in_dowel && !is_made(door, FlapMove::hang_second)) return to_say("there is no second sheet yet whose hem could hold it");
    return std::nullopt;
}

FlapHandled handled(const FlapInHand& door, bool is_done)
{
    FlapHandled result;
    const auto blame = [&](std::string_view what, std::string_view why) { result.faults.push_back({std::string(what), std::string(why)}); };
    const bool is_taped = is_made(door, FlapMove::tape_first);
    const bool is_folded_too_late = comes_before(door, FlapMove::tape_first, FlapMove::fold_slack);
    const bool is_cut_loose = is_made(door, FlapMove::cut_slit) && (!is_taped || comes_before(door, FlapMove::cut_slit, FlapMove::tape_first));
    const bool is_cut_through = comes_before(door, FlapMove::hang_second, FlapMove::cut_slit);

    job::HangFlap& card = result.card;
    card.sheets = is_made(door, FlapMove::hang_second) ? 2 : 1;
    card.is_taped = is_taped;
    card.has_folds = is_made(door, FlapMove::fold_slack) && !is_folded_too_late;
    card.has_dowel = is_made(door, FlapMove::put_in_dowel);
    card.gap = door.gap;
    const Length head = card.slit_foot + card.slit_length;
    card.slit_foot = is_cut_loose ? Length{} : door.slit_foot;      // loose film gives way before the knife: the cut runs down to the hem
    card.slit_length = head - card.slit_foot;
    card.is_slit_through = is_cut_through;
    result.can_pass = is_made(door, FlapMove::cut_slit);

    if (is_folded_too_late) blame(to_say("The slack was folded in after the sheet was taped."), to_say("What is taped tight all round has nothing left to fold: the first to step through tears it from its tape."));
    if (is_cut_loose && (is_taped || is_done)) blame(to_say("The slit was cut before the sheet was taped."), to_say("Loose film gives way before the knife: the cut runs down to the floor, and nothing holds the two halves together."));
    if (is_cut_through) blame(to_say("The slit was cut after the second sheet was hung."), to_say("The knife went through both sheets: the second one covers nothing."));
    if (is_made(door, FlapMove::hang_second) && door.gap > most_gap) blame(to_say("The second sheet ends high above the floor."), to_say("It leaves the foot of the slit bare."));
    if (is_made(door, FlapMove::hang_second) && door.gap < 1.0_in) blame(to_say("The second sheet drags on the floor."), to_say("Feet catch it, and it picks up what lies there."));
    if (!is_cut_loose && is_made(door, FlapMove::cut_slit) && door.slit_foot < least_foot) blame(to_say("The slit ends close above the floor."), to_say("A hand's breadth of film below it keeps the sheet in one piece."));
    if (!is_done) return result;
    if (!is_taped) blame(to_say("The first sheet is not taped round the frame."), to_say("Held at its head alone it is pushed out of the way whole, and air goes round its sides."));
    if (!is_made(door, FlapMove::fold_slack)) blame(to_say("No slack was folded in."), to_say("The first to step through pulls the taut sheet from its tape."));
    if (!is_made(door, FlapMove::cut_slit)) blame(to_say("There is no slit."), to_say("Nobody gets through; the next one in a hurry pulls the sheet down."));
    if (!is_made(door, FlapMove::hang_second)) blame(to_say("There is no second sheet."), to_say("Nothing covers the slit."));
    else if (!is_made(door, FlapMove::put_in_dowel)) blame(to_say("The second sheet has no dowel."), to_say("It hangs in waves, blows about, and falls back late and askew."));
    return result;
}

}
