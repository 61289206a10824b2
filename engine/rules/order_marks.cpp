#include "rules/order_marks.hpp"

#include "core/place_in_list.hpp"
#include "rules/fewest_moves.hpp"

#include <algorithm>
#include <map>
#include <set>

namespace flapdoor::rules {
namespace {

/// A missing card costs the heaviest rule that names it; no rule pays for two missing cards.
struct Claim {
    int card;
    int rule;   ///< -1: every rule that names it is already paid for, or none does
    int weight;
};

class Marker {
public:
    Marker(const OrderBook& book, const OrderAnswer& answer) : book_(book), task_(book.task()), slot_(task_.cards.size(), -1)
    {
        read(answer);
        find_missing();
        find_broken_pairs();
        find_forbidden();
        find_lines(answer);
        for (const OrderBook::Level& level : book.levels()) charge_level(level);
        write_lines();
        finish();
    }

    OrderMarks take() { return std::move(marks_); }

private:
    bool is_laid(int card) const { return slot_[at(card)] >= 0; }

    void read(const OrderAnswer& answer)
    {
        for (std::size_t s = 0; s < answer.slots.size(); ++s)
            for (const int card : answer.slots[s]) {
                insist(card >= 0 && card < book_.card_count(), "a laid card belongs to the task");
                insist(!is_laid(card), "a card is laid at most once");
                slot_[at(card)] = static_cast<int>(s);
            }
    }

    void find_missing()
    {
        std::vector<Claim> waiting;
        for (int card = 0; card < book_.card_count(); ++card)
            if (!is_laid(card) && book_.card(card).is_required) waiting.push_back({card, -1, weight_of(heaviest_rule(card, {}))});
        std::stable_sort(waiting.begin(), waiting.end(), [](const Claim& a, const Claim& b) { return a.weight > b.weight; });
        std::set<int> paid;
        for (Claim& claim : waiting) {
            claim.rule = heaviest_rule(claim.card, paid);
            claim.weight = weight_of(claim.rule);
            if (claim.rule >= 0) {
                paid.insert(claim.rule);
                marks_.broken.push_back({claim.rule, Breach::left_out, {}, claim.card});
            }
            if (book_.card(claim.card).is_critical_to_leave_out) marks_.critical_missing.push_back(claim.card);
        }
        claims_ = std::move(waiting);
        paid_ = std::move(paid);
    }

    int heaviest_rule(int card, const std::set<int>& paid) const
    {
        int best = -1;
        for (const OrderPair& pair : task_.pairs) {
            if ((pair.before != card && pair.after != card) || paid.contains(pair.rule)) continue;
            if (best < 0 || book_.rule(pair.rule).weight > book_.rule(best).weight || (book_.rule(pair.rule).weight == book_.rule(best).weight && pair.rule < best))
                best = pair.rule;
        }
        return best;
    }

    int weight_of(int rule) const { return rule < 0 ? 0 : book_.rule(rule).weight; }

    /// Named pairs that stand the wrong way round. A rule paid for by a missing card is not listed twice.
    void find_broken_pairs()
    {
        std::map<int, std::vector<OrderPair>> pairs_of;
        std::set<int> named_missing;
        for (const OrderPair& pair : task_.pairs) {
            const bool is_before_missing = !is_laid(pair.before) && book_.card(pair.before).is_required;
            const bool is_after_missing = !is_laid(pair.after) && book_.card(pair.after).is_required;
            if (is_before_missing || is_after_missing) named_missing.insert(pair.rule);
            if (is_laid(pair.before) && is_laid(pair.after) && is_wrong(pair)) pairs_of[pair.rule].push_back(pair);
        }
        for (auto& [rule, pairs] : pairs_of) {
            wrong_pairs_.insert(wrong_pairs_.end(), pairs.begin(), pairs.end());
            if (!paid_.contains(rule)) marks_.broken.push_back({rule, Breach::order, std::move(pairs), -1});
        }
        for (const int rule : named_missing)
            if (!paid_.contains(rule) && !pairs_of.contains(rule)) marks_.consequences.push_back(rule);
    }

    bool is_wrong(const OrderPair& pair) const
    {
        const int a = slot_[at(pair.before)];
        const int b = slot_[at(pair.after)];
        return b < a || (b == a && !book_.rule(pair.rule).same_time_keeps_it);
    }

