#include "air/network.hpp"

#include "core/insist.hpp"

#include <algorithm>
#include <cmath>
#include <optional>

namespace flapdoor::air {

namespace {

constexpr double flow_tolerance = 1e-9;    // m3/s
constexpr double sealed_tolerance = 1e-10; // m3/s
constexpr int most_iterations = 500;

using Vector = std::vector<double>;

bool is_in_order(const std::vector<Openness>& openings)
{
    if (openings.empty()) return true;
    if (openings.front().across != Pressure{}) return false;
    if (openings.front().share < least_openness || openings.back().share > 1.0) return false;
    for (std::size_t i = 1; i < openings.size(); ++i)
        if (openings[i].across <= openings[i - 1].across || openings[i].share < openings[i - 1].share) return false;
    return true;
}

void check(const Network& network)
{
    const auto exists = [&](ZoneIndex zone) { return zone == outdoors || zone < network.zones; };
    for (const Link& link : network.links) {
        insist(exists(link.from) && exists(link.to) && link.from != link.to, "a link joins two different zones of its network");
        insist(is_in_order(link.forward) && is_in_order(link.backward), "an opening is pushed open from rest on, and never quite shut");
    }
    for (const Fan& fan : network.fans)
        insist(exists(fan.from) && exists(fan.to), "a fan stands between zones of its network");
}

Pressure difference(const Link& link, const Vector& pressure)
{
    const double from = link.from == outdoors ? 0.0 : pressure[link.from];
    const double to = link.to == outdoors ? 0.0 : pressure[link.to];
    return Pressure{from - to} + link.drive;
}

/// A share and how fast it grows with the size of the pressure, 1/Pa.
struct Stand {
    double share = 1.0;
    double growth = 0.0;
};

Stand stand(const Link& link, Pressure across)
{
    const std::vector<Openness>& openings = across.si < 0.0 ? link.backward : link.forward;
    if (openings.empty()) return {};
    const Pressure size{std::fabs(across.si)};
    if (size >= openings.back().across) return {openings.back().share, 0.0};
    const auto above = std::find_if(openings.begin(), openings.end(), [&](const Openness& at) { return at.across > size; });
    const Openness& low = *std::prev(above);
    const double growth = (above->share - low.share) / (above->across - low.across).si;
    return {low.share + growth * (size - low.across).si, growth};
}

/// d(flow)/d(across): what stands open passes more, and more stands open. Both have one sign.
double link_slope(const Link& link, Pressure across)
{
    const Stand open = stand(link, across);
    return slope(link.leak, across) * open.share + std::fabs(flow(link.leak, across).si) * open.growth;
}

/// Air that comes into each zone and does not go out, m3/s.
Vector surplus(const Network& network, const Vector& pressure)
{
    Vector sum(network.zones, 0.0);
    const auto carry = [&](ZoneIndex from, ZoneIndex to, AirFlow air) {
        if (from != outdoors) sum[from] -= air.si;
        if (to != outdoors) sum[to] += air.si;
    };
    for (const Link& link : network.links) carry(link.from, link.to, flow(link, difference(link, pressure)));
    for (const Fan& fan : network.fans) carry(fan.from, fan.to, fan.flow);
    return sum;
}

double largest(const Vector& values)
{
    double most = 0.0;
    for (const double value : values) most = std::max(most, std::fabs(value));
    return most;
}

double square_sum(const Vector& values)
{
    double sum = 0.0;
    for (const double value : values) sum += value * value;
    return sum;
}

/// For each zone the lowest zone it is joined to by leaks, or `outdoors`.
std::vector<ZoneIndex> groups(const Network& network)
{
    std::vector<ZoneIndex> group(network.zones);
    for (ZoneIndex zone = 0; zone < network.zones; ++zone) group[zone] = zone;

    const auto of = [&](ZoneIndex zone) { return zone == outdoors ? outdoors : group[zone]; };
    const auto rank = [](ZoneIndex name) { return name == outdoors ? 0 : name + 1; };
    for (bool changed = true; changed;) {
        changed = false;
        for (const Link& link : network.links) {
            const ZoneIndex least = rank(of(link.from)) < rank(of(link.to)) ? of(link.from) : of(link.to);
            for (const ZoneIndex end : {link.from, link.to})
                if (end != outdoors && group[end] != least) group[end] = least, changed = true;
        }
    }
    return group;
}

std::optional<SealedZones> sealed_group(const Network& network, const std::vector<ZoneIndex>& group)
{
    Vector fans_only(network.zones, 0.0);
    for (const Fan& fan : network.fans) {
        if (fan.from != outdoors) fans_only[fan.from] -= fan.flow.si;
        if (fan.to != outdoors) fans_only[fan.to] += fan.flow.si;
    }
    for (ZoneIndex name = 0; name < network.zones; ++name) {
        SealedZones sealed;
        for (ZoneIndex zone = name; zone < network.zones; ++zone)
            if (group[zone] == name) sealed.zones.push_back(zone), sealed.surplus.si += fans_only[zone];
        if (std::fabs(sealed.surplus.si) > sealed_tolerance) return sealed;
    }
    return std::nullopt;
}

/// How much each zone's outflow grows with each zone's pressure, [zone * zones + zone]; symmetric, positive definite.
/// The first zone of a sealed group is pinned by a unit on its diagonal.
Vector stiffness(const Network& network, const std::vector<ZoneIndex>& group, const Vector& pressure)
{
    const std::size_t n = network.zones;
    Vector matrix(n * n, 0.0);
    for (const Link& link : network.links) {
        const double rise = link_slope(link, difference(link, pressure));
        if (link.from != outdoors) matrix[link.from * n + link.from] += rise;
        if (link.to != outdoors) matrix[link.to * n + link.to] += rise;
        if (link.from == outdoors || link.to == outdoors) continue;
        matrix[link.from * n + link.to] -= rise;
        matrix[link.to * n + link.from] -= rise;
    }
    for (ZoneIndex zone = 0; zone < n; ++zone)
        if (group[zone] == zone) matrix[zone * n + zone] += 1.0;
    return matrix;
}

/// Cholesky, dense and in a fixed order: a handful of zones, and a library that vectorizes would give other bits elsewhere.
Vector solve_symmetric(Vector matrix, Vector right, std::size_t n)
{
    for (std::size_t column = 0; column < n; ++column) {
        for (std::size_t row = column; row < n; ++row) {
            double sum = matrix[row * n + column];
            for (std::size_t k = 0; k < column; ++k) sum -= matrix[row * n + k] * matrix[column * n + k];
            if (row == column) insist(sum > 0.0, "every zone hangs on a leak or is pinned");
            matrix[row * n + column] = row == column ? std::sqrt(sum) : sum / matrix[column * n + column];
        }
    }
    for (std::size_t row = 0; row < n; ++row) {
        for (std::size_t k = 0; k < row; ++k) right[row] -= matrix[row * n + k] * right[k];
        right[row] /= matrix[row * n + row];
    }
    for (std::size_t row = n; row-- > 0;) {
        for (std::size_t k = row + 1; k < n; ++k) right[row] -= matrix[k * n + row] * right[k];
        right[row] /= matrix[row * n + row];
    }
    return right;
}

/// Half the Newton step, and half again, until the imbalance shrinks.
Vector damped_step(const Network& network, const Vector& pressure, const Vector& step, double imbalance)
{
    double share = 1.0;
    Vector trial = pressure;
    for (int halvings = 0; halvings < 40; ++halvings, share *= 0.5) {
        for (std::size_t i = 0; i < pressure.size(); ++i) trial[i] = pressure[i] + share * step[i];
        if (square_sum(surplus(network, trial)) < imbalance * (1.0 - 0.1 * share)) return trial;
    }
    return trial;
}

}

AirFlow flow(const Link& link, Pressure across) { return flow(link.leak, across) * stand(link, across).share; }

tl::expected<NetworkFlows, SealedZones> solve(const Network& network)
{
    check(network);
    const std::vector<ZoneIndex> group = groups(network);
    if (auto sealed = sealed_group(network, group)) return tl::unexpected(*std::move(sealed));

    NetworkFlows answer;
    Vector pressure(network.zones, 0.0);
    Vector left = surplus(network, pressure);
    while (largest(left) > flow_tolerance) {
        insist(++answer.iterations <= most_iterations, "the air network settles");
        const Vector step = solve_symmetric(stiffness(network, group, pressure), left, network.zones);
        pressure = damped_step(network, pressure, step, square_sum(left));
        left = surplus(network, pressure);
    }
    for (const double value : pressure) answer.pressure.push_back(Pressure{value});
    for (const Link& link : network.links) {
        answer.across.push_back(difference(link, pressure));
        answer.flow.push_back(flow(link, answer.across.back()));
    }
    return answer;
}

}
