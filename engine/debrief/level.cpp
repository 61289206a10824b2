#include "debrief/level.hpp"

#include "debrief/study_column.hpp"
#include "debrief/wording.hpp"
#include "text/language.hpp"
#include "text/show.hpp"

#include <fmt/format.h>

namespace flapdoor::debrief {

using text::say;
using text::to_say;
using text::say_with;

namespace {

std::string show_loading(double value) { return text::show_short(micrograms_per_square_foot(value)); }

std::string show_micrograms(double value) { return show_roughly(Picograms{static_cast<std::int64_t>(value * 1e6)}); }

std::string show_exposure(double value) { return text::show_number(value, 2) + " ug/m3"; }

Level level(std::string own, const Band* band, std::string (*show)(double))
{
    if (band == nullptr) return {std::move(own), {}, {}, say(loading_note)};
    if (band->runs == 1) return {std::move(own), show(band->median), std::string(say("no band")), say(model_note)};
    return {std::move(own), show(band->median), range_text(*band, show), say(model_note)};
}

std::string over_runs(const Band& band, std::string (*show)(double))
{
    if (band.runs == 1) return say_with("{} (one run)", show(band.median));
    return middle_and_range_text(band, show);
}

}

Level level_of(Loading own, const Band* band) { return level(text::show_short(own), band, show_loading); }

Level level_of(Picograms own, const Band* band) { return level(show_roughly(own), band, show_micrograms); }

Level level_of(dust::Concentration own, const Band* band)
{
    Level told = level(show_exposure(own / micrograms_per_cubic_meter(1.0)), band, show_exposure);
    if (band != nullptr && band->runs > 1) told.range = show_exposure(band->high);
    return told;
}

std::vector<std::string> exposure_heads(const Report& report)
{
    std::vector<std::string> heads = level_heads(report);
    if (!report.bands || report.bands->runs == 1) return heads;
    heads[0] = say("Typical");
    heads[1] = report.bands->runs >= fewest_for_a_band ? std::string(say("One in ten")) : say_with("Most of {} runs", report.bands->runs);
    return heads;
}

std::vector<std::string> level_heads(const Report& report)
{
    if (!report.bands) return {std::string(say("This run"))};
    const std::size_t runs = report.bands->runs;
    if (runs == 1) return {std::string(say("One other run")), std::string(say("Band")), std::string(say("This run"))};
    return {std::string(say("Median")), runs >= fewest_for_a_band ? say_with("10 to 90 % of {} runs", runs) : say_with("Least to most of {} runs", runs), std::string(say("This run"))};
}

std::vector<std::string> level_texts(const Report& report, const Level& level)
{
    if (!report.bands) return {level.own};
    return {level.median.empty() ? std::string(say("no band")) : level.median, level.range, level.own};
}

std::string loading_text(const Band& band) { return over_runs(band, show_loading); }

std::string amount_text(const Band& band) { return over_runs(band, show_micrograms); }

std::string exposure_text(const Band& band)
{
    if (band.runs == 1) return say_with("{} (one run)", show_exposure(band.median));
    return say_with(band.is_band() ? to_say("typical {}, one in ten {}") : to_say("typical {}, most {}"), text::show_number(band.median, 2), show_exposure(band.high));
}

std::string study_line(const PlanBands& bands)
{
    if (bands.runs == 1) {
        const bool passed = bands.passed == 1, verified = bands.verified == 1;
        return std::string(passed ? (verified ? say("Carried out once more for the band, the plan was passed as practice and its cloth check passed.")
                                              : say("Carried out once more for the band, the plan was passed as practice and its cloth check did not pass."))
                                  : (verified ? say("Carried out once more for the band, the plan was not passed and its cloth check passed.")
                                              : say("Carried out once more for the band, the plan was not passed and its cloth check did not pass.")));
    }
    return say_with("Over {} runs, each with its own seed, the plan passed as practice in {} and its cloth check in {}.", bands.runs, bands.passed, bands.verified);
}

std::string source_line(const PlanBands& bands)
{
    const std::string detail = bands.detail < 1.0 ? say_with(" with {} % of the usual dust parcels", text::show_number(100.0 * bands.detail)) : std::string();
    if (bands.runs == 1) return say_with("One run{} tells no band: ask for ten or more.", detail);
    if (bands.runs < fewest_for_a_band) return say_with("{} runs{}, too few for a band: told are the median, the least and the most.", bands.runs, detail);
    return say_with("Median and band over {} runs{}, each with its own luck and its own draw of what is uncertain. A tenth of the runs lie below the band, a tenth above.", bands.runs, detail);
}

}
