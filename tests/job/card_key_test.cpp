#include "shipped.hpp"

#include "job/card_key.hpp"

using namespace flapdoor;
using namespace flapdoor::job;

TEST_CASE("a card is known by its label, or by what it is about, not by its settings")
{
    Card sheet;
    sheet.step = LayFloorSheet{};
    Card wider = sheet;
    std::get<LayFloorSheet>(wider.step).reach = 9.0_ft;
    wider.by = {{"rosa"}};
    CHECK(card_key(sheet) == card_key(wider));
    wider.label = "sheet";
    CHECK(card_key(sheet) != card_key(wider));
    CHECK(subject_key(sheet) == subject_key(wider));

    Card door;
    door.step = CloseDoor{{"closet-door"}};
    Card other;
    other.step = CloseDoor{{"door"}};
    CHECK(card_key(door) != card_key(other));
    CHECK(subject_key(door) != subject_key(other));
}

TEST_CASE("cards that two plans have in common are found by kind and thing, in turn")
{
    const Scenario scenario = shipped_scenario();
    const WorkPlan good = shipped_plan("good", scenario);
    const WorkPlan careless = shipped_plan("careless", scenario);
    const std::vector<int> twins = cards_in_common(careless, good);
    REQUIRE(twins.size() == careless.cards.size());
    const auto label_there = [&](const std::string& label) {
        for (std::size_t i = 0; i < careless.cards.size(); ++i)
            if (careless.cards[i].label == label) return twins[i] < 0 ? std::string("none") : good.cards[static_cast<std::size_t>(twins[i])].label;
        return std::string("no such card");
    };
    CHECK(label_there("signs") == "signs");
    CHECK(label_there("radiator") == "radiator");
    CHECK(label_there("sand-1") == "scrape-1");     // the first work on that casing
    CHECK(label_there("close-bag-1") == "close-bag-1");
    CHECK(label_there("close-bag-2") == "close-bag-2");
    CHECK(label_there("sweep") == "none");
}
