#include "core/fields.hpp"

#include "core/quantity.hpp"

#include <catch2/catch.hpp>

#include <string>
#include <type_traits>

using namespace flapdoor;

namespace {

enum class Tone { quiet, loud };

struct Door {
    Length width = 3.0_ft;
    int hinges = 2;

    static void fields(auto& self, auto&& visit)
    {
        visit("width", self.width, required, About{"clear width"});
        visit("hinges", self.hinges, Range{1, 4});
    }
};

struct Plain {
    int x = 0;
};

static_assert(Described<Door>);
static_assert(!Described<Plain>);

}

namespace flapdoor::inline core {
template <>
struct Words<Tone> {
    static constexpr std::array<std::string_view, 2> words{"quiet", "loud"};
};
}

TEST_CASE("fields are visited in order, with their tags, on constant and changeable structs")
{
    std::string seen;
    const Door fixed{};
    Door::fields(fixed, [&](std::string_view key, const auto& field, const auto&... tags) {
        static_assert(std::is_const_v<std::remove_reference_t<decltype(field)>>);
        seen += std::string(key).append(std::to_string(sizeof...(tags))).append(" ");
    });
    CHECK(seen == "width2 hinges1 ");

    Door door;
    Door::fields(door, [](std::string_view, auto& field, const auto&...) { field = {}; });
    CHECK(door.width == Length{});
    CHECK(door.hinges == 0);
}

TEST_CASE("an enum and its word belong together, and no other word does")
{
    CHECK(word_of(Tone::loud) == "loud");
    CHECK(from_word<Tone>("quiet") == Tone::quiet);
    CHECK(from_word<Tone>("Quiet") == std::nullopt);
    CHECK(from_word<Tone>("") == std::nullopt);
}
