#include "air_sampler.hpp"
#include "stage.hpp"
#include "study.hpp"

using namespace flapdoor;
using namespace flapdoor::validation;

namespace {

std::string work(const std::string& technique, const std::string& how) { return "do = \"disturb-paint\", component = \"paint\", technique = \"" + technique + "\", time = \"20 min\", " + how; }

Stage room_to_work_in(std::uint64_t seed)
{
    Rooms rooms;
    rooms.painted = 0.5;
    return Stage(rooms, seed);
}

double breathed(std::uint64_t seed, const std::string& technique, const std::string& how)
{
    Stage stage = room_to_work_in(seed);
    return breathed_lead(stage, work(technique, how));
}

double sampled(std::uint64_t seed, const std::string& technique, const std::string& how, const Inlet& inlet)
{
    Stage stage = room_to_work_in(seed);
    return sampled_lead(stage, work(technique, how), inlet);
}

const std::string dry = "is-misted = false";
const std::string wet = "is-misted = true";
const std::string bare = "is-misted = false, has-shroud = false, has-hepa = false";
const std::string bag = "is-misted = false, has-shroud = true, has-hepa = false";   // a shroud that no HEPA vacuum draws on
const std::string shroud = "is-misted = false, has-shroud = true, has-hepa = true";

}

TEST_CASE("V-11 wetting and a vacuum on the tool spare the worker what was measured")
{
    Study study("V-11", "Piacitelli & Sussell 2002 and Sussell et al. 2002, NIOSH records (read); ratios of geometric means, exterior work");
    study.carry_out([&](std::uint64_t seed) {
        const double sanding = breathed(seed, "hand-sand", dry);
        const double scraping = breathed(seed, "hand-scrape", dry);
        const double machine = breathed(seed, "machine-sand", bare);
        study.note("dry sanding, ug/m3", sanding);
        study.note("dry scraping, ug/m3", scraping);
        study.note("power sanding, ug/m3", machine);
        study.note("dry sanding, by the parcels within 0.75 m, over that", sampled(seed, "hand-sand", dry, inhalable) / sanding);
        study.note("sanding, wet over dry", breathed(seed, "hand-sand", wet) / sanding);
        study.note("scraping, wet over dry", breathed(seed, "hand-scrape", wet) / scraping);
        study.note("power sanding, HEPA vacuum over none", breathed(seed, "machine-sand", shroud) / machine);
        study.note("power sanding, bag over none", breathed(seed, "machine-sand", bag) / machine);
    });
    study.tell("dry sanding, ug/m3", "geometric mean 49, outdoors");
    study.tell("dry scraping, ug/m3", "geometric mean 53, outdoors");
    study.tell("power sanding, ug/m3", "geometric mean 44, outdoors");
    study.tell("dry sanding, by the parcels within 0.75 m, over that", "two ways to see one cloud");
    study.expect("sanding, wet over dry", 0.06, 0.3, "6.2/49 = 0.13");
    study.expect("scraping, wet over dry", 0.15, 0.8, "16/53 = 0.30; 90/136 = 0.66 in the second record");
    study.expect("power sanding, HEPA vacuum over none", 0.05, 0.3, "6.9/44 = 0.16");
    study.expect("power sanding, bag over none", 0.9999, 10.0, "68/44 = 1.5: a bag was no better than none");
}

TEST_CASE("V-12 a vacuum on the sander keeps most of the dust out of the air")
{
    // Sanding with a pole and wet sponging, of the same source, are no techniques of the program.
    Study study("V-12", "Mead et al. 1995 and Young-Corbett & Nussbaum 2009, NIOSH records (read), sanding drywall; bands +-15 points");
    study.carry_out([&](std::uint64_t seed) {
        study.note("less inhalable, %", 100.0 * (1.0 - breathed(seed, "machine-sand", shroud) / breathed(seed, "machine-sand", bare)));
        study.note("less respirable, %", 100.0 * (1.0 - sampled(seed, "machine-sand", shroud, respirable) / sampled(seed, "machine-sand", bare, respirable)));
    });
    study.expect("less inhalable, %", 65, 100, "80 to 97 %");
    study.expect("less respirable, %", 73, 100, "88 %");
}

TEST_CASE("V-23 a vacuum on the tool keeps the floor clean")
{
    Study study("V-23", "Lead exposures from varnished floor refinishing, J Occup Environ Hyg 2012:280-287, abstract (read); band judgment");
    study.carry_out([&](std::uint64_t seed) {
        const auto floor_after = [&](const std::string& how) {
            Stage stage(Rooms{}, seed);
            return stage.play(work("machine-sand", how)).wait(60).floor_lead();
        };
        study.note("floor lead kept off, %", 100.0 * (1.0 - floor_after(shroud) / floor_after(bare)));
    });
    study.expect("floor lead kept off, %", 80, 100, "dust collection lowered the mean by 8293 ug/ft2");
}
