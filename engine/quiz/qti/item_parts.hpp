#pragma once

#include "quiz/qti/export_item.hpp"
#include "quiz/qti/processing.hpp"

#include <string>
#include <vector>

/// What each kind of question adds to its item. One function a kind: a new kind is one more here and below.
namespace flapdoor::quiz {

struct ItemParts {
    XmlElement response;                    ///< declaration with the key
    std::vector<XmlElement> body;           ///< question, interaction, feedback on wrong answers
    std::vector<XmlElement> processing;     ///< sets SCORE and FEEDBACK
    std::vector<QtiFile> pictures;
    std::vector<std::string> losses;
};

ItemParts parts_of(const ChooseOne& asked, const Question& question);
ItemParts parts_of(const ChooseSeveral& asked, const Question& question);
ItemParts parts_of(const PutInOrder& asked, const Question& question);
ItemParts parts_of(const Number& asked, const Question& question);
ItemParts parts_of(const PointAtPlan& asked, const Question& question);
ItemParts parts_of(const SpotFault& asked, const Question& question);
ItemParts parts_of(const Predict& asked, const Question& question);
ItemParts parts_of(const Generated& asked, const Question& question);

/// A paragraph that shows once its identifier is among the feedback.
XmlElement feedback_block(const std::string& identifier, const Phrase& told);

/// The question's words as the prompt of an interaction.
XmlElement prompt_of(const Question& question);

}
