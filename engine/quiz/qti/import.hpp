#pragma once

#include "quiz/bank.hpp"
#include "quiz/find_scenario.hpp"
#include "quiz/question.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace flapdoor::quiz {

/// Something of a file that was left out or taken for something near it.
struct ImportNote {
    Place where;
    std::string item;               ///< identifier of the item
    std::string what;               ///< a sentence, in the language in force
    bool is_question_lost = false;  ///< the whole question was left out
};

struct Imported {
    std::vector<Question> questions;
    std::vector<ImportNote> notes;  ///< in the order of the file
};

/// The question in an item of Question and Test Interoperability 3.0, 2.2 or 2.1: choice, order, a number to be typed, places
/// in a picture. Everything that does not come along is named. A file that cannot be read, or is no item, is a problem with its
/// place; a test or a manifest holds no question and is noted. What comes out passes the lint of banks.
/// @param find  scenarios, for items that were exported from here
Result<Imported> import_item(std::string_view xml, const std::string& file_name, const FindScenario& find);

/// A bank of imported questions; those with an id that was there before get a number behind it.
Bank bank_of_imported(std::string id, std::string title, std::vector<Question> questions);

}
