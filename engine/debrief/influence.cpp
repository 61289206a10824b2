#include "debrief/influence.hpp"

#include "core/insist.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace flapdoor::debrief {

namespace {

std::vector<double> ranks_of(const std::vector<double>& values)
{
    std::vector<std::size_t> order(values.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return values[a] < values[b]; });
    std::vector<double> ranks(values.size());
    for (std::size_t begin = 0; begin < order.size();) {
        std::size_t end = begin;
        while (end < order.size() && values[order[end]] == values[order[begin]]) ++end;
        for (std::size_t i = begin; i < end; ++i) ranks[order[i]] = 0.5 * static_cast<double>(begin + end - 1);
        begin = end;
    }
    return ranks;
}

}

std::optional<double> rank_correlation(const std::vector<double>& a, const std::vector<double>& b)
{
    insist(a.size() == b.size(), "lists that are compared have one length");
    if (a.size() < 3) return std::nullopt;
    const std::vector<double> x = ranks_of(a), y = ranks_of(b);
    const double mean = 0.5 * static_cast<double>(a.size() - 1);
    double xy = 0.0, xx = 0.0, yy = 0.0;
    for (std::size_t i = 0; i < x.size(); ++i) {
        xy += (x[i] - mean) * (y[i] - mean);
        xx += (x[i] - mean) * (x[i] - mean);
        yy += (y[i] - mean) * (y[i] - mean);
    }
    if (!(xx > 0.0) || !(yy > 0.0)) return std::nullopt;
    return xy / std::sqrt(xx * yy);
}

double beyond_chance(std::size_t runs)
{
    return runs < 2 ? 1.0 : std::min(1.0, 2.58 / std::sqrt(static_cast<double>(runs - 1)));
}

}
