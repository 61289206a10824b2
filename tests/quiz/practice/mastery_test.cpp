#include "quiz/practice/mastery.hpp"

#include "practices.hpp"
#include "quiz/statistics/beta.hpp"

#include <catch2/catch.hpp>

#include <map>
#include <utility>

namespace flapdoor::quiz {

namespace {

constexpr Topic topic = Topic::cleaning;

/// Answers on one day each, so that all count; `-` is wrong.
std::vector<Attempt> answers(const std::string& marks)
{
    std::vector<Attempt> all;
    for (std::size_t i = 0; i < marks.size(); ++i) all.push_back(answer(topic, static_cast<int>(i), marks[i] == '+', i));
    return all;
}

Standing standing(const std::string& marks) { return mastery_of(answers(marks), topic).standing; }

/// How likely somebody with that true share passes the series of looks at 19, 28 and 36, by exact sums.
double chance_of_passing(double share)
{
    std::map<int, double> missed{{0, 1.0}};     // misses so far -> likelihood, not yet passed or failed
    double passed = 0.0;
    for (int n = 1; n <= 36; ++n) {
        std::map<int, double> next;
        for (const auto& [misses, likelihood] : missed) {
            next[misses] += likelihood * share;
            if (misses < 2) next[misses + 1] += likelihood * (1.0 - share);
        }
        for (const auto& [looks_at, most] : {std::pair{19, 0}, {28, 1}, {36, 2}})
            if (n == looks_at)
                for (auto& [misses, likelihood] : next)
                    if (misses <= most) passed += std::exchange(likelihood, 0.0);
        missed = next;
    }
    return passed;
}

}

// SciPy 1.10.1 binomtest, method wilson; R prop.test(correct = FALSE) for 9 of 10 and 19 of 20.
TEST_CASE("Wilson's interval is that of other programs")
{
    struct Row { int k, n; double low, high; };
    for (const Row& row : {Row{5, 5, 0.565518, 1.0}, Row{8, 10, 0.490162, 0.943318}, Row{9, 10, 0.595850, 0.982124}, Row{10, 10, 0.722467, 1.0},
                           Row{19, 20, 0.763869, 0.991119}, Row{20, 20, 0.838875, 1.0}, Row{45, 50, 0.786398, 0.956524}}) {
        INFO(row.k << " of " << row.n);
        CHECK(wilson(row.k, row.n).low == Approx(row.low).margin(5e-7));
        CHECK(wilson(row.k, row.n).high == Approx(row.high).margin(5e-7));
    }
}

// The same programs: Clopper-Pearson limits are quantiles of beta distributions.
TEST_CASE("the exact interval of 8 of 10 follows from the beta distribution")
{
    CHECK(beta_quantile(8, 3, 0.025) == Approx(0.443905).margin(5e-7));
    CHECK(beta_quantile(9, 2, 0.975) == Approx(0.974789).margin(5e-7));
}

// P(p > .8) with a uniform prior: SciPy 1.10.1.
TEST_CASE("how likely the goal is passed is that of another program")
{
    CHECK(mastery_of(answers("+++++"), topic).above_goal == Approx(0.737856).margin(5e-7));
    CHECK(mastery_of(answers("++++-++++-"), topic).above_goal == Approx(0.382598).margin(5e-7));
    CHECK(mastery_of(answers("++++++++++"), topic).above_goal == Approx(0.914101).margin(5e-7));
    CHECK(mastery_of(answers("-" + std::string(19, '+')), topic).above_goal == Approx(0.942354).margin(5e-7));
}

// Three looks at 98.33 %: 0 of 19, 1 of 28, 2 of 36 misses; exact sums done here and, before, apart from this program.
TEST_CASE("the looks pass few who are right four times in five, and most who are right nearly always")
{
    CHECK(chance_of_passing(0.70) == Approx(0.0017).margin(5e-5));
    CHECK(chance_of_passing(0.80) == Approx(0.0305).margin(5e-5));
    CHECK(chance_of_passing(0.90) == Approx(0.3407).margin(5e-5));
    CHECK(chance_of_passing(0.95) == Approx(0.7647).margin(5e-5));
    CHECK(chance_of_passing(0.98) == Approx(0.9703).margin(5e-5));
}

TEST_CASE("mastery is looked at after 19, 28 and 36 answers only")
{
    CHECK(standing("") == Standing::not_yet);
    CHECK(standing("+") == Standing::practised);
    CHECK(standing(std::string(7, '+')) == Standing::on_track);     // P = 0.832
    CHECK(standing(std::string(18, '+')) == Standing::on_track);
    CHECK(standing(std::string(19, '+')) == Standing::mastered);
    const std::string one_miss = "-" + std::string(26, '+');
    CHECK(standing(one_miss) != Standing::mastered);
    CHECK(standing(one_miss + "+") == Standing::mastered);
    const std::string two_misses = "--" + std::string(33, '+');
    CHECK(standing(two_misses) != Standing::mastered);
    CHECK(standing(two_misses + "+") == Standing::mastered);
    CHECK(standing(two_misses + "-") != Standing::mastered);
}

TEST_CASE("a third miss begins a new series, and a later series that fails takes mastery back")
{
    CHECK(standing("---" + std::string(19, '+')) == Standing::mastered);
    const std::string mastered(19, '+');
    CHECK(standing(mastered + "--") == Standing::mastered);
    CHECK(standing(mastered + "---") != Standing::mastered);
}

TEST_CASE("a critical error among the last ten answers stands against mastery")
{
    std::vector<Attempt> all = answers("-" + std::string(27, '+'));
    CHECK(mastery_of(all, topic).standing == Standing::mastered);
    all[18].is_critical = true;
    CHECK(mastery_of(all, topic).standing != Standing::mastered);
    all[18].is_critical = false;
    all[17].is_critical = true;
    CHECK(mastery_of(all, topic).standing == Standing::mastered);
}

TEST_CASE("the same question again, and the one that follows a miss on the same day, do not count")
{
    std::vector<Attempt> all{answer(topic, 0, true, 1), answer(topic, 0, true, 1), answer(topic, 0, false, 2), answer(Topic::dust, 0, true, 3), answer(topic, 0, true, 4), answer(topic, 1, true, 5)};
    const auto kept = counted(all, topic);
    REQUIRE(kept.size() == 3);
    CHECK(kept[0].seed == 1);
    CHECK(kept[1].seed == 2);
    CHECK(kept[2].seed == 5);
}

}
