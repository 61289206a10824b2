#pragma once

#include "core/result.hpp"
#include "quiz/paper.hpp"
#include "quiz/response.hpp"
#include "quiz/sitting.hpp"

#include <cstddef>
#include <string>
#include <string_view>

/// A paper on a terminal: what is printed, and what a typed line means. No terminal is touched here.
namespace flapdoor::quiz {

/// Heading: title, seed, questions, points, time, how to stop.
std::string heading_text(const Paper& paper, std::size_t width);

/// A question with its letters, and what to type.
std::string question_text(const PaperItem& item, std::size_t number, std::size_t of, std::size_t width);

/// What is wanted, in one line: shown with the question and again after a line that is no answer.
std::string wanted_text(const Question& question);

/// A typed line as a response; what it should have been, where it is none. Letters may stand together or apart, in either
/// case: `ac`, `A, C`.
tl::expected<Response, std::string> read_answer(const Question& question, std::string_view line);

/// Right or not, what is told about the answer, why, and where it stands.
std::string feedback_text(const Question& question, const Response& response, std::size_t width);

/// Points and each question that was not right, with its feedback.
std::string result_text(const Paper& paper, const SittingResult& sitting, std::size_t width);

}
