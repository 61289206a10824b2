#include "quiz/statistics/paper_statistics.hpp"

#include "core/insist.hpp"
#include "quiz/statistics/beta.hpp"
#include "quiz/statistics/moments.hpp"

#include <algorithm>
#include <cmath>

namespace flapdoor::quiz {

namespace {

/// The points of everybody in one question.
std::vector<double> column(const AnswerTable& table, std::size_t question)
{
    std::vector<double> points;
    for (const AnswerRow& row : table.rows) points.push_back(row.answers[question]->points);
    return points;
}

std::vector<double> minus(std::vector<double> a, const std::vector<double>& b)
{
    for (std::size_t i = 0; i < a.size(); ++i) a[i] -= b[i];
    return a;
}

/// k / (k - 1) (1 - sum of variances / variance of the sum), all on N.
std::optional<double> alpha_of(double questions, double sum_of_variances, double variance_of_sum)
{
    if (questions < 2.0 || variance_of_sum <= 0.0) return std::nullopt;
    return questions / (questions - 1.0) * (1.0 - sum_of_variances / variance_of_sum);
}

bool is_right_or_wrong(const AnswerTable& table)
{
    for (std::size_t j = 0; j < table.questions.size(); ++j) {
        if (table.questions[j].most != 1.0) return false;
        for (const AnswerRow& row : table.rows)
            if (row.answers[j]->points != 0.0 && row.answers[j]->points != 1.0) return false;
    }
    return true;
}

/// Feldt 1965: (1 - alpha) / (1 - sample alpha) is distributed as F with (N - 1)(k - 1) and N - 1 degrees of freedom upside
/// down (memory; checked against a published program in tests/quiz).
std::optional<Interval> interval_of(double alpha, std::size_t people, std::size_t questions)
{
    if (alpha >= 1.0 || people < 3) return std::nullopt;
    const double d1 = static_cast<double>(people - 1), d2 = d1 * static_cast<double>(questions - 1);
    return Interval{1.0 - (1.0 - alpha) * f_quantile(d1, d2, 0.975), 1.0 - (1.0 - alpha) * f_quantile(d1, d2, 0.025)};
}

std::optional<Reliability> reliability_of(const AnswerTable& table, const std::vector<double>& totals, double mean, double variance)
{
    const std::size_t k = table.questions.size();
    if (!table.is_complete() || totals.size() < 2) return std::nullopt;
    std::vector<double> variances;
    double sum = 0.0;
    for (std::size_t j = 0; j < k; ++j) {
        variances.push_back(variance_of(column(table, j)));
        sum += variances.back();
    }
    const auto questions = static_cast<double>(k);
    const std::optional<double> alpha = alpha_of(questions, sum, variance);
    if (!alpha) return std::nullopt;
    Reliability it;
    it.alpha = *alpha;
    it.is_kr20 = is_right_or_wrong(table);
    if (it.is_kr20) it.kr21 = questions / (questions - 1.0) * (1.0 - mean * (questions - mean) / (questions * variance));
    it.interval = interval_of(*alpha, totals.size(), k);
    it.error_of_measurement = std::sqrt(*sample_variance_of(totals) * (1.0 - std::max(*alpha, 0.0)));
    for (std::size_t j = 0; j < k; ++j) it.alpha_without.push_back(alpha_of(questions - 1.0, sum - variances[j], variance_of(minus(totals, column(table, j)))));
    return it;
}

/// Each score of its own where points are whole and few, tenths of the points otherwise.
std::vector<ScoreClass> classes_of(const std::vector<double>& totals, double most)
{
    constexpr double few = 25.0;
    const bool is_whole = most > 1.0 && most <= few && std::all_of(totals.begin(), totals.end(), [](double total) { return total == std::floor(total); });
    std::vector<ScoreClass> classes;
    if (is_whole)
        for (double points = 0.0; points <= most; points += 1.0) classes.push_back({points, points});
    else
        for (int i = 0; i < 10; ++i) classes.push_back({most * i / 10.0, most * (i + 1) / 10.0});
    for (const double total : totals) {
        const double at = is_whole ? total : std::floor(10.0 * total / most);
        ++classes[std::min(static_cast<std::size_t>(at), classes.size() - 1)].people;
    }
    return classes;
}

}

PaperStatistics paper_statistics(const AnswerTable& table)
{
    insist_on_order(table);
    const bool is_complete = table.is_complete();
    std::vector<double> totals;
    double most = 0.0;
    for (const AskedQuestion& question : table.questions) most += question.most;
    if (!is_complete) most = 1.0;
    for (const AnswerRow& row : table.rows) {
        double points = 0.0;
        for (const auto& answer : row.answers) points += answer ? answer->points : 0.0;
        // A sum, not a share times the most: whole points stay whole.
        if (const auto share = share_of_points(table, row)) totals.push_back(is_complete ? points : *share);
    }
    insist(!totals.empty(), "statistics need at least one answer");
    PaperStatistics it;
    it.people = totals.size();
    it.most = most;
    it.mean = mean_of(totals);
    it.variance = variance_of(totals);
    if (const auto variance = sample_variance_of(totals)) it.deviation = std::sqrt(*variance);
    it.classes = classes_of(totals, most);
    it.reliability = reliability_of(table, totals, it.mean, it.variance);
    return it;
}

}
