#include "rules/rule_book.hpp"

#include "rules/lint.hpp"
#include "text/quote.hpp"
#include "text/reading.hpp"

#include <fmt/format.h>

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

void check_loosening(const Rule& below, const Rule& above, Problems& problems)
{
    if (below.weight_class != RuleClass::must || above.loosens) return;
    std::string how;
    if (above.weight_class > below.weight_class) how = fmt::format("class {} instead of must", word_of(above.weight_class));
    else if (above.weight < below.weight) how = fmt::format("weight {} instead of {}", above.weight, below.weight);
    else if (below.is_critical && !above.is_critical) how = "no longer critical";
    if (how.empty()) return;
    problems.push_back({above.id.where, fmt::format("`loosens = true` where a rule asks less than the must-rule {} below", text::quoted(below.id.text)), how});
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

Result<RuleBook> layered(const RuleBook& base, const RuleBook& upper)
{
    RuleBook both = base;
    both.id = upper.id;
    both.title = fmt::format("{} over {}", upper.title, base.title);
    both.edition = fmt::format("{}; {}", upper.edition, base.edition);
    both.over = base.over;
    Problems problems;
    if (upper.over != base.id)
        problems.push_back({Place{}, fmt::format("a book that lies on {}", text::quoted(base.id)), upper.over.empty() ? "one that stands alone" : "one for " + text::quoted(upper.over)});
    for (const Rule& rule : upper.rules) {
        const auto known = std::find_if(both.rules.begin(), both.rules.end(), [&](const Rule& old) { return old.id.text == rule.id.text; });
        if (known == both.rules.end()) {
            both.rules.push_back(rule);
            continue;
        }
        check_loosening(*known, rule, problems);
        *known = rule;
    }
    if (!problems.empty()) return failed(std::move(problems));
    return checked(std::move(both));
}

}
