#include "trial.hpp"

#include <cmath>

namespace flapdoor::site {

namespace {

/// Half an hour of dry sanding in the unprepared room, then an hour's wait.
Site worked(double detail, std::uint64_t seed)
{
    Trial trial(job::shipped_scenario(), seed);
    trial.site.detail = detail;
    trial.after("hvac-off window close-return close-supply");
    trial.then(R"(do = "disturb-paint", component = "casing-1", technique = "hand-sand", is-misted = false, time = "20 min", share = 0.5)");
    const std::uint64_t parcels = trial.site.luck.count(Stream::emission);
    trial.then(R"(do = "wait", time = "1 h")");
    INFO("detail " << detail);
    CHECK(parcels > 0);
    return std::move(trial.site);
}

double outside(const Site& site) { return static_cast<double>(site.ledger.on(dust::Side::outside).dust.count); }

double on_floor_cell(const Site& site, double east, double north)
{
    const Surface& floor = site.surfaces[surface_named(site, "Back bedroom, floor")];
    double sum = 0.0;
    for (const std::size_t cell : site.room().raster.cells_within({Length{east}, Length{north}, {}, {}}, 0.5_m))
        for (const dust::SizeClass k : {dust::SizeClass::um_2_5, dust::SizeClass::um_5, dust::SizeClass::um_10}) sum += static_cast<double>((floor.patches[cell].free[k] + floor.patches[cell].bound[k]).dust.count);
    return sum;
}

/// Mean over some seeds and its standard error.
struct Mean {
    double value = 0.0, error = 0.0;
};

template <class Figure>
Mean over_seeds(double detail, const Figure& figure)
{
    constexpr int seeds = 12;
    double sum = 0.0, squares = 0.0;
    for (int seed = 1; seed <= seeds; ++seed) {
        const double x = figure(worked(detail, static_cast<std::uint64_t>(seed)));
        sum += x;
        squares += x * x;
    }
    const double mean = sum / seeds;
    return {mean, std::sqrt(std::max(0.0, squares / seeds - mean * mean) / (seeds - 1))};
}

}

TEST_CASE("less detail is fewer parcels of the same dust", "[detail]")
{
    const Site full = worked(1.0, 1), quarter = worked(0.25, 1), tenth = worked(0.1, 1), least = worked(0.01, 1);
    // Parcels of the work go with the detail, to whole ticks; what feet whirl up is a puff each at any detail.
    const auto drawn = [](const Site& site) { return static_cast<double>(site.luck.count(Stream::emission)); };
    CHECK((drawn(full) - drawn(quarter)) / (drawn(full) - drawn(tenth)) == Approx(0.75 / 0.9).epsilon(0.05));
    CHECK(drawn(quarter) < 0.5 * drawn(full));
    CHECK(drawn(least) < drawn(tenth));
    for (const Site* site : {&quarter, &tenth, &least}) {
        CHECK(site->ledger.released() == full.ledger.released());
        CHECK(site->ledger.closes());
    }
}

TEST_CASE("less detail gives the same results within the scatter of its parcels", "[detail]")
{
    const auto near_work = [](const Site& site) { return on_floor_cell(site, 0.6, 1.1); };
    const Mean out = over_seeds(1.0, outside), floor = over_seeds(1.0, near_work);
    for (const double detail : {0.25, 0.1}) {
        INFO("detail " << detail);
        const Mean light_out = over_seeds(detail, outside), light_floor = over_seeds(detail, near_work);
        CHECK(std::abs(light_out.value - out.value) < 4.0 * std::sqrt(light_out.error * light_out.error + out.error * out.error) + 0.03 * out.value);
        CHECK(std::abs(light_floor.value - floor.value) < 4.0 * std::sqrt(light_floor.error * light_floor.error + floor.error * floor.error) + 0.03 * floor.value);
        CHECK(light_out.value > 0.0);
    }
}

}
