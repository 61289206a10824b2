#include "quiz/making/moment.hpp"
#include "quiz/making/run_answers.hpp"
#include "text/language.hpp"
#include "text/quote.hpp"
#include "text/show.hpp"

#include <algorithm>
#include <set>

namespace flapdoor::quiz {
namespace {

/// The faults that are asked about: of one rule, or all.
std::vector<CardFault> faults_asked(const SpotFault& asked, const Played& played)
{
    std::vector<CardFault> faults = card_faults(played);
    if (asked.rule) std::erase_if(faults, [&](const CardFault& fault) { return fault.rule->rule != asked.rule->text; });
    return faults;
}

/// Cards that are shown: the one with the fault, and those round it of which the question is not true as well. They look unlike
/// each other.
std::vector<int> shown_cards(const SpotFault& asked, const Played& played, const std::vector<CardFault>& faults)
{
    const int key = faults.front().entry, size = static_cast<int>(played.log.entries.size());
    std::set<int> also_true;
    for (const CardFault& fault : faults)
        if (asked.rule) also_true.insert(fault.entry);
    std::set<std::string> texts{in_english(card_phrase(played.log.entries[static_cast<std::size_t>(key)], played.inputs->scenario))};
    std::vector<int> cards{key};
    // Outward from the fault, two before it for each one after: what comes before it is what looks like a fault.
    int before = key - 1, after = key + 1;
    for (int turn = 0; static_cast<int>(cards.size()) < asked.shows && (before >= 0 || after < size); ++turn) {
        const bool is_forward = (turn % 3 == 2 || before < 0) && after < size;
        const int card = is_forward ? after++ : before--;
        if (card < 0 || also_true.contains(card)) continue;
        const job::LogEntry& entry = played.log.entries[static_cast<std::size_t>(card)];
        if (entry.outcome == job::Outcome::refused) continue;
        if (texts.insert(in_english(card_phrase(entry, played.inputs->scenario))).second) cards.push_back(card);
    }
    std::sort(cards.begin(), cards.end());
    return cards;
}

}

Result<void> play(Question& question, SpotFault& asked, Workshop& workshop)
{
    const auto played = workshop.play(asked.scenario.text, asked.plan.text, asked.seed);
    if (!played) return failed(played.error());
    const std::vector<CardFault> faults = faults_asked(asked, **played);
    if (faults.empty()) {
        const std::string what = asked.rule ? "a rule that a card of the run breaks" : "a plan with a fault";
        return failed(Problem{asked.rule ? asked.rule->where : asked.plan.where, what, text::quoted(asked.rule ? asked.rule->text : asked.plan.text)});
    }
    asked.moments.clear();
    for (const int card : shown_cards(asked, **played, faults)) {
        const job::LogEntry& entry = (*played)->log.entries[static_cast<std::size_t>(card)];
        Option option;
        option.id.text = "card-" + std::to_string(entry.card + 1);
        option.text = {"{time}  {card}", "{time}  {card}", {{"time", phrase(text::show_clock(entry.start))}, {"card", card_phrase(entry, (*played)->inputs->scenario)}}, {}};
        option.is_right = card == faults.front().entry;
        if (!option.is_right) {
            option.misconception = "fault-not-seen";
            option.told = asked.told;
        }
        asked.moments.push_back(std::move(option));
    }
    const rules::SheetRule& rule = *faults.front().rule;
    for (Phrase* text : {&question.text, &question.why, &asked.told}) {
        text->blanks["rule"] = phrase(rule.says);
        text->blanks["reason"] = phrase(rule.reason);
        text->blanks["cite"] = phrase(rule.cite);
    }
    for (Option& option : asked.moments)
        if (!option.is_right) option.told = asked.told;
    return {};
}

}
