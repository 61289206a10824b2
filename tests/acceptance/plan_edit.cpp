#include "plan_edit.hpp"

#include "text/writing.hpp"

#include <algorithm>

namespace flapdoor::acceptance {

namespace {

std::string label_of(const text::Node& card)
{
    const auto* table = std::get_if<text::Table>(&card.value);
    const text::Node* label = table != nullptr ? table->find("label") : nullptr;
    return label != nullptr ? std::get<std::string>(label->value) : std::string();
}

/// What `x = <toml>` says.
Result<text::Node> parse_value(const std::string& toml)
{
    const Result<text::Node> root = text::parse_document("x = " + toml, "edit");
    if (!root) return failed(root.error());
    return *std::get<text::Table>(root->value).find("x");
}

Result<void> make(text::Array& cards, const Edit& edit)
{
    const auto find = [&](const std::string& label) { return std::find_if(cards.begin(), cards.end(), [&](const text::Node& card) { return label_of(card) == label; }); };
    const auto unknown = [](const std::string& label) { return failed(Problem{{"edit"}, "the label of a card of the plan", "`" + label + "`"}); };
    const std::string& subject = !edit.drop.empty() ? edit.drop : !edit.move.empty() ? edit.move : edit.set;
    if (edit.insert.empty() && find(subject) == cards.end()) return unknown(subject);
    if (!edit.after.empty() && find(edit.after) == cards.end()) return unknown(edit.after);
    if (!edit.drop.empty()) {
        cards.erase(find(edit.drop));
        return {};
    }
    if (!edit.move.empty()) {
        text::Node card = *find(edit.move);
        cards.erase(find(edit.move));
        cards.insert(edit.after.empty() ? cards.begin() : find(edit.after) + 1, std::move(card));
        return {};
    }
    if (!edit.insert.empty()) {
        Result<text::Node> card = parse_value(edit.insert);
        if (!card) return failed(card.error());
        cards.insert(edit.after.empty() ? cards.begin() : find(edit.after) + 1, std::move(*card));
        return {};
    }
    Result<text::Node> value = parse_value(edit.value);
    if (!value) return failed(value.error());
    auto& table = std::get<text::Table>(find(edit.set)->value);
    const auto entry = std::find_if(table.entries.begin(), table.entries.end(), [&](const text::Entry& e) { return e.key == edit.key; });
    if (entry != table.entries.end()) entry->value = std::move(*value);
    else table.entries.push_back({edit.key, {}, std::move(*value)});
    return {};
}

}

Result<std::string> edited(const std::string& plan_text, const std::vector<Edit>& edits)
{
    Result<text::Node> root = text::parse_document(plan_text, "plan");
    if (!root) return failed(root.error());
    for (text::Entry& entry : std::get<text::Table>(root->value).entries) {
        if (entry.key != "card") continue;
        for (const Edit& edit : edits)
            if (Result<void> made = make(std::get<text::Array>(entry.value.value), edit); !made) return failed(made.error());
    }
    return text::print_toml(*root);
}

}
