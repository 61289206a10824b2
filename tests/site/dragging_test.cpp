#include "trial.hpp"

#include "site/bagging.hpp"
#include "site/dragging.hpp"

namespace flapdoor::site {

namespace {

constexpr dust::SizeClass ten_microns = dust::SizeClass::um_10;

struct Dragged {
    Trial trial;
    std::size_t floor = surface_named(trial.site, "Back bedroom, floor");
    plan::Point from = trial.site.room().raster.rect().center();
    plan::Point to{from.x, trial.site.room().raster.rect().south + 0.5_m};

    Bag& bag() { return start_bag(trial.site, {"bag-1"}, true); }
    void go()
    {
        drag(trial.site, bag(), trial.site.work_room, from, to, dust::Pathway::bag);
        audit(trial.site);
    }
    void strew_floor()
    {
        for (std::size_t p = 0; p < trial.site.surfaces[floor].patches.size(); ++p) strew(trial.site, floor, p, ten_microns, 0.01_g);
    }
};

}

TEST_CASE("somebody alone drags a full bag, two carry it", "[bags]")
{
    Bag bag;
    bag.fill = 0.9;
    CHECK(is_dragged(bag, 1));
    CHECK_FALSE(is_dragged(bag, 2));
    bag.fill = 0.4;
    CHECK_FALSE(is_dragged(bag, 1));
}

TEST_CASE("a bag dragged over a dusty floor gets a dusty skin", "[bags]")
{
    Dragged dragged;
    dragged.strew_floor();
    const Picograms before = total(dragged.trial.site.surfaces[dragged.floor]).dust;
    dragged.go();
    const Picograms on_skin = dust::total(dragged.bag().skin.load).dust;
    CHECK(on_skin > picograms(1e-3_g));
    CHECK(on_skin < picograms(0.5_g));
    CHECK(total(dragged.trial.site.surfaces[dragged.floor]).dust + on_skin == before);
}

TEST_CASE("a dusty bag leaves a trail on a clean floor", "[bags]")
{
    Dragged dragged;
    Bag& bag = dragged.bag();
    strew(dragged.trial.site, dragged.floor, 0, ten_microns, 1.0_g);
    dragged.trial.site.ledger.move(dragged.trial.site.surfaces[dragged.floor].free(0, ten_microns), bag.skin.free(ten_microns), ten_microns, {picograms(1.0_g), part(picograms(1.0_g), 0.01)});
    dragged.go();
    std::size_t dirtied = 0;
    for (const dust::Load& load : dragged.trial.site.surfaces[dragged.floor].patches) dirtied += dust::total(load).is_zero() ? 0 : 1;
    CHECK(dirtied > 20);
    CHECK(dust::total(bag.skin.load).dust < picograms(0.9_g));
    CHECK(dust::total(bag.skin.load).dust > picograms(0.02_g));
}

TEST_CASE("dragging a bag out alone leaves more in the passage than carrying it by two", "[bags]")
{
    const auto left_by_bag = [](const char* by) {
        Trial trial;
        const std::size_t floor = surface_named(trial.site, "Back bedroom, floor");
        for (std::size_t p = 0; p < trial.site.surfaces[floor].patches.size(); ++p) strew(trial.site, floor, p, ten_microns, 0.01_g);
        trial.then("do = \"bag-debris\", bag = \"bag-1\", kind = \"heavy-bags\", fill = 0.6").after("close-bag-1");
        trial.then(std::string("do = \"carry-out\", bag = \"bag-1\", opening = \"door\", by = ") + by);
        return dust::total(trial.site.ledger.crossed(dust::Pathway::bag)).dust;
    };
    CHECK(left_by_bag(R"(["lee"])") > left_by_bag(R"(["rosa", "lee"])"));
}

}
