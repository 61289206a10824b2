#include "quiz/statistics/answer_table.hpp"

#include "core/insist.hpp"

#include <algorithm>

namespace flapdoor::quiz {

bool AnswerTable::is_complete() const
{
    return std::all_of(rows.begin(), rows.end(), [](const AnswerRow& row) {
        return std::all_of(row.answers.begin(), row.answers.end(), [](const auto& answer) { return answer.has_value(); });
    });
}

void insist_on_order(const AnswerTable& table)
{
    for (const AskedQuestion& question : table.questions) insist(question.most > 0.0, "a question is worth something");
    for (const AnswerRow& row : table.rows) {
        insist(row.answers.size() == table.questions.size(), "a row has a place for every question");
        for (std::size_t j = 0; j < row.answers.size(); ++j)
            insist(!row.answers[j] || (row.answers[j]->points >= 0.0 && row.answers[j]->points <= table.questions[j].most), "an answer gets between none and all of the points");
    }
}

std::optional<double> share_of_points(const AnswerTable& table, const AnswerRow& row, std::optional<std::size_t> without)
{
    double points = 0.0, most = 0.0;
    for (std::size_t j = 0; j < row.answers.size(); ++j) {
        if (!row.answers[j] || without == j) continue;
        points += row.answers[j]->points;
        most += table.questions[j].most;
    }
    if (most <= 0.0) return std::nullopt;
    return points / most;
}

}
