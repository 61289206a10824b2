#include "rules/spot.hpp"

#include "text/reading.hpp"
#include "text/writing.hpp"

#include <fmt/format.h>

namespace flapdoor::rules {
namespace {

/// A plain value as the log spells it.
std::optional<std::string> plain_value(const text::Node& node, Problems& problems)
{
    if (std::holds_alternative<text::Array>(node.value) || std::holds_alternative<text::Table>(node.value)) {
        text::refuse(node, {}, "a plain value", problems);
        return std::nullopt;
    }
    return text::plain_text(node);
}

text::Node text_node(std::string value) { return {{}, std::move(value)}; }

void add_entry(text::Table& table, std::string key, text::Node value)
{
    text::Entry& entry = table.entries.emplace_back();
    entry.key = std::move(key);
    entry.value = std::move(value);
}

}

void AnyOf::from_node(const text::Node& node, AnyOf& into, Problems& problems)
{
    into.where = node.where;
    into.words.clear();
    const auto* list = std::get_if<text::Array>(&node.value);
    if (list && list->empty()) text::refuse(node, {}, "a value, or a list with at least one", problems);
    const auto keep = [&](const text::Node& value) {
        if (auto plain = plain_value(value, problems)) into.words.push_back(std::move(*plain));
    };
    if (!list) return keep(node);
    for (const text::Node& value : *list) keep(value);
}

text::Node AnyOf::to_node(const AnyOf& any)
{
    if (any.words.size() == 1) return text_node(any.words.front());
    text::Array list;
    for (const std::string& word : any.words) list.push_back(text_node(word));
    return {{}, std::move(list)};
}

void Matches::from_node(const text::Node& node, Matches& into, Problems& problems)
{
    const text::Table* table = text::take_table(node, {"with"}, problems);
    if (!table) return;
    for (const text::Entry& entry : table->entries) {
        Match& match = into.all.emplace_back();
        match.parameter = entry.key;
        match.where = entry.where;
        AnyOf::from_node(entry.value, match.any_of, problems);
    }
}

text::Node Matches::to_node(const Matches& matches)
{
    text::Table table;
    for (const Match& match : matches.all) add_entry(table, match.parameter, AnyOf::to_node(match.any_of));
    return {{}, std::move(table)};
}

void Spot::from_node(const text::Node& node, Spot& into, Problems& problems)
{
    into.where = node.where;
    if (const auto* word = std::get_if<std::string>(&node.value)) {
        into.moment = from_word<Moment>(*word);
        if (!into.moment) into.step = {{*word}, node.where};
        return;
    }
    const text::Table* table = text::take_table(node, {}, problems);
    if (!table) return;
    text::FieldReader reader(node, *table, problems);
    fields(into, reader);
    reader.refuse_unknown_keys();
    const bool says_nothing = into.step.words.empty() && !into.phase && !into.hands && into.by.words.empty() && into.measured.empty() && into.state.empty();
    if (says_nothing) text::refuse_as(node, {}, "`step`, `phase`, `hands`, `by`, `measured` or `state`", "none of them", problems);
    const bool names_cards = !into.step.words.empty() || into.phase || into.hands || !into.measured.empty() || !into.with.all.empty() || !into.by.words.empty();
    if (!into.state.empty() && names_cards) text::refuse_as(node, {}, "either a `state` or cards", "both", problems);
    if (into.state.empty() && into.measured.empty() && (!into.of.empty() || !into.is.words.empty()))
        text::refuse_as(node, {}, "`of` and `is` beside `measured` or `state`", "neither", problems);
}

text::Node Spot::to_node(const Spot& spot)
{
    if (spot.moment) return text_node(std::string(word_of(*spot.moment)));
    text::Table table;
    const auto add = [&](std::string key, text::Node value) { add_entry(table, std::move(key), std::move(value)); };
    if (!spot.step.words.empty()) add("step", AnyOf::to_node(spot.step));
    if (spot.phase) add("phase", text_node(std::string(word_of(*spot.phase))));
    if (spot.hands) add("hands", text_node(std::string(word_of(*spot.hands))));
    if (!spot.by.words.empty()) add("by", AnyOf::to_node(spot.by));
    if (!spot.with.all.empty()) add("with", Matches::to_node(spot.with));
    if (!spot.measured.empty()) add("measured", text_node(spot.measured));
    if (!spot.state.empty()) add("state", text_node(spot.state));
    if (!spot.of.empty()) add("of", text_node(spot.of));
    if (!spot.is.words.empty()) add("is", AnyOf::to_node(spot.is));
    if (spot.which != Which::each) add("which", text_node(std::string(word_of(spot.which))));
    const bool is_one_word = table.entries.size() == 1 && spot.step.words.size() == 1;
    return is_one_word ? text_node(spot.step.words.front()) : text::Node{{}, std::move(table)};
}

std::string spot_text(const Spot& spot)
{
    if (spot.moment) return std::string(word_of(*spot.moment));
    std::string words = fmt::format("{}", fmt::join(spot.step.words, "/"));
    const auto add = [&](std::string_view label, std::string_view value) {
        if (!value.empty()) words += fmt::format("{}{}{}", words.empty() ? "" : " ", label, value);
    };
    if (spot.which != Which::each) add("", word_of(spot.which));
    if (spot.phase) add("phase ", word_of(*spot.phase));
    if (spot.hands) add("hands ", word_of(*spot.hands));
    if (!spot.by.words.empty()) add("by ", fmt::format("{}", fmt::join(spot.by.words, "/")));
    for (const Match& match : spot.with.all) add("", fmt::format("{}={}", match.parameter, fmt::join(match.any_of.words, "/")));
    add("", spot.measured);
    add("", spot.state);
    add("of ", spot.of);
    if (!spot.is.words.empty()) add("is ", fmt::format("{}", fmt::join(spot.is.words, "/")));
    return words;
}

}
