#include "rules/rule_book.hpp"

#include "rules/lint.hpp"
#include "text/reading.hpp"

#include <algorithm>

namespace flapdoor::rules {
namespace {

Result<RuleBook> checked(Result<RuleBook> book)
{
    if (!book) return book;
    Problems problems = lint(*book);
    if (problems.empty()) return book;
    text::sort_by_place(problems);
    return failed(std::move(problems));
}

}

void Marked::from_node(const text::Node& node, Marked& into, Problems& problems)
{
    into.where = node.where;
    if (auto name = text::take_name(node, {}, false, problems)) into.text = std::move(*name);
}

text::Node Marked::to_node(const Marked& marked) { return {{}, marked.text}; }

const Rule* RuleBook::find(std::string_view rule_id) const
{
    const auto found = std::find_if(rules.begin(), rules.end(), [&](const Rule& rule) { return rule.id.text == rule_id; });
    return found == rules.end() ? nullptr : &*found;
}

Result<RuleBook> read_rule_book(std::string_view text, const std::string& file_name)
{
    return checked(text::read_document<RuleBook>(text, file_name));
}

Result<RuleBook> load_rule_book(const std::string& path) { return checked(text::load<RuleBook>(path)); }

}
