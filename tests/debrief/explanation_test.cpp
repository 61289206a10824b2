#include "debrief/explanation.hpp"

#include "debrief/harm.hpp"

#include <catch2/catch.hpp>

using namespace flapdoor;
using namespace flapdoor::debrief;

namespace {

Figures figures(double milligrams_out, double floor, double sill)
{
    Figures made;
    made.outside.lead = {static_cast<std::int64_t>(milligrams_out * 1e9)};
    made.floor = Loading{floor * (1.0_ugpft2).si};
    made.sill = Loading{sill * (1.0_ugpft2).si};
    return made;
}

WhatIf repaired(const Figures& before, const Figures& after)
{
    WhatIf what_if;
    what_if.before = before;
    what_if.after = after;
    return what_if;
}

bool speaks_of(const WhatIf& what_if, const std::string& words) { return why_better_with_it(what_if).find(words) != std::string::npos; }

}

TEST_CASE("a repair that helps needs no explanation, nor does a trifle")
{
    CHECK(why_better_with_it(repaired(figures(20.0, 20.0, 50.0), figures(1.0, 10.0, 50.0))).empty());
    CHECK(why_better_with_it(repaired(figures(20.0, 20.0, 50.0), figures(20.9, 20.9, 52.0))).empty());      // less than a twentieth
    CHECK(why_better_with_it(repaired(figures(0.001, 0.01, 0.01), figures(0.002, 0.05, 0.05))).empty());    // hardly anything at all
}

TEST_CASE("where something looks better with the mistake, the reason is told")
{
    WhatIf register_open = repaired(figures(20.0, 20.0, 50.0), figures(1.0, 40.0, 50.0));
    CHECK(did_good(register_open, Compared::floor));
    CHECK(did_harm(register_open, Compared::outside));
    CHECK(speaks_of(register_open, "because more of it got out"));

    WhatIf swept = repaired(figures(20.0, 20.0, 50.0), figures(20.0, 40.0, 50.0));
    swept.cleans_itself = true;
    CHECK(speaks_of(swept, "takes dust and chips up too"));

    WhatIf failed = repaired(figures(20.0, 20.0, 50.0), figures(20.0, 40.0, 50.0));
    failed.cleaned_again = 40.0_min;
    CHECK(speaks_of(failed, "was cleaned again"));

    WhatIf bag = repaired(figures(20.0, 20.0, 50.0), figures(80.0, 20.0, 50.0));
    bag.other_way = dust::Pathway::bag;
    CHECK(speaks_of(bag, "got out another way: "));

    CHECK(speaks_of(repaired(figures(20.0, 20.0, 50.0), figures(20.0, 40.0, 50.0)), "light runs would tell"));
}

TEST_CASE("what goes either way over the light runs is called luck, what does not is not")
{
    WhatIf either = repaired(figures(20.0, 20.0, 50.0), figures(20.0, 40.0, 50.0));
    WhatIf steady = either;
    for (int i = 0; i < 10; ++i) {
        either.paired_before.push_back(figures(20.0, 20.0, 50.0));
        either.paired_after.push_back(figures(20.0, i % 2 == 0 ? 30.0 : 10.0, 50.0));
        steady.paired_before.push_back(figures(20.0, 20.0, 50.0));
        steady.paired_after.push_back(figures(20.0, 30.0 + i, 50.0));
    }
    CHECK(speaks_of(either, "is luck"));
    CHECK_FALSE(speaks_of(steady, "luck"));
    CHECK(speaks_of(steady, "no single cause"));
}

TEST_CASE("a mistake that is put in is read the other way round")
{
    WhatIf put_in = repaired(figures(1.0, 40.0, 50.0), figures(20.0, 20.0, 50.0));
    put_in.kind = WhatIf::Kind::put_in;
    CHECK(did_harm(put_in, Compared::outside));
    CHECK(did_good(put_in, Compared::floor));
    CHECK(speaks_of(put_in, "because more of it got out"));
}
