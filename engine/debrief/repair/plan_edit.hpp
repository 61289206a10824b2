#pragma once

#include "job/scenario.hpp"
#include "job/work_plan.hpp"
#include "text/document.hpp"

#include <string>
#include <utility>
#include <vector>

namespace flapdoor::debrief {

/// One change of a work plan. Numbers of cards are those of the plan before any change.
struct PlanEdit {
    enum class Kind { set, move, put_in, leave_out };

    Kind kind = Kind::set;
    int card = -1;              ///< changed, moved or left out; nothing for a card put in
    int before = -1;            ///< moved or put in before this card, or at the end for the number of cards
    job::Card put;              ///< what is put in
    int twin = -1;              ///< of a card put in: the card of the reference plan that it was taken from
    std::vector<std::pair<std::string, text::Node>> values;     ///< keys of a card file with their new values

    friend bool operator==(const PlanEdit& a, const PlanEdit& b);
};

/// The plan with all edits made at once. Cards put in at one place stand in the order of the edits; of two values for one key the later
/// counts, but what several add to one list is all added. Labels that would stand twice are dropped. Insists that edits name cards of the plan and that values fit their keys.
job::WorkPlan edited(const job::WorkPlan& plan, const std::vector<PlanEdit>& edits);

/// The same with what each card of it came from.
struct EditedPlan {
    job::WorkPlan plan;
    std::vector<int> place;         ///< [card] of the plan before: itself, or where it was moved or put in before
    std::vector<bool> is_touched;   ///< [card] set, moved or put in
};
EditedPlan edited_plan(const job::WorkPlan& plan, const std::vector<PlanEdit>& edits);

/// What is done, in the language spoken: "card 11 (Lay floor sheeting): “How far it reaches” is now 12 ft", "card 16 (Post warning signs) comes before card 15
/// (Work on the paint)", "Close a register (Supply register) is put in before card 7 (Close a door)".
std::string told(const PlanEdit& edit, const job::WorkPlan& plan, const job::Scenario& scenario);

/// "card 16 (Post warning signs)".
std::string card_name(const job::WorkPlan& plan, int card);

}
