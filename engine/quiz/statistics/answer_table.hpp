#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace flapdoor::quiz {

/// An answer that a question offers.
struct OfferedAnswer {
    std::string id;
    std::string text;
    bool is_key = false;
};

/// A question as the statistics see it.
struct AskedQuestion {
    std::string id;
    std::string title;
    double most = 1.0;                      ///< points a fully right answer gets, above zero
    std::vector<OfferedAnswer> offered;     ///< none where the answer is typed or put in order
};

struct GivenAnswer {
    double points = 0.0;                    ///< 0 to the question's `most`
    std::vector<std::string> chosen;        ///< ids of offered answers, or the answer as it was given; none: left blank
};

/// What one person did.
struct AnswerRow {
    std::string person;                     ///< any name or number; decides ties
    std::vector<std::optional<GivenAnswer>> answers;    ///< one for each question; nothing: it was not on this person's paper
};

/// What a group did: one row a person, one column a question. Papers of one bank may hold different questions.
struct AnswerTable {
    std::string title;
    std::vector<AskedQuestion> questions;
    std::vector<AnswerRow> rows;

    /// Everybody had every question: only then is the paper as a whole one thing to be judged.
    bool is_complete() const;
};

/// Insists on a table that keeps what is said above.
void insist_on_order(const AnswerTable& table);

/// Points of a row over those of its questions, `without` left out: 0 to 1. Nothing where no other question was asked.
std::optional<double> share_of_points(const AnswerTable& table, const AnswerRow& row, std::optional<std::size_t> without = std::nullopt);

}
