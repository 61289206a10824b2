#pragma once

#include "quiz/bank.hpp"
#include "quiz/question.hpp"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace flapdoor::quiz {

/// When feedback is given.
enum class Feedback {
    at_once,    ///< practice: after each answer
    after       ///< sitting: when all is done
};

/// One question of a paper, as it is asked: no template, options in the order of this paper.
struct PaperItem {
    std::string item;           ///< "bank/question": the same on every paper, whatever was generated or shuffled
    std::uint64_t seed = 0;     ///< of its shuffling and, where it was generated, of its figures
    Question question;
};

/// A drawn set of questions. The same banks, blueprint and seed give the same paper.
struct Paper {
    std::string blueprint;      ///< id
    Phrase title;
    std::uint64_t seed = 1;
    Feedback feedback = Feedback::after;
    std::optional<Time> limit;  ///< time to answer all; nothing: as long as it takes
    std::vector<PaperItem> items;
};

/// Points of all its questions.
int points_of(const Paper& paper);

/// Tells papers apart whose questions, keys or order differ: what a sitting was begun with.
std::uint64_t fingerprint(const Paper& paper);

}

namespace flapdoor::inline core {
template <> struct Words<quiz::Feedback> { static constexpr std::array<std::string_view, 2> words{"at-once", "after"}; };
}
