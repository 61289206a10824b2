#pragma once

#include "core/result.hpp"
#include "rules/rule.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace flapdoor::rules {

/// The rules a run is marked against, as they stand in a file. Only `read_rule_book`, `load_rule_book` and `layered` give
/// books that have been checked.
struct RuleBook {
    static constexpr int format_version = 1;

    int format = format_version;
    std::string id;
    std::string title;
    std::string edition;                ///< which text it follows, and of when
    std::string over;                   ///< id of the book it lies on; empty for one that stands alone
    std::vector<Rule> rules;

    static void fields(auto& self, auto&& visit)
    {
        visit("format", self.format, required, Range{1, format_version});
        visit("id", self.id, required);
        visit("title", self.title, required);
        visit("edition", self.edition, required, About{"which text the book follows, and of when"});
        visit("over", self.over, About{"id of the book this one lies on"});
        visit("rule", self.rules, required);
    }

    const Rule* find(std::string_view rule_id) const;
};

/// A book from text or disk, checked by `lint`; every problem with its place. A book that lies on another one is checked
/// as far as that is possible without it, and fully by `layered`.
Result<RuleBook> read_rule_book(std::string_view text, const std::string& file_name);
Result<RuleBook> load_rule_book(const std::string& path);

/// `upper` on top of `base`: rules with a new id are added, rules with a known id take the place of the old one. A rule
/// that asks less than a must-rule below (less weight, lower class, no longer critical) has to say `loosens = true`.
Result<RuleBook> layered(const RuleBook& base, const RuleBook& upper);

}
