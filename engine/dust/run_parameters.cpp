#include "dust/run_parameters.hpp"

#include "core/philox.hpp"
#include "core/steady.hpp"

#include <algorithm>

namespace flapdoor::dust {

namespace {

/// Held to 2.5 standard deviations either way so that no run is absurd.
constexpr double most_deviation = 2.5;

/// The draws of one seed, one after another.
class Draws {
public:
    explicit Draws(std::uint64_t seed) : luck_{.seed = seed, .stream = Stream::parameter} {}

    double even(double least, double most) { return least + (most - least) * next(); }
    double even_in_log(double least, double most) { return least * steady::pow(most / least, next()); }
    double lognormal(double median, double gsd) { return median * steady::pow(gsd, steady::normal_deviate(next(), most_deviation)); }

private:
    double next() { return luck_.uniform(drawn_++, 0); }

    Luck luck_;
    std::uint64_t drawn_ = 0;
};

}

RunParameters draw_parameters(std::uint64_t seed)
{
    Draws draws(seed);
    RunParameters run;
    run.yield = draws.lognormal(1.0, 3.0);
    run.cloud_median = draws.lognormal(1.0, 1.4);
    run.lead_share = draws.lognormal(1.0, 1.8);
    run.airborne = draws.lognormal(1.0, 2.5);
    run.eddy = draws.lognormal(1.0, 2.5);
    run.passage = draws.lognormal(1.0, 1.8);
    run.leak = draws.lognormal(1.0, 2.5);
    run.return_flow = draws.lognormal(1.0, 1.5);
    run.raised = draws.lognormal(1.0, 5.0);
    run.sole_uptake = std::clamp(draws.lognormal(0.22, 1.6), 0.10, 0.40);
    run.pad_capture = draws.even(0.2, 0.5);
    run.bound = draws.even(0.5, 1.5);
    run.vacuum = draws.lognormal(1.0, 1.5);
    run.edge_penalty = draws.even_in_log(2.0, 5.0);
    run.exhaust = draws.lognormal(1.0, 10.0);
    run.handling = draws.lognormal(1.0, 10.0);
    run.card_coverage = std::clamp(draws.lognormal(0.005, 2.0), 0.002, 0.02);
    return run;
}

}
