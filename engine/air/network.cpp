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

void check(const Network& network)
{
    const auto exists = [&](ZoneIndex zone) { return zone == outdoors || zone < network.zones; };
    for (const Link& link : network.links) {
        insist(exists(link.from) && exists(link.to) && link.from != link.to, "a link joins two different zones of its network");
        insist(link.reverse_share >= 0.01 && link.reverse_share <= 1.0, "a link passes something backward, and no more than forward");
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

AirFlow link_flow(const Link& link, Pressure across)
{
    return across.si < 0.0 ? flow(link.leak, across) * link.reverse_share : flow(link.leak, across);
}

double link_slope(const Link& link, Pressure across)
{
    return across.si < 0.0 ? slope(link.leak, across) * link.reverse_share : slope(link.leak, across);
}

/// Air that comes into each zone and does not go out, m3/s.
Vector surplus(const Network& network, const Vector& pressure)
{
    Vector sum(network.zones, 0.0);
    const auto carry = [&](ZoneIndex from, ZoneIndex to, AirFlow air) {
        if (from != outdoors) sum[from] -= air.si;
        if (to != outdoors) sum[to] += air.si;
    };
    for (const Link& link : network.links) carry(link.from, link.to, link_flow(link, difference(link, pressure)));
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
    for (const Link& link : network.links) answer.flow.push_back(link_flow(link, difference(link, pressure)));
    return answer;
}

}
