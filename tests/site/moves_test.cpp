#include "trial.hpp"

#include "dust/bag.hpp"
#include "mechanics/flap_leak.hpp"
#include "site/bag_moves.hpp"
#include "site/cleaning.hpp"
#include "site/flap_moves.hpp"

namespace flapdoor::site {

namespace {

bool blames(const std::vector<MoveFault>& faults, const std::string& what)
{
    return std::any_of(faults.begin(), faults.end(), [&](const MoveFault& f) { return f.what.find(what) != std::string::npos; });
}

BagHandled bag_after(std::vector<BagMove> moves, double fill = 0.5, Length twist = 9.0_in) { return handled(BagInHand{fill, twist, std::move(moves)}, true); }

FlapHandled flap_after(std::vector<FlapMove> moves, Length gap = 3.0_in) { return handled(FlapInHand{gap, 0.15_m, std::move(moves)}, true); }

mechanics::FlapDoor door_of(const FlapHandled& made)
{
    job::Opening doorway;
    doorway.width = 0.91_m;
    doorway.height = 2.03_m;
    return hung_door(flap_of(made.card), doorway);
}

}

TEST_CASE("the bag moves as taught make a gooseneck that leaks none, with nothing to blame", "[bags]")
{
    const BagHandled bag = bag_after(taught_bag_moves());
    CHECK(bag.faults.empty());
    CHECK(bag.closing.neck == dust::Neck::gooseneck);
    CHECK(dust::let_out_per_move(bag.closing.neck) == 0.0);
    CHECK(bag.is_vacuumed_after);
    CHECK(bag.card.press == job::Press::gently);
}

TEST_CASE("each wrong or missing bag move shows in the card and is blamed", "[bags]")
{
    using enum BagMove;
    SECTION("pressed after the twist: all the cloud comes out and the twist comes undone")
    {
        const BagHandled bag = bag_after({twist, press_gently, fold, tape, loop, vacuum_outside});
        CHECK(bag.closing.pressed_out == 1.0);
        CHECK(bag.card.twist == Length{});
        CHECK(bag.closing.neck == dust::Neck::taped);
        CHECK(blames(bag.faults, "after the neck was twisted"));
    }
    SECTION("folded before the twist")
    {
        const BagHandled bag = bag_after({press_gently, fold, twist, tape, loop, vacuum_outside});
        CHECK_FALSE(bag.card.is_folded);
        CHECK(bag.closing.neck == dust::Neck::taped);
        CHECK(blames(bag.faults, "folded before"));
    }
    SECTION("vacuumed before it was shut")
    {
        const BagHandled bag = bag_after({press_gently, vacuum_outside, twist, fold, tape, loop});
        CHECK(bag.is_vacuumed_before);
        CHECK_FALSE(bag.is_vacuumed_after);
        CHECK(blames(bag.faults, "before the bag was closed"));
    }
    SECTION("only taped, knotted, left open")
    {
        CHECK(bag_after({press_gently, tape, vacuum_outside}).closing.neck == dust::Neck::taped);
        CHECK(bag_after({press_gently, knot, vacuum_outside}).closing.neck == dust::Neck::open);
        const BagHandled open = bag_after({});
        CHECK(open.closing.neck == dust::Neck::open);
        CHECK(open.faults.size() == 3); // air, shut, outside
    }
    SECTION("too full, twisted too short")
    {
        CHECK(bag_after(taught_bag_moves(), 0.8).closing.neck == dust::Neck::taped);
        CHECK(bag_after(taught_bag_moves(), 0.8).closing.burst > bag_after(taught_bag_moves()).closing.burst);
        CHECK(bag_after(taught_bag_moves(), 0.5, 6.0_in).closing.neck == dust::Neck::taped);
    }
    SECTION("air drawn off by a vacuum puffs nothing")
    {
        const BagHandled bag = bag_after({draw_air, twist, fold, tape, loop, vacuum_outside});
        CHECK(bag.faults.empty());
        CHECK(bag.closing.pressed_out == 0.0);
        CHECK(bag.closing.drawn_off == 1.0);
    }
}

TEST_CASE("what was left out is blamed only when the bag is done", "[bags]")
{
    const BagInHand begun{0.5, 9.0_in, {BagMove::press_gently}};
    CHECK(handled(begun, false).faults.empty());
    CHECK_FALSE(handled(begun, true).faults.empty());
}

TEST_CASE("moves that nothing can come of are refused with a reason", "[bags]")
{
    using enum BagMove;
    CHECK(why_not(BagInHand{}, loop).has_value());
    CHECK(why_not(BagInHand{0.5, 9.0_in, {tape}}, twist).has_value());
    CHECK(why_not(BagInHand{0.5, 9.0_in, {twist}}, draw_air).has_value());
    CHECK(why_not(BagInHand{0.5, 9.0_in, {press_hard}}, press_gently).has_value());
    CHECK_FALSE(why_not(BagInHand{0.5, 9.0_in, {twist}}, press_gently).has_value()); // wrong, and it shows
    CHECK(why_not(FlapInHand{}, FlapMove::put_in_dowel).has_value());
    CHECK_FALSE(why_not(FlapInHand{}, FlapMove::cut_slit).has_value());
}

TEST_CASE("the flap moves as taught hang the careful door", "[flap]")
{
    const FlapHandled made = flap_after(taught_flap_moves());
    CHECK(made.faults.empty());
    CHECK(door_of(made) == mechanics::FlapDoor{.hem_height = 3.0_in});
}

TEST_CASE("each wrong or missing flap move shows in the door and in what the section says of it", "[flap]")
{
    using enum FlapMove;
    using mechanics::Heading;
    mechanics::FlapBook book;
    const auto open_for = [&](const FlapHandled& made) { return book.swing(door_of(made), Heading::into_room).open_for; };
    const auto leak = [&](const FlapHandled& made) { return mechanics::leak_area(door_of(made), book.leans(door_of(made)), 1.0_Pa); };
    const FlapHandled taught = flap_after(taught_flap_moves());
    SECTION("slack folded in too late: the tape tears")
    {
        const FlapHandled made = flap_after({tape_first, fold_slack, cut_slit, hang_second, put_in_dowel});
        CHECK_FALSE(made.card.has_folds);
        CHECK(book.swing(door_of(made), Heading::into_room).has_torn_loose);
        CHECK(blames(made.faults, "after the sheet was taped"));
    }
    SECTION("cut after the second sheet: through both, and it leaks")
    {
        const FlapHandled made = flap_after({fold_slack, tape_first, hang_second, cut_slit, put_in_dowel});
        CHECK(made.card.is_slit_through);
        CHECK(leak(made) > leak(taught));
        CHECK(blames(made.faults, "after the second sheet"));
    }
    SECTION("cut loose: the slit runs to the floor")
    {
        const FlapHandled made = flap_after({fold_slack, cut_slit, tape_first, hang_second, put_in_dowel});
        CHECK(made.card.slit_foot == Length{});
        CHECK(made.card.slit_length > taught.card.slit_length);
        CHECK(blames(made.faults, "before the sheet was taped"));
    }
    SECTION("no dowel, one sheet, not taped, too short: it stands open for longer")
    {
        CHECK(open_for(flap_after({fold_slack, tape_first, cut_slit, hang_second})) != open_for(taught));
        CHECK(open_for(flap_after({fold_slack, tape_first, cut_slit})) > open_for(taught));
        CHECK(open_for(flap_after({fold_slack, cut_slit, hang_second, put_in_dowel})) > open_for(taught) * 3.0);
        CHECK(leak(flap_after(taught_flap_moves(), 24.0_in)) > leak(taught));
    }
    SECTION("no slit: nobody passes")
    {
        const FlapHandled made = flap_after({fold_slack, tape_first, hang_second, put_in_dowel});
        CHECK_FALSE(made.can_pass);
        CHECK(blames(made.faults, "no slit"));
    }
}

TEST_CASE("a slit cut through both sheets makes another door of it, an unusual one another hash", "[flap]")
{
    const auto hung = [](const std::string& more) {
        Trial trial;
        trial.play("do = \"hang-flap\", opening = \"door\", sheeting = \"poly\"" + more);
        return fingerprint(trial.site);
    };
    CHECK(hung("") == hung(", slit-foot = \"0.15 m\""));
    CHECK(hung("") != hung(", is-slit-through = true"));
    CHECK(hung("") != hung(", slit-foot = \"1 in\""));
}

TEST_CASE("a neck that is taped without a gooseneck lets out a tenth of an open one", "[bags]")
{
    CHECK(dust::let_out_per_move(dust::Neck::taped) == Approx(0.1 * dust::let_out_per_move(dust::Neck::open)));
    CHECK(dust::swapped_per_move(dust::Neck::open) == dust::untied_swap);
}

TEST_CASE("air drawn out of a bag goes into the vacuum, not into the room; without one the card is refused", "[bags]")
{
    const auto closed = [](const std::string& how) {
        Trial trial;
        const std::size_t floor = surface_named(trial.site, "Back bedroom, floor");
        trial.then(R"(do = "bag-debris", bag = "bag-1", kind = "heavy-bags", fill = 0.5)");
        Bag& bag = *find_bag(trial.site, {"bag-1"});
        strew(trial.site, floor, 1, dust::SizeClass::um_2_5, 1.0_g);
        trial.site.ledger.move(trial.site.surfaces[floor].free(1, dust::SizeClass::um_2_5), bag.content.free(dust::SizeClass::um_2_5), dust::SizeClass::um_2_5,
                               {picograms(1.0_g), {}});
        const Picograms in_vacuum = trial.site.vacuum.load.free[dust::SizeClass::um_2_5].dust;
        const Picograms in_bag = bag.content.load.free[dust::SizeClass::um_2_5].dust;
        const Played played = trial.play(R"(do = "close-bag", bag = "bag-1", press = "by-vacuum")" + how);
        if (played.outcome != "done") return std::pair(Picograms{}, Picograms{});
        return std::pair(in_bag - bag.content.load.free[dust::SizeClass::um_2_5].dust, trial.site.vacuum.load.free[dust::SizeClass::um_2_5].dust - in_vacuum);
    };
    const auto [left, drawn] = closed(R"(, vacuum = "hepa-vacuum")");
    CHECK(left > Picograms{});
    CHECK(static_cast<double>(drawn.count) > 0.99 * static_cast<double>(left.count));
    CHECK(closed("").first == Picograms{});
}

TEST_CASE("only what lies along a drawn way is mopped", "[cleaning]")
{
    const auto mopped = [](const std::string& route) {
        Trial trial;
        const std::size_t floor = surface_named(trial.site, "Back bedroom, floor");
        const std::size_t near = trial.site.room().raster.cell_at({5.0_ft, 6.0_ft});
        const std::size_t far = trial.site.room().raster.cell_at({5.0_ft, 2.0_ft});
        for (const std::size_t cell : {near, far}) strew(trial.site, floor, cell, dust::SizeClass::um_20, 0.01_g);
        const Played played = trial.play("do = \"mop-floor\", mop = \"two-buckets\"" + route);
        return std::tuple(played.outcome, trial.site.surfaces[floor].is_cleaned[near] != 0, trial.site.surfaces[floor].is_cleaned[far] != 0);
    };
    const auto whole = mopped("");
    INFO(std::get<0>(whole));
    CHECK(std::get<1>(whole));
    CHECK(std::get<2>(whole));
    const auto along = mopped(R"(, route = [{ east = "4 ft", north = "6 ft" }, { east = "6 ft", north = "6 ft" }])");
    CHECK(std::get<0>(along) == "done");
    CHECK(std::get<1>(along));
    CHECK_FALSE(std::get<2>(along));
}

}
