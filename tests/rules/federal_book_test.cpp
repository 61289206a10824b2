#include "rules/lint.hpp"
#include "rules/marking_sheet.hpp"
#include "text/field_types.hpp"
#include "text/writing.hpp"
#include "small_job.hpp"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace flapdoor;
using namespace flapdoor::rules;

namespace {

RuleBook federal_book()
{
    auto book = load_rule_book(FLAPDOOR_SOURCE_DIR "/scenarios/rules/federal.toml");
    if (!book)
        for (const Problem& problem : book.error()) UNSCOPED_INFO(describe(problem));
    REQUIRE(book);
    return *book;
}

MarkingSheet marked(const SmallJob& job)
{
    static const RuleBook book = federal_book();
    return marking_sheet(book, small_scenario(), job.log());
}

/// Ids of all rules weighed against the job.
std::string lost_rules(const MarkingSheet& sheet)
{
    std::vector<std::string> ids;
    for (const SheetRule& rule : sheet.broken) ids.push_back(rule.rule);
    for (const SheetRule& rule : sheet.lines) ids.push_back(rule.rule);
    std::sort(ids.begin(), ids.end());
    std::string all;
    for (const std::string& id : ids) all += (all.empty() ? "" : " ") + id;
    return all;
}

}

TEST_CASE("the federal book has its rules, each with a reason and every must-rule with a citation")
{
    const RuleBook book = federal_book();
    CHECK(book.rules.size() >= 100);
    for (const Rule& rule : book.rules) {
        CAPTURE(rule.id.text);
        CHECK_FALSE(rule.reason.empty());
        if (rule.weight_class == RuleClass::must) {
            CHECK(rule.weight == 3);
            CHECK((rule.cite.starts_with("40 CFR 745.") || rule.cite.starts_with("29 CFR 1926.62")));
        }
        else CHECK(rule.weight <= 1);
        if (rule.weight_class == RuleClass::practice) CHECK(rule.cite == "common practice, no source");
        if (rule.is_critical) CHECK(rule.weight_class == RuleClass::must);
    }
}

TEST_CASE("every kind of condition has a rule in the federal book")
{
    const RuleBook book = federal_book();
    for (const std::string_view kind : text::NamesOf<AnyCondition>::names) {
        CAPTURE(kind);
        CHECK(std::any_of(book.rules.begin(), book.rules.end(), [&](const Rule& rule) { return kind_name(rule.when) == kind; }));
    }
}

TEST_CASE("the federal book reads back equal from what is written of it")
{
    const RuleBook book = federal_book();
    const std::string once = text::write_toml(book);
    const auto again = read_rule_book(once, "again.toml");
    if (!again)
        for (const Problem& problem : again.error()) UNSCOPED_INFO(describe(problem));
    REQUIRE(again);
    CHECK(text::write_toml(*again) == once);
    CHECK(again->rules.size() == book.rules.size());
    CHECK(marking_sheet(*again, small_scenario(), good_job().without("mist").log()).lost == marked(good_job().without("mist")).lost);
}

TEST_CASE("the good job loses nothing, and its marks do not depend on the day")
{
    const MarkingSheet sheet = marked(good_job());
    CHECK(lost_rules(sheet) == "");
    CHECK(sheet.consequences.empty());
    CHECK(sheet.advice.empty());
    CHECK(sheet.score == Fraction{1, 1});
    CHECK(sheet.is_passed);
    CHECK(sheet.wanted > 200);
    SmallJob later = good_job();
    later.at("pamphlet").starts_at = 11.0 * 60.0;
    CHECK(marked(later).score == Fraction{1, 1});
    CHECK(marked(later).wanted == sheet.wanted);
}

TEST_CASE("orders that the text leaves free cost nothing")
{
    const auto is_free = [](const SmallJob& job) { return marked(job).score == Fraction{1, 1}; };
    CHECK(is_free(good_job().move_after("signs", "check")));
    CHECK(is_free(good_job().move_before("sheet", "hvac")));
    CHECK(is_free(good_job().move_before("window", "signs")));
    CHECK(is_free(good_job().move_after("hvac", "window")));
    CHECK(is_free(good_job().move_after("close-closet", "flap").move_after("cover-closet", "close-closet")));
    CHECK(is_free(good_job().move_after("wipe-sill", "wipe-shelf")));
    CHECK(is_free(good_job().move_before("beyond", "vacuum")));
}

