#pragma once

#include "text/sentence.hpp"
#include "window/run/story.hpp"

#include <optional>
#include <string>
#include <vector>

namespace flapdoor::window {

/// One of the answers a class votes on. Its words are kept, so that they are said in the language then spoken.
struct ClassAnswer {
    std::string name;           ///< stable
    text::Sentence label;
    text::Sentence reason;      ///< why it is right or wrong; shown after the reveal
    bool is_right = false;
    int votes = 0;
    int first_votes = 0;        ///< of the vote before the class talked it over
};

/// A question to the class at a frozen moment.
struct ClassQuestion {
    text::Sentence text;
    std::vector<ClassAnswer> answers;
    Time asked_at{};
    bool is_revealed = false;
    bool is_second_vote = false;

    int votes() const;
    int first_votes() const;
    void vote_again();      ///< what was counted becomes the first vote
};

/// "What next?": cards of the careful plan that are not done yet at that moment. Which of them may come next follows from the
/// rule book: nothing that it wants before them is still to be done. Nothing when all is done.
/// @param careful  the careful plan of the same drill, carried out
std::optional<ClassQuestion> what_next(const Story& played, const Story& careful, Time now);

/// "Where will it go?": the zones in which the run itself finds more lead at the end of the card, ten minutes later at least.
ClassQuestion where_will_it_go(const Story& played, Time now);

/// Lead in a zone at a frame: on what lies open to the air and in the air, micrograms.
double lead_in_zone(const Story& story, const drill::Frame& frame, std::size_t zone);

}