    void find_forbidden()
    {
        std::set<int> broken;
        for (const ForbiddenCard& never : task_.forbidden) {
            if (!is_laid(never.card)) continue;
            const bool is_first = broken.insert(never.rule).second;
            forbidden_.push_back({never.card, is_first ? never.rule : -1, is_first ? book_.rule(never.rule).weight : 0});
            if (is_first) marks_.broken.push_back({never.rule, Breach::forbidden, {}, never.card});
        }
    }

    void find_lines(const OrderAnswer& answer)
    {
        std::set<int> not_lines;
        for (const OrderPair& pair : task_.pairs) not_lines.insert(pair.rule);
        for (const ForbiddenCard& never : task_.forbidden) not_lines.insert(never.rule);
        for (const int rule : std::set<int>(answer.broken_lines.begin(), answer.broken_lines.end())) {
            insist(rule >= 0 && at(rule) < task_.rules.size() && !not_lines.contains(rule), "a broken line is a rule without an order");
            marks_.broken.push_back({rule, Breach::line, {}, -1});
            marks_.line_weight += book_.rule(rule).weight;
        }
    }

    void charge_level(const OrderBook::Level& level)
    {
        const int n = book_.card_count();
        BitMatrix broken(n);
        for (int a = 0; a < n; ++a) {
            if (!is_laid(a)) continue;
            level.before.any_of(a, [&](int b) {
                if (is_laid(b) && (slot_[at(b)] < slot_[at(a)] || (slot_[at(b)] == slot_[at(a)] && level.strictly_before.at(a, b)))) broken.set(a, b);
                return false;
            });
        }
        levels_.push_back({level.weight, fewest_moves(broken), {}});
        // What a level can charge: at most one share for every rule that has a part in something broken.
        int moves = levels_.back().moves;
        for (const Claim& claim : claims_)
            if (claim.rule >= 0 && claim.weight >= level.weight) ++moves;
        most_charges_.push_back(std::min(moves, moves == 0 ? 0 : rules_involved(level, broken)));
        broken_.push_back(std::move(broken));
    }

    int rules_involved(const OrderBook::Level& level, const BitMatrix& broken) const
    {
        std::set<int> rules;
        for (const int rule : paid_)
            if (book_.rule(rule).weight >= level.weight) rules.insert(rule);
        for (const OrderPair& pair : task_.pairs) {
            if (book_.rule(pair.rule).weight < level.weight || rules.contains(pair.rule)) continue;
            for (int a = 0; a < book_.card_count() && !rules.contains(pair.rule); ++a) {
                if (a != pair.before && !level.before.at(a, pair.before)) continue;
                if (broken.any_of(a, [&](int b) { return b == pair.after || level.before.at(pair.after, b); })) rules.insert(pair.rule);
            }
        }
        return static_cast<int>(rules.size());
    }

    /// Heaviest level first: its set is chosen first, lighter levels prefer the same cards.
    void write_lines()
    {
        const std::vector<int> heaviest = heaviest_levels();
        std::vector<int> preferred;
        for (std::size_t l = levels_.size(); l-- > 0;) {
            std::vector<int> tie = preferred;
            for (int card = 0; card < book_.card_count(); ++card)
                if (std::find(preferred.begin(), preferred.end(), card) == preferred.end()) tie.push_back(card);
            std::stable_sort(tie.begin() + static_cast<std::ptrdiff_t>(preferred.size()), tie.end(),
                             [&](int a, int b) { return heaviest[at(a)] > heaviest[at(b)]; });
            levels_[l].cards = levels_[l].moves == 0 ? std::vector<int>{} : move_set(broken_[l], tie);
            preferred = levels_[l].cards;
        }
        for (std::size_t l = levels_.size(); l-- > 0;) charge_cards(l);
        for (const Claim& never : forbidden_) {
            marks_.lines.push_back({never.card, Breach::forbidden, never.weight, never.weight, never.rule, -1, -1});
            marks_.move_charge += never.weight;
        }
        for (const Claim& claim : claims_)
            if (claim.rule < 0) marks_.lines.push_back({claim.card, Breach::left_out, 0, 0, -1, -1, -1});
    }

    std::vector<int> heaviest_levels() const
    {
        std::vector<int> heaviest(task_.cards.size(), 0);
        for (std::size_t l = 0; l < levels_.size(); ++l)
            for (int a = 0; a < book_.card_count(); ++a)
                broken_[l].any_of(a, [&](int b) {
                    heaviest[at(a)] = heaviest[at(b)] = levels_[l].weight;
                    return false;
                });
        return heaviest;
    }