TEST_CASE("a slip of one card costs the rule that is meant and no other")
{
    struct Slip {
        std::string_view what;
        SmallJob job;
        std::string_view rule;
        std::string_view points;
        bool is_passed = true;
    };
    const auto without = [](std::string_view label) { return good_job().without(label); };
    const std::vector<Slip> slips{
        {"no pamphlet", without("pamphlet"), "pamphlet-before-dust", "3"},
        {"paint not declared", without("declare"), "paint-declared", "3"},
        {"worker not trained", without("train"), "workers-trained-first", "3"},
        {"worker trained too late", good_job().move_after("train", "check"), "workers-trained-first", "3"},
        {"table left bare", without("table"), "objects-safe-before-dust", "3"},
        {"table covered over the sheeting", good_job().move_after("table", "flap"), "objects-before-floor-sheet", "1"},
        {"blower left on", without("hvac"), "hvac-off-before-cover", "1"},
        {"blower off after the cover", good_job().move_after("hvac", "cover-return"), "hvac-off-before-cover", "1"},
        {"window left open", without("window"), "windows-closed-before-dust", "3"},
        {"register left open", without("close-return"), "registers-closed-before-dust", "3"},
        {"register not covered", without("cover-return"), "registers-covered-before-dust", "3"},
        {"register forgotten", without("close-return").without("cover-return"), "registers-not-left-open", "3", false},
        {"closet left open", without("close-closet"), "unused-doors-closed", "3"},
        {"closet not covered", without("cover-closet"), "unused-doors-covered", "3"},
        {"tools staged after the flap", good_job().move_after("stage", "flap"), "stage-before-flap", "1"},
        {"no tack pad", without("pad"), "tack-pad-before-dust", "1"},
        {"no gear", without("gear"), "gear-before-dust", "3"},
        {"containment not checked", without("check"), "containment-checked", "3"},
        {"no floor sheeting", without("sheet").without("fold").without("mist").without("bag-sheet").without("close-bag-2").without("vac-bag-2").without("out-2"),
         "floor-sheet-before-dust", "3", false},
        {"chips left", without("chips").without("close-bag-1").without("vac-bag-1").without("out-1").without("in-1"), "chips-picked-up", "3"},
        {"chips bagged after folding", good_job().move_after("vac-bag-1", "fold").move_after("close-bag-1", "fold").move_after("chips", "fold").move_after("out-1", "vac-bag-1"),
         "chips-before-fold", "1"},
        {"sheeting folded dry", without("mist"), "mist-before-fold", "3"},
        {"sheeting misted after folding", good_job().move_after("mist", "fold"), "mist-before-fold", "3"},
        {"sheeting not bagged", without("bag-sheet").without("close-bag-2").without("vac-bag-2").without("out-2"), "sheeting-bagged", "3"},
        {"walls forgotten", without("walls"), "walls-cleaned", "3"},
        {"walls after the sheeting", good_job().move_after("walls", "in-2"), "walls-before-sheet", "1"},
        {"walls last", good_job().move_after("walls", "mop"), "walls-before-the-rest", "3"},
        {"nothing vacuumed", without("vacuum"), "surfaces-vacuumed", "3"},
        {"nothing wiped", without("wipe"), "surfaces-wiped", "3"},
        {"not mopped", without("mop"), "floor-mopped", "3"},
        {"mopped before wiping", good_job().move_before("mop", "wipe"), "mop-last", "3"},
        {"wiped before vacuuming", good_job().move_before("wipe", "vacuum"), "vacuum-before-wipe", "1"},
        {"strip not cleaned", without("beyond"), "two-feet-beyond", "3"},
        {"tools not cleaned", without("tools"), "tools-cleaned", "3"},
        {"waste not stored", without("store"), "waste-stored-barred", "3", false},
        {"bag left inside", without("out-1"), "waste-leaves", "3"},
        {"no signs", without("signs").without("signs-down"), "signs-before-dust", "3"},
        {"signs left hanging", without("signs-down"), "signs-come-down", "3"},
        {"no record", without("record"), "record-written", "3"},
        {"no report", without("report"), "report-handed-over", "3"},
        {"report before the record", good_job().move_before("report", "record"), "record-before-report", "3"},
    };
    for (const Slip& slip : slips) {
        CAPTURE(slip.what);
        const MarkingSheet sheet = marked(slip.job);
        CHECK(lost_rules(sheet) == slip.rule);
        CHECK(points_text(sheet.lost) == slip.points);
        CHECK(sheet.is_passed == slip.is_passed);
    }
}

