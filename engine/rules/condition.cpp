#include "rules/condition.hpp"

#include "rules/evidence.hpp"
#include "text/nearest.hpp"
#include "text/quote.hpp"
#include "text/reading.hpp"
#include "text/writing.hpp"

#include <algorithm>

namespace flapdoor::rules {

void Condition::from_node(const text::Node& node, Condition& into, Problems& problems)
{
    into.where = node.where;
    const text::Table* table = text::take_table(node, {"when"}, problems);
    if (!table) return;
    const auto& names = text::NamesOf<AnyCondition>::names;
    if (table->entries.size() != 1) {
        text::refuse_as(node, {"when"}, "a table with one condition: " + text::one_of(names), table->entries.empty() ? "none" : "several", problems);
        return;
    }
    const text::Entry& entry = table->entries.front();
    const auto found = std::find(names.begin(), names.end(), entry.key);
    if (found == names.end()) return text::refuse_unknown(entry, names, problems);
    text::choose(into.kind, static_cast<std::size_t>(found - names.begin()));
    std::visit([&](auto& kind) { text::read(entry.value, kind, problems, {entry.key}); }, into.kind);
}

text::Node Condition::to_node(const Condition& condition)
{
    text::Table table;
    text::Entry& entry = table.entries.emplace_back();
    entry.key = kind_name(condition);
    entry.value = std::visit([](const auto& kind) { return text::to_node(kind); }, condition.kind);
    return {{}, std::move(table)};
}

std::string_view kind_name(const Condition& condition)
{
    return std::visit([]<class Kind>(const Kind&) { return Kind::name; }, condition.kind);
}

Judgement judge(const Condition& condition, const Evidence& evidence, const std::string& self)
{
    return std::visit([&](const auto& kind) { return judge(kind, evidence, self); }, condition.kind);
}

}
