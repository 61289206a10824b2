#include "rules/marking_sheet.hpp"

#include "core/place_in_list.hpp"
#include "rules/nearest_order.hpp"
#include "rules/run_task.hpp"
#include "rules/telling.hpp"
#include "rules/vocabulary.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace flapdoor::rules {

using text::sentence;

namespace {

SheetRule sheet_rule(const Rule& rule, const Verdict& verdict, Quarters lost)
{
    return {rule.id.text, rule.says, rule.cite, rule.reason, rule.harm, rule.weight_class, rule.weight, rule.is_critical, lost, verdict.faults, verdict.roots};
}

text::Sentence entry_text(const job::LogEntry& entry) { return sentence("card {} ({})", entry.card + 1, title_of(entry.step)); }

/// The kinds of step a missing card's key begins with, as people call them: "Vacuum the walls or Wipe the walls".
text::Sentence missing_title(const std::string& key)
{
    const std::string kinds = key.substr(0, key.find(' '));
    text::Sentence titles;
    for (std::size_t from = 0; from <= kinds.size();) {
        const std::size_t slash = std::min(kinds.find('/', from), kinds.size());
        const std::string kind = kinds.substr(from, slash - from);
        if (!find_step(kind)) return key;
        titles = listed(std::move(titles), title_of(kind));
        from = slash + 1;
    }
    const std::size_t thing = key.rfind("this=");
    return thing == std::string::npos ? titles : text::Sentence("{} ({})", {titles, key.substr(thing + 5)});
}

class SheetWriter {
public:
    SheetWriter(const RuleBook& book, const std::vector<Verdict>& verdicts, const job::RunLog& log)
        : book_(book), verdicts_(verdicts), log_(log), run_(run_task(book, verdicts, log))
    {
        auto checked = OrderBook::build(run_.task);
        insist(checked.has_value(), "a run's task holds no circle");
        const OrderBook orders = std::move(*checked);
        const OrderMarks marks = mark_order(orders, run_.answer);
        sheet_.book = book.title;
        sheet_.edition = book.edition;
        sheet_.wanted = marks.wanted;
        sheet_.lost = marks.lost;
        sheet_.score = marks.score;
        sheet_.fewest_moves = marks.moves;
        for (const MoveLine& line : marks.lines) add_move(line);
        for (const BrokenRule& broken : marks.broken) add_broken(broken);
        for (const int rule : marks.consequences) add_consequence(rule);
        for (std::size_t i = 0; i < verdicts.size(); ++i) add_rest(book.rules[i], verdicts[i]);
        if (marks.moves > 0)
            for (const PlacedCard& placed : nearest_order(orders, run_.answer, marks)) add_step(placed);
        if (book.passing) check_cut(*book.passing);
        sheet_.is_passed = sheet_.critical.empty() && (!sheet_.cut || sheet_.cut->is_met);
    }

    MarkingSheet take() { return std::move(sheet_); }

private:
    const Rule& book_rule(int weighed) const { return book_.rules[at(run_.rule_of[at(weighed)])]; }
    const Verdict& verdict(int weighed) const { return verdicts_[at(run_.rule_of[at(weighed)])]; }

    void add_step(const PlacedCard& placed)
    {
        const int entry = run_.entry_of[at(placed.card)];
        sheet_.legal_order.push_back({entry, entry < 0 ? missing_title(run_.task.cards[at(placed.card)].id) : text::Sentence(), placed.is_moved});
    }

    void check_cut(const Passing& passing)
    {
        const Fraction least = reduced(passing.score, 100);
        sheet_.cut = Cut{passing.score, passing.most_lost, !is_less(sheet_.score, least) && sheet_.lost <= whole_points(passing.most_lost)};
    }

