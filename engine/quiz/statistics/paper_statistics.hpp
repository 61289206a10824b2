#pragma once

#include "quiz/statistics/answer_table.hpp"

#include <optional>
#include <string>
#include <vector>

namespace flapdoor::quiz {

/// People with so many points.
struct ScoreClass {
    double from = 0.0, to = 0.0;    ///< points, or shares of them; equal: exactly so many. `to` itself belongs to the next class, but in the last
    int people = 0;
};

struct Interval {
    double low = 0.0, high = 0.0;
};

/// How well the questions of one paper together tell people apart.
struct Reliability {
    double alpha = 0.0;                     ///< Cronbach's alpha; of questions that are right or wrong it is KR-20
    bool is_kr20 = false;                   ///< every answer got all of one point or none
    std::optional<Interval> interval;       ///< 95 % (Feldt); nothing when alpha is 1 or people are too few
    std::optional<double> kr21;             ///< as if all questions were equally hard; only with KR-20
    double error_of_measurement = 0.0;      ///< SEM in points: sd x sqrt(1 - alpha), sd on N - 1; at alpha below 0 sd itself
    std::vector<std::optional<double>> alpha_without;   ///< one for each question: of the paper without it; nothing where that is not defined
};

struct PaperStatistics {
    std::size_t people = 0;
    double most = 0.0;              ///< points to be had; of papers with different questions 1: then scores are shares
    double mean = 0.0;
    double variance = 0.0;          ///< on N
    std::optional<double> deviation;    ///< sd on N - 1
    std::vector<ScoreClass> classes;    ///< all, from the lowest possible score on
    /// Nothing when people had different questions, when there are fewer than two of either, or when all scores are equal.
    std::optional<Reliability> reliability;
};

/// Insists on a table in order, with at least one row that holds an answer.
PaperStatistics paper_statistics(const AnswerTable& table);

}
