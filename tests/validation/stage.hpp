#pragma once

#include "dust/lognormal.hpp"
#include "job/files.hpp"
#include "site/effects.hpp"
#include "site/landing.hpp"
#include "site/site.hpp"

#include <catch2/catch.hpp>

#include <cstdint>
#include <sstream>
#include <string>
#include <vector>

namespace flapdoor::validation {

/// What the rooms of the experiments differ in: one work room with a door to a hall, the rest of a house beyond. Lengths in m.
struct Rooms {
    std::string floor = "smooth";
    std::string hall_floor = "smooth";
    double width = 4.0, depth = 3.0, ceiling = 2.4;
    double hall_width = 2.0;                    ///< away from the work room: how far somebody can walk straight on
    double undercut = 0.013;
    bool has_registers = false, has_window = false, is_door_open = false;
    double exhaust = 0.0;                       ///< m3/h that a fan in the work room draws off to the outdoors; 0: there is none
    double return_flow = 0.0, supply_flow = 0.0;   ///< m3/h, while the air handling runs
    bool is_air_handling_on = false;
    double painted = 1.0;                       ///< m2 of 3 mg/cm2 on 0.5 mm of paint
    double old_dust = 0.0, old_lead = 0.0;      ///< g/m2 and ug/ft2 on the work room's floor before the job; elsewhere none
};

inline std::string text_of(const Rooms& rooms)
{
    std::ostringstream text;
    const auto m = [](double meters) { return "\"" + std::to_string(meters) + " m\"\n"; };
    text << "format = 1\nid = \"rooms\"\ntitle = \"Rooms\"\njob = \"An experiment.\"\n"
            "[building]\ntitle = \"House\"\nbuilt = 1920\n";
    text << "[air-handling]\nis-running = " << (rooms.is_air_handling_on ? "true" : "false") << "\nfilter-merv = 13\nhouse-flow = \"1500 m3/h\"\n"
         << "return-flow = \"" << rooms.return_flow << " m3/h\"\nsupply-flow = \"" << rooms.supply_flow << " m3/h\"\n";
    const auto zone = [&](const std::string& id, const std::string& role, double west, double width, double depth, const std::string& floor) {
        text << "[[zone]]\nid = \"" << id << "\"\ntitle = \"" << id << "\"\nrole = \"" << role << "\"\nwest = " << m(west) << "width = " << m(width) << "depth = " << m(depth)
             << "ceiling = " << m(rooms.ceiling) << "floor = \"" << floor << "\"\n"
             << "dust-before = \"" << (role == "work-room" ? rooms.old_dust : 0.0) << " g/m2\"\nlead-before = \"" << (role == "work-room" ? rooms.old_lead : 0.0) << " ug/ft2\"\n";
    };
    zone("room", "work-room", 0.0, rooms.width, rooms.depth, rooms.floor);
    zone("hall", "passage", rooms.width, rooms.hall_width, rooms.depth, rooms.hall_floor);
    zone("house", "room", rooms.width + rooms.hall_width, 6.0, 8.0, "wood");
    const auto opening = [&](const std::string& id, const std::string& kind, const std::string& zone_of, const std::string& wall, double from, double width, double height) {
        text << "[[opening]]\nid = \"" << id << "\"\ntitle = \"" << id << "\"\nkind = \"" << kind << "\"\nzone = \"" << zone_of << "\"\nwall = \"" << wall << "\"\nfrom = " << m(from)
             << "width = " << m(width) << "height = " << m(height);
    };
    opening("door", "door", "room", "east", 0.5 * rooms.depth - 0.4, 0.8, 2.0);
    text << "leads-to = \"hall\"\nundercut = " << m(rooms.undercut) << "is-open = " << (rooms.is_door_open ? "true\n" : "false\n");
    opening("arch", "door", "hall", "east", 0.5 * rooms.depth - 0.45, 0.9, 2.1);
    text << "leads-to = \"house\"\nis-open = true\n";
    if (rooms.has_window) opening("window", "window", "room", "north", 1.0, 0.9, 1.2), text << "above-floor = \"0.9 m\"\n";
    if (rooms.has_registers) {
        opening("return", "return", "room", "south", 0.3, 0.4, 0.2);
        text << "is-open = true\n";
        opening("supply", "supply", "room", "north", 0.3, 0.3, 0.1);
        text << "is-open = true\n";
    }
    if (rooms.exhaust > 0.0) {
        opening("fan", "exhaust", "room", "south", 1.0, 0.2, 0.2);
        text << "is-open = true\nfan-flow = \"" << rooms.exhaust << " m3/h\"\n";
    }
    text << "[[component]]\nid = \"paint\"\ntitle = \"Paint\"\nkind = \"trim\"\nzone = \"room\"\nwall = \"west\"\nfrom = " << m(0.5 * rooms.depth - 0.5)
         << "width = \"1 m\"\nheight = \"1.4 m\"\narea = \"" << rooms.painted / 0.09290304 << " ft2\"\nlead = \"3 mg/cm2\"\nfilm = \"0.5 mm\"\n";
    if (rooms.has_window)
        text << "[[component]]\nid = \"sash\"\ntitle = \"Sash\"\nkind = \"window\"\nzone = \"room\"\nopening = \"window\"\nheight = \"1.4 m\"\narea = \"12 ft2\"\nlead = \"3 mg/cm2\"\n";
    text << "[[person]]\nid = \"ana\"\ntitle = \"Ana\"\nrole = \"certified-renovator\"\n";
    for (const std::string supply : {"sheeting", "tape", "hepa-vacuum", "shop-vacuum", "mop-two-bucket", "broom", "tack-pad", "cloth", "mister", "scraper", "sander",
                                     "shrouded-sander", "heat-gun", "pry-bar", "bag"})
        text << "[[supply]]\nid = \"" << supply << "\"\ntitle = \"" << supply << "\"\nkind = \"" << supply << "\"\ncount = 99\nis-staged = true\n";
    return text.str();
}

template <class T>
T sound(Result<T> result)
{
    std::string told;
    if (!result)
        for (const Problem& problem : result.error()) told += describe(problem) + "\n";
    INFO(told);
    REQUIRE(result.has_value());
    return std::move(*result);
}

inline constexpr std::size_t room = 0, hall = 1, house = 2;   // zones, in the order of the scenario

/// One run of an experiment: a site with its own draw of what is uncertain, on which cards are played as plan files spell
/// them. Every card must be carried out; the books are audited after each.
class Stage {
public:
    Stage(const Rooms& rooms, std::uint64_t seed, double detail = 0.5)
        : site(site::build(sound(job::read_scenario(text_of(rooms), "rooms.toml")), seed, dust::draw_parameters(seed)))
    {
        site.detail = detail;
    }

