#include "dust/draws_ahead.hpp"

#include <catch2/catch.hpp>
#include <rapidcheck.h>

using namespace flapdoor;
using namespace flapdoor::dust;

TEST_CASE("draws made together are the draws made one by one, on every path", "[property]")
{
    const bool holds = rc::check([] {
        const Luck luck{*rc::gen::arbitrary<std::uint64_t>(), *rc::gen::element(Stream::transport, Stream::boundary, Stream::parameter)};
        const auto who = *rc::gen::arbitrary<std::uint64_t>();
        // Up to the last step there is, where the count begins anew.
        const auto first = *rc::gen::oneOf(rc::gen::arbitrary<std::uint32_t>(), rc::gen::element(0U, 0xFFFFFFF8U, 0xFFFFFFFDU));
        DrawsAhead wide{};
        DrawsAhead plain{};
        draw_ahead(luck, who, first, wide);
        draw_ahead_plainly(luck, who, first, plain);
        RC_ASSERT(wide.words == plain.words);
        for (std::uint32_t i = 0; i < DrawsAhead::count; ++i) {
            const Draw alone = luck.draw(who, first + i);
            for (std::size_t w = 0; w < alone.size(); ++w) RC_ASSERT(wide.words[w][i] == alone[w]);
        }
    });
    CHECK(holds);
}