TEST_CASE("a slip of one parameter costs the rule that is meant and no other")
{
    const auto lost = [](auto change) {
        SmallJob job = good_job();
        change(job);
        return lost_rules(marked(job));
    };
    CHECK(lost([](SmallJob& j) { j.at("flap").states.pop_back(); }) == "flap-taped");
    CHECK(lost([](SmallJob& j) { j.step<job::HangFlap>("flap").has_dowel = false; }) == "flap-well-made");
    CHECK(lost([](SmallJob& j) { j.step<job::LayTackPad>("pad").side = job::PadSide::inside; }) == "tack-pad-outside");
    CHECK(lost([](SmallJob& j) { j.step<job::CloseBag>("close-bag-1").closure = job::Closure::tape; }) == "gooseneck");
    CHECK(lost([](SmallJob& j) { j.step<job::BagDebris>("chips").kind = {"kitchen-bags"}; }) == "heavy-duty-bags");
    CHECK(lost([](SmallJob& j) { j.step<job::VacuumWalls>("walls").order = job::WallOrder::bottom_up; }) == "walls-top-down");
    CHECK(lost([](SmallJob& j) { j.step<job::VacuumWalls>("walls").vacuum = {"shop-vac"}; }) == "vacuum-is-hepa");
    CHECK(lost([](SmallJob& j) { j.step<job::VacuumSurfaces>("vacuum").target = job::Target::floor; }) == "counters-vacuumed sills-vacuumed");
    CHECK(lost([](SmallJob& j) { j.at("mop").measured = {number("stepped-on-cleaned", "ben", 12.0)}; }) == "toward-the-door");
    CHECK(lost([](SmallJob& j) { j.step<job::StoreWaste>("store").is_secured = false; }) == "waste-stored-barred");
    CHECK(lost([](SmallJob& j) { j.step<job::Inspect>("inspect").light = job::LightUsed::as_it_is; }) == "inspection-light");
    CHECK(lost([](SmallJob& j) { j.step<job::WriteRecord>("record").has_cloth_counts = false; }) == "record-written");
    CHECK(lost([](SmallJob& j) { j.step<job::CleanTools>("tools").care = job::ToolCare::none; }) == "tools-cleaned");
}

TEST_CASE("dry scraping by hand is advice and costs nothing")
{
    SmallJob job = good_job();
    job.step<job::DisturbPaint>("scrape").is_misted = false;
    const MarkingSheet sheet = marked(job);
    CHECK(sheet.lost == Quarters{});
    REQUIRE(sheet.advice.size() == 1);
    CHECK(sheet.advice.front().rule == "paint-kept-damp");
}

TEST_CASE("two slips cost the sum of both")
{
    const MarkingSheet sheet = marked(good_job().without("mist").without("beyond").without("pad"));
    CHECK(lost_rules(sheet) == "mist-before-fold tack-pad-before-dust two-feet-beyond");
    CHECK(sheet.lost == whole_points(7));
    CHECK(sheet.fewest_moves == 3);
}

TEST_CASE("work first costs three quarters by the one card and a quarter by each rule")
{
    const MarkingSheet sheet = marked(good_job().move_before("scrape", "pamphlet"));
    CHECK_FALSE(sheet.is_passed);
    CHECK(sheet.fewest_moves == 1);
    const bool is_scraping = std::any_of(sheet.moves.begin(), sheet.moves.end(), [](const SheetMove& move) { return move.entry == 0 && move.points == 3; });
    CHECK(is_scraping);
}

TEST_CASE("most of the book is in force in the small job, and the sheet says what is not")
{
    const RuleBook book = federal_book();
    const auto idle = idle_rules(book, small_scenario());
    std::vector<std::string> ids;
    for (const Idle& one : idle) ids.push_back(one.rule + ": " + one.why);
    CHECK(ids == std::vector<std::string>{"emergency-cleaning-by-trained: emergency does not hold", "signs-in-occupants-language: reads-spanish does not hold",
                                          "carpet-vacuumed: has-carpet does not hold", "carpet-not-mopped: has-hard-floor holds", "emergency-recorded: emergency does not hold"});
    CHECK(idle.front().where.line > 0);
    CHECK(idle.front().where.file.ends_with("federal.toml"));
}
