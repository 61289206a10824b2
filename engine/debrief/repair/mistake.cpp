#include "debrief/repair/mistake.hpp"

#include "core/place_in_list.hpp"
#include "job/card_key.hpp"
#include "job/card_node.hpp"
#include "text/writing.hpp"

#include <algorithm>

namespace flapdoor::debrief {

namespace {

class Inverter {
public:
    Inverter(const job::WorkPlan& reference, const job::WorkPlan& plan, bool with_whole_cards)
        : reference_(reference), plan_(plan), with_whole_cards_(with_whole_cards), there_(job::cards_in_common(plan, reference)), is_met_(reference.cards.size(), false)
    {
        for (const int twin : there_)
            if (twin >= 0) is_met_[at(twin)] = true;
    }

    void invert(const PlanEdit& edit, bool is_alone)
    {
        switch (edit.kind) {
            case PlanEdit::Kind::set: return set_back(edit, is_alone);
            case PlanEdit::Kind::put_in: return leave_out(edit.twin);
            case PlanEdit::Kind::leave_out: return put_in(edit.card);
            case PlanEdit::Kind::move: return move_back(edit.card);
        }
    }

    std::vector<PlanEdit> take() { return std::move(edits_); }

private:
    void add(PlanEdit edit)
    {
        if (std::find(edits_.begin(), edits_.end(), edit) == edits_.end()) edits_.push_back(std::move(edit));
    }

    void set_back(const PlanEdit& edit, bool is_alone)
    {
        const int twin = there_.at(at(edit.card));
        if (twin < 0) return;
        const text::Node mine = job::card_node(plan_.cards.at(at(edit.card)));
        const bool brings = std::holds_alternative<job::StageTools>(reference_.cards.at(at(twin)).step);
        if (with_whole_cards_ && !brings) return set_whole(mine, twin);
        PlanEdit back;
        back.card = twin;
        for (const auto& [key, value] : edit.values) {
            if (key == "supplies" && !is_alone) continue;   // brought along only so that another card can use it
            if (const text::Node* was = std::get<text::Table>(mine.value).find(key)) back.values.emplace_back(key, *was);
        }
        if (!back.values.empty()) add(std::move(back));
    }

    void set_whole(const text::Node& mine, int twin)
    {
        const text::Node theirs = job::card_node(reference_.cards.at(at(twin)));
        PlanEdit back;
        back.card = twin;
        for (const text::Entry& entry : std::get<text::Table>(mine.value).entries) {
            if (entry.key == "do" || entry.key == "by" || entry.key == "label" || entry.key == "bag") continue;
            const text::Node* other = std::get<text::Table>(theirs.value).find(entry.key);
            if (other == nullptr || text::plain_text(*other) != text::plain_text(entry.value)) back.values.emplace_back(entry.key, entry.value);
        }
        if (!back.values.empty()) add(std::move(back));
    }

    /// All cards of the reference that are about the same and that the plan lacks.
    void leave_out(int twin)
    {
        if (twin < 0) return;
        const std::uint64_t subject = job::subject_key(reference_.cards.at(at(twin)));
        for (std::size_t i = 0; i < reference_.cards.size(); ++i) {
            if (static_cast<int>(i) != twin && (is_met_[i] || job::subject_key(reference_.cards[i]) != subject)) continue;
            PlanEdit edit;
            edit.kind = PlanEdit::Kind::leave_out;
            edit.card = static_cast<int>(i);
            add(std::move(edit));
        }
    }

    /// Behind the last card before it that both plans have.
    int place_of(int card) const
    {
        for (int i = card - 1; i >= 0; --i)
            if (there_[at(i)] >= 0) return there_[at(i)] + 1;
        return 0;
    }

    void put_in(int card)
    {
        PlanEdit edit;
        edit.kind = PlanEdit::Kind::put_in;
        edit.put = plan_.cards.at(at(card));
        edit.before = place_of(card);
        add(std::move(edit));
    }

    void move_back(int card)
    {
        const int twin = there_.at(at(card));
        if (twin < 0) return;
        PlanEdit edit;
        edit.kind = PlanEdit::Kind::move;
        edit.card = twin;
        edit.before = place_of(card);
        if (edit.before != twin && edit.before != twin + 1) add(std::move(edit));   // it stands there already
    }

    const job::WorkPlan& reference_;
    const job::WorkPlan& plan_;
    bool with_whole_cards_;
    std::vector<int> there_;
    std::vector<bool> is_met_;
    std::vector<PlanEdit> edits_;
};

}

std::vector<PlanEdit> mistake_in(const job::WorkPlan& reference, const job::WorkPlan& plan, const std::vector<PlanEdit>& edits, bool with_whole_cards)
{
    Inverter inverter(reference, plan, with_whole_cards);
    for (const PlanEdit& edit : edits) inverter.invert(edit, edits.size() == 1);
    return inverter.take();
}

}
