// Parameters of a card set on the plan itself.
#include "look.hpp"
#include "played_run.hpp"

#include "window/hands_on/plan_tools.hpp"
#include "window/run/plan_part.hpp"
#include "window/run/site_plan.hpp"

#include "site/cleaning.hpp"
#include "site/place.hpp"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace flapdoor;
using namespace flapdoor::window;

namespace {

/// The plan of the shipped bedroom with the tools of one card.
struct Table {
    job::Scenario scenario = inputs_of_the_house("good.toml").scenario;
    job::Step step;
    PlanTools tools;
    PlanEdit last;
    int changes = 0;
    Rehearsal stage;

    explicit Table(job::Step card, float scale = 1.0F) : step(std::move(card)), stage([this](Ui& ui) { play(ui); }, scale)
    {
        stage.input.size = {1000.0F, 760.0F};
        for (int i = 0; i < 3; ++i) stage.frame();
    }
    PaperView view(const Ui& ui) const { return PaperView::fit(near_part(scenario), ui.screen(), 10.0F); }
    void play(Ui& ui)
    {
        Board board{ui.canvas(), view(ui), ui};
        draw_empty_site(board, scenario, ui.screen());
        last = tools.play(ui, ui.screen(), view(ui), {scenario}, step);
        if (last.has_changed) ++changes;
    }
    void drag(Point from, Point to)
    {
        stage.point_at(from);
        stage.hold();
        for (int i = 1; i <= 12; ++i) stage.point_at(from + (to - from) * (static_cast<float>(i) / 12.0F));
        stage.let_go();
    }
    bool press_on(const std::string& name, Key key)
    {
        stage.ui->focus_on(name);
        stage.frame();
        stage.input.pressed = {{key, {}}};
        stage.frame();
        return last.is_taken;
    }
    template <class Step> Step& card() { return std::get<Step>(step); }
};

job::LayFloorSheet sheet_of(Length reach)
{
    job::LayFloorSheet sheet;
    sheet.sheeting = {"poly"};
    sheet.reach = reach;
    return sheet;
}

}

TEST_CASE("the sheeting's edge is dragged on the plan in half feet")
{
    Table table(sheet_of(6.0_ft));
    const Spot* grip = table.stage.ui->find("plan/reach/casing-1");
    REQUIRE(grip != nullptr);
    CHECK(grip->value.find("6 ft") != std::string::npos);
    const PaperView view = table.view(*table.stage.ui);
    const Point from = grip->box.center();
    const job::Component* part = find_by_id(table.scenario.components, job::ComponentId{"casing-1"});
    const PaperPoint wall = paper(site::footprint(table.scenario, *part)).center();
    const Point to = from + (view.at(wall) - from) * 0.5F; // half as far
    table.drag(from, to);
    CHECK(table.card<job::LayFloorSheet>().reach.si == Approx((3.0_ft).si).margin(0.16));
    const double half_feet = table.card<job::LayFloorSheet>().reach.si / (0.5_ft).si;
    CHECK(std::abs(half_feet - std::round(half_feet)) < 1e-6);
    CHECK(table.changes > 0);
}

TEST_CASE("arrow keys move the sheeting's edge by half a foot and Enter takes it")
{
    Table table(sheet_of(5.0_ft));
    const std::vector<std::string> stops = table.stage.ui->tab_order();
    REQUIRE(std::count_if(stops.begin(), stops.end(), [](const std::string& s) { return s.rfind("plan/reach/", 0) == 0; }) >= 1);
    const std::string grip = *std::find_if(stops.begin(), stops.end(), [](const std::string& s) { return s.rfind("plan/reach/", 0) == 0; });
    // Into the room is one of the four arrows; the opposite one brings it back.
    const auto reach_after = [&](Key key) {
        table.card<job::LayFloorSheet>().reach = 5.0_ft;
        table.press_on(grip, key);
        return table.card<job::LayFloorSheet>().reach.si / (1.0_ft).si;
    };
    std::vector<double> reached;
    for (const Key key : {Key::up, Key::down, Key::left, Key::right}) reached.push_back(reach_after(key));
    CHECK(*std::max_element(reached.begin(), reached.end()) == Approx(5.5));
    CHECK(*std::min_element(reached.begin(), reached.end()) == Approx(4.5));
    CHECK(table.press_on(grip, Key::enter));
}

