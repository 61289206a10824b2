#include "debrief/what_if_line.hpp"

#include "debrief/explanation.hpp"
#include "debrief/wording.hpp"
#include "rules/vocabulary.hpp"
#include "text/language.hpp"
#include "text/show.hpp"
#include "text/significant.hpp"

#include <algorithm>
#include <cmath>

namespace flapdoor::debrief {

namespace {

using text::say;
using text::say_with;

std::string magnitude(double value, Compared what)
{
    switch (what) {
        case Compared::outside: return show_roughly({static_cast<std::int64_t>(std::llround(value))});
        case Compared::floor:
        case Compared::sill:
        case Compared::hall_floor: return text::show_short(Loading{value});
        case Compared::breathed: return text::show(Density{text::round_to_digits(value, 2)});     // a single run knows no more
        case Compared::took: return text::show(Time{value});
    }
    return {};
}

/// Below this a change is none.
double least_told(Compared what)
{
    switch (what) {
        case Compared::outside: return 1e3;                 // a nanogram
        case Compared::breathed: return 1e-12;              // 0.001 ug/m3
        case Compared::took: return 0.5;
        default: return (0.001_ugpft2).si;
    }
}

WhatIfLine::Cell cell_of(const WhatIf& what_if, Compared what)
{
    WhatIfLine::Cell cell;
    cell.own = change_text(harm_of(what_if, what), what);
    if (const std::optional<Band> band = harm_band(what_if, what)) cell.range = change_range(*band, what);
    return cell;
}

/// "1, 7 and 11".
std::string listed(const std::vector<int>& numbers)
{
    if (numbers.empty()) return {};
    std::string text;
    for (std::size_t i = 0; i + 1 < numbers.size(); ++i) text += (i > 0 ? ", " : "") + std::to_string(numbers[i]);
    const std::string last = std::to_string(numbers.back());
    return text.empty() ? last : say_with("{} and {}", text, last);
}

std::string name_of(const WhatIf& what_if, const std::vector<int>& faults)
{
    return what_if.kind == WhatIf::Kind::all_repaired ? std::string(say("All of these repaired")) : named_faults(faults);
}

std::string doubt_of(const WhatIf& what_if)
{
    if (!what_if.refused.empty()) return say_with("A card could then not be carried out: {}.", what_if.refused.front());
    if (what_if.kind == WhatIf::Kind::put_in) return what_if.is_mended ? std::string() : std::string(say("The careful plan keeps the rule all the same."));
    if (what_if.still_broken.empty()) return {};
    if (what_if.still_broken.size() == what_if.rules.size()) return std::string(say("The rule is still broken after this change."));
    return text::say_number("{} of its rules is still broken.", "{} of its rules are still broken.", what_if.still_broken.size());
}

}

std::string change_text(double value, Compared what)
{
    if (!(std::abs(value) >= least_told(what))) return std::string(say("no change"));
    return (value > 0.0 ? "+" : "\u2212") + magnitude(std::abs(value), what);
}

std::string named_faults(const std::vector<int>& numbers)
{
    return text::filled(text::say_counted("Fault {}", "Faults {}", numbers.size()), std::vector<std::string>{listed(numbers)});
}

std::string change_range(const Band& band, Compared what)
{
    const std::string low = change_text(band.low, what), high = change_text(band.high, what);
    return low == high ? low : say_with("{} to {}", low, high);
}

WhatIfLine what_if_line(const Report& report, const WhatIf& what_if)
{
    WhatIfLine line;
    for (const std::string& rule : what_if.rules)
        if (const FaultLine* fault = find_fault(report.faults, rule)) line.faults.push_back(fault->number);
    std::sort(line.faults.begin(), line.faults.end());
    line.name = name_of(what_if, line.faults);
    line.told = what_if.told;
    line.outside = cell_of(what_if, Compared::outside);
    line.floor = cell_of(what_if, Compared::floor);
    line.sill = cell_of(what_if, Compared::sill);
    line.breathed = cell_of(what_if, Compared::breathed);
    line.took = cell_of(what_if, Compared::took);
    if (!what_if.paired_before.empty()) line.how_often = say_with("{} of {}", harmful_runs(what_if), what_if.paired_before.size());
    line.doubt = doubt_of(what_if);
    line.why = why_better_with_it(what_if);
    return line;
}

std::vector<const WhatIf*> costliest(const WhatIfs& what_ifs)
{
    std::vector<const WhatIf*> order;
    for (const WhatIf& what_if : what_ifs.list)
        if (what_if.kind == WhatIf::Kind::repaired) order.push_back(&what_if);
    // Over the light runs where there are any: one run's luck is no measure of a mistake.
    const auto cost = [](const WhatIf* what_if) {
        const std::optional<Band> band = harm_band(*what_if, Compared::outside);
        return band ? band->median : harm_of(*what_if, Compared::outside);
    };
    std::stable_sort(order.begin(), order.end(), [&](const WhatIf* a, const WhatIf* b) { return cost(a) > cost(b); });
    return order;
}

std::vector<const WhatIf*> near_misses(const WhatIfs& what_ifs)
{
    std::vector<const WhatIf*> found;
    for (const WhatIf& what_if : what_ifs.list)
        if (what_if.kind == WhatIf::Kind::repaired && !did_harm(what_if) && harmful_runs(what_if) > 0) found.push_back(&what_if);
    std::stable_sort(found.begin(), found.end(), [](const WhatIf* a, const WhatIf* b) { return harmful_runs(*a) > harmful_runs(*b); });
    return found;
}

std::string as_it_was(const WhatIfs& what_ifs)
{
    const auto told = [](std::string_view pattern, const Figures& figures) {
        return say_with(pattern, show_roughly(figures.outside.lead), text::show_short(figures.floor), text::show_short(figures.sill), say(loading_note));
    };
    std::string text = told(text::to_say("As the plan was carried out, {} of lead got out; {} lay on the worst floor and {} on the worst sill ({})."), what_ifs.base);
    if (what_ifs.reference) text += " " + told(text::to_say("In the careful plan with the same luck: {} out, {} on the floor, {} on the sill ({})."), *what_ifs.reference);
    return text;
}

std::string what_if_source(const WhatIfs& what_ifs)
{
    const std::size_t runs = what_ifs.seeds.size();
    if (runs == 0) return std::string(say("One run and its luck; no band."));
    if (runs < fewest_for_a_band) return text::say_number("Ranges: least to most of {} pair of light runs.", "Ranges: least to most of {} pairs of light runs, too few for a band.", runs);
    return text::say_number("Ranges: 10 to 90 % of {} pair of light runs.", "Ranges: 10 to 90 % of {} pairs of light runs with other seeds; each pair has one luck and one draw of what is uncertain.", runs);
}

std::vector<Practice> practise_next(const Report& report, std::size_t most)
{
    std::vector<const FaultLine*> order;
    for (const FaultLine& fault : report.faults)
        if (fault.is_weighed()) order.push_back(&fault);
    const auto cost = [&](const FaultLine* fault) {
        const WhatIf* what_if = report.what_ifs ? report.what_ifs->find(WhatIf::Kind::repaired, fault->rule.rule) : nullptr;
        return what_if != nullptr ? std::max(0.0, harm_of(*what_if, Compared::outside)) : 0.0;
    };
    // What let much out comes first whatever the book thinks of it: nobody who sees only that learns what mattered.
    const double much = 0.1 * (report.what_ifs ? static_cast<double>(report.what_ifs->base.outside.lead.count) : 0.0);
    const auto let_much_out = [&](const FaultLine* fault) { return much > 0.0 && cost(fault) >= much; };
    std::stable_sort(order.begin(), order.end(), [&](const FaultLine* a, const FaultLine* b) {
        if (let_much_out(a) != let_much_out(b)) return let_much_out(a);
        if (let_much_out(a) && cost(a) != cost(b)) return cost(a) > cost(b);
        if (a->rule.is_critical != b->rule.is_critical) return a->rule.is_critical;
        if (cost(a) != cost(b)) return cost(a) > cost(b);
        return cost_of(report.marks, a->rule.rule) > cost_of(report.marks, b->rule.rule);
    });
    std::vector<Practice> next;
    for (const FaultLine* fault : order) {
        if (next.size() == most) break;
        Practice practice{fault->rule.says, {}, fault->number};
        const auto add = [&](std::string_view title) {
            if (practice.cards.size() < 3 && std::find(practice.cards.begin(), practice.cards.end(), title) == practice.cards.end()) practice.cards.emplace_back(title);
        };
        // The cards that a repair changes are those to practise; where none is known, those that the fault speaks of.
        if (const WhatIf* what_if = report.what_ifs ? report.what_ifs->find(WhatIf::Kind::repaired, fault->rule.rule) : nullptr)
            for (const std::string_view title : what_if->cards) add(title);
        else
            for (const int step : fault->steps) add(report.steps.at(static_cast<std::size_t>(step)).title);
        next.push_back(std::move(practice));
    }
    return next;
}

}
