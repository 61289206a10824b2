#pragma once

#include "core/fields.hpp"
#include "quiz/phrase.hpp"
#include "rules/rule.hpp"

#include <string>
#include <vector>

namespace flapdoor::quiz {

/// One of the answers to choose from. A wrong one stands for a misconception that has a name, so that statistics and feedback
/// can say which one somebody holds.
struct Option {
    rules::Marked id;               ///< stays the same when texts or order change: statistics count by it
    Phrase text;
    bool is_right = false;
    std::string misconception;      ///< its name; of wrong options only
    Phrase told;                    ///< to whoever chose it, or missed it

    static void fields(auto& self, auto&& visit)
    {
        visit("id", self.id, required, About{"name inside the question; stays when texts or order change"});
        visit("text", self.text, required, About{"the answer"});
        visit("right", self.is_right, About{"a right answer"});
        visit("misconception", self.misconception, About{"name of the mistake behind a wrong answer"});
        visit("told", self.told, About{"what is said to whoever chose it; of a right one, to whoever missed it"});
    }
};

/// The option with that id, or null.
const Option* find_option(const std::vector<Option>& options, const std::string& id);

class Complaints;

/// Options differ, and each wrong one has its misconception and something to say.
void check_options(const std::vector<Option>& options, const Place& where, Complaints& complaints);

}
