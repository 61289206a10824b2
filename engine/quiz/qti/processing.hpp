#pragma once

#include "quiz/qti/markup.hpp"

#include <string>
#include <string_view>
#include <vector>

/// Words of the standard's response processing: how an answer becomes a score.
namespace flapdoor::quiz {

XmlElement variable_named(std::string_view identifier);
XmlElement correct_response();                                      ///< the key of RESPONSE
XmlElement value_of(std::string_view base_type, std::string_view value);

/// An operator over others: `qti-match`, `qti-and`, `qti-sum` ...
XmlElement over(std::string_view op, std::vector<XmlElement> operands);

XmlElement set_to(std::string_view outcome, XmlElement value);

/// Adds an identifier to the feedback that is shown.
XmlElement show_feedback(std::string_view identifier);

/// If, and else where there is something to do then.
XmlElement condition(XmlElement when, std::vector<XmlElement> then, std::vector<XmlElement> otherwise = {});

/// Declares RESPONSE with its key, in its order.
XmlElement response_declaration(std::string_view cardinality, std::string_view base_type, const std::vector<std::string>& key);

/// Declares SCORE from 0 to `points`, MAXSCORE, FEEDBACK and EXPLANATION.
std::vector<XmlElement> outcome_declarations(int points);

}
