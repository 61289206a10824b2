#pragma once

#include "quiz/statistics/answer_table.hpp"

#include <cstdio>
#include <string>
#include <string_view>
#include <vector>

namespace flapdoor::quiz {

/// A name that sorts as its number does.
inline std::string numbered(std::size_t number)
{
    char name[16];
    std::snprintf(name, sizeof name, "p%05zu", number);
    return name;
}

/// Questions Q1 and on that are right (1) or wrong (0), one row a pattern.
inline AnswerTable right_or_wrong(const std::vector<std::string>& patterns)
{
    AnswerTable table;
    for (std::size_t j = 0; j < patterns.at(0).size(); ++j) table.questions.push_back({"Q" + std::to_string(j + 1), "", 1.0, {}});
    for (std::size_t i = 0; i < patterns.size(); ++i) {
        AnswerRow row{numbered(i + 1), {}};
        for (const char mark : patterns[i]) row.answers.push_back(GivenAnswer{mark == '1' ? 1.0 : 0.0, {mark == '1' ? "right" : "wrong"}});
        table.rows.push_back(row);
    }
    return table;
}

/// Twenty people, eight questions, the last of them a bad one; made up.
inline const std::vector<std::string> twenty_people{
    "11111111", "11111101", "11111110", "11110110", "11111010", "11111100", "11101011", "11011100", "11110010", "11101001",
    "10110100", "11100100", "11010001", "11001000", "10100010", "01100001", "11000000", "10010000", "01000001", "10000000"};

/// The same with the answers to Q5 as they were chosen, key B.
inline AnswerTable twenty_people_with_choices()
{
    AnswerTable table = right_or_wrong(twenty_people);
    table.questions[4].offered = {{"A", "six inches"}, {"B", "six feet", true}, {"C", "ten feet"}, {"D", "the whole floor"}};
    const auto choose = [&](std::string_view letter, const std::vector<std::size_t>& people) {
        for (const std::size_t person : people) table.rows[person - 1].answers[4]->chosen = {std::string(letter)};
    };
    for (AnswerRow& row : table.rows) row.answers[4]->chosen = {"B"};
    choose("A", {4, 9, 12, 16, 18, 19});
    choose("C", {11, 13, 17, 20});
    choose("D", {15});
    return table;
}

/// Law School Admission Test, section 6: 1000 people, five questions. Counts of the patterns 00000, 00001 ... 11111.
/// Bock & Lieberman 1970, Psychometrika 35, 179-197, as the data set `bock.table` of the R package psych holds them.
inline AnswerTable lsat_section_6()
{
    const std::vector<int> counts{3,  6,  2,  11, 1, 1,  3,  4,  1,  8,  0,  16,  0,  3,  2,  15,
                                  10, 29, 14, 81, 3, 28, 15, 80, 16, 56, 21, 173, 11, 61, 28, 298};
    std::vector<std::string> patterns;
    for (std::size_t code = 0; code < counts.size(); ++code) {
        std::string pattern;
        for (int bit = 4; bit >= 0; --bit) pattern += (code >> bit) & 1 ? '1' : '0';
        patterns.insert(patterns.end(), static_cast<std::size_t>(counts[code]), pattern);
    }
    return right_or_wrong(patterns);
}

}
