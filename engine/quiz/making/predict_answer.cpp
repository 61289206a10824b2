#include "debrief/wording.hpp"
#include "quiz/making/run_answers.hpp"
#include "text/language.hpp"
#include "text/show.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <functional>
#include <string>

namespace flapdoor::quiz {
namespace {

using text::to_say;

/// Outcomes nearer to each other than this cannot be told apart by a few runs of an uncertain model (docs/model.md).
constexpr double clearly_more = 1.3;

double median(std::vector<double> values)
{
    std::sort(values.begin(), values.end());
    const std::size_t half = values.size() / 2;
    return values.size() % 2 == 1 ? values[half] : 0.5 * (values[half - 1] + values[half]);
}

/// Median over the seeds of one figure of a plan's outcome.
Result<double> median_of(const Predict& asked, const std::string& plan, Workshop& workshop, const std::function<double(const debrief::Outcome&)>& figure)
{
    std::vector<double> values;
    for (int seed = 1; seed <= asked.seeds; ++seed) {
        const auto played = workshop.play(asked.scenario.text, plan, static_cast<std::uint64_t>(seed));
        if (!played) return failed(played.error());
        values.push_back(figure((*played)->outcome));
    }
    return median(std::move(values));
}

double lead_outside(const debrief::Outcome& outcome) { return static_cast<double>(std::max<std::int64_t>(0, outcome.outside.lead.count)); }

std::function<double(const debrief::Outcome&)> figure_of(Foretold what)
{
    switch (what) {
    case Foretold::more_on_floor: return [](const debrief::Outcome& outcome) { return outcome.floor.si; };
    case Foretold::more_on_sill: return [](const debrief::Outcome& outcome) { return outcome.sill.si; };
    case Foretold::main_pathway:
    case Foretold::more_outside:
    case Foretold::times_outside: return lead_outside;
    }
    return {};
}

std::string show_figure(Foretold what, double value)
{
    const bool is_loading = what == Foretold::more_on_floor || what == Foretold::more_on_sill;
    return is_loading ? text::show(Loading{value}) : debrief::show_roughly(Picograms{static_cast<std::int64_t>(value)});
}

/// What came out, one line a candidate, and what it is not.
class Reveal {
public:
    void add(const Phrase& name, std::string figure)
    {
        const std::string n = std::to_string(++count_);
        text_.en += "{name-" + n + "}: {figure-" + n + "}\n";
        text_.blanks["name-" + n] = name;
        text_.blanks["figure-" + n] = phrase(figure);
    }
    Phrase take(int seeds)
    {
        text_.en += "{note}";
        text_.es = text_.en;
        Phrase note = phrase(to_say("Medians over {seeds} runs of each plan; training model, not a clearance prediction."));
        note.blanks["seeds"] = phrase(std::to_string(seeds));
        text_.blanks["note"] = std::move(note);
        return std::move(text_);
    }

private:
    Phrase text_;
    int count_ = 0;
};

Option option_of(std::string id, Phrase text, bool is_right, const Predict& asked)
{
    Option option;
    option.id.text = std::move(id);
    option.text = std::move(text);
    option.is_right = is_right;
    if (is_right) return option;
    option.misconception = "foretold-otherwise";
    option.told = asked.told;
    return option;
}

Problem too_close(const Predict& asked, const std::string& found) { return {asked.scenario.where, "runs whose outcomes are clearly apart", found}; }

Result<void> foretell_pathway(Predict& asked, Workshop& workshop)
{
    struct Way {
        dust::Pathway pathway;
        double lead;
    };
    std::vector<Way> ways;
    for (std::size_t i = 1; i + 1 < dust::pathway_count; ++i) {
        const auto pathway = static_cast<dust::Pathway>(i);
        if (debrief::is_barely_known(pathway)) continue;    // nobody has measured their share, so nobody is asked for it
        const auto lead = median_of(asked, asked.plans.front().text, workshop, [&](const debrief::Outcome& outcome) {
            return static_cast<double>(std::max<std::int64_t>(0, debrief::line_of(outcome, pathway).amount.lead.count));
        });
        if (!lead) return failed(lead.error());
        ways.push_back({pathway, *lead});
    }
    std::stable_sort(ways.begin(), ways.end(), [](const Way& a, const Way& b) { return a.lead > b.lead; });
    ways.resize(std::min<std::size_t>(ways.size(), 5));
    if (ways[0].lead < clearly_more * ways[1].lead || ways[0].lead <= 0.0)
        return failed(too_close(asked, fmt::format("{} by {} and {} by {}", show_figure(asked.what, ways[0].lead), way_text(ways[0].pathway), show_figure(asked.what, ways[1].lead), way_text(ways[1].pathway))));
    asked.options.clear();
    Reveal reveal;
    for (const Way& way : ways) {
        asked.options.push_back(option_of(std::string(word_of(way.pathway)), phrase(way_text(way.pathway)), &way == &ways.front(), asked));
        reveal.add(phrase(way_text(way.pathway)), show_figure(asked.what, way.lead));
    }
    asked.reveal = reveal.take(asked.seeds);
    return {};
}

struct PlanFigure {
    std::string plan;
    std::string title;
    double value = 0.0;
};

Result<std::vector<PlanFigure>> plan_figures(const Predict& asked, Workshop& workshop)
{
    std::vector<PlanFigure> figures;
    for (const rules::Marked& plan : asked.plans) {
        const auto value = median_of(asked, plan.text, workshop, figure_of(asked.what));
        if (!value) return failed(value.error());
        figures.push_back({plan.text, (*workshop.inputs(asked.scenario.text, plan.text))->plan.title, *value});
    }
    return figures;
}

Phrase reveal_of(const Predict& asked, const std::vector<PlanFigure>& figures)
{
    Reveal reveal;
    for (const PlanFigure& figure : figures) reveal.add(phrase(figure.title), show_figure(asked.what, figure.value));
    return reveal.take(asked.seeds);
}

Result<void> foretell_plan(Predict& asked, Workshop& workshop)
{
    const auto figures = plan_figures(asked, workshop);
    if (!figures) return failed(figures.error());
    std::vector<PlanFigure> ranked = *figures;
    std::stable_sort(ranked.begin(), ranked.end(), [](const PlanFigure& a, const PlanFigure& b) { return a.value > b.value; });
    if (ranked[0].value <= clearly_more * ranked[1].value) return failed(too_close(asked, show_figure(asked.what, ranked[0].value) + " and " + show_figure(asked.what, ranked[1].value)));
    asked.options.clear();
    for (const PlanFigure& figure : *figures) asked.options.push_back(option_of(figure.plan, phrase(figure.title), figure.plan == ranked[0].plan, asked));
    asked.options.push_back(option_of("alike", phrase(to_say("About the same after all of them")), false, asked));
    asked.reveal = reveal_of(asked, *figures);
    return {};
}

struct Times {
    std::string_view id, text;
    double up_to;
};
constexpr std::array<Times, 4> times{{{"alike", to_say("Less, or up to twice as much"), 2.0},
                                      {"several", to_say("Two to ten times as much"), 10.0},
                                      {"tens", to_say("Ten to a hundred times as much"), 100.0},
                                      {"hundreds", to_say("More than a hundred times as much"), 1e300}}};

Result<void> foretell_times(Predict& asked, Workshop& workshop)
{
    const auto figures = plan_figures(asked, workshop);
    if (!figures) return failed(figures.error());
    const double ratio = (*figures)[1].value / std::max(1.0, (*figures)[0].value);
    asked.options.clear();
    double from = 0.0;
    for (const Times& band : times) {
        const bool is_right = ratio >= from && ratio < band.up_to;
        // A ratio at the border of two bands would make one answer as good as the other.
        if (is_right && (ratio < from * 1.1 || ratio > band.up_to / 1.1)) return failed(too_close(asked, fmt::format("a ratio of {:.2}", ratio)));
        asked.options.push_back(option_of(std::string(band.id), phrase(band.text), is_right, asked));
        from = band.up_to;
    }
    asked.reveal = reveal_of(asked, *figures);
    return {};
}

}

std::string_view way_text(dust::Pathway pathway)
{
    constexpr std::array<std::string_view, dust::pathway_count> ways{
        "", to_say("With the air into an open return"), to_say("Through seams and gaps under doors"), to_say("Through the entrance, with the air"), to_say("On shoes"),
        to_say("On clothes"), to_say("On tools"), to_say("With bags"), to_say("When the sheeting is taken up"), ""};
    return ways[static_cast<std::size_t>(pathway)];
}

Result<void> play(Question&, Predict& asked, Workshop& workshop)
{
    if (asked.what == Foretold::main_pathway) return foretell_pathway(asked, workshop);
    if (asked.what == Foretold::times_outside) return foretell_times(asked, workshop);
    return foretell_plan(asked, workshop);
}

}
