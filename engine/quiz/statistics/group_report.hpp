#pragma once

#include "quiz/statistics/paper_statistics.hpp"
#include "quiz/statistics/question_statistics.hpp"
#include "text/markup.hpp"
#include "text/table.hpp"

#include <cstddef>
#include <string>
#include <vector>

namespace flapdoor::quiz {

/// What an instructor learns from a group's answers, for the terminal and for a page.
struct GroupReport {
    std::string title;
    std::vector<AskedQuestion> asked;
    PaperStatistics paper;
    std::vector<QuestionStatistics> questions;
    bool shows_early = false;       ///< D, r and reliability also below `enough_people`, as early figures

    bool is_early() const { return paper.people < enough_people; }
    bool shows_figures() const { return !is_early() || shows_early; }
};

/// Insists on a table in order, with at least one answer.
GroupReport group_report(const AnswerTable& table, bool shows_early = false);

/// @param width  terminal columns, at least 60; insists
std::string group_sheet(const GroupReport& report, std::size_t width = 80);

/// The same as a section of a page.
text::Element group_section(const GroupReport& report);

/// A page of its own.
std::string group_page(const GroupReport& report);

// Its parts, the same words for both.

/// Mean, spread, reliability and what they mean, a sentence each.
std::vector<std::string> paper_lines(const GroupReport& report);

/// What so few people cannot tell yet; none from `enough_people` on.
std::vector<std::string> early_lines(const GroupReport& report);

/// Findings, a sentence each, with the question they are about.
std::vector<std::string> finding_lines(const GroupReport& report);

text::TextTable question_table(const GroupReport& report);
text::TextTable answers_table(const GroupReport& report);

/// How to read the columns of both, a sentence each.
std::vector<std::string> legend_lines(const GroupReport& report);

}
