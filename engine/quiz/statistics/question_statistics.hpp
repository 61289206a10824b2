#pragma once

#include "quiz/statistics/answer_table.hpp"

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace flapdoor::quiz {

/// People below whom D, r and reliability are early figures: the standard error of r is about (1 - r^2) / sqrt(N - 1).
inline constexpr std::size_t enough_people = 30;

/// How often one answer was given, and by whom.
struct AnswerShare {
    std::string id;                 ///< of an offered answer, or the answer as given; empty: left blank
    std::string text;
    bool is_key = false;
    int upper = 0, middle = 0, lower = 0;   ///< people of the upper, the middle and the lower group who gave it
    double share = 0.0;             ///< of all who had the question
    double upper_lower = 0.0;       ///< (upper - lower) / size of a group
    std::optional<double> with_rest;    ///< correlation of having given it with the points in the other questions

    int people() const { return upper + middle + lower; }
};

/// What is wrong, or may be.
enum class Finding {
    check_the_key,          ///< the better people are in the rest, the worse they are here
    strong_choose_another,  ///< more of the upper group give one wrong answer than the key
    ambiguous_answer,       ///< a wrong answer that goes with being good in the rest
    idle_answer,            ///< a wrong answer that hardly anybody gives
    says_little             ///< nearly everybody is right, or nearly nobody
};

struct Found {
    Finding what = Finding::says_little;
    std::string answer;     ///< the offered answer it is about; empty: the question
    friend bool operator==(const Found&, const Found&) = default;
};

struct QuestionStatistics {
    std::size_t question = 0;       ///< place in the table
    std::size_t people = 0;         ///< who had it
    std::size_t group = 0;          ///< size of the upper and of the lower group: round(0.27 people)
    double difficulty = 0.0;        ///< p: mean share of the points
    double difficulty_error = 0.0;  ///< its standard error
    double upper = 0.0, lower = 0.0;    ///< points of the two groups, in shares of the question's own
    double upper_lower = 0.0;       ///< D = (upper - lower) / group
    std::optional<double> with_total;   ///< correlation with the points in all questions, this one among them
    std::optional<double> with_rest;    ///< the same without this one: what to go by
    std::vector<AnswerShare> answers;   ///< offered ones in their order; others by how often they were given, then by text
    std::vector<Found> findings;
};

/// Every question of a table that somebody had. The upper and the lower group are the 27 % with the most and the fewest
/// points (Kelley 1939, J. Educ. Psychol. 30, 17-24); of people with the same points the one whose name comes first by its
/// bytes counts as better.
/// Insists on a table in order.
std::vector<QuestionStatistics> question_statistics(const AnswerTable& table);

}
