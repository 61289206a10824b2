#include "../job/shipped.hpp"

#include "core/hash.hpp"
#include "drill/run.hpp"
#include "text/atomic_file.hpp"

#include <cstdlib>
#include <map>
#include <sstream>

// The results of the shipped runs, kept in tests/data/run_hashes.txt: the same in every build. tools/approve renews them.
namespace flapdoor::drill {

namespace {

constexpr const char* kept_in = FLAPDOOR_SOURCE_DIR "/tests/data/run_hashes.txt";

/// Hash after the last card of each shipped run, by "scenario plan seed".
std::map<std::string, std::string> results()
{
    std::map<std::string, std::string> found;
    const job::Scenario scenario = job::shipped_scenario();
    for (const std::string plan : {"careless", "good"}) {
        RunOptions options;
        options.seed = 1;
        options.threads = 2;
        const Run run = carry_out(scenario, job::shipped_plan(plan, scenario), options);
        found[scenario.id + " " + plan + " 1"] = to_hex(run.hashes.back().hash);
    }
    return found;
}

std::map<std::string, std::string> kept_results()
{
    std::istringstream lines(job::sound(text::read_file(kept_in)));
    std::map<std::string, std::string> kept;
    for (std::string line; std::getline(lines, line);) {
        if (line.empty() || line.front() == '#') continue;
        const std::size_t last = line.rfind(' ');
        REQUIRE(last != std::string::npos);
        kept[line.substr(0, last)] = line.substr(last + 1);
    }
    return kept;
}

}

TEST_CASE("the shipped runs end as committed", "[determinism]")
{
    const std::map<std::string, std::string> kept = kept_results();
    const std::map<std::string, std::string> now = results();
    for (const auto& [name, hash] : now) {
        const auto old = kept.find(name);
        INFO("The run `" << name << "` (scenario, plan, seed) ends otherwise than tests/data/run_hashes.txt says.\n"
                         << "  committed: " << (old == kept.end() ? "nothing" : old->second) << "\n  now:       " << hash << "\n"
                         << "Another build differs from this one, or the model was changed. If it was meant: say so in docs/changes.md, then tools/approve.");
        CHECK((old != kept.end() && old->second == hash));
    }
    CHECK(kept.size() == now.size());
}

// Run by tools/approve alone.
TEST_CASE("write the results of the shipped runs", "[.write-results]")
{
    const char* path = std::getenv("FLAPDOOR_RESULTS");
    REQUIRE(path != nullptr);
    std::string lines = "# Hash of the site after the last card of each shipped run: scenario, plan, seed, hash. Renewed by tools/approve.\n";
    for (const auto& [name, hash] : results()) lines += name + " " + hash + "\n";
    REQUIRE(text::save_atomically(path, lines).has_value());
}

}
