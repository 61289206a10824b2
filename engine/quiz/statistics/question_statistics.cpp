#include "quiz/statistics/question_statistics.hpp"

#include "core/insist.hpp"
#include "quiz/statistics/findings.hpp"
#include "quiz/statistics/moments.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

namespace flapdoor::quiz {

namespace {

/// One person who had the question.
struct Answerer {
    const AnswerRow* row = nullptr;
    const GivenAnswer* answer = nullptr;
    double score = 0.0;             ///< share of this question's points
    double total = 0.0;             ///< share of all points
    std::optional<double> rest;     ///< share of the points of the others
};

/// Those who had the question, best first.
std::vector<Answerer> ranked(const AnswerTable& table, std::size_t question)
{
    std::vector<Answerer> people;
    for (const AnswerRow& row : table.rows) {
        const auto& answer = row.answers[question];
        if (!answer) continue;
        people.push_back({&row, &*answer, answer->points / table.questions[question].most, *share_of_points(table, row), share_of_points(table, row, question)});
    }
    std::stable_sort(people.begin(), people.end(), [](const Answerer& a, const Answerer& b) {
        if (a.total != b.total) return a.total > b.total;
        return a.row->person < b.row->person;
    });
    return people;
}

template <class Take>
std::vector<double> list_of(const std::vector<Answerer>& people, const Take& take)
{
    std::vector<double> values;
    for (const Answerer& person : people) values.push_back(take(person));
    return values;
}

/// Correlation of something about a person with the points in the other questions, over those who had others.
template <class Take>
std::optional<double> against_rest(const std::vector<Answerer>& people, const Take& take)
{
    std::vector<double> values, rest;
    for (const Answerer& person : people) {
        if (!person.rest) continue;
        values.push_back(take(person));
        rest.push_back(*person.rest);
    }
    if (values.empty()) return std::nullopt;
    return correlation_of(values, rest);
}

bool gave(const Answerer& person, const std::string& id)
{
    const auto& chosen = person.answer->chosen;
    return id.empty() ? chosen.empty() : std::find(chosen.begin(), chosen.end(), id) != chosen.end();
}

AnswerShare share_of(const std::vector<Answerer>& people, std::size_t group, OfferedAnswer offered)
{
    AnswerShare share;
    share.id = std::move(offered.id);
    share.text = std::move(offered.text);
    share.is_key = offered.is_key;
    for (std::size_t i = 0; i < people.size(); ++i) {
        if (!gave(people[i], share.id)) continue;
        ++(i < group ? share.upper : i + group >= people.size() ? share.lower : share.middle);
    }
    share.share = share.people() / static_cast<double>(people.size());
    if (group > 0) share.upper_lower = (share.upper - share.lower) / static_cast<double>(group);
    share.with_rest = against_rest(people, [&](const Answerer& person) { return gave(person, share.id) ? 1.0 : 0.0; });
    return share;
}

std::vector<AnswerShare> shares_of(const AskedQuestion& question, const std::vector<Answerer>& people, std::size_t group)
{
    std::vector<AnswerShare> shares;
    std::set<std::string> known;
    for (const OfferedAnswer& offered : question.offered) {
        shares.push_back(share_of(people, group, offered));
        known.insert(offered.id);
    }
    // Answers that were typed, put in order or pointed at; a fully right one is a key.
    std::map<std::string, bool> others;
    bool is_any_blank = false;
    for (const Answerer& person : people) {
        is_any_blank = is_any_blank || person.answer->chosen.empty();
        for (const std::string& chosen : person.answer->chosen)
            if (!known.contains(chosen)) others[chosen] = others[chosen] || person.score >= 1.0;
    }
    const auto first_other = static_cast<std::ptrdiff_t>(shares.size());
    for (const auto& [id, is_right] : others) shares.push_back(share_of(people, group, {id, id, is_right}));
    std::stable_sort(shares.begin() + first_other, shares.end(), [](const AnswerShare& a, const AnswerShare& b) { return a.people() > b.people(); });
    if (is_any_blank) shares.push_back(share_of(people, group, {}));
    return shares;
}

QuestionStatistics statistics_of(const AnswerTable& table, std::size_t question)
{
    const std::vector<Answerer> people = ranked(table, question);
    QuestionStatistics it;
    it.question = question;
    it.people = people.size();
    if (people.empty()) return it;
    it.group = static_cast<std::size_t>(std::lround(0.27 * static_cast<double>(people.size())));
    const auto score_of = [](const Answerer& person) { return person.score; };
    const std::vector<double> scores = list_of(people, score_of);
    it.difficulty = mean_of(scores);
    it.difficulty_error = std::sqrt(variance_of(scores) / static_cast<double>(people.size()));
    for (std::size_t i = 0; i < it.group; ++i) {
        it.upper += scores[i];
        it.lower += scores[people.size() - 1 - i];
    }
    if (it.group > 0) it.upper_lower = (it.upper - it.lower) / static_cast<double>(it.group);
    it.with_total = correlation_of(scores, list_of(people, [](const Answerer& person) { return person.total; }));
    it.with_rest = against_rest(people, score_of);
    it.answers = shares_of(table.questions[question], people, it.group);
    it.findings = findings_in(it);
    return it;
}

}

std::vector<QuestionStatistics> question_statistics(const AnswerTable& table)
{
    insist_on_order(table);
    std::vector<QuestionStatistics> all;
    for (std::size_t j = 0; j < table.questions.size(); ++j) {
        QuestionStatistics it = statistics_of(table, j);
        if (it.people > 0) all.push_back(std::move(it));
    }
    return all;
}

}
