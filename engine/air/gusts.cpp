#include "air/gusts.hpp"

#include "core/insist.hpp"
#include "core/steady.hpp"

#include <algorithm>
#include <cmath>

namespace flapdoor::air {

namespace {

constexpr double reach = 4.0;       // standard deviations
constexpr int intervals = 64;

struct Weighted {
    double deviation, weight;
};

std::array<Weighted, intervals + 1> normal_weights()
{
    std::array<Weighted, intervals + 1> points{};
    double sum = 0.0;
    for (int i = 0; i <= intervals; ++i) {
        const double z = reach * (2.0 * i / intervals - 1.0);
        points[static_cast<std::size_t>(i)] = {z, steady::exp(-0.5 * z * z)};
        sum += points[static_cast<std::size_t>(i)].weight;
    }
    for (Weighted& point : points) point.weight /= sum;
    return points;
}

/// The digits of a number mirrored at the point: van der Corput's evenly spread sequence.
double mirrored(int number, int base)
{
    double value = 0.0;
    double digit = 1.0 / base;
    for (; number > 0; number /= base, digit /= base) value += digit * (number % base);
    return value;
}

std::vector<Gust> spread_out()
{
    constexpr int pairs = 16;
    constexpr std::array<int, house_sides> bases{2, 3, 5, 7};   // Halton 1960
    std::vector<Gust> moments;
    Gust squares{};
    for (int i = 1; i <= pairs; ++i) {
        Gust moment;
        for (std::size_t side = 0; side < house_sides; ++side) {
            moment[side] = Pressure{steady::normal_deviate(mirrored(i, bases[side]), reach)};
            squares[side].si += moment[side].si * moment[side].si / pairs;
        }
        moments.push_back(moment);
    }
    for (Gust& moment : moments)
        for (std::size_t side = 0; side < house_sides; ++side) moment[side] = moment[side] * (gust_rms.si / std::sqrt(squares[side].si));
    for (int i = 0; i < pairs; ++i) {
        Gust opposite = moments[static_cast<std::size_t>(i)];
        for (Pressure& side : opposite) side = -side;
        moments.push_back(opposite);
    }
    return moments;
}

}

const std::vector<Gust>& gusts()
{
    static const std::vector<Gust> moments = spread_out();
    return moments;
}

TwoWayFlow mean_flow(const Link& link, Pressure mean, Pressure rms)
{
    insist(rms.si >= 0.0, "a spread is not negative");
    static const std::array<Weighted, intervals + 1> points = normal_weights();
    TwoWayFlow sum;
    for (const Weighted& point : points) {
        const AirFlow now = flow(link, mean + rms * point.deviation);
        sum.out += std::max(now, AirFlow{}) * point.weight;
        sum.in += std::max(-now, AirFlow{}) * point.weight;
    }
    return sum;
}

TwoWayFlow with_drafts(const Link& link, Pressure across)
{
    const AirFlow driven = flow(link, across);
    TwoWayFlow both{std::max(driven, AirFlow{}), std::max(-driven, AirFlow{})};
    if (std::fabs(across.si) >= reach * draft_rms.si) return both;
    const TwoWayFlow drafty = mean_flow(link, across, draft_rms);
    const AirFlow swapped = std::min(drafty.out, drafty.in);
    return {both.out + swapped, both.in + swapped};
}

}