    void charge_cards(std::size_t l)
    {
        const int step = levels_[l].weight - (l == 0 ? 0 : levels_[l - 1].weight);
        int left = most_charges_[l];
        const auto charge = [&](int card, Breach how) {
            const int points = left > 0 ? step : 0;
            if (left > 0) --left;
            marks_.move_charge += points;
            const auto known = std::find_if(marks_.lines.begin(), marks_.lines.end(), [&](const MoveLine& line) { return line.card == card && line.how == how; });
            if (known != marks_.lines.end()) known->points += points;
            else marks_.lines.push_back(line_for(card, how, points, l));
        };
        for (const Claim& claim : claims_)
            if (claim.rule >= 0 && claim.weight >= levels_[l].weight) charge(claim.card, Breach::left_out);
        for (const int card : levels_[l].cards) charge(card, Breach::order);
    }

    MoveLine line_for(int card, Breach how, int points, std::size_t l) const
    {
        MoveLine line{card, how, points, levels_[l].weight, -1, -1, -1};
        if (how == Breach::left_out) {
            for (const Claim& claim : claims_)
                if (claim.card == card) line.rule = claim.rule;
            return line;
        }
        for (const OrderPair& pair : wrong_pairs_) {
            if (pair.before != card && pair.after != card) continue;
            if (line.rule >= 0 && !is_graver(pair.rule, line.rule)) continue;
            line.rule = pair.rule;
            line.before = pair.before;
            line.after = pair.after;
        }
        if (line.rule >= 0 && book_.rule(line.rule).weight >= line.level) return line;
        line.rule = -1;
        for (int a = 0; a < book_.card_count(); ++a)
            if (broken_[l].any_of(a, [&](int b) {
                    if (a != card && b != card) return false;
                    line.before = a;
                    line.after = b;
                    return true;
                }))
                break;
        return line;
    }

    bool is_graver(int rule, int than) const
    {
        const WeighedRule& a = book_.rule(rule);
        const WeighedRule& b = book_.rule(than);
        if (a.weight != b.weight) return a.weight > b.weight;
        if (a.is_critical != b.is_critical) return a.is_critical;
        return rule < than;
    }

    void finish()
    {
        std::stable_sort(marks_.broken.begin(), marks_.broken.end(), [](const BrokenRule& a, const BrokenRule& b) { return a.rule < b.rule; });
        for (const WeighedRule& rule : task_.rules) marks_.wanted += rule.weight;
        for (const BrokenRule& broken : marks_.broken) {
            if (broken.how != Breach::line) marks_.broken_weight += book_.rule(broken.rule).weight;
            if (broken.how != Breach::left_out && book_.rule(broken.rule).is_critical) marks_.critical_rules.push_back(broken.rule);
        }
        marks_.lost = {3 * marks_.move_charge + marks_.broken_weight + 4 * marks_.line_weight};
        insist(marks_.lost <= whole_points(marks_.wanted), "an answer never loses more than was wanted");
        if (marks_.wanted > 0) marks_.score = reduced(4 * marks_.wanted - marks_.lost.count, 4 * marks_.wanted);
        marks_.is_passed = marks_.critical_rules.empty() && marks_.critical_missing.empty();
        if (!broken_.empty()) marks_.could_move = could_move(broken_.front());
        marks_.moves = static_cast<int>(claims_.size() + forbidden_.size()) + (levels_.empty() ? 0 : levels_.front().moves);
        for (MoveLevel& level : levels_) {
            for (const Claim& claim : claims_) level.moves += claim.weight >= level.weight ? 1 : 0;
            for (const Claim& never : forbidden_) level.moves += never.weight >= level.weight ? 1 : 0;
        }
        marks_.levels = std::move(levels_);
    }

    const OrderBook& book_;
    const OrderTask& task_;
    std::vector<int> slot_;             ///< time slot of each card, -1 when it was not laid
    std::vector<Claim> claims_;
    std::vector<Claim> forbidden_;
    std::set<int> paid_;                ///< rules claimed by missing cards
    std::vector<OrderPair> wrong_pairs_;
    std::vector<MoveLevel> levels_;
    std::vector<BitMatrix> broken_;     ///< per level
    std::vector<int> most_charges_;     ///< per level
    OrderMarks marks_;
};

}

OrderAnswer one_by_one(const std::vector<int>& cards)
{
    OrderAnswer answer;
    for (const int card : cards) answer.slots.push_back({card});
    return answer;
}

int OrderMarks::moves_at(int weight) const
{
    for (const MoveLevel& level : levels)
        if (level.weight >= weight) return level.moves;
    return 0;
}

OrderMarks mark_order(const OrderBook& book, const OrderAnswer& answer) { return Marker(book, answer).take(); }

}
