#pragma once

#include "core/result.hpp"
#include "rules/rule.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace flapdoor::rules {

/// A case in which the book has nothing to say: housing outside the rule, minor repair, paint shown to hold no lead.
struct Outside {
    std::string why;
    std::string cite;
    Applies applies;                    ///< the book is out of force when all of it holds

    static void fields(auto& self, auto&& visit)
    {
        visit("why", self.why, required, About{"why the book has nothing to say then"});
        visit("cite", self.cite, About{"paragraph it rests on"});
        visit("applies", self.applies, required, About{"when the book is out of force"});
    }
};

/// What a run needs to pass besides breaking no critical rule. A share alone grows lenient with the number of rules in
/// force, so a book may also limit the points.
struct Passing {
    int score = 0;                      ///< least share that is left, in percent
    int most_lost = 100'000;            ///< most points lost

    static void fields(auto& self, auto&& visit)
    {
        visit("score", self.score, Range{0, 100}, About{"least share left, in percent"});
        visit("most-lost", self.most_lost, Range{0, 100'000}, About{"most points lost"});
    }
};

/// A layer's word on a rule of the book below: other points, another class, critical or not. The rest of the rule stays.
struct Change {
    Marked rule;
    std::string why;
    std::optional<int> weight;
    std::optional<RuleClass> weight_class;
    std::optional<bool> is_critical;
    bool loosens = false;

    static void fields(auto& self, auto&& visit)
    {
        visit("rule", self.rule, required, About{"id of the rule below"});
        visit("why", self.why, required, About{"why it weighs otherwise here"});
        visit("weight", self.weight, Range{0, 100}, About{"points; 0 is advice only"});
        visit("class", self.weight_class, About{"must, should or practice"});
        visit("critical", self.is_critical, About{"breaking it fails the run, or no longer does"});
        visit("loosens", self.loosens, About{"asks less than the book below on purpose"});
    }
};

/// The rules a run is marked against, as they stand in a file. Only `read_rule_book`, `load_rule_book` and the functions of
/// layers.hpp give books that have been checked.
struct RuleBook {
    static constexpr int format_version = 1;

    int format = format_version;
    std::string id;
    std::string title;
    std::string edition;                ///< which text it follows, and of when
    std::optional<Marked> over;         ///< id of the book it lies on; nothing for one that stands alone
    std::optional<Passing> passing;     ///< left out: breaking no critical rule is enough
    std::vector<Outside> outside;       ///< any of them puts the book out of force
    std::vector<Change> changes;        ///< only in a layer that has not been laid yet
    std::vector<Rule> rules;

    static void fields(auto& self, auto&& visit)
    {
        visit("format", self.format, required, Range{1, format_version});
        visit("id", self.id, required);
        visit("title", self.title, required);
        visit("edition", self.edition, required, About{"which text the book follows, and of when"});
        visit("over", self.over, About{"id of the book this one lies on"});
        visit("passing", self.passing, About{"what a run needs to pass"});
        visit("outside", self.outside, About{"cases in which the book is out of force"});
        visit("change", self.changes, About{"other points for rules of the book below"});
        visit("rule", self.rules);
    }

    bool is_layer() const { return over.has_value(); }
    const Rule* find(std::string_view rule_id) const;
};

/// A book from text or disk, checked by `lint`; every problem with its place. A book that lies on another one is checked
/// as far as that is possible without it, and fully when it is laid (layers.hpp).
Result<RuleBook> read_rule_book(std::string_view text, const std::string& file_name);
Result<RuleBook> load_rule_book(const std::string& path);

}
