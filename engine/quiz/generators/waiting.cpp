#include "quiz/making/generator.hpp"

#include "rules/cloths.hpp"
#include "rules/deadlines.hpp"
#include "text/show.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace flapdoor::quiz {
namespace {

/// A section's second darker cloth, and when the surface is dry.
struct Wet {
    Time failed, drying;
};

constexpr Mistake<Wet> wet_mistakes[] = {
    {"hour-alone", [](const Wet& w) { return (w.failed + 1.0_h).si; }},
    {"dry-alone", [](const Wet& w) { return (w.failed + w.drying).si; }},
    {"one-after-the-other", [](const Wet& w) { return (w.failed + w.drying + 1.0_h).si; }},
    {"at-once", [](const Wet& w) { return w.failed.si; }},
};

std::optional<Made> dry_wipe_time(const Setting& setting)
{
    Dice dice = setting.dice("dry-wipe-time");
    const std::vector<double> weather{0.6, 0.8, 1.6, 2.6, 3.0, 3.4};
    const double minutes = 5.0 * static_cast<int>(setting.scenario.drying * dice.one_of(weather) / 5.0_min + 0.5);
    const Wet wet{10.0_h + 5.0_min * dice.between(0, 60), 1.0_min * minutes};
    const auto figure = made_figure(wet, rules::earliest_dry_wipe(wet.failed, wet.failed + wet.drying).si, wet_mistakes, as_clock);
    if (!figure) return std::nullopt;
    return Made{{{"failed", phrase(text::show_clock(wet.failed))}, {"drying", phrase(text::show(wet.drying))}}, *figure};
}

std::string date_text(rules::Date date)
{
    return fmt::format("{:04}-{:02}-{:02}", static_cast<int>(date.year()), static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()));
}

rules::Date later(rules::Date date, int days) { return std::chrono::year_month_day{std::chrono::sys_days{date} + std::chrono::days{days}}; }

/// Dates are no quantities: a choice, with each mistake a date.
std::optional<Made> report_due(const Setting& setting)
{
    Dice dice = setting.dice("report-due");
    const rules::Date completed = later(std::chrono::year{2027} / 1 / 1, dice.between(0, 360));
    const int invoice = dice.between(0, 1) == 0 ? dice.between(5, 25) : dice.between(35, 60);
    const rules::Date key = rules::report_due(completed, later(completed, invoice));
    struct Wrong {
        std::string_view mistake;
        int days;
    };
    MadeChoice choice;
    choice.is_several = false;
    choice.options.push_back({"right", phrase(date_text(key)), true, {}});
    for (const Wrong& wrong : {Wrong{"thirty-days-always", 30}, Wrong{"invoice-always", invoice}, Wrong{"thirty-after-the-invoice", invoice + 30}, Wrong{"sixty-days", 60}}) {
        const std::string text = date_text(later(completed, wrong.days));
        const bool is_new = std::none_of(choice.options.begin(), choice.options.end(), [&](const MadeOption& option) { return option.text.en == text; });
        if (is_new) choice.options.push_back({std::string(wrong.mistake), phrase(text), false, std::string(wrong.mistake)});
    }
    return Made{{{"completed", phrase(date_text(completed))}, {"invoice", phrase(date_text(later(completed, invoice)))}}, std::move(choice)};
}

}

std::vector<Generator> waiting_generators()
{
    return {{"dry-wipe-time", {"failed", "drying"}, names_of(wet_mistakes), dry_wipe_time},
            {"report-due", {"completed", "invoice"}, {"thirty-days-always", "invoice-always", "thirty-after-the-invoice", "sixty-days"}, report_due}};
}

}
