#include "rules/order_marks.hpp"

#include <fmt/format.h>

namespace flapdoor::rules {
namespace {

std::string name_of(const WeighedRule& rule) { return rule.id + (rule.is_critical ? "!" : " "); }

/// Left half padded so that the charges stand in one column.
std::string charge_line(const std::string& what, std::string_view share, int points, Quarters charge)
{
    return fmt::format(" {:<60} {} * {} = {}", what, share, points, points_text(charge));
}

std::string why_moved(const OrderBook& book, const MoveLine& line)
{
    const std::string& card = book.card(line.card).id;
    if (line.how == Breach::left_out)
        return fmt::format("card {} is missing{}", card, line.rule < 0 ? std::string() : fmt::format(" ({})", book.rule(line.rule).id));
    if (line.how == Breach::forbidden)
        return fmt::format("card {} must go{}", card, line.rule < 0 ? std::string() : fmt::format(" ({})", book.rule(line.rule).id));
    const std::string pair = fmt::format("{} before {}", book.card(line.before).id, book.card(line.after).id);
    if (line.rule < 0) return fmt::format("card {} must move (implied: {})", card, pair);
    return fmt::format("card {} must move (heaviest broken pair {}, {}{})", card, pair, book.rule(line.rule).id, book.rule(line.rule).is_critical ? "!" : "");
}

std::string result_line(const OrderBook& book, const OrderMarks& marks)
{
    const Quarters wanted = whole_points(marks.wanted);
    std::string line = fmt::format("Wanted {} points, lost {} -> {} of {} = {}.", points_text(wanted), points_text(marks.lost), points_text(wanted - marks.lost),
                                   points_text(wanted), percent_text(marks.score));
    if (marks.is_passed) return line;
    line += "   NOT PASSED: critical ";
    std::string_view gap;
    for (const int rule : marks.critical_rules) {
        line += fmt::format("{}{}", gap, book.rule(rule).id);
        gap = ", ";
    }
    for (const int card : marks.critical_missing) {
        line += fmt::format("{}{} left out", gap, book.card(card).id);
        gap = ", ";
    }
    return line + ".";
}

std::string moves_line(const OrderBook& book, const OrderMarks& marks)
{
    std::string line = fmt::format("Fewest cards to move: {}", marks.moves);
    // One card, but a choice of which: say both, or the class will argue that the other one is at fault.
    const bool is_choice = marks.moves == 1 && marks.could_move.size() > 1;
    std::vector<std::string> cards;
    if (is_choice)
        for (const int card : marks.could_move) cards.push_back(book.card(card).id);
    else {
        for (const MoveLine& moved : marks.lines)
            if (moved.how != Breach::order) cards.push_back(book.card(moved.card).id);
        if (!marks.levels.empty())
            for (const int card : marks.levels.front().cards) cards.push_back(book.card(card).id);
    }
    if (!cards.empty()) line += fmt::format(" ({})", fmt::join(cards, is_choice ? " or " : ", "));
    return line + ".";
}

}

std::vector<std::string> print_out(const OrderBook& book, const OrderMarks& marks)
{
    std::vector<std::string> lines{result_line(book, marks)};
    for (const MoveLine& line : marks.lines) lines.push_back(charge_line(why_moved(book, line), "3/4", line.points, {3 * line.points}));
    for (const BrokenRule& broken : marks.broken) {
        const WeighedRule& rule = book.rule(broken.rule);
        const std::string what = fmt::format("rule {} {}", name_of(rule), rule.text);
        if (broken.how == Breach::line) lines.push_back(charge_line(what, "4/4", rule.weight, {4 * rule.weight}));
        else lines.push_back(charge_line(what, "1/4", rule.weight, {rule.weight}));
    }
    lines.push_back(moves_line(book, marks));
    return lines;
}

}
