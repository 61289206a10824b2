#include "quiz/kinds/put_in_order.hpp"

#include "core/insist.hpp"
#include "quiz/complaints.hpp"
#include "rules/order_marks.hpp"

#include <algorithm>

namespace flapdoor::quiz {
namespace {

int place_of(const PutInOrder& asked, const std::string& id)
{
    const auto found = std::find_if(asked.cards.begin(), asked.cards.end(), [&](const LayCard& card) { return card.id.text == id; });
    return found == asked.cards.end() ? -1 : static_cast<int>(found - asked.cards.begin());
}

rules::OrderBook sound_book(const PutInOrder& asked)
{
    Result<rules::OrderBook> book = order_book(asked);
    insist(book.has_value(), "a question that is asked was checked");
    return std::move(*book);
}

std::vector<int> numbers_of(const PutInOrder& asked, const Laid& laid)
{
    std::vector<int> numbers;
    for (const std::string& id : laid.cards)
        if (const int card = place_of(asked, id); card >= 0 && std::find(numbers.begin(), numbers.end(), card) == numbers.end()) numbers.push_back(card);
    return numbers;
}

}

Result<rules::OrderBook> order_book(const PutInOrder& asked)
{
    rules::OrderTask task;
    for (const LayCard& card : asked.cards) task.cards.push_back({card.id.text, true, false});
    for (std::size_t i = 0; i < asked.rules.size(); ++i) {
        const LayRule& rule = asked.rules[i];
        task.rules.push_back({std::to_string(i + 1), in_english(rule.told), rule.weight, rule.is_critical, false});
        for (std::size_t k = 1; k < rule.order.size(); ++k) {
            const int before = place_of(asked, rule.order[k - 1].text), after = place_of(asked, rule.order[k].text);
            if (before >= 0 && after >= 0) task.pairs.push_back({static_cast<int>(i), before, after});
        }
    }
    return rules::OrderBook::build(std::move(task));
}

Mark mark(const PutInOrder& asked, const Response& response)
{
    Mark mark;
    const auto* laid = std::get_if<Laid>(&response);
    if (laid == nullptr) return mark;
    const rules::OrderBook book = sound_book(asked);
    const rules::OrderMarks marks = rules::mark_order(book, rules::one_by_one(numbers_of(asked, *laid)));
    mark.is_right = marks.broken.empty() && marks.moves == 0;
    if (marks.is_passed) mark.share = marks.score;
    for (const rules::BrokenRule& broken : marks.broken)
        if (broken.rule >= 0) mark.told.push_back(asked.rules[static_cast<std::size_t>(broken.rule)].told);
    return mark;
}

Laid one_right_order(const PutInOrder& asked)
{
    const rules::OrderBook book = sound_book(asked);
    std::vector<bool> is_laid(asked.cards.size(), false);
    Laid laid;
    const auto waits = [&](int card) {
        const auto& pairs = book.task().pairs;
        return std::any_of(pairs.begin(), pairs.end(), [&](const rules::OrderPair& pair) { return pair.after == card && !is_laid[static_cast<std::size_t>(pair.before)]; });
    };
    while (laid.cards.size() < asked.cards.size()) {
        int next = 0;
        while (is_laid[static_cast<std::size_t>(next)] || waits(next)) ++next;      // a checked task has no circle: some card is free
        is_laid[static_cast<std::size_t>(next)] = true;
        laid.cards.push_back(asked.cards[static_cast<std::size_t>(next)].id.text);
    }
    return laid;
}

void check(const PutInOrder& asked, const Place& where, Complaints& complaints)
{
    std::vector<rules::Marked> ids;
    std::vector<std::string> known;
    for (const LayCard& card : asked.cards) {
        ids.push_back(card.id);
        known.push_back(card.id.text);
    }
    if (ids.size() < 2 || ids.size() > 30) complaints.add(where, "two to thirty `card`s", std::to_string(ids.size()));
    complaints.must_differ("a card id", ids);
    bool is_sound = true;
    for (const LayRule& rule : asked.rules) {
        if (rule.order.size() < 2) complaints.add(rule.told.where, "an `order` of at least two cards", "a shorter one");
        for (const rules::Marked& id : rule.order)
            if (place_of(asked, id.text) < 0) {
                complaints.unknown(id, "card", known);
                is_sound = false;
            }
    }
    if (asked.rules.empty()) complaints.add(where, "at least one `rule` of order", "none");
    if (!is_sound) return;
    if (const auto book = order_book(asked); !book)
        for (const Problem& problem : book.error()) complaints.add(where, problem.expected, problem.found);
}

}
