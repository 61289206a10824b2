#pragma once

#include "quiz/question.hpp"

#include <string>
#include <vector>

namespace flapdoor::quiz {

/// A file of a package, its path with `/` and inside the package.
struct QtiFile {
    std::string path;
    std::string bytes;
};

/// A question as an item of Question and Test Interoperability 3.0.
struct QtiItem {
    std::string identifier;
    std::string xml;
    std::vector<QtiFile> pictures;          ///< that the item shows, named as it names them
    std::vector<std::string> losses;        ///< what the standard cannot say of this question, a sentence each
};

/// In the language in force. Insists on a question that can be asked: no template, runs played.
/// @param name  of the question among all of a package: "bank/question"
QtiItem export_item(const Question& question, const std::string& name);

}
