#include "mechanics/swing_film.hpp"

#include "core/insist.hpp"

#include <algorithm>

namespace flapdoor::mechanics {

namespace {

std::vector<SectionPoint> between(const std::vector<SectionPoint>& a, const std::vector<SectionPoint>& b, double share)
{
    std::vector<SectionPoint> points;
    points.reserve(a.size());
    for (std::size_t i = 0; i < a.size(); ++i)
        points.push_back({a[i].x + (b[i].x - a[i].x) * share, a[i].height + (b[i].height - a[i].height) * share});
    return points;
}

}

SwingFrame frame_at(const SwingFilm& film, Time at)
{
    insist(!film.frames.empty(), "a film has a frame");
    const double place = std::clamp(at / swing_grid, 0.0, static_cast<double>(film.frames.size() - 1));
    const auto low = static_cast<std::size_t>(place);
    const SwingFrame& a = film.frames[low];
    const SwingFrame& b = film.frames[std::min(low + 1, film.frames.size() - 1)];
    const double share = place - static_cast<double>(low);
    return {between(a.first, b.first, share), between(a.second, b.second, share), a.passer + (b.passer - a.passer) * share, a.has_torn_loose};
}

}
