#include "small_study.hpp"

#include "debrief/harm.hpp"
#include "debrief/page.hpp"
#include "debrief/what_if_line.hpp"

using namespace flapdoor;
using namespace flapdoor::debrief;

namespace {

WhatIfOrder light(std::size_t runs, unsigned threads = 1)
{
    WhatIfOrder order;
    order.threads = threads;
    order.seeds = small_study::seeds(runs);
    return order;
}

WhatIfs small(std::size_t runs, unsigned threads = 1)
{
    const Inputs careful = small_study::inputs(small_job::careful, "careful");
    return what_ifs(small_study::inputs(small_job::careless, "careless"), &careful.plan, 1, light(runs, threads));
}

bool is_same(const WhatIfs& a, const WhatIfs& b)
{
    if (a.list.size() != b.list.size() || a.base != b.base || a.seeds != b.seeds || a.source_shares.size() != b.source_shares.size()) return false;
    for (std::size_t i = 0; i < a.list.size(); ++i) {
        const WhatIf& x = a.list[i];
        const WhatIf& y = b.list[i];
        if (x.rules != y.rules || x.edits != y.edits || x.end_hash != y.end_hash || x.before != y.before || x.after != y.after || x.paired_before != y.paired_before || x.paired_after != y.paired_after) return false;
    }
    return true;
}

}

TEST_CASE("every what-if ends, bit for bit, as its plan carried out from the start", "[determinism]")
{
    const Inputs careful = small_study::inputs(small_job::careful, "careful");
    const Inputs careless = small_study::inputs(small_job::careless, "careless");
    const WhatIfs found = what_ifs(careless, &careful.plan, 1, light(0));
    REQUIRE(found.list.size() >= 4);
    for (const WhatIf& what_if : found.list) {
        const job::WorkPlan& plan = what_if.kind == WhatIf::Kind::put_in ? careful.plan : careless.plan;
        const drill::Run whole = drill::carry_out(careless.scenario, edited(plan, what_if.edits), {});
        CHECK(whole.hashes.back().hash == what_if.end_hash);
        CHECK(figures_of(outcome(whole)) == what_if.after);
        CHECK(figures_of(outcome(drill::carry_out(careless.scenario, plan, {}))) == what_if.before);
    }
}

TEST_CASE("what the faults did does not depend on the number of threads", "[determinism]") { CHECK(is_same(small(3), small(3, 2))); }

TEST_CASE("each fault is repaired alone, all together, and put into the reference plan")
{
    const WhatIfs found = small(0);
    for (const char* rule : {"signs-first", "window-shut", "train"}) {
        INFO(rule);
        const WhatIf* alone = found.find(WhatIf::Kind::repaired, rule);
        const bool is_without = std::any_of(found.none.begin(), found.none.end(), [&](const NoRepair& none) { return none.rule == rule; });
        CHECK((alone != nullptr) != is_without);
        if (alone != nullptr) CHECK(alone->is_mended);
        CHECK((found.find(WhatIf::Kind::put_in, rule) != nullptr) == (alone != nullptr));
    }
    const WhatIf* all = found.find(WhatIf::Kind::all_repaired, "signs-first");
    REQUIRE(all != nullptr);
    CHECK(all->is_mended);
    // The careful plan writes no record and leaves the blower on: nothing can be taken from it for these.
    CHECK(found.none.size() == 2);
    const WhatIf* window = found.find(WhatIf::Kind::repaired, "window-shut");
    REQUIRE(window != nullptr);
    CHECK(window->rules == std::vector<std::string>{"window-shut"});
    CHECK(window->edits.size() == 1);
}

