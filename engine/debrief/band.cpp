#include "debrief/band.hpp"

#include "core/insist.hpp"
#include "text/language.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace flapdoor::debrief {

using text::say;
using text::say_with;

namespace {

/// "12 ug/ft2" cut before its unit.
struct Told {
    explicit Told(const std::string& text) : number(text.substr(0, text.find(' '))), unit(text.substr(number.size())) {}

    std::string text() const { return number + unit; }

    std::string number, unit;
};

}

double quantile(std::vector<double> values, double share)
{
    insist(!values.empty(), "a quantile is taken of at least one value");
    insist(share >= 0.0 && share <= 1.0, "a quantile stands for a share from 0 to 1");
    insist(std::all_of(values.begin(), values.end(), [](double value) { return std::isfinite(value); }), "a quantile is taken of finite values");
    std::sort(values.begin(), values.end());
    const double place = share * static_cast<double>(values.size() - 1);
    const auto below = static_cast<std::size_t>(place);
    const std::size_t above = std::min(below + 1, values.size() - 1);
    const double part = place - static_cast<double>(below);
    return values[below] + part * (values[above] - values[below]);
}

Band band_of(const std::vector<double>& values)
{
    const bool is_band = values.size() >= fewest_for_a_band;
    return {quantile(values, is_band ? 0.1 : 0.0), quantile(values, 0.5), quantile(values, is_band ? 0.9 : 1.0), values.size()};
}

std::string meaning_of_band(std::size_t runs)
{
    if (runs >= fewest_for_a_band) return say_with("10 to 90 % of {} runs", runs);
    if (runs > 1) return say_with("least to most of {} runs (too few for a band)", runs);
    return std::string(runs == 1 ? say("one run, no band") : say("no run, no band"));
}

std::string range_text(const Band& band, const std::function<std::string(double)>& show)
{
    const Told low(show(band.low)), high(show(band.high));
    if (low.text() == high.text()) return low.text();
    return say_with("{} to {}", low.unit == high.unit ? low.number : low.text(), high.text());
}

std::string middle_and_range_text(const Band& band, const std::function<std::string(double)>& show)
{
    const Told low(show(band.low)), median(show(band.median)), high(show(band.high));
    if (low.unit != median.unit || median.unit != high.unit || low.text() == high.text()) return fmt::format("{} ({})", median.text(), range_text(band, show));
    return say_with("{} ({} to {}){}", median.number, low.number, high.number, median.unit);
}

}