    void add_move(const MoveLine& line)
    {
        SheetMove move;
        move.entry = run_.entry_of[at(line.card)];
        move.points = line.points;
        move.lost = {3 * line.points};
        if (line.rule >= 0) move.rule = book_rule(line.rule).id.text;
        if (move.entry < 0) {
            move.missing = run_.task.cards[at(line.card)].id;
            move.what = missing_sentence(line, move.missing);
        }
        else move.what = moved_sentence(line, log_.entries[at(move.entry)]);
        sheet_.moves.push_back(std::move(move));
    }

    /// The rule's own words about the missing card, where it has them.
    Sentence missing_sentence(const MoveLine& line, const std::string& key) const
    {
        if (line.rule >= 0)
            for (const Fault& fault : verdict(line.rule).faults)
                if (fault.missing == key) return fault.what;
        return sentence("{0} is missing.", missing_title(key));
    }

    Sentence moved_sentence(const MoveLine& line, const job::LogEntry& entry) const
    {
        if (line.before < 0) return sentence("{0} must move.", entry_text(entry));
        const auto text_of = [&](int card) { return entry_text(log_.entries[at(run_.entry_of[at(card)])]); };
        if (line.before == line.card) return sentence("{0} must move: it belongs before {1}.", entry_text(entry), text_of(line.after));
        if (line.after == line.card) return sentence("{0} must move: {1} belongs before it.", entry_text(entry), text_of(line.before));
        return sentence("{0} must move: {1} belongs before {2}.", entry_text(entry), text_of(line.before), text_of(line.after));
    }

    void add_broken(const BrokenRule& broken)
    {
        const Rule& rule = book_rule(broken.rule);
        if (broken.how == Breach::line) sheet_.lines.push_back(sheet_rule(rule, verdict(broken.rule), whole_points(rule.weight)));
        else sheet_.broken.push_back(sheet_rule(rule, verdict(broken.rule), {rule.weight}));
    }

    /// Broken only because a card is missing that is paid for under a heavier rule.
    void add_consequence(int weighed)
    {
        if (verdict(weighed).ruling != Ruling::broken) return;
        sheet_.consequences.push_back(sheet_rule(book_rule(weighed), verdict(weighed), {}));
    }

    void add_rest(const Rule& rule, const Verdict& verdict)
    {
        const SheetRule line = sheet_rule(rule, verdict, {});
        if (verdict.ruling == Ruling::not_applicable) sheet_.not_applicable.push_back(line);
        if (verdict.ruling == Ruling::kept) sheet_.kept.push_back(line);
        if (verdict.ruling == Ruling::consequence) sheet_.consequences.push_back(line);
        if (verdict.ruling == Ruling::broken && rule.weight == 0) sheet_.advice.push_back(line);
        const bool is_broken = verdict.ruling == Ruling::broken || verdict.ruling == Ruling::consequence;
        if (is_broken && rule.is_critical) sheet_.critical.push_back(rule.id.text);
    }

    const RuleBook& book_;
    const std::vector<Verdict>& verdicts_;
    const job::RunLog& log_;
    RunTask run_;
    MarkingSheet sheet_;
};

void add_rules(std::vector<std::string>& lines, std::string_view title, const std::vector<SheetRule>& rules, bool shows_points)
{
    if (rules.empty()) return;
    lines.emplace_back(title);
    for (const SheetRule& rule : rules) {
        const std::string cite = rule.cite.empty() ? std::string() : fmt::format(" [{}]", rule.cite);
        const std::string points = shows_points ? fmt::format(" -{}", points_text(rule.lost)) : std::string();
        lines.push_back(fmt::format("  {}{}: {}{}{}", rule.rule, rule.is_critical ? "!" : "", rule.says, cite, points));
        for (const Fault& fault : rule.faults) lines.push_back("    " + text::as_sentence(fault.what.english()));
        if (!rule.faults.empty()) lines.push_back("    Why: " + rule.reason);
    }
}

}

MarkingSheet marking_sheet(const RuleBook& book, const std::vector<Verdict>& verdicts, const job::RunLog& log)
{
    return SheetWriter(book, verdicts, log).take();
}

