#include "text/writing.hpp"

#include "examples.hpp"
#include "text/fingerprint_fields.hpp"
#include "text/reading.hpp"

#include <catch2/catch.hpp>
#include <rapidcheck.h>

#include <cmath>
#include <string>

using namespace flapdoor;
using namespace example;
using text::describe_fields;
using text::read_document;
using text::ShownField;
using text::write_toml;

namespace {

template <class T>
std::uint64_t fingerprint(const T& thing)
{
    Fingerprint print;
    text::fingerprint_fields(print, thing);
    return print.value();
}

rc::Gen<std::string> any_text()
{
    const std::string letters = "ab \"\\\n\t#='[]{}.\x01\x7F\xC3\xB1";
    return rc::gen::map(rc::gen::container<std::vector<int>>(rc::gen::inRange(0, 17)), [letters](const std::vector<int>& picks) {
        std::string text;
        for (const int pick : picks) {
            if (pick == 16) text += "\xC3\xB1";    // one letter of two bytes
            else text += letters[static_cast<std::size_t>(pick)];
        }
        return text;
    });
}

double any_between(double least, double most)
{
    const double share = static_cast<double>(*rc::gen::inRange<std::int64_t>(0, 1LL << 53)) * 0x1.0p-53;
    const double value = least + share * (most - least);
    return *rc::gen::arbitrary<bool>() ? value : std::max(least, std::floor(value));
}

Sheet any_sheet()
{
    std::string title = *any_text();
    title += "t";
    return {title, Length{any_between(0.3048, 6.0)}, *rc::gen::inRange(1, 5)};
}

template <class Make>
auto some(Make make)
{
    std::vector<decltype(make())> list;
    const int count = *rc::gen::inRange(0, 4);
    for (int i = 0; i < count; ++i) list.push_back(make());
    return list;
}

Everything any_thing()
{
    Everything thing;
    thing.is_dry = *rc::gen::arbitrary<bool>();
    thing.count = *rc::gen::inRange(0, 101);
    thing.seed = static_cast<std::uint64_t>(*rc::gen::inRange<std::int64_t>(0, std::numeric_limits<std::int64_t>::max()));
    thing.share = any_between(0.0, 1.0);
    thing.note = *any_text();
    thing.worker.name = *rc::gen::element<std::string>("", "rosa", "luis m.");
    thing.weight = static_cast<Weight>(*rc::gen::inRange(0, 3));
    thing.reach = Length{any_between(0.0, 30.0)};
    thing.wait = Time{any_between(0.0, 90000.0)};
    thing.loading = Loading{any_between(0.0, 1e-3)};
    thing.air = Temperature{any_between(200.0, 1000.0)};
    thing.dust = {*rc::gen::inRange<std::int64_t>(0, 1'000'000'000)};
    thing.corner = {Length{any_between(-9.0, 9.0)}, Length{any_between(-9.0, 9.0)}};
    thing.score = {*rc::gen::inRange(0, 9), 9};
    thing.sheet = any_sheet();
    thing.by = some([] { return WorkerId{*rc::gen::element<std::string>("rosa", "luis")}; });
    thing.steps = some([] { return Length{any_between(0.0254, 0.9)} < 1.0_in ? 1.0_in : 2.0_ft; });
    thing.spares = some(any_sheet);
    if (*rc::gen::arbitrary<bool>()) thing.flow = AirFlow{any_between(0.1, 0.5) < 0.1 ? 0.2 : 0.3};
    thing.grid = some([] { return some([] { return *rc::gen::inRange(0, 10); }); });
    return thing;
}

Step any_step()
{
    switch (*rc::gen::inRange(0, 3)) {
        case 0: return LayFloorSheet{Length{any_between(1.0, 6.0)}};
        case 1: return TapeSeam{*rc::gen::inRange(1, 5)};
        default: return Rest{};
    }
}

}

TEST_CASE("a struct is written as the file a person would write")
{
    Everything thing;
    thing.sheet.title = "plastic";
    thing.by = {{"rosa"}, {"luis"}};
    thing.spares = {{"first", 9.5_ft, 2}};
    CHECK(write_toml(thing) == R"(is-dry = false
count = 2
seed = 7
share = 0.5
note = "none"
worker = ""
weight = "medium"
reach = "6 ft"
wait = "20 min"
loading = "40 ug/ft2"
air = "68 F"
dust = "1500 pg"
corner = ["0 ft", "0 ft"]
score = "0 of 0"
by = ["rosa", "luis"]
steps = []
grid = []

[sheet]
title = "plastic"
width = "10 ft"
layers = 1

[[spare]]
title = "first"
width = "114 in"
layers = 2
)");
    CHECK(write_toml(Card{TapeSeam{2}, {{"rosa"}}, "a\"b"}) == "do = \"tape-seam\"\nlayers = 2\nby = [\"rosa\"]\nlabel = \"a\\\"b\"\n");
}

TEST_CASE("keys that need quotes get them, and tables inside lists of values stay on the line")
{
    const text::Node one = text::leaf_node(std::int64_t{1});
    text::FieldWriter inner;
    inner.add("x y", one);
    text::Array mixed(2, one);
    mixed[1] = text::table_node(inner.table);
    text::FieldWriter root;
    root.add("a.b", one);
    root.add("mixed", text::list_node(mixed));
    root.add("t t", text::table_node(inner.table));
    const std::string toml = text::print_toml(text::table_node(root.table));
    CHECK(toml == "\"a.b\" = 1\nmixed = [1, { \"x y\" = 1 }]\n\n[\"t t\"]\n\"x y\" = 1\n");
    CHECK(text::parse_document(toml, "f").has_value());
    CHECK_THROWS_AS(text::print_toml(one), BrokenPromise);
}

TEST_CASE("what is written reads back equal, with the same fingerprint", "[property]")
{
    CHECK(rc::check([] {
        const Everything thing = any_thing();
        const std::string toml = write_toml(thing);
        const Result<Everything> back = read_document<Everything>(toml, "f");
        if (!back) RC_FAIL(describe(back.error().front()) + "\n" + toml);
        RC_ASSERT(*back == thing);
        RC_ASSERT(fingerprint(*back) == fingerprint(thing));
        RC_ASSERT(write_toml(*back) == toml);
    }));
    CHECK(rc::check([] {
        const Plan plan{some([] { return Card{any_step(), {{"rosa"}}, *any_text()}; }), some(any_step)};
        const Result<Plan> back = read_document<Plan>(write_toml(plan), "f");
        RC_ASSERT(back.has_value());
        RC_ASSERT(*back == plan);
    }));
}

TEST_CASE("fields are described in the spelling of files")
{
    CHECK(describe_fields(Card{LayFloorSheet{}, {{"rosa"}, {"luis"}}, "first"}) ==
          std::vector<ShownField>{{"do", "lay-floor-sheet"}, {"reach", "6 ft"}, {"by", "rosa, luis"}, {"label", "first"}});

    const std::vector<ShownField> plan = describe_fields(Plan{{{TapeSeam{2}, {{"rosa"}}, ""}, {Rest{}, {}, ""}}, {Rest{}}});
    CHECK(plan == std::vector<ShownField>{{"card[1].do", "tape-seam"},
                                          {"card[1].layers", "2"},
                                          {"card[1].by", "rosa"},
                                          {"card[1].label", ""},
                                          {"card[2].do", "rest"},
                                          {"card[2].by", ""},
                                          {"card[2].label", ""},
                                          {"warm-up[1].kind", "rest"}});

    Everything thing;
    thing.corner = {3.0_ft, 2.5_ft};
    const auto fields = describe_fields(thing);
    CHECK(std::find(fields.begin(), fields.end(), ShownField{"corner", "3 ft, 30 in"}) != fields.end());
    CHECK(std::find(fields.begin(), fields.end(), ShownField{"sheet.width", "10 ft"}) != fields.end());
    CHECK(std::find(fields.begin(), fields.end(), ShownField{"is-dry", "false"}) != fields.end());
}

namespace {

/// Spells itself and has no fields.
struct Mark {
    int count = 0;
    static void from_node(const text::Node& node, Mark& mark, Problems&) { mark.count = static_cast<int>(std::get<std::string>(node.value).size()); }
    static text::Node to_node(const Mark& mark) { return text::leaf_node(std::string(static_cast<std::size_t>(mark.count), 'I')); }
};

}

TEST_CASE("a struct with a spelling of its own is written and fingerprinted by it")
{
    CHECK(text::plain_text(text::to_node(Mark{3})) == "III");
    CHECK(fingerprint(Mark{3}) != fingerprint(Mark{4}));
    CHECK(fingerprint(Mark{3}) == fingerprint(Mark{3}));
}

TEST_CASE("every single change shows in the fingerprint")
{
    const Everything plain;
    std::vector<Everything> changed(9);
    changed[0].is_dry = true;
    changed[1].share = std::nextafter(0.5, 1.0);
    changed[2].note = "None";
    changed[3].reach = Length{std::nextafter(plain.reach.si, 9.0)};
    changed[4].dust = {1501};
    changed[5].weight = Weight::heavy;
    changed[6].by = {{"rosa"}};
    changed[7].flow = 0.0_m3ph;
    changed[8].grid = {{}};
    for (std::size_t i = 0; i < changed.size(); ++i) {
        INFO("change " << i);
        CHECK(fingerprint(changed[i]) != fingerprint(plain));
        for (std::size_t j = 0; j < i; ++j) CHECK(fingerprint(changed[i]) != fingerprint(changed[j]));
    }
    CHECK(fingerprint(Everything{}) == fingerprint(plain));

    Everything moved = plain;
    moved.grid = {{1}, {2}};
    Everything joined = plain;
    joined.grid = {{1, 2}};
    CHECK(fingerprint(moved) != fingerprint(joined));
    CHECK(fingerprint(Card{Rest{}, {}, ""}) != fingerprint(Card{TapeSeam{}, {}, ""}));
}
