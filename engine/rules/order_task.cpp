#include "rules/order_task.hpp"

#include "rules/precedence.hpp"

#include <fmt/format.h>

#include <set>
#include <utility>

namespace flapdoor::rules {
namespace {

bool is_index(int value, std::size_t size) { return value >= 0 && static_cast<std::size_t>(value) < size; }

void complain(Problems& problems, std::string expected, std::string found)
{
    problems.push_back({Place{}, std::move(expected), std::move(found)});
}

template <class List>
void check_ids(const List& list, std::string_view what, Problems& problems)
{
    std::set<std::string> seen;
    for (const auto& thing : list)
        if (!seen.insert(thing.id).second) complain(problems, fmt::format("each {} once", what), fmt::format("{} \"{}\" twice", what, thing.id));
}

void check_numbers(const OrderTask& task, Problems& problems)
{
    if (task.cards.size() > most_cards) complain(problems, fmt::format("at most {} cards", most_cards), fmt::format("{}", task.cards.size()));
    for (const WeighedRule& rule : task.rules)
        if (rule.weight < 1 || rule.weight > greatest_weight)
            complain(problems, fmt::format("a weight from 1 to {}", greatest_weight), fmt::format("weight {} of rule \"{}\"", rule.weight, rule.id));
    for (const OrderPair& pair : task.pairs)
        if (!is_index(pair.rule, task.rules.size()) || !is_index(pair.before, task.cards.size()) || !is_index(pair.after, task.cards.size()))
            complain(problems, "a pair of known cards under a known rule", fmt::format("rule {}, cards {} and {}", pair.rule, pair.before, pair.after));
    for (const ForbiddenCard& never : task.forbidden)
        if (!is_index(never.rule, task.rules.size()) || !is_index(never.card, task.cards.size()))
            complain(problems, "a known card under a known rule", fmt::format("rule {}, card {}", never.rule, never.card));
}

/// "Never this card" and "this card first" cannot both be asked: a forbidden card takes no part in the order.
void check_forbidden(const OrderTask& task, Problems& problems)
{
    std::set<int> ordered_rules, ordered_cards;
    for (const OrderPair& pair : task.pairs) {
        ordered_rules.insert(pair.rule);
        ordered_cards.insert({pair.before, pair.after});
    }
    for (const ForbiddenCard& never : task.forbidden) {
        if (ordered_rules.contains(never.rule))
            complain(problems, "a rule that either orders cards or forbids one", fmt::format("both in rule \"{}\"", task.rules[static_cast<std::size_t>(never.rule)].id));
        if (ordered_cards.contains(never.card))
            complain(problems, "no order asked of a forbidden card", fmt::format("card \"{}\" in both", task.cards[static_cast<std::size_t>(never.card)].id));
    }
}

BitMatrix relation(const OrderTask& task, int least_weight)
{
    BitMatrix before(static_cast<int>(task.cards.size()));
    for (const OrderPair& pair : task.pairs)
        if (task.rules[static_cast<std::size_t>(pair.rule)].weight >= least_weight) before.set(pair.before, pair.after);
    return before;
}

/// a strictly before b when some way from a to b uses a pair that one time slot does not satisfy.
BitMatrix strict_closure(const OrderTask& task, const BitMatrix& all, int least_weight)
{
    BitMatrix strict(all.size());
    for (const OrderPair& pair : task.pairs) {
        const WeighedRule& rule = task.rules[static_cast<std::size_t>(pair.rule)];
        if (rule.weight < least_weight || rule.same_time_keeps_it) continue;
        for (int a = 0; a < all.size(); ++a) {
            if (a != pair.before && !all.at(a, pair.before)) continue;
            strict.set(a, pair.after);
            strict.unite(a, all, pair.after);
        }
    }
    return strict;
}

void check_cycle(const OrderTask& task, Problems& problems)
{
    const std::vector<int> cycle = find_cycle(relation(task, 1));
    if (cycle.empty()) return;
    std::string way;
    for (std::size_t i = 0; i < cycle.size(); ++i) {
        const int from = cycle[i];
        const int to = cycle[(i + 1) % cycle.size()];
        std::string_view by = "?";
        for (const OrderPair& pair : task.pairs)
            if (pair.before == from && pair.after == to) {
                by = task.rules[static_cast<std::size_t>(pair.rule)].id;
                break;
            }
        way += fmt::format("{} before {} ({}), ", task.cards[static_cast<std::size_t>(from)].id, task.cards[static_cast<std::size_t>(to)].id, by);
    }
    way.resize(way.size() - 2);
    complain(problems, "rules that some order can keep", fmt::format("a cycle: {}", way));
}

}

Result<OrderBook> OrderBook::build(OrderTask task)
{
    Problems problems;
    check_ids(task.cards, "card", problems);
    check_ids(task.rules, "rule", problems);
    check_numbers(task, problems);
    if (problems.empty()) check_forbidden(task, problems);
    if (problems.empty()) check_cycle(task, problems);
    if (!problems.empty()) return failed(std::move(problems));
    return OrderBook(std::move(task));
}

OrderBook::OrderBook(OrderTask task) : task_(std::move(task))
{
    std::set<int> weights;
    for (const OrderPair& pair : task_.pairs) weights.insert(rule(pair.rule).weight);
    for (const int weight : weights) {
        BitMatrix all = closure(relation(task_, weight));
        BitMatrix strict = strict_closure(task_, all, weight);
        levels_.push_back({weight, std::move(all), std::move(strict)});
    }
}

}
