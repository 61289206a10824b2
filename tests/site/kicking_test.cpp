#include "trial.hpp"

#include "site/feet.hpp"

#include <algorithm>
#include <cstdint>
#include <utility>
#include <vector>

namespace flapdoor::site {

namespace {

using dust::SizeClass;

struct Strewn {
    Trial trial;
    std::size_t floor = 0;

    explicit Strewn(SizeClass k)
    {
        trial.first_dust();
        floor = surface_named(trial.site, "Back bedroom, floor");
        for (std::size_t p = 0; p < trial.site.surfaces[floor].patches.size(); ++p)
            if (trial.site.room().top[p].surface == floor) strew(trial.site, floor, p, k, 0.01_g);
    }

    /// Amounts of a class on all patches.
    std::vector<std::int64_t> lying(SizeClass k) const
    {
        std::vector<std::int64_t> counts;
        for (const dust::Load& load : trial.site.surfaces[floor].patches) counts.push_back(load.free[k].dust.count + load.bound[k].dust.count);
        return counts;
    }

    void walk(int times)
    {
        Worker& lee = worker(trial.site, {"lee"});
        const plan::Rect& rect = trial.site.room().raster.rect();
        for (int i = 0; i < times; ++i) {
            walk_to(trial.site, lee, {rect.west + 1.0_m, rect.center().y});
            walk_to(trial.site, lee, {rect.east() - 1.0_m, rect.center().y});
        }
        audit(trial.site);
    }
};

std::int64_t sum(const std::vector<std::int64_t>& counts)
{
    std::int64_t all = 0;
    for (const std::int64_t count : counts) all += count;
    return all;
}

}

TEST_CASE("walking kicks chips and grit from cell to cell and loses none", "[feet]")
{
    for (const SizeClass k : {SizeClass::chips, SizeClass::um_160, SizeClass::um_80}) {
        Strewn strewn(k);
        const std::vector<std::int64_t> before = strewn.lying(k);
        strewn.walk(3);
        const std::vector<std::int64_t> after = strewn.lying(k);
        std::size_t more = 0;
        for (std::size_t p = 0; p < before.size(); ++p) more += after[p] > before[p] ? 1 : 0;
        CHECK(more > 0);
        if (k == SizeClass::chips) CHECK(sum(after) == sum(before));       // smooth soles take none
        else CHECK(sum(after) <= sum(before));
    }
}

TEST_CASE("fine dust is not kicked, and nothing is before the first dust", "[feet]")
{
    Strewn fine(SizeClass::um_20);
    const std::vector<std::int64_t> before = fine.lying(SizeClass::um_20);
    fine.walk(1);
    const std::vector<std::int64_t> after = fine.lying(SizeClass::um_20);
    std::int64_t risen = 0;
    for (std::size_t p = 0; p < before.size(); ++p) risen = std::max(risen, after[p] - before[p]);
    // What gains is what a sole gave back, never a tenth of a neighbor's.
    CHECK(static_cast<double>(risen) < 0.05 * static_cast<double>(*std::max_element(before.begin(), before.end())));

    Trial trial;
    const std::size_t floor = surface_named(trial.site, "Back bedroom, floor");
    const std::size_t patch = free_floor_patch(trial.site);
    strew(trial.site, floor, patch, SizeClass::chips, 1.0_g);
    Worker& lee = worker(trial.site, {"lee"});
    const plan::Point there = trial.site.room().raster.center(patch);
    walk_to(trial.site, lee, {there.x - 1.0_m, there.y});
    walk_to(trial.site, lee, {there.x + 1.0_m, there.y});
    CHECK(trial.site.surfaces[floor].patches[patch].free[SizeClass::chips].dust == picograms(1.0_g));
}

TEST_CASE("uncertain soles and whirls follow the run's draw", "[feet]")
{
    const auto stepped = [](double raised, double uptake) {
        Trial trial;
        trial.site.uncertain.raised = raised;
        trial.site.uncertain.sole_uptake = uptake;
        const std::size_t patch = free_floor_patch(trial.site);
        strew(trial.site, trial.site.room().top[patch].surface, patch, SizeClass::um_5, 0.001_g);
        step_on(trial.site, worker(trial.site, {"lee"}), patch);
        return std::pair{airborne(trial.site, SizeClass::um_5).count, worker(trial.site, {"lee"}).shoes[0].sole.load.free[SizeClass::um_5].dust.count};
    };
    const auto [air, sole] = stepped(1.0, 0.2);
    CHECK(static_cast<double>(stepped(3.0, 0.2).first) == Approx(3.0 * static_cast<double>(air)).epsilon(1e-3));
    CHECK(static_cast<double>(stepped(1.0, 0.4).second) == Approx(2.0 * static_cast<double>(sole)).epsilon(1e-3));
}

}