    Stage& play(const std::string& card)
    {
        const std::string text = "format = 1\nscenario = \"rooms\"\ntitle = \"Experiment\"\ncard = [{ " + card + ", by = [\"ana\"] }]\n";
        const job::Card read = sound(job::read_plan(text, "card.toml", site.scenario)).cards.front();
        INFO(card);
        std::visit([&](const auto& step) {
            const site::Refusal refusal = site::why_not(site, step, read.by);
            INFO(refusal.value_or("not refused").english());
            REQUIRE_FALSE(refusal.has_value());
            REQUIRE(site::carry_out(site, step, read.by).was_needed);
        }, read.step);
        site::audit(site);
        return *this;
    }

    /// Time passes with nobody about.
    Stage& wait(int minutes) { return play("do = \"wait\", time = \"" + std::to_string(minutes) + " min\""); }

    /// Makes the work area count as one where paint was disturbed: a minute at a hundredth of the paint.
    Stage& begin() { return play("do = \"disturb-paint\", component = \"paint\", technique = \"pry\", time = \"1 min\", share = 0.01"); }

    /// Settled dust of these sizes, spread evenly over a zone's floor.
    Stage& strew(std::size_t zone, Loading dust, double lead_share, const dust::Lognormal& sizes)
    {
        const dust::PerClass<double> shares = dust::dust_shares(sizes);
        const Area cell = site.zones[zone].raster.cell_area();
        for (std::size_t i = 0; i < site.zones[zone].top.size(); ++i)
            for (const dust::SizeClass k : dust::all_classes()) {
                const Picograms amount = picograms(dust * cell * shares[k]);
                site.ledger.release(site.paint, site.tools.free(k), k, {amount, part(amount, lead_share)});
                site::land(site, site.tools.free(k), zone, i, k, site.tools.load.free[k], dust::Pathway::none);
            }
        return *this;
    }

    site::Worker& ana() { return site.crew.front(); }
    site::Surface& floor() { return site.surfaces[site::floor_of(site, site.work_room)]; }

    /// Patches of the work room's floor that lie in the strip along its walls, or all others.
    std::vector<std::size_t> floor_patches(bool at_the_edge)
    {
        std::vector<std::size_t> patches;
        for (std::size_t p = 0; p < floor().patches.size(); ++p)
            if ((floor().is_edge[p] != 0) == at_the_edge) patches.push_back(p);
        return patches;
    }

    /// Lead on the work room's floor, or on some patches of it, chips apart, ug/ft2.
    double floor_lead() { return site::lead_loading(floor()) / 1.0_ugpft2; }
    double floor_lead(const std::vector<std::size_t>& patches) { return site::lead_loading(floor(), patches) / 1.0_ugpft2; }

    /// Free and bound dust and lead on the floor of a zone, chips apart.
    Amount on_floor(std::size_t zone) const
    {
        Amount sum;
        for (const dust::Load& load : site.surfaces[site::floor_of(site, zone)].patches) sum += dust::dust_only(load);
        return sum;
    }

    /// All that hangs in the work room's air of one class.
    Amount airborne(dust::SizeClass k) const
    {
        Amount sum = site.room().air[k];
        for (std::size_t i = 0; i < site.cloud.count(); ++i)
            if (site.cloud.size[i] == k) sum += site.cloud.amount[i];
        return sum;
    }
    Amount airborne() const
    {
        Amount sum;
        for (const dust::SizeClass k : dust::all_classes()) sum += airborne(k);
        return sum;
    }

    site::Site site;
};

inline double milligrams(Picograms amount) { return static_cast<double>(amount.count) * 1e-9; }

}
