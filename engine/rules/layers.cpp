#include "rules/layers.hpp"

#include "rules/lint.hpp"
#include "text/nearest.hpp"
#include "text/quote.hpp"
#include "text/reading.hpp"
#include "text/writing.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace flapdoor::rules {
namespace {

Rule* find_rule(std::vector<Rule>& rules, const std::string& id)
{
    const auto found = std::find_if(rules.begin(), rules.end(), [&](const Rule& rule) { return rule.id.text == id; });
    return found == rules.end() ? nullptr : &*found;
}

Rule changed(Rule rule, const Change& change)
{
    if (change.weight) rule.weight = *change.weight;
    if (change.weight_class) rule.weight_class = *change.weight_class;
    if (change.is_critical) rule.is_critical = *change.is_critical;
    return rule;
}

void check_loosening(const Rule& below, const Rule& above, bool says_so, const Place& where, Problems& problems)
{
    if (below.weight_class != RuleClass::must || says_so) return;
    std::string how;
    if (above.weight_class > below.weight_class) how = fmt::format("class {} instead of must", word_of(above.weight_class));
    else if (above.weight < below.weight) how = fmt::format("weight {} instead of {}", above.weight, below.weight);
    else if (below.is_critical && !above.is_critical) how = "no longer critical";
    if (how.empty()) return;
    problems.push_back({where, fmt::format("`loosens = true` where a rule asks less than the must-rule {} below", text::quoted(below.id.text)), how});
}

void refuse_unknown(const Marked& name, const std::vector<Rule>& rules, Problems& problems)
{
    std::vector<std::string_view> ids;
    for (const Rule& rule : rules) ids.push_back(rule.id.text);
    const auto near = text::nearest(name.text, ids);
    problems.push_back({name.where, near ? fmt::format("a rule of the book below, the nearest is \"{}\"", *near) : std::string("a rule of the book below"), text::quoted(name.text)});
}

void lay(RuleBook& both, const RuleBook& upper, Problems& problems)
{
    for (const Change& change : upper.changes) {
        Rule* below = find_rule(both.rules, change.rule.text);
        if (!below) {
            refuse_unknown(change.rule, both.rules, problems);
            continue;
        }
        const Rule above = changed(*below, change);
        check_loosening(*below, above, change.loosens, change.rule.where, problems);
        *below = above;
    }
    for (const Rule& rule : upper.rules) {
        Rule* below = find_rule(both.rules, rule.id.text);
        if (!below) {
            both.rules.push_back(rule);
            continue;
        }
        check_loosening(*below, rule, rule.loosens, rule.id.where, problems);
        *below = rule;
    }
}

void check_fit(const RuleBook& base, const RuleBook& upper, Problems& problems)
{
    if (upper.over && upper.over->text == base.id) return;
    const Place where = upper.over ? upper.over->where : Place{upper.rules.empty() ? std::string() : upper.rules.front().id.where.file, 0, 0};
    problems.push_back({where, fmt::format("a book that lies on {}", text::quoted(base.id)),
                        upper.over ? "one for " + text::quoted(upper.over->text) : fmt::format("{}, which stands alone (no `over`)", text::quoted(upper.id))});
}

std::string condition_text(const Rule& rule)
{
    // Equal conditions write equal trees; their values compare as text.
    const text::Node node = Condition::to_node(rule.when);
    std::string all;
    const auto add = [&](const auto& self, const text::Node& at) -> void {
        if (const auto* list = std::get_if<text::Array>(&at.value))
            for (const text::Node& value : *list) self(self, value);
        else if (const auto* table = std::get_if<text::Table>(&at.value))
            for (const text::Entry& entry : table->entries) {
                all += entry.key + '{';
                self(self, entry.value);
                all += '}';
            }
        else all += text::plain_text(at) + ',';
    };
    add(add, node);
    return all;
}

std::string difference(const Rule& below, const Rule& above)
{
    std::string what;
    const auto add = [&](const std::string& part) { what += (what.empty() ? "" : ", ") + part; };
    if (below.weight != above.weight) add(fmt::format("weight {} -> {}", below.weight, above.weight));
    if (below.weight_class != above.weight_class) add(fmt::format("class {} -> {}", word_of(below.weight_class), word_of(above.weight_class)));
    if (below.is_critical != above.is_critical) add(above.is_critical ? "now critical" : "no longer critical");
    if (condition_text(below) != condition_text(above)) add("another condition");
    if (below.cite != above.cite) add(fmt::format("cites {}", above.cite.empty() ? "nothing" : above.cite));
    return what.empty() ? "other words only" : what;
}

std::string standing(const Rule& rule)
{
    return fmt::format("{} ({}, weight {}{})", rule.says, word_of(rule.weight_class), rule.weight, rule.is_critical ? ", critical" : "");
}

}

Result<RuleBook> layered(const RuleBook& base, const RuleBook& upper)
{
    Problems problems;
    check_fit(base, upper, problems);
    if (!problems.empty()) return failed(std::move(problems));
    RuleBook both = base;
    both.id = upper.id;
    both.title = fmt::format("{} over {}", upper.title, base.title);
    both.edition = fmt::format("{}; {}", upper.edition, base.edition);
    if (upper.passing) both.passing = upper.passing;
    if (!upper.outside.empty()) both.outside = upper.outside;
    lay(both, upper, problems);
    if (!problems.empty()) return failed(std::move(problems));
    problems = lint(both);
    if (problems.empty()) return both;
    text::sort_by_place(problems);
    return failed(std::move(problems));
}

Result<RuleBook> read_layers(const std::vector<BookText>& texts)
{
    Problems problems;
    std::vector<RuleBook> books;
    for (const BookText& text : texts) {
        Result<RuleBook> book = read_rule_book(text.text, text.name);
        if (book) books.push_back(std::move(*book));
        else problems.insert(problems.end(), book.error().begin(), book.error().end());
    }
    if (texts.empty()) problems.push_back({Place{}, "a rule book", "none"});
    if (!books.empty() && books.size() == texts.size() && books.front().is_layer())
        problems.push_back({books.front().over->where, fmt::format("the book {} below this one", text::quoted(books.front().over->text)), "this one as the lowest"});
    if (!problems.empty()) return failed(std::move(problems));
    RuleBook all = std::move(books.front());
    for (std::size_t i = 1; i < books.size(); ++i) {
        Result<RuleBook> both = layered(all, books[i]);
        if (!both) return both;
        all = std::move(*both);
    }
    return all;
}

std::vector<LayerLine> layer_lines(const RuleBook& base, const RuleBook& upper)
{
    std::vector<LayerLine> lines;
    for (const Change& change : upper.changes)
        if (const Rule* below = base.find(change.rule.text))
            lines.push_back({LayerChange::changed, change.rule.text, fmt::format("{}: {}", difference(*below, changed(*below, change)), change.why), change.rule.where});
    for (const Rule& rule : upper.rules) {
        const Rule* below = base.find(rule.id.text);
        lines.push_back({below ? LayerChange::replaced : LayerChange::added, rule.id.text, below ? difference(*below, rule) : standing(rule), rule.id.where});
    }
    return lines;
}

}
