#pragma once

#include "../job/shipped.hpp"

#include "site/effects.hpp"
#include "site/hands.hpp"
#include "site/site.hpp"

#include <algorithm>
#include <map>
#include <set>
#include <sstream>
#include <string>
#include <string_view>
#include <utility>
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

/// The same place without old dust, so that a test sees what it strews itself.
inline job::Scenario swept(job::Scenario scenario)
{
    for (job::Zone& zone : scenario.zones) zone.dust_before = zone.lead_before = Loading{};
    for (job::Sill& sill : scenario.sills) sill.dust_before = sill.lead_before = Loading{};
    return scenario;
}

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
    explicit Trial(job::Scenario scenario = job::shipped_scenario(), std::uint64_t seed = 1) : site(build(swept(std::move(scenario)), seed))
    {
        for (const job::Card& card : job::shipped_plan("good", job::shipped_scenario()).cards) good_[card.label] = card;
    }

    /// One card; `by = ["lee"]` unless it says who.
    Played play(const std::string& card) { return play(card_of(card)); }

    /// Cards of the shipped careful plan, by their labels, in this order; each must be carried out.
    Trial& after(const std::string& labels)
    {
        std::istringstream words(labels);
        for (std::string label; words >> label;) {
            INFO(label);
            REQUIRE(good_.count(label) == 1);
            REQUIRE(play(good_.at(label)).outcome == "done");
        }
        return *this;
    }

    /// Cards that set the trial up; each must be carried out.
    Trial& then(const std::string& card)
    {
        INFO(card);
        REQUIRE(play(card).outcome == "done");
        return *this;
    }

    /// The first dust, as little as a card allows: one minute at a hundredth of a casing.
    Trial& first_dust() { return then(R"(do = "disturb-paint", component = "casing-1", technique = "hand-scrape", time = "1 min", share = 0.01)"); }

    bool holds(const std::string& state, const std::string& object = {}) const { return job::holds(site.log, state, object, site.now); }

    /// The kinds of steps carried out in all trials so far.
    static std::set<std::string_view>& kinds_done()
    {
        static std::set<std::string_view> kinds;
        return kinds;
    }

    Site site;

private:
    job::Card card_of(const std::string& card) const
    {
        const std::string by = card.find("by = [") == std::string::npos ? ", by = [\"lee\"]" : "";
        const std::string text = "format = 1\nscenario = \"back-bedroom\"\ntitle = \"Trial\"\ncard = [{ " + card + by + " }]\n";
        return job::sound(job::read_plan(text, "trial.toml", site.scenario)).cards.front();
    }

    Played play(const job::Card& card)
    {
        site.measured.clear();
        Played played;
        std::visit([&](const auto& step) {
            const bool is_return = std::holds_alternative<job::ReturnToSite>(card.step);
            if (const Refusal refusal = first_of({is_return ? std::nullopt : must_be_on_site(site, card.by), why_not(site, step, card.by)})) {
                played.outcome = "refused: " + refusal->english();
                return;
            }
            const Done done = carry_out(site, step, card.by);
            played.outcome = done.was_needed ? "done" : "not needed: " + done.why.english();
            if (done.was_needed) kinds_done().insert(step.name);
        }, card.step);
        audit(site);
        played.measured = site.measured;
        return played;
    }

    std::map<std::string, job::Card> good_;
};

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
