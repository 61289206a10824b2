#pragma once

#include "quiz/question.hpp"

#include <string>
#include <vector>

namespace flapdoor::quiz {

/// What a question offers under letters on paper and on a terminal: options, cards, moments, regions, in their order.
struct Lettered {
    std::string letter;     ///< "A"; after "Z" comes "AA"
    std::string id;
    Phrase text;
    bool is_right = false;  ///< of cards: no meaning
};

std::vector<Lettered> lettered(const Question& question);

/// The right answer as it is written on a key: "B", "A, C", "C B A D", "80 ft2 (7.43 m2)".
std::string key_text(const Question& question);

/// The same of an answer that was given; a dash for none.
std::string response_text(const Question& question, const Response& response);

/// A right answer as a response: what a key would fill in.
Response right_response(const Question& question);

}