MarkingSheet marking_sheet(const RuleBook& book, const job::Scenario& scenario, const job::RunLog& log)
{
    MarkingSheet sheet = marking_sheet(book, evaluate(book, scenario, log), log);
    if (const Outside* outside = outside_of(book, scenario, log)) {
        sheet.outside = outside->why;
        sheet.outside_cite = outside->cite;
    }
    return sheet;
}

std::vector<Sentence> why_not_passed(const MarkingSheet& sheet)
{
    std::vector<Sentence> reasons;
    Sentence critical;
    for (const std::string& id : sheet.critical) {
        const auto followed = std::find_if(sheet.consequences.begin(), sheet.consequences.end(), [&](const SheetRule& rule) { return rule.rule == id && !rule.roots.empty(); });
        critical = joined(std::move(critical), followed == sheet.consequences.end() ? Sentence(id) : sentence("{} (follows from {})", id, fmt::format("{}", fmt::join(followed->roots, ", "))));
    }
    if (!critical.empty()) reasons.push_back(sentence("critical {}", critical));
    if (!sheet.cut || sheet.cut->is_met) return reasons;
    if (sheet.lost > whole_points(sheet.cut->most_lost)) reasons.push_back(sentence("{} points lost, at most {}", points_text(sheet.lost), sheet.cut->most_lost));
    if (is_less(sheet.score, reduced(sheet.cut->least_percent, 100))) reasons.push_back(sentence("{} left, at least {} %", percent_text(sheet.score), sheet.cut->least_percent));
    return reasons;
}

std::vector<SheetStretch> legal_stretches(const MarkingSheet& sheet)
{
    const std::vector<SheetStep>& steps = sheet.legal_order;
    const auto is_left_out = [&](int from, int to) {    // did a card that moves stand between the two?
        return std::any_of(steps.begin(), steps.end(), [&](const SheetStep& s) { return s.is_moved && s.entry > from && s.entry < to; });
    };
    std::vector<SheetStretch> stretches;
    for (const SheetStep& step : steps) {
        const bool goes_on = !stretches.empty() && !step.is_moved && !stretches.back().is_moved && !is_left_out(stretches.back().last, step.entry);
        if (goes_on) stretches.back().last = step.entry;
        else stretches.push_back({step.entry, step.entry, step.missing, step.is_moved});
    }
    return stretches;
}

std::vector<std::string> print_out(const MarkingSheet& sheet)
{
    std::vector<std::string> lines;
    const Quarters wanted = whole_points(sheet.wanted);
    lines.push_back(fmt::format("Wanted {} points, lost {} -> {} of {} = {}.", points_text(wanted), points_text(sheet.lost), points_text(wanted - sheet.lost),
                                points_text(wanted), percent_text(sheet.score)));
    if (!sheet.outside.empty()) lines.push_back(fmt::format("The book is out of force here: {}.", sheet.outside));
    if (!sheet.is_passed) {
        std::vector<std::string> reasons;
        for (const Sentence& reason : why_not_passed(sheet)) reasons.push_back(reason.english());
        lines.push_back(fmt::format("NOT PASSED: {}.", fmt::join(reasons, "; ")));
    }
    if (!sheet.moves.empty()) lines.push_back(fmt::format("Fewest cards to move: {}", sheet.fewest_moves));
    for (const SheetMove& move : sheet.moves) lines.push_back(fmt::format("  {} -{}", text::as_sentence(move.what.english()), points_text(move.lost)));
    add_rules(lines, "Rules of order broken", sheet.broken, true);
    add_rules(lines, "Other rules broken", sheet.lines, true);
    add_rules(lines, "Consequences, not weighed", sheet.consequences, false);
    add_rules(lines, "Advice", sheet.advice, false);
    lines.push_back(fmt::format("{} rules kept, {} not applicable. Book: {}, {}.", sheet.kept.size(), sheet.not_applicable.size(), sheet.book, sheet.edition));
    return lines;
}

}