TEST_CASE("the opening that a card is about is clicked on the plan, and only such as the card can mean")
{
    job::CoverRegister cover;
    cover.opening = {"supply"};
    cover.sheeting = {"poly"};
    Table table(cover);
    CHECK(table.stage.ui->find("plan/opening/0/window-1") == nullptr);
    CHECK(table.stage.ui->find("plan/opening/0/supply")->is_on);
    table.stage.click("plan/opening/0/return");
    CHECK(table.card<job::CoverRegister>().opening.name == "return");
    table.stage.frame();
    CHECK(table.stage.ui->find("plan/opening/0/return")->is_on);
    CHECK(table.press_on("plan/opening/0/return", Key::enter)); // named already: taken
    CHECK_FALSE(table.press_on("plan/opening/0/supply", Key::enter));
    CHECK(table.card<job::CoverRegister>().opening.name == "supply");
}

TEST_CASE("things, parts and sills are clicked alike")
{
    job::CoverObject cover;
    cover.object = {"radiator"};
    Table objects(cover);
    objects.stage.click("plan/object/0/dresser");
    CHECK(objects.card<job::CoverObject>().object.name == "dresser");
    job::WipeSill wipe;
    wipe.sill = {"sill-1"};
    Table sills(wipe);
    sills.stage.click("plan/sill/0/sill-2");
    CHECK(sills.card<job::WipeSill>().sill.name == "sill-2");
}

TEST_CASE("the cleaning way is drawn with the mouse, taken as strips, or set point by point with the keys")
{
    job::MopFloor mop;
    mop.mop = {"two-buckets"};
    Table table(mop);
    REQUIRE(table.stage.ui->find("plan/route") != nullptr);
    const Box floor = table.stage.ui->find("plan/route")->box;
    table.drag(floor.low + Point{60.0F, 60.0F}, floor.low + Point{260.0F, 60.0F});
    CHECK(table.card<job::MopFloor>().route.size() > 3);

    table.stage.click("plan/route/suggest");
    const job::Route strips = table.card<job::MopFloor>().route;
    CHECK(strips == suggested_route({table.scenario}));
    CHECK(strips.size() > 6);
    table.stage.frame();
    const std::string covered = table.stage.ui->find("plan/route")->value;
    CHECK(std::stoi(covered) >= 90);

    table.stage.click("plan/route/clear");
    CHECK(table.card<job::MopFloor>().route.empty());
    table.press_on("plan/route", Key::space);
    table.press_on("plan/route", Key::right);
    table.press_on("plan/route", Key::space);
    CHECK(table.card<job::MopFloor>().route.size() == 2);
    CHECK((table.card<job::MopFloor>().route[1].east - table.card<job::MopFloor>().route[0].east).si == Approx((0.5_ft).si));
    table.press_on("plan/route", Key::backspace);
    CHECK(table.card<job::MopFloor>().route.size() == 1);
    CHECK(table.press_on("plan/route", Key::enter));
}

TEST_CASE("the bag is filled on its drawing")
{
    job::BagDebris bag;
    bag.bag = {"bag-1"};
    bag.kind = {"heavy-bags"};
    Table table(bag);
    const double before = table.card<job::BagDebris>().fill;
    table.press_on("plan/fill", Key::up);
    CHECK(table.card<job::BagDebris>().fill == Approx(before + 0.05));
    const Point grip = table.stage.ui->find("plan/fill")->box.center();
    table.drag(grip, grip + Point{0.0F, 40.0F});
    CHECK(table.card<job::BagDebris>().fill < before);
}

TEST_CASE("cards without anything to set on the plan have no tools")
{
    CHECK_FALSE(PlanTools::has_tools(job::SwitchHvacOff{}));
    CHECK(PlanTools::help_for(job::SwitchHvacOff{}).empty());
    CHECK(PlanTools::has_tools(job::LayFloorSheet{}));
    job::VacuumSurfaces sills;
    sills.target = job::Target::sills;
    CHECK_FALSE(PlanTools::has_tools(sills));
}

TEST_CASE("the tools look as they did")
{
    Table sheet(sheet_of(5.0_ft));
    compare(sheet.stage.ui->picture_of_frame(), "plan-sheet");
    job::MopFloor mop;
    mop.mop = {"two-buckets"};
    mop.route = suggested_route({sheet.scenario});
    Table way(mop);
    compare(way.stage.ui->picture_of_frame(), "plan-way");
    job::CoverRegister cover;
    cover.opening = {"supply"};
    Table opening(cover);
    compare(opening.stage.ui->picture_of_frame(), "plan-register");
}
