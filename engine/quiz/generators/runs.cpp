#include "quiz/making/generator.hpp"

#include "quiz/making/moment.hpp"
#include "quiz/making/run_answers.hpp"
#include "rules/evaluate.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <set>

namespace flapdoor::quiz {
namespace {

constexpr std::size_t cards_asked = 6;

/// Two cards of a run and the rule that orders them.
struct Ordered {
    int before, after;
    const rules::Rule* rule;
};

std::vector<Ordered> orders_of(const Played& played)
{
    std::vector<Ordered> orders;
    const std::vector<rules::Verdict> verdicts = rules::evaluate(played.inputs->book, played.inputs->scenario, played.log);
    for (std::size_t i = 0; i < verdicts.size(); ++i) {
        const rules::Rule& rule = played.inputs->book.rules[i];
        if (verdicts[i].ruling != rules::Ruling::kept || rule.weight == 0) continue;
        for (const rules::CardPair& pair : verdicts[i].pairs)
            if (pair.before >= 0 && pair.after >= 0 && pair.before != pair.after && pair.is_kept) orders.push_back({pair.before, pair.after, &rule});
    }
    return orders;
}

/// Cards that rules tie together, no two of them alike.
std::vector<int> some_cards(const Played& played, std::vector<Ordered> orders, Dice& dice)
{
    dice.shuffle(orders);
    std::set<int> cards;
    std::set<std::string> texts;
    const auto text_of = [&](int card) { return in_english(card_phrase(played.log.entries[static_cast<std::size_t>(card)], played.inputs->scenario)); };
    const auto can_take = [&](int card) { return cards.contains(card) || !texts.contains(text_of(card)); };
    for (const Ordered& order : orders) {
        if (text_of(order.before) == text_of(order.after) || !can_take(order.before) || !can_take(order.after)) continue;
        const std::size_t more = static_cast<std::size_t>(!cards.contains(order.before)) + static_cast<std::size_t>(!cards.contains(order.after));
        if (cards.size() + more > cards_asked) continue;
        for (const int card : {order.before, order.after}) {
            cards.insert(card);
            texts.insert(text_of(card));
        }
        if (cards.size() == cards_asked) break;
    }
    return {cards.begin(), cards.end()};
}

/// Cards of the careful plan to be put in order, by every rule of the book that speaks of two of them.
std::optional<Made> order_of_cards(const Setting& setting)
{
    const auto played = setting.workshop.play(setting.drill, "good", 1);
    if (!played) return std::nullopt;
    const std::vector<Ordered> orders = orders_of(**played);
    Dice dice = setting.dice("order-of-cards");
    const std::vector<int> cards = some_cards(**played, orders, dice);
    if (cards.size() < 4) return std::nullopt;
    const auto id_of = [&](int card) { return rules::Marked{fmt::format("card-{}", (*played)->log.entries[static_cast<std::size_t>(card)].card + 1), {}}; };
    PutInOrder asked;
    for (const int card : cards) asked.cards.push_back({id_of(card), card_phrase((*played)->log.entries[static_cast<std::size_t>(card)], setting.scenario)});
    std::set<std::pair<int, int>> known;
    for (const Ordered& order : orders) {
        const bool is_asked = std::binary_search(cards.begin(), cards.end(), order.before) && std::binary_search(cards.begin(), cards.end(), order.after);
        if (!is_asked || !known.insert({order.before, order.after}).second) continue;
        Phrase told{"{before}, {after}: {reason}", "{before}, {after}: {reason}", {}, {}};
        told.blanks["before"] = card_phrase((*played)->log.entries[static_cast<std::size_t>(order.before)], setting.scenario);
        told.blanks["after"] = card_phrase((*played)->log.entries[static_cast<std::size_t>(order.after)], setting.scenario);
        told.blanks["reason"] = phrase(order.rule->reason);
        asked.rules.push_back({{id_of(order.before), id_of(order.after)}, std::move(told), order.rule->weight, false});
    }
    return Made{{{"drill", phrase(setting.scenario.title)}}, std::move(asked)};
}

std::vector<std::string> faulty_plans(const Setting& setting)
{
    std::vector<std::string> plans = setting.workshop.find().plans(setting.drill);
    std::erase(plans, "good");
    return plans;
}

/// A rule that a faulty plan breaks, and the card that breaks it first.
std::optional<Made> first_fault(const Setting& setting)
{
    const std::vector<std::string> plans = faulty_plans(setting);
    if (plans.empty()) return std::nullopt;
    Dice dice = setting.dice("first-fault");
    SpotFault asked;
    asked.scenario.text = setting.drill;
    asked.plan.text = dice.one_of(plans);
    const auto played = setting.workshop.play(setting.drill, asked.plan.text, asked.seed);
    if (!played) return std::nullopt;
    std::set<std::string> rules;
    for (const CardFault& fault : card_faults(**played)) rules.insert(fault.rule->rule);
    if (rules.empty()) return std::nullopt;
    asked.rule = rules::Marked{dice.one_of(std::vector<std::string>(rules.begin(), rules.end())), {}};
    return Made{{{"drill", phrase(setting.scenario.title)}, {"plan", phrase((*played)->inputs->plan.title)}}, std::move(asked)};
}

/// By which way most lead got out under a faulty plan.
std::optional<Made> main_way_out(const Setting& setting)
{
    const std::vector<std::string> plans = faulty_plans(setting);
    if (plans.empty()) return std::nullopt;
    Predict asked;
    asked.scenario.text = setting.drill;
    asked.plans.push_back({setting.dice("main-way-out").one_of(plans), {}});
    const auto inputs = setting.workshop.inputs(setting.drill, asked.plans.front().text);
    if (!inputs) return std::nullopt;
    return Made{{{"drill", phrase(setting.scenario.title)}, {"plan", phrase((*inputs)->plan.title)}}, std::move(asked)};
}

}

std::vector<Generator> run_generators()
{
    return {{"order-of-cards", {"drill"}, {}, order_of_cards},
            {"first-fault", {"drill", "plan", "rule", "reason", "cite"}, {"fault-not-seen"}, first_fault},
            {"main-way-out", {"drill", "plan"}, {"foretold-otherwise"}, main_way_out}};
}

}
