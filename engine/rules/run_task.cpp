#include "rules/run_task.hpp"

#include "core/place_in_list.hpp"
#include "rules/precedence.hpp"

#include <algorithm>
#include <map>
#include <numeric>
#include <set>

namespace flapdoor::rules {
namespace {

/// Time slot of each entry: a card shares the slot of the one before when both start together and take time.
std::vector<int> slots_of(const job::RunLog& log)
{
    std::vector<int> order(log.entries.size());
    std::iota(order.begin(), order.end(), 0);
    std::stable_sort(order.begin(), order.end(), [&](int a, int b) { return log.entries[at(a)].start < log.entries[at(b)].start; });
    std::vector<int> slots(order.size());
    int slot = -1;
    const job::LogEntry* before = nullptr;
    for (const int index : order) {
        const job::LogEntry& entry = log.entries[at(index)];
        const bool is_together = before && before->start == entry.start && before->end > entry.start && entry.end > entry.start;
        if (!is_together) ++slot;
        slots[at(index)] = slot;
        before = &entry;
    }
    return slots;
}

class Builder {
public:
    Builder(const RuleBook& book, const std::vector<Verdict>& verdicts, const job::RunLog& log) : book_(book), verdicts_(verdicts), slots_(slots_of(log))
    {
        for (std::size_t i = 0; i < book.rules.size(); ++i) add_rule(static_cast<int>(i));
        drop_cycles();
        if (run_.task.cards.size() > most_cards) forget_order();
        else add_free_cards(log);
        lay_cards();
    }

    RunTask take() { return std::move(run_); }

private:
    void add_rule(int index)
    {
        const Rule& rule = book_.rules[at(index)];
        const Verdict& verdict = verdicts_[at(index)];
        if (verdict.ruling == Ruling::not_applicable || rule.weight == 0) return;
        const int weighed = static_cast<int>(run_.task.rules.size());
        run_.task.rules.push_back({rule.id.text, rule.says, rule.weight, rule.is_critical, false});
        run_.rule_of.push_back(index);
        if (verdict.ruling == Ruling::consequence) return;

        const bool shows_in_order = std::any_of(verdict.pairs.begin(), verdict.pairs.end(), [&](const CardPair& p) { return !p.is_kept && is_true_to_slots(p); });
        if (verdict.ruling == Ruling::broken && !shows_in_order) {
            run_.answer.broken_lines.push_back(weighed);
            return;
        }
        std::set<OrderPair> pairs;
        for (const CardPair& pair : verdict.pairs)
            if (is_true_to_slots(pair)) pairs.insert({weighed, pair.before < 0 ? missing_card(pair.missing) : card(pair.before), card(pair.after)});
        run_.task.pairs.insert(run_.task.pairs.end(), pairs.begin(), pairs.end());
    }

    /// Does the order of the cards alone say the same as the verdict?
    bool is_true_to_slots(const CardPair& pair) const
    {
        if (pair.after < 0 || pair.before == pair.after) return false;
        if (pair.before < 0) return !pair.missing.empty();
        return pair.is_kept == (slots_[at(pair.before)] < slots_[at(pair.after)]);
    }

    int card(int entry)
    {
        const auto [known, is_new] = card_of_entry_.emplace(entry, static_cast<int>(run_.task.cards.size()));
        if (is_new) add_card("entry " + std::to_string(entry), entry);
        return known->second;
    }

    int missing_card(const std::string& key)
    {
        const auto [known, is_new] = card_of_missing_.emplace(key, static_cast<int>(run_.task.cards.size()));
        if (is_new) add_card(key, -1);
        return known->second;
    }

    void add_card(std::string id, int entry)
    {
        run_.task.cards.push_back({std::move(id), true, false});
        run_.entry_of.push_back(entry);
    }

    /// Which card serves which is settled by the log, so two rules may disagree about single cards though their kinds do
    /// not. The lightest rule of such a circle is then weighed without moves.
    void drop_cycles()
    {
        for (;;) {
            BitMatrix before(static_cast<int>(run_.task.cards.size()));
            for (const OrderPair& pair : run_.task.pairs) before.set(pair.before, pair.after);
            const std::vector<int> cycle = find_cycle(before);
            if (cycle.empty()) return;
            std::set<std::pair<int, int>> steps;
            for (std::size_t i = 0; i < cycle.size(); ++i) steps.insert({cycle[i], cycle[(i + 1) % cycle.size()]});
            int lightest = -1;
            for (const OrderPair& pair : run_.task.pairs)
                if (steps.contains({pair.before, pair.after}) && (lightest < 0 || weight(pair.rule) <= weight(lightest))) lightest = pair.rule;
            take_out_of_order(lightest);
        }
    }

    int weight(int rule) const { return run_.task.rules[at(rule)].weight; }

    void take_out_of_order(int rule)
    {
        std::erase_if(run_.task.pairs, [&](const OrderPair& pair) { return pair.rule == rule; });
        if (verdicts_[at(run_.rule_of[at(rule)])].ruling == Ruling::broken) run_.answer.broken_lines.push_back(rule);
    }

    /// A log too long for the order marks is marked rule by rule.
    void forget_order()
    {
        std::set<int> ordered;
        for (const OrderPair& pair : run_.task.pairs) ordered.insert(pair.rule);
        for (const int rule : ordered) take_out_of_order(rule);
        run_.task.cards.clear();
        run_.entry_of.clear();
    }

    /// Cards of which no rule speaks stand in the answer too, so that a legal order can name their places.
    void add_free_cards(const job::RunLog& log)
    {
        if (run_.task.cards.size() + log.entries.size() > most_cards) return;
        for (std::size_t i = 0; i < log.entries.size(); ++i)
            if (log.entries[i].outcome != job::Outcome::refused) card(static_cast<int>(i));
    }

    void lay_cards()
    {
        std::map<int, std::vector<int>> by_slot;
        for (std::size_t i = 0; i < run_.entry_of.size(); ++i) {
            if (run_.entry_of[i] >= 0) by_slot[slots_[at(run_.entry_of[i])]].push_back(static_cast<int>(i));
        }
        for (auto& [slot, cards] : by_slot) run_.answer.slots.push_back(std::move(cards));
        std::sort(run_.answer.broken_lines.begin(), run_.answer.broken_lines.end());
    }

    const RuleBook& book_;
    const std::vector<Verdict>& verdicts_;
    std::vector<int> slots_;
    std::map<int, int> card_of_entry_;
    std::map<std::string, int> card_of_missing_;
    RunTask run_;
};

}

RunTask run_task(const RuleBook& book, const std::vector<Verdict>& verdicts, const job::RunLog& log)
{
    insist(book.rules.size() == verdicts.size(), "verdicts are those of the book");
    return Builder(book, verdicts, log).take();
}

}
