#include "rules/fewest_moves.hpp"

namespace flapdoor::rules {
namespace {

/// Maximum matching between "stands too late" (left) and "stands too early" (right) by augmenting paths.
class Matching {
public:
    Matching(const BitMatrix& broken, const std::vector<char>& gone) : broken_(broken), gone_(gone), partner_(gone.size(), -1), seen_(gone.size(), -1)
    {
        for (int a = 0; a < broken.size(); ++a)
            if (gone_[index(a)] == 0 && augment(a, a)) ++count_;
    }

    int count() const { return count_; }

private:
    static std::size_t index(int i) { return static_cast<std::size_t>(i); }

    bool augment(int a, int round)
    {
        return broken_.any_of(a, [&](int b) {
            if (gone_[index(b)] != 0 || seen_[index(b)] == round) return false;
            seen_[index(b)] = round;
            if (partner_[index(b)] >= 0 && !augment(partner_[index(b)], round)) return false;
            partner_[index(b)] = a;
            return true;
        });
    }

    const BitMatrix& broken_;
    const std::vector<char>& gone_;
    std::vector<int> partner_;
    std::vector<int> seen_;
    int count_ = 0;
};

int moves_without(const BitMatrix& broken, const std::vector<char>& gone) { return Matching(broken, gone).count(); }

}

int fewest_moves(const BitMatrix& broken)
{
    return moves_without(broken, std::vector<char>(static_cast<std::size_t>(broken.size()), 0));
}

std::vector<int> move_set(const BitMatrix& broken, const std::vector<int>& tie_order)
{
    std::vector<char> gone(static_cast<std::size_t>(broken.size()), 0);
    std::vector<int> moved;
    int left = moves_without(broken, gone);
    for (const int card : tie_order) {
        if (left == 0) break;
        auto& is_gone = gone[static_cast<std::size_t>(card)];
        is_gone = 1;
        if (moves_without(broken, gone) == left - 1) {
            moved.push_back(card);
            --left;
        } else {
            is_gone = 0;
        }
    }
    insist(left == 0, "a smallest set of cards to move is found");
    return moved;
}

std::vector<int> could_move(const BitMatrix& broken)
{
    std::vector<char> gone(static_cast<std::size_t>(broken.size()), 0);
    const int all = moves_without(broken, gone);
    std::vector<int> cards;
    for (int card = 0; all > 0 && card < broken.size(); ++card) {
        gone[static_cast<std::size_t>(card)] = 1;
        if (moves_without(broken, gone) == all - 1) cards.push_back(card);
        gone[static_cast<std::size_t>(card)] = 0;
    }
    return cards;
}

}
