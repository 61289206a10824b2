#include "debrief/repair/plan_edit.hpp"

#include "core/insist.hpp"
#include "job/card_node.hpp"
#include "job/card_words.hpp"
#include "rules/things.hpp"
#include "text/field_types.hpp"
#include "text/language.hpp"
#include "text/writing.hpp"

#include <algorithm>
#include <set>
#include <type_traits>

namespace flapdoor::debrief {

namespace {

std::string_view title_of(const job::Step& step)
{
    return std::visit([](const auto& s) { return std::string_view(s.title); }, step);
}

/// "Close a register (Supply register)": a card that has no number yet, with the things it is about.
std::string name_of(const job::Card& card, const job::Scenario& scenario)
{
    std::string things;
    std::visit([&]<class S>(const S& step) {
        S::fields(step, [&]<class Field>(std::string_view, const Field& field, const auto&...) {
            if constexpr (text::is_id<Field> && !std::is_same_v<Field, job::SupplyId>)
                if (!field.name.empty()) things += (things.empty() ? "" : ", ") + std::string(text::say(rules::title_of_thing(field.name, scenario)));
        });
    }, card.step);
    const std::string title(text::say(title_of(card.step)));
    return things.empty() ? title : title + " (" + things + ")";
}

/// A value of a card as people read it: "yes", "6 ft", "hand scrape", titles of things.
std::string value_text(const text::Node& value, const job::Scenario& scenario)
{
    if (const bool* is_so = std::get_if<bool>(&value.value)) return std::string(*is_so ? text::say("yes") : text::say("no"));
    if (const auto* list = std::get_if<text::Array>(&value.value)) {
        std::string all;
        for (const text::Node& entry : *list) all += (all.empty() ? "" : ", ") + value_text(entry, scenario);
        return all;
    }
    const std::string plain = text::plain_text(value);
    if (const std::string title = rules::title_of_thing(plain, scenario); title != plain) return std::string(text::say(title));
    const bool is_word = !plain.empty() && std::all_of(plain.begin(), plain.end(), [](char c) { return (c >= 'a' && c <= 'z') || c == '-'; });
    return is_word ? job::word_label(plain) : plain;
}

/// Values compare by their spelling: where they stood in a file does not matter.
std::string spelled(const std::vector<std::pair<std::string, text::Node>>& values)
{
    std::string all;
    for (const auto& [key, value] : values) all += key + "=" + text::plain_text(value) + ";";
    return all;
}

/// What a list has more than before; empty when it is no list or lacks something.
text::Array added_to(const text::Node& was, const text::Node& is)
{
    const auto* old_list = std::get_if<text::Array>(&was.value);
    const auto* new_list = std::get_if<text::Array>(&is.value);
    if (old_list == nullptr || new_list == nullptr || new_list->size() <= old_list->size()) return {};
    text::Array more;
    for (const text::Node& entry : *new_list)
        if (std::none_of(old_list->begin(), old_list->end(), [&](const text::Node& old) { return text::plain_text(old) == text::plain_text(entry); })) more.push_back(entry);
    return more;
}

/// A list that has all that stood there and more: what other edits added stays. Anything else takes the place of what was.
text::Node merged(const text::Node& original, const text::Node& now, const text::Node& value)
{
    if (added_to(original, value).empty()) return value;
    text::Node all = now;
    auto& list = std::get<text::Array>(all.value);
    for (const text::Node& entry : std::get<text::Array>(value.value))
        if (std::none_of(list.begin(), list.end(), [&](const text::Node& there) { return text::plain_text(there) == text::plain_text(entry); })) list.push_back(entry);
    return all;
}

job::Card with_values(const job::Card& original, const job::Card& card, const std::vector<std::pair<std::string, text::Node>>& values)
{
    const text::Node before = job::card_node(original);
    text::Node node = job::card_node(card);
    auto& table = std::get<text::Table>(node.value);
    for (const auto& [key, value] : values) {
        const auto entry = std::find_if(table.entries.begin(), table.entries.end(), [&key = key](const text::Entry& e) { return e.key == key; });
        const text::Node* was = std::get<text::Table>(before.value).find(key);
        if (entry != table.entries.end()) entry->value = was != nullptr ? merged(*was, entry->value, value) : value;
        else {
            text::Entry added;
            added.key = key;
            added.value = value;
            table.entries.push_back(std::move(added));
        }
    }
    Result<job::Card> changed = job::card_from(node);
    insist(changed.has_value(), "an edit gives a card values that fit");
    return std::move(*changed);
}

void drop_double_labels(std::vector<job::Card>& cards, const std::vector<bool>& is_new)
{
    std::set<std::string> labels;
    for (std::size_t i = 0; i < cards.size(); ++i)
        if (!is_new[i]) labels.insert(cards[i].label);
    for (std::size_t i = 0; i < cards.size(); ++i)
        if (is_new[i] && !cards[i].label.empty() && !labels.insert(cards[i].label).second) cards[i].label.clear();
}

}

bool operator==(const PlanEdit& a, const PlanEdit& b)
{
    return a.kind == b.kind && a.card == b.card && a.before == b.before && a.twin == b.twin && spelled(a.values) == spelled(b.values)
           && (a.kind != PlanEdit::Kind::put_in || text::print_toml(job::card_node(a.put)) == text::print_toml(job::card_node(b.put)));
}

EditedPlan edited_plan(const job::WorkPlan& plan, const std::vector<PlanEdit>& edits)
{
    struct Ahead {
        job::Card card;
        bool is_new = false;
    };
    const auto count = static_cast<int>(plan.cards.size());
    std::vector<job::Card> changed = plan.cards;
    std::vector<bool> is_gone(plan.cards.size(), false), is_set(plan.cards.size(), false);
    std::vector<std::vector<Ahead>> ahead(plan.cards.size() + 1);   // of each card: what now stands before it
    for (const PlanEdit& edit : edits)
        if (edit.kind == PlanEdit::Kind::set) {
            const auto card = static_cast<std::size_t>(edit.card);
            changed.at(card) = with_values(plan.cards.at(card), changed.at(card), edit.values);
            is_set.at(card) = true;
        }
    for (const PlanEdit& edit : edits) {
        if (edit.kind == PlanEdit::Kind::set) continue;
        if (edit.kind != PlanEdit::Kind::put_in) {
            insist(edit.card >= 0 && edit.card < count, "an edit names a card of the plan");
            if (is_gone[static_cast<std::size_t>(edit.card)]) continue;     // two faults move or drop it: the first one's place counts
            is_gone[static_cast<std::size_t>(edit.card)] = true;
        }
        if (edit.kind == PlanEdit::Kind::leave_out) continue;
        insist(edit.before >= 0 && edit.before <= count, "an edit names a place in the plan");
        auto& here = ahead[static_cast<std::size_t>(edit.before)];
        if (edit.kind == PlanEdit::Kind::move) here.push_back({changed[static_cast<std::size_t>(edit.card)], false});
        else here.push_back({edit.put, true});
    }
    EditedPlan result{plan, {}, {}};
    result.plan.cards.clear();
    std::vector<bool> is_new;
    const auto add = [&](job::Card card, std::size_t place, bool is_touched, bool is_put_in) {
        result.plan.cards.push_back(std::move(card));
        result.place.push_back(static_cast<int>(place));
        result.is_touched.push_back(is_touched);
        is_new.push_back(is_put_in);
    };
    for (std::size_t i = 0; i <= plan.cards.size(); ++i) {
        for (Ahead& here : ahead[i]) add(std::move(here.card), i, true, here.is_new);
        if (i < plan.cards.size() && !is_gone[i]) add(std::move(changed[i]), i, is_set[i], false);
    }
    drop_double_labels(result.plan.cards, is_new);
    return result;
}

job::WorkPlan edited(const job::WorkPlan& plan, const std::vector<PlanEdit>& edits) { return edited_plan(plan, edits).plan; }

std::string card_name(const job::WorkPlan& plan, int card)
{
    return text::say_with("card {} ({})", card + 1, text::say(title_of(plan.cards.at(static_cast<std::size_t>(card)).step)));
}

std::string told(const PlanEdit& edit, const job::WorkPlan& plan, const job::Scenario& scenario)
{
    const bool is_last = edit.before == static_cast<int>(plan.cards.size());
    switch (edit.kind) {
        case PlanEdit::Kind::set: {
            const text::Node card = job::card_node(plan.cards.at(static_cast<std::size_t>(edit.card)));
            std::string values;
            for (const auto& [key, value] : edit.values) {
                const text::Node* was = std::get<text::Table>(card.value).find(key);
                const text::Array more = was != nullptr ? added_to(*was, value) : text::Array{};
                values += (values.empty() ? "" : ", ") + (more.empty() ? text::say_with("“{}” is now {}", job::field_label(key), value_text(value, scenario))
                                                                       : text::say_with("“{}” now has {} too", job::field_label(key), value_text({{}, more}, scenario)));
            }
            return text::say_with("{}: {}", card_name(plan, edit.card), values);
        }
        case PlanEdit::Kind::move:
            return is_last ? text::say_with("{} comes last", card_name(plan, edit.card)) : text::say_with("{} comes before {}", card_name(plan, edit.card), card_name(plan, edit.before));
        case PlanEdit::Kind::put_in:
            return is_last ? text::say_with("{} is put in at the end", name_of(edit.put, scenario))
                           : text::say_with("{} is put in before {}", name_of(edit.put, scenario), card_name(plan, edit.before));
        case PlanEdit::Kind::leave_out: return text::say_with("{} is left out", card_name(plan, edit.card));
    }
    return {};
}

}
