#pragma once

#include "core/result.hpp"
#include "text/document.hpp"

#include <string>
#include <vector>

namespace flapdoor::acceptance {

/// One change to a work plan, told in the terms of its labels. Exactly one of the verbs is given.
struct Edit {
    std::string drop;       ///< label of the card to leave out
    std::string move;       ///< label of the card to move
    std::string after;      ///< with `move` or `insert`: label of the card it then follows
    std::string set;        ///< label of the card whose parameter changes
    std::string insert;     ///< a whole card as an inline table, e.g. `{ do = "sweep-floor", by = ["lee"], broom = "broom" }`
    std::string key;        ///< with `set`
    std::string value;      ///< with `set`: TOML, e.g. `"one-bucket"` or `false`

    static void fields(auto& self, auto&& visit)
    {
        visit("drop", self.drop);
        visit("move", self.move);
        visit("after", self.after);
        visit("set", self.set);
        visit("insert", self.insert);
        visit("key", self.key);
        visit("value", self.value);
    }
};

/// The text of a plan with the edits made, or what is wrong with them.
Result<std::string> edited(const std::string& plan_text, const std::vector<Edit>& edits);

}
