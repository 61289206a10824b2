#include "rules/marking_sheet.hpp"

#include "core/philox.hpp"
#include "rules/run_task.hpp"
#include "small_job.hpp"

#include <catch2/catch.hpp>

using namespace flapdoor;
using namespace flapdoor::rules;

namespace {

RuleBook book_of(const std::string& rules)
{
    const auto book = read_rule_book("format = 1\nid = \"b\"\ntitle = \"Test book\"\nedition = \"2026\"\n" + rules, "b.toml");
    if (!book)
        for (const Problem& problem : book.error()) UNSCOPED_INFO(describe(problem));
    REQUIRE(book);
    return *book;
}

std::string rule(const std::string& id, int weight, const std::string& when, const std::string& more = "")
{
    return "[[rule]]\nid = \"" + id + "\"\nsays = \"" + id + "\"\nreason = \"why\"\ncite = \"c\"\nclass = \"must\"\nweight = " + std::to_string(weight) + "\n" + more +
           "\nwhen = { " + when + " }\n";
}

MarkingSheet marked(const RuleBook& book, const SmallJob& job) { return marking_sheet(book, small_scenario(), job.log()); }

}

TEST_CASE("a run is marked by the scheme of the worked example: one card that breaks four rules")
{
    const RuleBook book = book_of(rule("signs", 3, R"(before = ["post-signs", "first-dust"])") + rule("contents", 3, R"(before = ["cover-object", "first-dust"])") +
                                  rule("floor", 3, R"(before = ["lay-floor-sheet", "first-dust"])", "critical = true") +
                                  rule("vents", 3, R"(before = ["cover-register", "first-dust"])", "critical = true") +
                                  rule("rest", 14, R"(before = ["mist-sheeting", "fold-sheeting"])"));
    SmallJob job = good_job().without("pry");
    job.move_before("scrape", "signs");
    const MarkingSheet sheet = marked(book, job);
    CHECK(sheet.wanted == 26);
    CHECK(sheet.lost == Quarters{21});
    CHECK(sheet.score == Fraction{83, 104});
    CHECK(sheet.critical == std::vector<std::string>{"floor", "vents"});
    CHECK(sheet.fewest_moves == 1);
    const std::vector<std::string> lines = print_out(sheet);
    CHECK(lines[0] == "Wanted 26 points, lost 5.25 -> 20.75 of 26 = 79.8 %.");
    CHECK(lines[1] == "NOT PASSED: critical floor, vents.");
    CHECK(lines[2] == "Fewest cards to move: 1");
    CHECK(lines[3] == "  Card 4 (Work on the paint) must move: card 13 (Lay floor sheeting) belongs before it. -2.25");
}

TEST_CASE("a missing card is charged once, its other rules are consequences")
{
    const RuleBook book = book_of(rule("heavy", 5, R"(before = ["post-signs", "first-dust"])") + rule("light", 2, R"(before = ["post-signs", "lay-floor-sheet"])"));
    const MarkingSheet sheet = marked(book, good_job().without("signs"));
    CHECK(sheet.lost == whole_points(5));
    REQUIRE(sheet.consequences.size() == 1);
    CHECK(sheet.consequences.front().rule == "light");
    REQUIRE(sheet.moves.size() == 1);
    CHECK(sheet.moves.front().entry == -1);
    CHECK(sheet.moves.front().what.english() == "\"Post warning signs\" was not done before card 17 (Work on the paint).");
}

TEST_CASE("a rule whose root is broken is listed, not weighed, and still wanted")
{
    const RuleBook book = book_of(rule("root", 3, R"(before = ["post-signs", "first-dust"])") +
                                  rule("follower", 3, R"(while = { state = "signs-up", from = "first-dust", to = "passed" })", "follows-from = [\"root\"]"));
    const MarkingSheet late = marked(book, good_job().move_after("signs", "scrape"));
    CHECK(late.wanted == 6);
    CHECK(late.lost == whole_points(3));
    REQUIRE(late.consequences.size() == 1);
    CHECK(late.consequences.front().roots == std::vector<std::string>{"root"});
    const MarkingSheet early = marked(book, good_job().move_before("signs-down", "mist"));
    CHECK(early.lost == whole_points(3));
    CHECK(early.consequences.empty());
}

