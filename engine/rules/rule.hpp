#pragma once

#include "core/fields.hpp"
#include "rules/condition.hpp"
#include "rules/things.hpp"

#include <optional>
#include <string>
#include <vector>

namespace flapdoor::rules {

enum class RuleClass {
    must,       ///< regulation
    should,     ///< guidance of the agency or the course
    practice    ///< habit of the trade, no source
};

/// What a rule's order rests on.
enum class OrderStrength {
    words,      ///< "explicit" in files: the words of the text fix it
    implied,    ///< impossible or pointless the other way round
    listed,     ///< the text lists one before the other without saying "then"
    practice
};

/// A name of the book together with where it stands.
struct Marked {
    std::string text;
    Place where;

    static void from_node(const text::Node& node, Marked& into, Problems& problems);
    static text::Node to_node(const Marked& marked);
};

/// When a rule is in force. All that is said must hold.
struct Applies {
    std::vector<Marked> facts;      ///< facts of the scenario that hold
    std::vector<Marked> unless;     ///< facts that do not
    std::vector<Spot> done;         ///< each occurs in the log
    std::vector<Spot> not_done;     ///< none occurs in the log

    static void fields(auto& self, auto&& visit)
    {
        visit("facts", self.facts, About{"facts of the scenario that must hold"});
        visit("unless", self.unless, About{"facts of the scenario that must not hold"});
        visit("done", self.done, About{"cards or states that must occur in the run"});
        visit("not-done", self.not_done, About{"cards or states that must not occur"});
    }
};

struct Rule {
    Marked id;
    std::string says;                   ///< the rule in a few words: "registers are covered before the first dust"
    std::string cite;                   ///< paragraph of the text, e.g. "40 CFR 745.85(a)(1)"
    std::string note;                   ///< how the text was read, for the instructor
    std::string reason;                 ///< why, in plain words
    std::string harm;                   ///< what goes wrong physically; may be empty for paper
    RuleClass weight_class = RuleClass::must;
    OrderStrength order = OrderStrength::words;
    int weight = 3;                     ///< 0: advice only, never weighed
    bool is_critical = false;
    bool loosens = false;               ///< a layered book says so when it asks less than the book below
    std::vector<Marked> follows_from;   ///< rules of which this one is only a consequence
    Applies applies;
    std::optional<Each> each;
    Condition when;

    static void fields(auto& self, auto&& visit)
    {
        visit("id", self.id, required, About{"name of the rule inside its book"});
        visit("says", self.says, required, About{"the rule in a few words"});
        visit("cite", self.cite, About{"paragraph it rests on"});
        visit("note", self.note, About{"how the text was read"});
        visit("reason", self.reason, required, About{"why, in plain words"});
        visit("harm", self.harm, About{"what goes wrong physically"});
        visit("class", self.weight_class, required, About{"must: regulation; should: guidance; practice: habit of the trade"});
        visit("order", self.order, About{"what the order rests on"});
        visit("weight", self.weight, required, Range{0, 100}, About{"points; 0 is advice only"});
        visit("critical", self.is_critical, About{"breaking it fails the run"});
        visit("loosens", self.loosens, About{"asks less than the book below on purpose"});
        visit("follows-from", self.follows_from, About{"rules whose breach explains this one"});
        visit("applies", self.applies, About{"when the rule is in force"});
        visit("each", self.each, About{"the rule is asked of each such thing, called `this`"});
        visit("when", self.when, required, About{"the condition"});
    }
};

}

namespace flapdoor::inline core {
template <> struct Words<rules::RuleClass> { static constexpr std::array<std::string_view, 3> words{"must", "should", "practice"}; };
template <> struct Words<rules::OrderStrength> { static constexpr std::array<std::string_view, 4> words{"explicit", "implied", "listed", "practice"}; };
}
