#pragma once

#include <cstddef>
#include <functional>
#include <string>
#include <vector>

namespace flapdoor::debrief {

/// Runs below which no share of them can be left out at either end: then the least and the most are told instead.
inline constexpr std::size_t fewest_for_a_band = 10;

/// Where the results of several runs lie, in whatever unit they came.
struct Band {
    double low = 0.0;       ///< a tenth of the runs lie below; the least of fewer than ten runs
    double median = 0.0;
    double high = 0.0;      ///< a tenth of the runs lie above; the most of fewer than ten runs
    std::size_t runs = 0;

    bool is_band() const { return runs >= fewest_for_a_band; }
    friend bool operator==(const Band&, const Band&) = default;
};

/// The value below which a share of the list lies: straight between the two neighbors of place share x (n - 1) in the
/// rising order, counted from 0.
/// @param share  0 to 1. Insists on it, and on a list that is neither empty nor holds anything but finite values.
/// Source: definition 7 of Hyndman & Fan 1996, American Statistician 50 (memory); docs/formats.md names it.
double quantile(std::vector<double> values, double share);

/// Median with the 10 and 90 % quantiles; with the least and the most when there are fewer than ten. Insists as above.
Band band_of(const std::vector<double>& values);

/// "10 to 90 % of 20 runs", "least to most of 3 runs (too few for a band)", "one run, no band": what `low` and `high` are.
std::string meaning_of_band(std::size_t runs);

/// Low and high as people read them: "4.1 to 38 ug/ft2", the unit once where it is the same; one value alone when both
/// read the same.
std::string range_text(const Band& band, const std::function<std::string(double)>& show);

/// The median before them: "12 (4.1 to 38) ug/ft2", "130 ug (12 ug to 1.2 mg)".
std::string middle_and_range_text(const Band& band, const std::function<std::string(double)>& show);

}
