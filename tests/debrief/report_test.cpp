#include "debrief/report.hpp"

#include "debrief/wording.hpp"
#include "small_job.hpp"

#include <set>

using namespace flapdoor;
using namespace flapdoor::debrief;

TEST_CASE("the charges of a report are exactly the points lost")
{
    const auto careless = small_job::make(small_job::careless);
    REQUIRE(careless.sheet.lost.count > 0);
    CHECK(sum(careless.report.marks) == careless.sheet.lost);
    for (const MarkLine& line : careless.report.marks) CHECK(line.lost.count > 0);

    const auto careful = small_job::make(R"({ do = "switch-hvac-off", by = ["ann"] },)" + small_job::careful);
    CHECK(careful.report.marks.empty());
    CHECK(careful.sheet.lost.count == 0);
}

TEST_CASE("a report refuses a sheet that does not add up")
{
    auto made = small_job::make(small_job::careless);
    made.sheet.lost = made.sheet.lost + rules::Quarters{1};
    CHECK_THROWS_AS(make_report(made.scenario, made.run, made.sheet, outcome(made.run), made.film), BrokenPromise);
}

TEST_CASE("faults are numbered through, and steps name the faults that speak of them")
{
    const auto made = small_job::make(small_job::careless);
    const Report& report = made.report;
    REQUIRE(report.faults.size() >= 4);
    std::multiset<std::pair<int, int>> from_faults, from_steps;
    for (std::size_t i = 0; i < report.faults.size(); ++i) {
        CHECK(report.faults[i].number == static_cast<int>(i) + 1);
        for (const int step : report.faults[i].steps) from_faults.insert({step, report.faults[i].number});
    }
    for (std::size_t i = 0; i < report.steps.size(); ++i)
        for (const int fault : report.steps[i].faults) from_steps.insert({static_cast<int>(i), fault});
    CHECK(from_faults == from_steps);
    CHECK_FALSE(from_faults.empty());
    REQUIRE(find_fault(report.faults, "train"));
    CHECK(find_fault(report.faults, "train")->kind == FaultKind::advice);
}

TEST_CASE("the result names each broken critical rule, and never clears or certifies")
{
    const std::string failed = result_line(small_job::make(small_job::careless).report);
    CHECK(failed.starts_with("NOT PASSED"));
    CHECK(failed.find("signs are up before the work <begins> (Test 1 & 2)") != std::string::npos);

    const std::string passed = result_line(small_job::make(small_job::careful).report);
    for (const std::string& line : {failed, passed})
        for (const char* word : {"certif", "clear"}) CHECK(line.find(word) == std::string::npos);
    CHECK(passed.find("NOT") == std::string::npos);
}

TEST_CASE("the first map shows the moment before the cleaning, the last one the end")
{
    const auto made = small_job::make(small_job::careful);
    REQUIRE(made.report.maps.size() == 2);
    const auto& entries = made.run.site.log.entries;
    CHECK(made.report.maps[0].frame.at <= entries[3].start);        // the vacuum
    CHECK(made.report.maps[0].frame.at >= entries[2].end - 30.0_s); // the scraping; a frame every half minute
    CHECK(made.report.maps[1].frame.at == made.run.site.now);

    const Report unfilmed = make_report(made.scenario, made.run, made.sheet, outcome(made.run), {});
    REQUIRE(unfilmed.maps.size() == 1);
    CHECK(unfilmed.maps[0].frame.lead == made.film.frames.back().lead);
}

TEST_CASE("cleaning begins with the first cleaning step after the last work on paint")
{
    const auto log_of = [](const std::string& cards) { return small_job::make(cards).run.site.log; };
    using namespace small_job;
    CHECK_FALSE(start_of_cleaning(log_of(signs + shut)));
    const job::RunLog uncleaned = log_of(scrape + signs);
    CHECK(start_of_cleaning(uncleaned) == uncleaned.entries[0].end);
    const job::RunLog twice = log_of(scrape + vacuum + scrape + signs + vacuum);
    CHECK(start_of_cleaning(twice) == twice.entries[4].start);
}

TEST_CASE("all loose lead dust is told by place once")
{
    const auto made = small_job::make(small_job::careless);
    double shares = 0.0;
    Picograms told;
    for (const PlaceLine& line : made.report.places) {
        CHECK(line.lead >= Picograms{});
        shares += line.share;
        told += line.lead;
    }
    CHECK(shares == Approx(1.0));
    // Nothing was bagged here, so what is loose is what the ledger has in and outside the work area, less the chips.
    Picograms booked;
    for (const dust::Account& account : made.run.site.ledger.accounts())
        if (account.side == dust::Side::inside || account.side == dust::Side::outside)
            for (const dust::SizeClass k : dust::all_classes())
                if (k != dust::SizeClass::chips) booked += account.from_work()[k].lead;
    CHECK(told == booked);
}

TEST_CASE("a report of the main job tells its files by name and hash, not by folder")
{
    const auto made = small_job::make(small_job::careless);
    const drill::InputText book = drill::input_text("book.toml", "text of a book");
    const Inputs inputs{made.scenario, made.run.plan, {}, drill::input_text("/home/ann/drills/scenario.toml", "a"), drill::input_text("plan.toml", "b"), book};
    const Report report = make_report(inputs, Job{made.run, made.sheet, outcome(made.run), made.film, {}});
    REQUIRE(report.inputs.size() == 3);
    CHECK(report.inputs[0].name == "scenario.toml");
    CHECK(report.inputs[2].what == "rule book");
    CHECK(report.inputs[2].hash == book.hash);
    CHECK(report.marks.size() == made.report.marks.size());
}

TEST_CASE("a single run's amounts are told with two digits")
{
    CHECK(show_roughly(Picograms{5'543'000'000'000}) == "5.5 g");
    CHECK(show_roughly(Picograms{857'421'000}) == "860 ug");
    CHECK(show_roughly(Picograms{}) == "0 ug");
    CHECK(as_sentence("card 4 (Wait).") == "Card 4 (Wait).");
    CHECK(as_sentence("\"Wait\"") == "\"Wait\"");
}