TEST_CASE("a critical rule fails the run even as a consequence")
{
    const RuleBook book = book_of(rule("root", 3, R"(only_by = { cards = "inspect", role = "certified-renovator" })") +
                                  rule("verified", 3, R"(not_before = ["end", { state = "passed" }])", "critical = true\nfollows-from = [\"root\"]"));
    SmallJob job = good_job();
    job.at("inspect").by = {"ben"};
    job.at("wipe-floor").states.clear();
    const MarkingSheet sheet = marked(book, job);
    CHECK(sheet.lost == whole_points(3));
    CHECK_FALSE(sheet.is_passed);
    CHECK(sheet.critical == std::vector<std::string>{"verified"});
}

TEST_CASE("the print-out says from what a critical consequence follows")
{
    const RuleBook book = book_of(rule("root", 3, R"(only_by = { cards = "inspect", role = "certified-renovator" })") +
                                  rule("verified", 3, R"(not_before = ["end", { state = "passed" }])", "critical = true\nfollows-from = [\"root\"]"));
    SmallJob job = good_job();
    job.at("inspect").by = {"ben"};
    job.at("wipe-floor").states.clear();
    CHECK(print_out(marked(book, job))[1] == "NOT PASSED: critical verified (follows from root).");
}

TEST_CASE("a book's cut fails a run that breaks nothing critical")
{
    const std::string rules = rule("order", 3, R"(before = ["mist-sheeting", "fold-sheeting"])") + rule("rest", 97, R"(never = "sweep-floor")");
    const auto sheet = [&](const std::string& cut) { return marked(book_of(cut + rules), good_job().without("mist")); };
    CHECK(sheet("").is_passed);
    CHECK_FALSE(sheet("").cut);
    CHECK(sheet("[passing]\nscore = 97\nmost-lost = 3\n").is_passed);
    const MarkingSheet by_score = sheet("[passing]\nscore = 98\n");
    CHECK_FALSE(by_score.is_passed);
    CHECK(by_score.critical.empty());
    CHECK(why_not_passed(by_score) == std::vector{text::sentence("{} left, at least {} %", "97.0 %", 98)});
    CHECK(why_not_passed(sheet("[passing]\nmost-lost = 2\n")) == std::vector{text::sentence("{} points lost, at most {}", "3", 2)});
    CHECK(marked(book_of("[passing]\nscore = 100\nmost-lost = 0\n" + rules), good_job()).is_passed);
}

TEST_CASE("a legal order near the run's own names what moves and what is put in, and leaves the rest")
{
    const RuleBook book = book_of(rule("signs", 3, R"(before = ["post-signs", "first-dust"])") + rule("mist", 3, R"(before = ["mist-sheeting", "fold-sheeting"])"));
    const SmallJob job = good_job().move_after("signs", "scrape").without("mist");
    const MarkingSheet sheet = marked(book, job);
    CHECK(sheet.fewest_moves == 2);
    const std::vector<job::LogEntry> entries = job.log().entries;
    std::vector<std::string> told;
    for (const SheetStretch& stretch : legal_stretches(sheet)) {
        if (stretch.first < 0) told.push_back("put in " + stretch.missing.english());
        else if (stretch.is_moved) told.push_back("moved " + entries[static_cast<std::size_t>(stretch.first)].label);
        else told.push_back(entries[static_cast<std::size_t>(stretch.first)].label + " to " + entries[static_cast<std::size_t>(stretch.last)].label);
    }
    CHECK(told == std::vector<std::string>{"pamphlet to check", "moved signs", "scrape to scrape", "leave to walls", "put in Mist the sheeting", "fold to back"});
    CHECK(marked(book, good_job()).legal_order.empty());
}

TEST_CASE("rules without an order are lost in full, as lines")
{
    const RuleBook book = book_of(rule("order", 3, R"(before = ["mist-sheeting", "fold-sheeting"])") + rule("line", 3, R"(never = { step = "vacuum-walls", with = { order = "bottom-up" } })"));
    SmallJob job = good_job();
    job.step<job::VacuumWalls>("walls").order = job::WallOrder::bottom_up;
    const MarkingSheet sheet = marked(book, job);
    CHECK(sheet.lost == whole_points(3));
    CHECK(sheet.fewest_moves == 0);
    REQUIRE(sheet.lines.size() == 1);
    CHECK(sheet.lines.front().lost == whole_points(3));
    CHECK(sheet.kept.size() == 1);
}

TEST_CASE("cards that overlap break an order as a line: no move would mend it")
{
    const RuleBook book = book_of(rule("order", 3, R"(before = ["mist-sheeting", "fold-sheeting"])"));
    SmallJob job;
    Act mist{"mist", job::MistSheeting{{"mister"}}};
    mist.starts_at = 600.0;
    Act fold{"fold", job::FoldSheeting{}};
    fold.starts_at = 602.0;
    job.add(mist).add(fold);
    const MarkingSheet sheet = marked(book, job);
    CHECK(sheet.lost == whole_points(3));
    CHECK(sheet.fewest_moves == 0);
    CHECK(sheet.lines.size() == 1);
}

