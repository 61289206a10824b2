#pragma once

#include "../job/shipped.hpp"

#include "site/site.hpp"

#include <algorithm>
#include <set>
#include <string>
#include <string_view>
#include <vector>

namespace flapdoor::site {

/// What came of one card of a trial.
struct Played {
    std::string outcome;                    ///< "done", "refused: why" or "not needed: why"
    std::vector<job::Measure> measured;

    /// The value of a measure, which must be there.
    double measure(const std::string& name, const std::string& object = {}) const
    {
        job::LogEntry entry;
        entry.measured = measured;
        const job::Measure* found = job::find_measure(entry, name, object);
        INFO(name << " of " << object);
        REQUIRE(found != nullptr);
        return found->value;
    }
};

/// All that hangs in the work room's air of one class, in parcels and mixed.
inline Picograms airborne(const Site& site, dust::SizeClass k)
{
    Picograms sum = site.room().air[k].dust;
    for (std::size_t i = 0; i < site.cloud.count(); ++i)
        if (site.cloud.size[i] == k) sum += site.cloud.amount[i].dust;
    return sum;
}

/// A site on which cards are played as a plan file spells them; the books are audited after each.
class Trial {
public:
    explicit Trial(job::Scenario scenario = job::shipped_scenario(), std::uint64_t seed = 1);

    /// One card; `by = ["lee"]` unless it says who.
    Played play(const std::string& card);

    /// Cards of the shipped careful plan, by their labels, in this order; each must be carried out.
    Trial& after(const std::string& labels);

    /// Cards that set the trial up; each must be carried out.
    Trial& then(const std::string& card);

    /// The first dust, as little as a card allows: one minute at a hundredth of a casing.
    Trial& first_dust() { return then(R"(do = "disturb-paint", component = "casing-1", technique = "hand-scrape", time = "1 min", share = 0.01)"); }

    bool holds(const std::string& state, const std::string& object = {}) const { return job::holds(site.log, state, object, site.now); }

    /// The kinds of steps carried out in all trials so far.
    static std::set<std::string_view>& kinds_done();

    Site site;
};

/// The worker of the shipped scenario who does most of the work.
inline Worker& lee(Trial& trial) { return worker(trial.site, {"lee"}); }

/// The first surface of that name.
inline std::size_t surface_named(const Site& site, const std::string& name)
{
    const auto found = std::find_if(site.surfaces.begin(), site.surfaces.end(), [&](const Surface& s) { return s.name == name; });
    INFO(name);
    REQUIRE(found != site.surfaces.end());
    return static_cast<std::size_t>(found - site.surfaces.begin());
}

/// Fresh dust out of the paint onto a patch inside the work area, as if work had left it there.
inline void strew(Site& site, std::size_t surface, std::size_t patch, dust::SizeClass k, Mass amount)
{
    const Picograms dust = picograms(amount);
    site.ledger.release(site.paint, site.surfaces[surface].free(patch, k), k, {dust, part(dust, 0.01)});
}

/// The same in every class of dust, on every patch of some.
inline void strew_all(Site& site, std::size_t surface, const std::vector<std::size_t>& patches, Mass each)
{
    for (const std::size_t p : patches)
        for (const dust::SizeClass k : dust::all_classes())
            if (k != dust::SizeClass::chips) strew(site, surface, p, k, each);
}

/// A patch of the work room's bare floor, away from walls and things.
inline std::size_t free_floor_patch(const Site& site)
{
    const std::size_t floor = surface_named(site, "Back bedroom, floor");
    const std::size_t cell = site.room().raster.cell_at({5.0_ft, 6.0_ft});
    REQUIRE(site.room().top[cell].surface == floor);
    REQUIRE(site.surfaces[floor].is_edge[cell] == 0);
    return cell;
}

}
