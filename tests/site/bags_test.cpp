#include "trial.hpp"

#include "dust/bag.hpp"

namespace flapdoor::site {

namespace {

using dust::SizeClass;

/// A bag with debris in it; the room was strewn with chips and dust before.
Trial& filled(Trial& trial, const std::string& fill = "0.5")
{
    const std::size_t floor = surface_named(trial.site, "Back bedroom, floor");
    for (std::size_t p = 0; p < trial.site.surfaces[floor].patches.size(); p += 3) {
        if (trial.site.room().top[p].surface != floor) continue;    // under things nobody picks it up
        strew(trial.site, floor, p, SizeClass::chips, 0.1_g);
        strew(trial.site, floor, p, SizeClass::um_5, 0.01_g);
    }
    return trial.then("do = \"bag-debris\", bag = \"bag-1\", kind = \"heavy-bags\", fill = " + fill);
}

Amount outside_by(Trial& trial, dust::Pathway pathway) { return dust::total(trial.site.ledger.crossed(pathway)); }

}

TEST_CASE("picking up debris fills the bag with nearly all chips and dusts its skin", "[bags]")
{
    Trial trial;
    filled(trial);
    const Bag& bag = *find_bag(trial.site, {"bag-1"});
    const std::size_t floor = surface_named(trial.site, "Back bedroom, floor");
    Picograms chips_left;
    for (const dust::Load& load : trial.site.surfaces[floor].patches) chips_left += load.free[SizeClass::chips].dust;
    const Picograms picked = bag.content.load.free[SizeClass::chips].dust;
    CHECK(static_cast<double>(picked.count) / static_cast<double>((picked + chips_left).count) == Approx(0.97).epsilon(1e-6));
    CHECK(dust::total(bag.skin.load).dust > Picograms{});
    CHECK_FALSE(bag.is_skin_clean);
    CHECK(bag.fill == 0.5);
}

TEST_CASE("a gooseneck needs a long enough twist and room for it", "[bags]")
{
    const auto is_gooseneck = [](const std::string& fill, const std::string& how) {
        Trial trial;
        filled(trial, fill);
        const Played played = trial.play("do = \"close-bag\", bag = \"bag-1\"" + how);
        CHECK(played.measure("fill", "bag-1") == Approx(std::stod(fill)));
        return find_bag(trial.site, {"bag-1"})->is_gooseneck;
    };
    CHECK(is_gooseneck("0.5", ""));
    CHECK_FALSE(is_gooseneck("0.5", ", twist = \"6 in\""));
    CHECK_FALSE(is_gooseneck("0.9", ""));
    CHECK_FALSE(is_gooseneck("0.5", ", closure = \"tape\""));
}

TEST_CASE("pressing the air out lets fine dust out, more when pressed hard, none when not pressed", "[bags]")
{
    const auto puffed = [](const std::string& press) {
        Trial trial;
        filled(trial);
        // The fine dust of the debris: put into the bag from the floor.
        const std::size_t floor = surface_named(trial.site, "Back bedroom, floor");
        Bag& bag = *find_bag(trial.site, {"bag-1"});
        strew(trial.site, floor, 1, SizeClass::um_2_5, 1.0_g);
        trial.site.ledger.move(trial.site.surfaces[floor].free(1, SizeClass::um_2_5), bag.content.free(SizeClass::um_2_5), SizeClass::um_2_5, {picograms(1.0_g), {}});
        const Amount before = bag.content.load.free[SizeClass::um_2_5];
        trial.then("do = \"close-bag\", bag = \"bag-1\", press = \"" + press + "\"");
        return (before - bag.content.load.free[SizeClass::um_2_5]).dust;
    };
    CHECK(puffed("none") == Picograms{});
    CHECK(puffed("gently") > Picograms{});
    CHECK(static_cast<double>(puffed("gently").count) == Approx(dust::pressed_out_share(0.5) * static_cast<double>(puffed("hard").count)).epsilon(1e-6));   // hard: all the air over the content
}

TEST_CASE("vacuuming a bag takes most of its skin's dust, and carrying it out tells so", "[bags]")
{
    Trial dirty;
    filled(dirty).after("close-bag-1");
    const Played as_is = dirty.play(R"(do = "carry-out", bag = "bag-1", opening = "door")");
    CHECK(as_is.measure("skin-cleaned", "bag-1") == 0.0);
    CHECK(as_is.measure("sealed", "bag-1") == 1.0);
    CHECK(outside_by(dirty, dust::Pathway::bag).dust > Picograms{});

    Trial clean;
    filled(clean).after("close-bag-1");
    const Picograms before = dust::total(find_bag(clean.site, {"bag-1"})->skin.load).dust;
    clean.after("vac-bag-1");
    const Picograms after = dust::total(find_bag(clean.site, {"bag-1"})->skin.load).dust;
    CHECK(static_cast<double>(after.count) / static_cast<double>(before.count) == Approx(0.1).epsilon(0.05));
    const Played cared = clean.play(R"(do = "carry-out", bag = "bag-1", opening = "door")");
    CHECK(cared.measure("skin-cleaned", "bag-1") == 1.0);
    CHECK(outside_by(clean, dust::Pathway::bag).dust < outside_by(dirty, dust::Pathway::bag).dust);
}

TEST_CASE("an open bag breathes on the way out; a knot in thick plastic is open", "[bags]")
{
    const auto lost = [](const std::string& closing) {
        Trial trial;
        filled(trial);
        if (!closing.empty()) trial.then("do = \"close-bag\", bag = \"bag-1\", press = \"none\"" + closing);
        trial.after("vac-bag-1");
        const Picograms content = dust::total(find_bag(trial.site, {"bag-1"})->content.load).dust;
        const Played played = trial.play(R"(do = "carry-out", bag = "bag-1", opening = "door")");
        CHECK(played.measure("sealed", "bag-1") == (closing.empty() || closing.find("knot") != std::string::npos ? 0.0 : 1.0));
        return static_cast<double>(outside_by(trial, dust::Pathway::bag).dust.count) / static_cast<double>(content.count);
    };
    const double sealed = lost(", closure = \"tape\"");
    CHECK(lost("") > sealed + 0.85e-3);    // tape leaves a tenth of what an open neck lets out
    CHECK(lost(", closure = \"knot\"") == Approx(lost("")).epsilon(1e-6));
}

TEST_CASE("what went out in a bag is in the store and no more in the work area", "[bags]")
{
    Trial trial;
    filled(trial).after("close-bag-1 vac-bag-1 out-1");
    const Bag& bag = *find_bag(trial.site, {"bag-1"});
    CHECK(bag.is_out);
    CHECK(dust::total(bag.content.load).is_zero());
    CHECK(dust::total(bag.skin.load).is_zero());
    CHECK(trial.site.store.load.free[SizeClass::chips].dust > picograms(10.0_g));
    CHECK_FALSE(worker(trial.site, {"lee"}).is_inside);
    CHECK(trial.play(R"(do = "store-waste")").outcome == "done");
}

}