TEST_CASE("a mistake that hurts nothing changes nothing, and one that lets dust out shows it")
{
    const WhatIfs found = small(10);
    const WhatIf* signs = found.find(WhatIf::Kind::repaired, "signs-first");
    REQUIRE(signs != nullptr);
    CHECK(harm_of(*signs, Compared::took) == 0.0);      // a card that moves costs no time
    CHECK_FALSE(did_harm(*signs));
    CHECK(harmful_runs(*signs) == 0);
    const WhatIf* window = found.find(WhatIf::Kind::repaired, "window-shut");
    REQUIRE(window != nullptr);
    CHECK(harm_of(*window, Compared::outside) > 0.0);   // the wind no longer carries it off
    CHECK(harm_of(*window, Compared::took) < 0.0);      // and shutting it takes a moment
    CHECK(harmful_runs(*window) >= 8);
    const std::optional<Band> band = harm_band(*window, Compared::outside);
    REQUIRE(band);
    CHECK(band->runs == 10);
    CHECK(band->low <= band->median);
    CHECK(costliest(found).front() == window);
    REQUIRE_FALSE(found.source_shares.empty());
    CHECK(found.source_shares.front().share.runs == 10);
}

TEST_CASE("a mistake put into the careful plan has its band too")
{
    const WhatIfs found = small(10);
    const WhatIf* window = found.find(WhatIf::Kind::put_in, "window-shut");
    REQUIRE(window != nullptr);
    CHECK(window->is_mended);
    REQUIRE(window->paired_before.size() == 10);
    REQUIRE(window->paired_after.size() == 10);
    const std::optional<Band> band = harm_band(*window, Compared::outside);
    REQUIRE(band);
    CHECK(band->is_band());
    CHECK(band->high > 0.0);
    // The light pairs are those of the careful plan, not of the careless one.
    const WhatIf* alone = found.find(WhatIf::Kind::repaired, "window-shut");
    REQUIRE(alone != nullptr);
    CHECK(window->paired_before != alone->paired_before);
}

TEST_CASE("a plan without faults has nothing to repair")
{
    const Inputs careful = small_study::inputs(small_job::careful + R"({ do = "write-record", by = ["ann"] },)" "\n", "careful");
    WhatIfOrder order = light(2);
    const WhatIfs found = what_ifs(careful, nullptr, 1, order);
    for (const WhatIf& what_if : found.list) CHECK(what_if.kind == WhatIf::Kind::repaired);
    CHECK(found.find(WhatIf::Kind::repaired, "signs-first") == nullptr);
}

TEST_CASE("a what-if without a change changes nothing, bit for bit", "[determinism]")
{
    const Inputs careless = small_study::inputs(small_job::careless, "careless");
    drill::RunOptions options;
    options.hashes_every_card = false;
    const drill::Trunk trunk = drill::grow(careless.scenario, careless.plan, options);
    const drill::Run unchanged = drill::branch(trunk, edited(careless.plan, {}), options);
    CHECK(unchanged.hashes == drill::carry_out(careless.scenario, careless.plan, options).hashes);
    CHECK(figures_of(outcome(unchanged)) == figures_of(outcome(trunk.run)));
    CHECK(unchanged.site.parcel_steps == trunk.run.site.parcel_steps);     // not one parcel was carried for it
}

TEST_CASE("what-ifs that are stopped are left out, and nothing else")
{
    WhatIfOrder order = light(4);
    std::size_t asked = 0;
    order.should_stop = [&] { return ++asked > 3; };
    const Inputs careful = small_study::inputs(small_job::careful, "careful");
    const WhatIfs found = what_ifs(small_study::inputs(small_job::careless, "careless"), &careful.plan, 1, order);
    CHECK(found.list.size() == 3);
    CHECK(found.seeds.empty());
    for (const WhatIf& what_if : found.list) CHECK(what_if.paired_before.empty());
}

TEST_CASE("a change is told with its sign and its unit")
{
    CHECK(change_text(0.0, Compared::outside) == "no change");
    CHECK(change_text(1.24e9, Compared::outside) == "+1.2 mg");
    CHECK(change_text(-3e6, Compared::outside) == "\u22123 ug");
    CHECK(change_text((12.0_ugpft2).si, Compared::floor) == "+12 ug/ft2");
    CHECK(change_text(-300.0, Compared::took) == "\u22125 min");
}
