#pragma once

#include <catch2/catch.hpp>

#include <algorithm>
#include <cstdint>
#include <iomanip>
#include <iostream>
#include <limits>
#include <map>
#include <numeric>
#include <sstream>
#include <string>
#include <utility>
#include <vector>

namespace flapdoor::validation {

/// Runs of one experiment, each with its own draw of what nobody knows well. Odd, so that the median is one of them.
inline constexpr std::uint64_t draws = 21;

inline constexpr double unbounded = std::numeric_limits<double>::infinity();

/// A published experiment mimicked by the program: its figures over all draws, and what each must be. Every figure is
/// printed with its spread, so that a reader sees the margin and not only that it passed.
class Study {
public:
    /// @param source  paper, and how it is known: read (its abstract or record), memory, judgment
    Study(std::string experiment, const std::string& source) : experiment_(std::move(experiment))
    {
        std::cout << experiment_ << ": " << source << "\n";
    }

    /// `run(seed)` for every draw.
    template <class Run>
    void carry_out(const Run& run, std::uint64_t count = draws)
    {
        for (std::uint64_t seed = 1; seed <= count; ++seed) run(seed);
    }

    void note(const std::string& figure, double value) { figures_[figure].push_back(value); }

    /// The figure below which a share of the draws lies.
    double at(const std::string& figure, double share) const
    {
        std::vector<double> values = figures_.at(figure);
        std::sort(values.begin(), values.end());
        return values[static_cast<std::size_t>(share * static_cast<double>(values.size() - 1) + 0.5)];
    }
    double median(const std::string& figure) const { return at(figure, 0.5); }
    double mean(const std::string& figure) const
    {
        const std::vector<double>& values = figures_.at(figure);
        return std::accumulate(values.begin(), values.end(), 0.0) / static_cast<double>(values.size());
    }

    /// The median of the draws must lie within the band.
    /// @param published  what the source found, in words
    void expect(const std::string& figure, double least, double most, const std::string& published) const
    {
        REQUIRE(figures_.at(figure).size() >= draws);
        print(figure, "band " + shown(least) + " to " + shown(most) + "; " + published);
        INFO(experiment_ << ", " << figure << ": published " << published);
        CHECK(median(figure) >= least);
        CHECK(median(figure) <= most);
    }

    /// Printed for the reader; nothing hangs on it.
    void tell(const std::string& figure, const std::string& published) const { print(figure, "no band; " + published); }

private:
    static std::string shown(double value)
    {
        std::ostringstream text;
        text << std::setprecision(3) << value;
        return text.str();
    }

    void print(const std::string& figure, const std::string& beside) const
    {
        std::cout << "  " << std::left << std::setw(58) << figure << " median " << std::setw(9) << shown(median(figure)) << " (10-90 %: " << shown(at(figure, 0.1))
                  << " to " << shown(at(figure, 0.9)) << ")  [" << beside << "]\n";
    }

    std::string experiment_;
    std::map<std::string, std::vector<double>> figures_;
};

/// Share of the variance of y that a straight line over x explains; 1 for a perfect line.
inline double straightness(const std::vector<double>& x, const std::vector<double>& y)
{
    const auto n = static_cast<double>(x.size());
    double mean_x = 0.0, mean_y = 0.0;
    for (std::size_t i = 0; i < x.size(); ++i) mean_x += x[i] / n, mean_y += y[i] / n;
    double xx = 0.0, yy = 0.0, xy = 0.0;
    for (std::size_t i = 0; i < x.size(); ++i) {
        xx += (x[i] - mean_x) * (x[i] - mean_x);
        yy += (y[i] - mean_y) * (y[i] - mean_y);
        xy += (x[i] - mean_x) * (y[i] - mean_y);
    }
    return xx > 0.0 && yy > 0.0 ? xy * xy / (xx * yy) : 0.0;
}

}