TEST_CASE("rules that are not in force are not wanted")
{
    const RuleBook book = book_of(rule("carpet", 3, R"(before = ["vacuum-carpet", "inspect"])", "applies = { facts = [\"has-carpet\"] }") + rule("sweep", 1, R"(never = "sweep-floor")"));
    const MarkingSheet sheet = marked(book, good_job());
    CHECK(sheet.wanted == 1);
    CHECK(sheet.not_applicable.size() == 1);
    CHECK(sheet.score == Fraction{1, 1});
}

TEST_CASE("rules at odds over single cards are still marked")
{
    // Each vacuuming needs an earlier wipe of the walls, the wipe an earlier vacuuming: kinds agree, single cards may not.
    const RuleBook book = book_of(rule("a", 3, R"(before = ["vacuum-walls", { step = "wipe-walls", which = "last" }])") + rule("b", 2, R"(before = ["wipe-walls", "vacuum-surfaces"])") +
                                  rule("c", 1, R"(before = ["vacuum-surfaces", { step = "vacuum-walls", which = "last" }])"));
    SmallJob job;
    job.add({"v", job::VacuumSurfaces{}}).add({"w", job::WipeWalls{}}).add({"u", job::VacuumWalls{}});
    const MarkingSheet sheet = marked(book, job);
    CHECK(sheet.wanted == 6);
    CHECK(sheet.lost >= whole_points(5));
    CHECK(sheet.lost <= whole_points(6));
}

TEST_CASE("a log far longer than a plan is marked without its order, not refused")
{
    const RuleBook book = book_of(rule("order", 3, R"(before = ["mist-sheeting", "fold-sheeting"])"));
    SmallJob job;
    for (int i = 0; i < 2 * most_cards; ++i) job.add({"fold " + std::to_string(i), job::FoldSheeting{}});
    job.add({"mist", job::MistSheeting{{"mister"}}});
    const MarkingSheet sheet = marked(book, job);
    CHECK(sheet.lost == whole_points(3));
}

TEST_CASE("however cards are mixed and left out, losses stay within what was wanted and add up", "[property]")
{
    const RuleBook book = load_rule_book(FLAPDOOR_SOURCE_DIR "/scenarios/rules/federal.toml").value();
    std::vector<std::string> labels;
    for (const job::LogEntry& entry : good_job().log().entries) labels.push_back(entry.label);
    const Luck luck{21, Stream::parameter};
    const auto pick = [&](int round, int draw) { return labels[static_cast<std::size_t>(luck.uniform(static_cast<std::uint64_t>(round), static_cast<std::uint32_t>(draw)) * static_cast<double>(labels.size()))]; };
    for (int round = 0; round < 300; ++round) {
        SmallJob job = good_job();
        for (int change = 0; change < round % 40; ++change) {
            const std::string a = pick(round, 2 * change);
            const std::string b = pick(round, 2 * change + 1);
            if (a != b) job.move_before(a, b);
        }
        const std::string gone = pick(round, 100);
        if (round % 2 == 0) job.without(gone);
        const MarkingSheet sheet = marked(book, job);
        CAPTURE(round);
        Quarters sum;
        for (const SheetMove& move : sheet.moves) sum = sum + move.lost;
        for (const SheetRule& rule : sheet.broken) sum = sum + rule.lost;
        for (const SheetRule& rule : sheet.lines) sum = sum + rule.lost;
        REQUIRE(sum == sheet.lost);
        REQUIRE(sheet.lost <= whole_points(sheet.wanted));
        REQUIRE(sheet.broken.size() + sheet.lines.size() + sheet.consequences.size() + sheet.advice.size() + sheet.kept.size() + sheet.not_applicable.size() == book.rules.size());
        REQUIRE((sheet.lost == Quarters{}) == (sheet.broken.empty() && sheet.lines.empty()));
    }
}

TEST_CASE("marking twice gives the same sheet")
{
    const RuleBook book = load_rule_book(FLAPDOOR_SOURCE_DIR "/scenarios/rules/federal.toml").value();
    const SmallJob job = good_job().without("mist").move_after("walls", "mop").without("store").without("inspect");
    CHECK(print_out(marked(book, job)) == print_out(marked(book, job)));
}
