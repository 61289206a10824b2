#include "rules/next_cards.hpp"

#include "core/insist.hpp"

namespace flapdoor::rules {

std::optional<Hindrance> hindrance(const OrderBook& book, const std::vector<bool>& is_done, int card)
{
    insist(is_done.size() == static_cast<std::size_t>(book.card_count()), "one flag a card");
    insist(card >= 0 && card < book.card_count() && !is_done[static_cast<std::size_t>(card)], "a card that is still to be done");
    std::optional<Hindrance> found;
    for (const OrderPair& pair : book.task().pairs) {
        if (pair.after != card || is_done[static_cast<std::size_t>(pair.before)]) continue;
        if (!found || book.rule(pair.rule).weight > book.rule(found->rule).weight) found = Hindrance{pair.before, pair.rule};
    }
    if (found || book.levels().empty()) return found;
    for (int before = 0; before < book.card_count(); ++before)
        if (book.levels().front().before.at(before, card) && !is_done[static_cast<std::size_t>(before)]) return Hindrance{before, -1};
    return std::nullopt;
}

}
