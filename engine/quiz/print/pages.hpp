#pragma once

#include "quiz/paper.hpp"

#include <string>

/// A paper as pages that stand alone and print well. The seed stands on each, so that sheets can be put together again.
namespace flapdoor::quiz {

/// The questions, with plans where one is pointed at.
std::string paper_page(const Paper& paper);

/// Name, date, and a line or boxes for each answer.
std::string answer_page(const Paper& paper);

/// The right answers with their reasons and citations, for whoever corrects.
std::string key_page(const Paper& paper);

}
