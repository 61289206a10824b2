#include "rules/nearest_order.hpp"

#include "core/place_in_list.hpp"

#include <algorithm>
#include <limits>

namespace flapdoor::rules {
namespace {

constexpr int nowhere = std::numeric_limits<int>::max();

/// Lays the cards one by one: what stays keeps its order, what moves goes in where the rules let it or ask for it.
class Layer {
public:
    Layer(const OrderBook& book, const OrderAnswer& answer, const OrderMarks& marks)
        : book_(book), slot_(at(book.card_count()), nowhere), is_moved_(at(book.card_count()), 0), waits_for_(at(book.card_count()), 0)
    {
        for (std::size_t s = 0; s < answer.slots.size(); ++s)
            for (const int card : answer.slots[s]) slot_[at(card)] = static_cast<int>(s);
        for (int card = 0; card < book.card_count(); ++card) {
            const bool is_put_in = slot_[at(card)] == nowhere && book.card(card).is_required;
            if (is_put_in) is_moved_[at(card)] = 1;
            if (slot_[at(card)] != nowhere || is_put_in) left_.push_back(card);
        }
        if (!marks.levels.empty())
            for (const int card : marks.levels.front().cards) is_moved_[at(card)] = 1;
        for (const ForbiddenCard& never : book.task().forbidden) std::erase(left_, never.card);
        std::stable_sort(left_.begin(), left_.end(), [&](int a, int b) { return slot_[at(a)] < slot_[at(b)]; });
        if (!book.levels().empty())
            for (const int a : left_) book.levels().front().before.any_of(a, [&](int b) { return ++waits_for_[at(b)], false; });
    }

    std::vector<PlacedCard> lay_all()
    {
        while (!left_.empty()) lay(next());
        return std::move(placed_);
    }

private:
    bool is_free(int card) const { return waits_for_[at(card)] == 0; }

    /// What stays goes first in the order in which it was laid; whatever it still waits for comes just before it.
    int next() const
    {
        const auto staying = std::find_if(left_.begin(), left_.end(), [&](int card) { return is_moved_[at(card)] == 0; });
        if (staying == left_.end()) return first_free([](int) { return true; });
        const int slot = slot_[at(*staying)];
        if (const int early = next_for_early(slot); early >= 0) return early;
        if (const int stays = first_free([&](int card) { return is_moved_[at(card)] == 0 && slot_[at(card)] == slot; }); stays >= 0) return stays;
        const int needed = first_free([&](int card) { return is_moved_[at(card)] != 0 && book_.levels().front().before.at(card, *staying); });
        insist(needed >= 0, "what stays waits only for what moves");
        return needed;
    }

    /// A card that stood earlier and may come now, or what moves and has to come before it; -1 when all of those still wait
    /// for something that stays.
    int next_for_early(int slot) const
    {
        for (const int early : left_) {
            if (slot_[at(early)] >= slot) break;
            if (is_moved_[at(early)] == 0) continue;
            const auto leads_to_it = [&](int card) { return card == early || book_.levels().front().before.at(card, early); };
            const bool waits_for_staying = std::any_of(left_.begin(), left_.end(), [&](int card) { return is_moved_[at(card)] == 0 && leads_to_it(card); });
            if (!waits_for_staying) return first_free(leads_to_it);
        }
        return -1;
    }

    template <class Wanted>
    int first_free(Wanted&& is_wanted) const
    {
        const auto found = std::find_if(left_.begin(), left_.end(), [&](int card) { return is_free(card) && is_wanted(card); });
        return found == left_.end() ? -1 : *found;
    }

    void lay(int card)
    {
        insist(card >= 0, "rules without a cycle let some card come next");
        placed_.push_back({card, is_moved_[at(card)] != 0});
        std::erase(left_, card);
        if (!book_.levels().empty()) book_.levels().front().before.any_of(card, [&](int b) { return --waits_for_[at(b)], false; });
    }

    const OrderBook& book_;
    std::vector<int> slot_;
    std::vector<char> is_moved_;
    std::vector<int> waits_for_;    ///< cards that are still to be laid and must come before
    std::vector<int> left_;
    std::vector<PlacedCard> placed_;
};

}

std::vector<PlacedCard> nearest_order(const OrderBook& book, const OrderAnswer& answer, const OrderMarks& marks) { return Layer(book, answer, marks).lay_all(); }

}
